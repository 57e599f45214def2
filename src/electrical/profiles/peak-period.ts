/**
 * The period of a profile in which most is drawn.
 *
 * @param powers power in each period, in one unit, 0 or more
 * @returns its index, from 0, the first of those that are alike; `null` for no periods, and where nothing is ever drawn
 *
 * Limits: figures that rounding alone sets apart are not alike.
 *
 * Source: arithmetic.
 *
 * @example peakPeriod([200, 800, 2400, 800, 400]) // 2
 * @example peakPeriod([0, 5, 5]) // 1
 */
export function peakPeriod(powers: readonly number[]): number | null {
  let peak: number | null = null;
  powers.forEach((power, period) => {
    if (power > (peak === null ? 0 : powers[peak]!)) peak = period;
  });
  return peak;
}
