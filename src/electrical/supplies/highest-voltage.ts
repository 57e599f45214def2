/** A lead-acid battery is charged at 2.3 V a cell, of 2 V in name. */
const CHARGING = 1.15;

/**
 * Highest voltage of a supply at its output.
 *
 * `U = Un × (1 + t)`; with a battery at least `1.15 × Un`
 *
 * @param voltage Un, nominal voltage [V], above 0
 * @param tolerance t, share by which it may be more, 0 or more
 * @param hasBattery whether it charges a battery
 * @returns U [V]
 *
 * Limits: lead-acid at 20 °C; charging after a deep discharge, and in the cold, may go higher.
 *
 * Source: 2.3 V a cell, from memory, sure.
 *
 * @example highestVoltage(24, 0.2, false) // 28.8
 * @example highestVoltage(24, 0.02, true) // 27.6
 */
export function highestVoltage(voltage: number, tolerance: number, hasBattery: boolean): number {
  const share = 1 + tolerance;
  return voltage * (hasBattery ? Math.max(share, CHARGING) : share);
}
