import { exceeds } from '../limits/index.ts';

/**
 * Whether a short circuit may draw too little for the protection to act at once.
 *
 * `I < t × In`
 *
 * @param faultAmps I, current of the short circuit [A], 0 or more
 * @param trip t, multiple of its rating that makes the protection act at once, 1 or more; see `tripMultiple`
 * @param protectionAmps In, rating of the fuse or breaker [A], above 0
 * @returns whether the current is less than the multiple asks for, rounding apart
 *
 * Limits: says nothing about the time below the multiple; there a fuse or breaker may take minutes, or never act.
 *
 * Source: bands of instantaneous tripping, IEC 60898-1.
 *
 * @example mayNotClear(12, 5, 4) // true
 * @example mayNotClear(12, 5, 2) // false
 */
export function mayNotClear(faultAmps: number, trip: number, protectionAmps: number): boolean {
  return exceeds(trip * protectionAmps, faultAmps);
}
