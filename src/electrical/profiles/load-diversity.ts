/**
 * Load diversity of a group: by how much the sum of its members' maxima exceeds the maximum of what they draw together.
 *
 * `LD = Σ Pmax,i − Pmax`
 *
 * @param maxima Pmax,i, the maximum of each member, in one unit, 0 or more
 * @param coincidentMaximum Pmax, the maximum of what they draw together, in the same unit, 0 to the sum of the maxima
 * @returns LD in that unit, 0 or more; 0 where all have their maximum at the same time, and for no members
 *
 * Source: T. Gonen, Electric Power Distribution System Engineering, ch. 2.
 *
 * @example loadDiversity([2000, 2000], 3000) // 1000
 */
export function loadDiversity(maxima: readonly number[], coincidentMaximum: number): number {
  return maxima.reduce((sum, each) => sum + each, 0) - coincidentMaximum;
}
