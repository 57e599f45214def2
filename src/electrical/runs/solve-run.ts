import type { Run, RunSolution } from './run.ts';
import { tapOrder } from './tap-order.ts';
import { workingPoint } from './working-point.ts';

/**
 * Voltages and current of a run whose taps draw constant currents, constant powers, or both.
 *
 * `U(x) = U0 − r × Σ Ij × min(dj, x)`, with `Ij = aj + Pj ÷ U(dj)`
 *
 * U0 supply voltage, r loop resistance per metre, dj distance, aj constant current and Pj constant power of a tap.
 * Constant powers allow two voltages or none; the higher is the one at which the run works. Fed again at T, it gets
 * there `I2 = Σ Ij × dj ÷ T`, and at its start the rest.
 *
 * @param run supply voltage [V], loop resistance [Ω/m], taps (distance [m], current [A], power [W]), and where it is
 *   fed again, if it is [m]; the resistance is above 0 there
 * @returns largest drop, lowest voltage and tap voltages [V], current at the start and through the second feed [A];
 *   `working: false` when the taps ask for more than the cable can deliver, or would pull a voltage to 0 or below. A
 *   run without taps has no drop and no current.
 *
 * Limits: direct current, steady state, both feeds at the same voltage; no device on the cable feeds back. Accurate to
 * 1e-10 of the supply voltage, and to 1e-6 within one part in 1e12 of the largest load that works.
 *
 * Source: moment method for tapped loads, V.K. Mehta, R. Mehta, Principles of Power System, ch. 13; constant power,
 * closed form of one tap: U = (U0 + √(U0² − 4PR)) ÷ 2. See `workingPoint` for the method.
 *
 * @example solveRun({ supplyVolts: 24, loopOhmPerMetre: 0.05, taps: [{ distanceMetres: 40, amps: 1 }] }).endVolts // 22
 * @example solveRun({
 *   supplyVolts: 24, loopOhmPerMetre: 0.05, taps: [{ distanceMetres: 40, amps: 1 }], fedAgainMetres: 80,
 * }).endVolts // 23
 * @example solveRun({
 *   supplyVolts: 24, loopOhmPerMetre: 1, taps: [{ distanceMetres: 1, watts: 24 }],
 * }).endVolts // 22.954451
 * @example solveRun({
 *   supplyVolts: 24, loopOhmPerMetre: 1, taps: [{ distanceMetres: 1, watts: 145 }],
 * }).working // false
 */
export function solveRun(run: Run): RunSolution {
  const order = tapOrder(run.taps, run.fedAgainMetres);
  const volts = new Float64Array(order.places.length);
  const point = workingPoint(run.supplyVolts, run.loopOhmPerMetre, order, volts);
  if (point === null) return { working: false };
  const tapVolts = new Array<number>(volts.length);
  order.places.forEach((place, tap) => { tapVolts[place] = volts[tap]!; });
  return { working: true, ...point, tapVolts: tapVolts.slice(0, run.taps.length) };
}
