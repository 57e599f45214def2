/**
 * Coincidence factor of a group: the share of the maxima of its members that falls together.
 *
 * `Fc = Pmax ÷ Σ Pmax,i = 1 ÷ Fd`
 *
 * @param maxima Pmax,i, the maximum of each member, in one unit, 0 or more
 * @param coincidentMaximum Pmax, the maximum of what they draw together, in the same unit, 0 to the sum of the maxima
 * @returns Fc, above 0 to 1, 1 where all have their maximum at the same time; `null` when nothing is ever drawn
 *
 * Source: T. Gonen, Electric Power Distribution System Engineering, ch. 2.
 *
 * @example coincidenceFactor([2000, 2000], 3000) // 0.75
 */
export function coincidenceFactor(maxima: readonly number[], coincidentMaximum: number): number | null {
  const sum = maxima.reduce((total, each) => total + each, 0);
  return sum === 0 ? null : coincidentMaximum / sum;
}
