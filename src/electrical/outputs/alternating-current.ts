/**
 * Current of a number of like loads on single-phase alternating current.
 *
 * `I = n × P ÷ (U × cos φ × η)`
 *
 * @param quantity n, how many there are, 0 or more
 * @param powerWatts P, active power that one load takes in, or gives where its efficiency is known [W], 0 or more
 * @param voltageVolts U, voltage, r.m.s. [V], above 0
 * @param powerFactor cos φ, above 0 to 1
 * @param efficiency η, power that it gives over power that it takes in, above 0 to 1; 1 where P is what it takes in
 * @returns I, r.m.s. [A]; no loads give 0, `null` when voltage, power factor or efficiency is 0
 *
 * Limits: steady state of a sine; single phase.
 *
 * Source: J.O. Bird, Electrical Circuit Theory and Technology, ch. 2; active power P = U × I × cos φ, IEC 60050-131.
 *
 * @example alternatingCurrent(2, 230, 230, 0.5) // 4
 * @example alternatingCurrent(1, 370, 230, 0.8, 0.7) // 2.8726708
 */
export function alternatingCurrent(
  quantity: number, powerWatts: number, voltageVolts: number, powerFactor: number, efficiency = 1,
): number | null {
  const voltsInPhase = voltageVolts * powerFactor * efficiency;
  return voltsInPhase === 0 ? null : (quantity * powerWatts) / voltsInPhase;
}
