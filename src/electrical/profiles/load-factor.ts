/**
 * Load factor: the average of a profile over its maximum, from the energy drawn.
 *
 * `m = Pm ÷ Pmax = W ÷ (Pmax × T)`
 *
 * @param energy W, energy drawn in the time [Wh or kWh], 0 or more
 * @param maximum Pmax, highest power within it [W or kW, as the energy has it], 0 or more
 * @param totalHours T, the time: 24 for a day, 8760 for a year [h], 0 or more
 * @returns m, 0 to 1, 1 where the power never changes; `null` when there is no time or nothing is ever drawn
 *
 * Limits: of different times (day, month, year) it is not comparable.
 *
 * Source: V.K. Mehta, R. Mehta, Principles of Power System, ch. 3: load factor = average load ÷ maximum demand.
 *
 * @example loadFactor(8800, 800, 24) // 0.4583333
 */
export function loadFactor(energy: number, maximum: number, totalHours: number): number | null {
  return maximum === 0 || totalHours === 0 ? null : energy / (maximum * totalHours);
}
