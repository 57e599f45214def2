/**
 * Current that a device draws at a voltage, from its power.
 *
 * `I = 1000 × P ÷ U`
 *
 * @param powerWatts P, power of one device [W], 0 or more
 * @param voltageVolts U, voltage at the device [V], above 0
 * @returns I [mA]; `null` when the voltage is 0
 *
 * Limits: direct current, or alternating current at power factor 1. A device that keeps its power constant draws more
 * at the lower voltage at the end of a run; see `solveRun`.
 *
 * Source: P = U × I, definition of electric power, IEC 60050-131.
 *
 * @example drawFromPower(8.4, 24) // 350
 */
export function drawFromPower(powerWatts: number, voltageVolts: number): number | null {
  return voltageVolts === 0 ? null : (powerWatts * 1000) / voltageVolts;
}
