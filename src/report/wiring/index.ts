export { leftOutSentence } from './left-out-sentence.ts';
export { wiringCsv } from './wiring-csv.ts';
export { WIRING_LISTS, wiringList, type WiringList, type WiringListName } from './wiring-lists.ts';
