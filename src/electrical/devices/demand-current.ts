/**
 * Current expected at the same time, from all that is connected.
 *
 * `I = Ic × g`
 *
 * @param connectedAmps Ic, connected current [A], 0 or more
 * @param diversity g, share of the connected load expected at the same time, 0 to 1
 * @returns I, the demand [A]; nothing connected gives 0
 *
 * Limits: g is the demand factor of a group, or the coincidence factor between groups, both at most 1. Some texts print
 * its reciprocal, a number above 1, and call that the diversity factor.
 *
 * Source: demand factor = maximum demand ÷ connected load, V.K. Mehta, R. Mehta, Principles of Power System, ch. 3;
 * rated diversity factor, IEC 61439-1.
 *
 * @example demandCurrent(4.2, 0.5) // 2.1
 */
export function demandCurrent(connectedAmps: number, diversity: number): number {
  return connectedAmps * diversity;
}
