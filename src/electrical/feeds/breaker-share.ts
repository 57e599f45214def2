import type { BreakerCurve } from './breaker-curve.ts';

/** How many drivers each curve stands, B being 1, by the lower ends of the bands, 3 and 5; D is not taken for more. */
const SCALE: Record<BreakerCurve, number> = { B: 1, C: 5 / 3, D: 5 / 3 };

/**
 * Share of a breaker that a number of like drivers or supplies take up when all start together.
 *
 * `s = n ÷ (N × In ÷ 16 × c)`, c = 1 (B), 5 ÷ 3 (C and D)
 *
 * @param quantity n, how many start on it, 0 or more
 * @param maxOnB16 N, how many of them their maker allows on a breaker B 16, above 0
 * @param ratedAmps In, rating of the breaker [A], above 0
 * @param curve its curve
 * @returns s; the shares of all that start add up to 1 at the most. `null` when N or the rating is 0
 *
 * Limits: the maker's own figure for the breaker comes first. A trade association (2021) allows 4 drivers of 75 W on a
 * B 10 against 8 on a B 16, fewer than the 5 of this rule.
 *
 * Source: derived from the bands of IEC 60898-1; agrees with the figures that a manual prints for B 10 to C 20.
 *
 * @example breakerShare(5, 10, 10, 'C') // 0.48
 */
export function breakerShare(
  quantity: number, maxOnB16: number, ratedAmps: number, curve: BreakerCurve,
): number | null {
  const most = maxOnB16 * (ratedAmps / 16) * SCALE[curve];
  return most === 0 ? null : quantity / most;
}
