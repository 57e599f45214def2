/**
 * Heat that a supply gives off while it delivers a current.
 *
 * `P = U × I × (1 ÷ η − 1)`
 *
 * @param voltageVolts U, output voltage [V], 0 or more
 * @param demandAmps I, output current [A], 0 or more
 * @param efficiency η, output power over input power, above 0 to 1
 * @returns P [W]; no current gives 0, `null` when the efficiency is 0
 *
 * Limits: efficiency is taken as at full load; the loss of a supply that idles is not covered.
 *
 * Source: efficiency = output ÷ input, so loss = output × (1 ÷ η − 1). The form output × η ÷ (1 − η), found in print,
 * is wrong.
 *
 * @example supplyLoss(24, 10, 0.8) // 60
 */
export function supplyLoss(voltageVolts: number, demandAmps: number, efficiency: number): number | null {
  return efficiency === 0 ? null : voltageVolts * demandAmps * (1 / efficiency - 1);
}
