import { climb } from './climb.ts';
import type { TapOrder } from './tap-order.ts';

/** The figures of a run as a whole. */
export interface WorkingPoint {
  readonly dropVolts: number;
  readonly endVolts: number;
  readonly currentAmps: number;
}

/**
 * Finds the voltage at the far end of a run at which its start is at the voltage of the supply.
 *
 * The voltage at the end decides all others (`climb`), so it is the only unknown. Above the voltage at which the run
 * collapses, every voltage on the run is an increasing and convex function of it: slope and curvature obey the same
 * recurrence along the run, the curvature with positive sources, so where the slope stays positive so does the
 * curvature (Sturm's comparison theorem). Newton's method from the supply voltage downwards therefore meets the working
 * voltage without ever passing it, and where there is none it comes to where the voltages no longer increase.
 *
 * @param supplyVolts voltage where the run starts [V], above 0
 * @param loopOhmPerMetre resistance of both conductors together [Ω/m], 0 or more
 * @param order the taps, nearest first
 * @param volts receives the voltage at each tap, nearest first [V]
 * @returns drop and end voltage [V] and current [A]; `null` when the run has no working voltage
 */
export function workingPoint(
  supplyVolts: number, loopOhmPerMetre: number, order: TapOrder, volts: Float64Array,
): WorkingPoint | null {
  let endVolts = supplyVolts;
  for (;;) {
    const { drop, slope, rising, amps } = climb(endVolts, loopOhmPerMetre, order, volts);
    const excess = endVolts + drop - supplyVolts;
    const next = endVolts - excess / slope;
    if (rising ? !(next > 0) : !(excess <= 0)) return null;
    // Newton's steps go down only; the first that does not is the rounding at the solution, where the last may also
    // have gone past the limit of what works.
    if (!rising || next >= endVolts) return { dropVolts: drop, endVolts, currentAmps: amps };
    endVolts = next;
  }
}
