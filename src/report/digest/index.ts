export { matchesDigest, scheduleDigest } from './schedule-digest.ts';
export { sha256 } from './sha-256.ts';
