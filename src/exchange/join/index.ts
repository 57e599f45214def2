export { joinSchedules, type Join, type JoinedRow } from './join-schedules.ts';
export type { JoinChoice, JoinConflict } from './three-way.ts';
export { conflictSentence, joinSentences } from './join-words.ts';
