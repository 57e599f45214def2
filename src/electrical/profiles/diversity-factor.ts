/**
 * Diversity factor of a group: how many times more its members would draw if all had their maximum at the same time.
 *
 * `Fd = Σ Pmax,i ÷ Pmax`
 *
 * @param maxima Pmax,i, the maximum of each member, in one unit, 0 or more
 * @param coincidentMaximum Pmax, the maximum of what they draw together, in the same unit, 0 to the sum of the maxima
 * @returns Fd, 1 or more, 1 where all have their maximum at the same time; `null` when nothing is ever drawn
 *
 * Limits: some texts call its reciprocal so, a share of at most 1, which is the coincidence factor here and what
 * `demandCurrent` takes.
 *
 * Source: V.K. Mehta, R. Mehta, Principles of Power System, ch. 3; T. Gonen, Electric Power Distribution System
 * Engineering, ch. 2.
 *
 * @example diversityFactor([800, 1000, 1200], 2400) // 1.25
 */
export function diversityFactor(maxima: readonly number[], coincidentMaximum: number): number | null {
  return coincidentMaximum === 0 ? null : maxima.reduce((sum, each) => sum + each, 0) / coincidentMaximum;
}
