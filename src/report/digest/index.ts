export { checkIssue, issueSchedule, type Issue } from './issue.ts';
export { matchesDigest } from './matches-digest.ts';
export { fileDigest, scheduleDigest, withoutVariants } from './schedule-digest.ts';
export { sha256 } from './sha-256.ts';
