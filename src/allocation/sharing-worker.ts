import { answerSharing, type SharingPort } from './sharing/answer-sharing.ts';

// The entry of a worker: what it is sent and answers, see `SharingMessage` and `SharingAnswer`.
answerSharing(globalThis as unknown as SharingPort);
