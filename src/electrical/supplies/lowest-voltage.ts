/** A lead-acid battery is empty at 1.75 V a cell, of 2 V in name. */
const EMPTY = 0.875;

/**
 * Lowest voltage of a supply at its output.
 *
 * `U = Un × (1 − t) − Ud`; with a battery at most `0.875 × Un − Ud`
 *
 * @param voltage Un, nominal voltage [V], above 0
 * @param tolerance t, share by which it may be less, 0 to below 1
 * @param seriesDrop Ud, what a decoupling diode or module drops [V], 0 or more
 * @param hasBattery whether a battery feeds it when the mains fail
 * @returns U [V]
 *
 * Limits: lead-acid, discharged to its end; what another battery or a set end of discharge gives is entered as
 * tolerance.
 *
 * Source: 1.75 V a cell, from memory, sure. A diode drops 0.5 V at 5 A, Design Note 363, read.
 *
 * @example lowestVoltage(24, 0.15, 0, false) // 20.4
 * @example lowestVoltage(24, 0.02, 0.5, true) // 20.5
 */
export function lowestVoltage(voltage: number, tolerance: number, seriesDrop: number, hasBattery: boolean): number {
  const share = 1 - tolerance;
  return voltage * (hasBattery ? Math.min(share, EMPTY) : share) - seriesDrop;
}
