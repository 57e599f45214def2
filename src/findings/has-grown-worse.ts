import { exceeds } from '../electrical/index.ts';
import type { CellValue, RowAcceptance } from '../schedule/index.ts';

/**
 * Whether a finding is worse than when it was accepted: its value lies further beyond the limit, or the limit has come
 * closer. Which way is beyond follows from the finding itself. A value that is no number is another finding when it
 * changed; a number without a limit, as a total that lacks rows, cannot be judged and stays accepted.
 */
export function hasGrownWorse(
  found: { readonly value: CellValue; readonly limit: CellValue }, accepted: RowAcceptance,
): boolean {
  const { value, limit } = found;
  if (typeof value !== 'number' || typeof accepted.value !== 'number') {
    return typeof value !== typeof accepted.value || (typeof value !== 'number' && value !== accepted.value);
  }
  if (typeof limit !== 'number') return false;
  const was = typeof accepted.limit === 'number' ? accepted.limit : limit;
  return value > limit
    ? exceeds(value, accepted.value) || exceeds(was, limit)
    : exceeds(accepted.value, value) || exceeds(limit, was);
}
