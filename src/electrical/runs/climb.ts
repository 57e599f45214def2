import type { TapOrder } from './tap-order.ts';

/** What a run asks of its start when its far end is held at a voltage. */
export interface Climb {
  /** Drop from the start to the far end [V]. */
  readonly drop: number;
  /** Change of the voltage at the start with that at the far end. */
  readonly slope: number;
  /** Whether the voltage rises with that at the far end everywhere on the run; it does not beyond what works. */
  readonly rising: boolean;
  /** Current at the start [A]. */
  readonly amps: number;
}

/**
 * Climbs a run from its far end to its start: from the voltage at the end the current of the last tap follows, from
 * that the voltage at the tap before it, and so on. One pass, without any equation to solve.
 *
 * @param endVolts voltage at the farthest tap [V], above 0
 * @param loopOhmPerMetre resistance of both conductors together [Ω/m]
 * @param order the taps, nearest first
 * @param volts receives the voltage at each tap, nearest first [V]
 * @returns drop, slope and current at the start; without taps no drop, slope 1 and no current
 */
export function climb(endVolts: number, loopOhmPerMetre: number, order: TapOrder, volts: Float64Array): Climb {
  const { distances, amps: constantAmps, watts } = order;
  let drop = 0;
  let slope = 1;
  let amps = 0;
  let ampsSlope = 0;
  let rising = true;
  for (let tap = distances.length - 1; tap >= 0; tap -= 1) {
    const here = endVolts + drop;
    const power = watts[tap]!;
    volts[tap] = here;
    amps += (constantAmps[tap]!) + power / here;
    ampsSlope -= (power / (here * here)) * slope;
    const before = tap === 0 ? 0 : distances[tap - 1]!;
    const ohm = loopOhmPerMetre * ((distances[tap]!) - before);
    drop += ohm * amps;
    slope += ohm * ampsSlope;
    if (!(slope > 0)) rising = false;
  }
  return { drop, slope, rising, amps };
}
