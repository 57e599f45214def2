import { exceeds } from '../electrical/index.ts';
import type { CellValue, RowAcceptance } from '../schedule/index.ts';

/**
 * Whether a finding is worse than when it was accepted: its value lies further beyond the limit, the limit has come
 * closer, or more rows wait for what is missing. Which way is beyond follows from the finding itself. A value that is
 * no number is another finding when it changed; a number without a limit, as a total that lacks rows, cannot be judged
 * and stays accepted, and so does what does not say how many rows waited.
 */
export function hasGrownWorse(
  found: { readonly value: CellValue; readonly limit: CellValue; readonly waiting?: number },
  accepted: Pick<RowAcceptance, 'value' | 'limit' | 'waiting'>,
): boolean {
  const { value, limit, waiting = 0 } = found;
  if (waiting > (accepted.waiting ?? waiting)) return true;
  if (typeof value !== 'number' || typeof accepted.value !== 'number') {
    return typeof value !== typeof accepted.value || (typeof value !== 'number' && value !== accepted.value);
  }
  if (typeof limit !== 'number') return false;
  const was = typeof accepted.limit === 'number' ? accepted.limit : limit;
  return value > limit
    ? exceeds(value, accepted.value) || exceeds(was, limit)
    : exceeds(accepted.value, value) || exceeds(limit, was);
}
