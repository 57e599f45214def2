import { climb } from './climb.ts';
import type { TapOrder } from './tap-order.ts';

/** The figures of a run as a whole. */
export interface WorkingPoint {
  readonly dropVolts: number;
  readonly endVolts: number;
  readonly currentAmps: number;
  readonly secondAmps: number;
}

/**
 * Finds what holds at the far end of a run whose start is at the voltage of the supply: the voltage there or, where a
 * second feed holds that, the current that it gives.
 *
 * The voltage at the end decides all others (`climb`), so it is the only unknown. Above the voltage at which the run
 * collapses, every voltage on the run is an increasing and convex function of it: slope and curvature obey the same
 * recurrence along the run, the curvature with positive sources, so where the slope stays positive so does the
 * curvature (Sturm's comparison theorem). Newton's method from the supply voltage downwards therefore meets the working
 * voltage without ever passing it, and where there is none it comes to where the voltages no longer increase. Fed at
 * both ends, the unknown is the current taken from the cable at the second feed, from 0 downwards: the same recurrence
 * holds for it, and with the same signs.
 *
 * @param supplyVolts voltage where the run starts [V], above 0
 * @param loopOhmPerMetre resistance of both conductors together [Ω/m], 0 or more
 * @param order the taps, nearest first
 * @param volts receives the voltage at each tap, nearest first [V]
 * @returns largest drop and lowest voltage [V], and currents of the feeds [A]; `null` when the run has no working
 *   voltage
 */
export function workingPoint(
  supplyVolts: number, loopOhmPerMetre: number, order: TapOrder, volts: Float64Array,
): WorkingPoint | null {
  const { isFedAgain } = order;
  let unknown = isFedAgain ? 0 : supplyVolts;
  for (;;) {
    const end = isFedAgain ? { volts: supplyVolts, voltsSlope: 0, amps: unknown, ampsSlope: 1 }
      : { volts: unknown, voltsSlope: 1, amps: 0, ampsSlope: 0 };
    const { drop, lowest, slope, rising, amps } = climb(end, loopOhmPerMetre, order, volts);
    const excess = end.volts + drop - supplyVolts;
    const next = unknown - excess / slope;
    if (!(lowest > 0) || (rising ? !isFedAgain && !(next > 0) : !(excess <= 0))) return null;
    // Newton's steps go down only; the first that does not is the rounding at the solution, where the last may also
    // have gone past the limit of what works.
    if (!rising || !(next < unknown)) {
      return isFedAgain
        ? { dropVolts: supplyVolts - lowest, endVolts: lowest, currentAmps: amps, secondAmps: 0 - unknown }
        : { dropVolts: drop, endVolts: unknown, currentAmps: amps, secondAmps: 0 };
    }
    unknown = next;
  }
}
