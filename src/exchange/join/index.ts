export { joinSchedules, type Join, type JoinedRow } from './join-schedules.ts';
export { throughout, type JoinChoice, type JoinConflict } from './three-way.ts';
export { conflictRow, conflictSentence, joinSentences } from './join-words.ts';
