/**
 * Average power over the time in which an amount of energy is drawn.
 *
 * `Pm = W ÷ T`
 *
 * @param energy W, energy drawn in that time [Wh or kWh], 0 or more
 * @param totalHours T, that time [h], 0 or more
 * @returns Pm [W or kW]; `null` when there is no time
 *
 * Source: V.K. Mehta, R. Mehta, Principles of Power System, ch. 3: average load = energy in a period ÷ its hours.
 *
 * @example averagePower(7600, 24) // 316.6667
 */
export function averagePower(energy: number, totalHours: number): number | null {
  return totalHours === 0 ? null : energy / totalHours;
}
