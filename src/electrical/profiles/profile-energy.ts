/**
 * Energy of a profile: what is drawn in each of its periods, for as long as that lasts.
 *
 * `W = Σ P × t`
 *
 * @param powers P, power in each period, in one unit [W or kW], 0 or more
 * @param hours t, how long each lasts [h], 0 or more; as many as powers
 * @returns W in that unit times hours [Wh or kWh]; 0 for no periods
 *
 * Limits: power is taken as constant within a period.
 *
 * Errors: throws a `RangeError` where there are not as many hours as powers.
 *
 * Source: arithmetic; V.K. Mehta, R. Mehta, Principles of Power System, ch. 3, area under the load curve.
 *
 * @example profileEnergy([0, 600, 200, 800, 0], [8, 6, 2, 6, 2]) // 8800
 */
export function profileEnergy(powers: readonly number[], hours: readonly number[]): number {
  if (powers.length !== hours.length) {
    throw new RangeError(`There are ${powers.length} powers and ${hours.length} hours; give as many of both.`);
  }
  return powers.reduce((sum, power, period) => sum + power * hours[period]!, 0);
}
