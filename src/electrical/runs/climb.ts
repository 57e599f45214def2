import type { TapOrder } from './tap-order.ts';

/** What is known at the far end of a run, and how fast voltage and current there change with what is looked for. */
export interface FarEnd {
  readonly volts: number;
  readonly voltsSlope: number;
  /** Current that is taken from the cable there [A]; below 0 where a second feed gives it. */
  readonly amps: number;
  readonly ampsSlope: number;
}

/** What a run asks of its start when its far end is held. */
export interface Climb {
  /** Drop from the start to the far end [V]. */
  readonly drop: number;
  /** Lowest voltage on the run [V]. */
  readonly lowest: number;
  /** Change of the voltage at the start with what is looked for at the far end. */
  readonly slope: number;
  /** Whether the voltage rises with it everywhere on the run; it does not beyond what works. */
  readonly rising: boolean;
  /** Current at the start [A]. */
  readonly amps: number;
}

/**
 * Climbs a run from its far end to its start: from the voltage at the end the current of the last tap follows, from
 * that the voltage at the tap before it, and so on. One pass, without any equation to solve.
 *
 * @param end voltage and current at the farthest tap
 * @param loopOhmPerMetre resistance of both conductors together [Ω/m]
 * @param order the taps, nearest first
 * @param volts receives the voltage at each tap, nearest first [V]
 * @returns drop, slope and current at the start; without taps no drop, and what is there at the far end
 */
export function climb(end: FarEnd, loopOhmPerMetre: number, order: TapOrder, volts: Float64Array): Climb {
  const { distances, amps: constantAmps, watts } = order;
  let drop = 0;
  let slope = end.voltsSlope;
  let { amps, ampsSlope } = end;
  let lowest = end.volts;
  let rising = true;
  for (let tap = distances.length - 1; tap >= 0; tap -= 1) {
    const here = end.volts + drop;
    if (here < lowest) lowest = here;
    const power = watts[tap]!;
    volts[tap] = here;
    amps += (constantAmps[tap]!) + power / here;
    ampsSlope -= (power / (here * here)) * slope;
    const before = tap === 0 ? 0 : distances[tap - 1]!;
    const ohm = loopOhmPerMetre * ((distances[tap]!) - before);
    drop += ohm * amps;
    slope += ohm * ampsSlope;
    if (ohm > 0 && !(slope > 0)) rising = false;
  }
  return { drop, lowest, slope, rising, amps };
}
