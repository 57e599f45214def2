export { answerSharing, type SharingAnswer, type SharingMessage, type SharingPort } from './answer-sharing.ts';
export { readSharing } from './read-sharing.ts';
export { shareChanges } from './share-changes.ts';
export { leftOutSentence, limitSentence, noteSentence, servedText } from './sentences.ts';
export { shareOut, type SharingOptions, type SharingProgress } from './share-out.ts';
export type * from './sharing-problem.ts';
