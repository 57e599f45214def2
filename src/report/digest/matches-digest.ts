import type { Content } from '../../schedule/index.ts';
import { issuedDigest } from './issue.ts';
import { scheduleDigest } from './schedule-digest.ts';

/** Fewer digits than these do not tell one schedule from another. */
const FEWEST_DIGITS = 16;

/**
 * Whether digits read from paper are those of a schedule, or those that the history gives of the issue that it is. The
 * first 16 are enough; spaces and case do not matter.
 * @returns `undefined` when the text is no such number.
 */
export function matchesDigest(content: Content, text: string): boolean | undefined {
  const digits = text.replace(/\s/g, '').toLowerCase();
  if (!/^[0-9a-f]+$/.test(digits) || digits.length < FEWEST_DIGITS || digits.length > 64) return undefined;
  return scheduleDigest(content).startsWith(digits) || issuedDigest(content)?.startsWith(digits) === true;
}
