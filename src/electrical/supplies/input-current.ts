/**
 * Current that a supply takes from its mains feed.
 *
 * `I = U × Id ÷ (η × Uf × λ)`
 *
 * @param voltageVolts U, output voltage [V], 0 or more
 * @param demandAmps Id, output current [A], 0 or more
 * @param efficiency η, output power over input power, above 0 to 1
 * @param feedVolts Uf, voltage of the feed, r.m.s. [V], above 0
 * @param powerFactor λ, power factor at the input, above 0 to 1
 * @returns I, r.m.s. [A]; no current gives 0, `null` when efficiency, voltage of the feed or power factor is 0
 *
 * Limits: efficiency and power factor as at full load; below it both are less, and so is the current.
 *
 * Source: P = U × I × λ, IEC 60050-131; input = output ÷ η, definition of efficiency.
 *
 * @example inputCurrent(24, 10, 0.9, 230, 0.95) // 1.2204424
 */
export function inputCurrent(
  voltageVolts: number, demandAmps: number, efficiency: number, feedVolts: number, powerFactor: number,
): number | null {
  const volts = efficiency * feedVolts * powerFactor;
  return volts === 0 ? null : (voltageVolts * demandAmps) / volts;
}
