/**
 * Current of a number of like loads on single-phase alternating current.
 *
 * `I = n × P ÷ (U × cos φ)`
 *
 * @param quantity n, how many there are, 0 or more
 * @param powerWatts P, active power that one load takes in [W], 0 or more
 * @param voltageVolts U, voltage, r.m.s. [V], above 0
 * @param powerFactor cos φ, above 0 to 1
 * @returns I, r.m.s. [A]; no loads give 0, `null` when the voltage or the power factor is 0
 *
 * Limits: steady state of a sine; single phase. For a motor P is what it takes in: the shaft power over its efficiency.
 *
 * Source: J.O. Bird, Electrical Circuit Theory and Technology, ch. 2; active power P = U × I × cos φ, IEC 60050-131.
 *
 * @example alternatingCurrent(2, 230, 230, 0.5) // 4
 */
export function alternatingCurrent(
  quantity: number, powerWatts: number, voltageVolts: number, powerFactor: number,
): number | null {
  const voltsInPhase = voltageVolts * powerFactor;
  return voltsInPhase === 0 ? null : (quantity * powerWatts) / voltsInPhase;
}
