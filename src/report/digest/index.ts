export { fileDigest, matchesDigest, scheduleDigest, withoutVariants } from './schedule-digest.ts';
export { sha256 } from './sha-256.ts';
