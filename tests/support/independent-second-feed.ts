import type { Load } from './independent-circuit.ts';
import { isGiven, number, type InputRow, type Known } from './known-number.ts';

/** What a cable that is fed at both ends comes to. */
export interface FedTwice {
  /** Through its way, and through its second one [A]. */
  readonly first: number;
  readonly second: number;
  readonly endVoltage: number;
  /** At each load, in the order given [V]. */
  readonly volts: readonly number[];
}

/**
 * Length of a cable from way to way [m]; `undefined` where a run has one way, `null` where it is not known or its ways
 * are not two of one rail.
 */
export function betweenWays(
  run: InputRow, way: InputRow | undefined, second: InputRow | undefined,
): Known | undefined {
  if (!isGiven(run.secondWay)) return undefined;
  const isOneRail = way !== undefined && second !== undefined && isGiven(way.rail) && way.rail === second.rail;
  const [length, behind] = [number(run, 'length'), number(run, 'secondLength')];
  return !isOneRail || run.way === run.secondWay || length === null || behind === null ? null : length + behind;
}

/**
 * Lets the voltages of a cable that is fed at both ends settle: currents give what the second feed takes over, by their
 * moments, and then voltages, hop by hop from the first; these give currents. It shares nothing with the software.
 * @returns `null` where there is no working voltage
 */
export function settleFromBoth(
  loads: readonly Load[], voltage: number, ohmsPerMetre: number, total: number,
): FedTwice | null {
  const order = loads.map((_load, index) => index).sort((one, other) => loads[one]!.metres - loads[other]!.metres);
  let volts = loads.map(() => voltage);
  for (let round = 0; round < 100_000; round += 1) {
    const amps = loads.map((load, index) => load.amps + load.watts / volts[index]!);
    const second = loads.reduce((sum, { metres }, index) => sum + amps[index]! * metres / total, 0);
    const first = amps.reduce((sum, each) => sum + each, 0) - second;
    const next = [...volts];
    let [here, at, flowing] = [voltage, 0, first];
    for (const index of order) {
      const { metres } = loads[index]!;
      here -= flowing * ohmsPerMetre * (metres - at);
      next[index] = here;
      flowing -= amps[index]!;
      at = metres;
    }
    if (next.some((value) => value <= 0)) return null;
    const moved = Math.max(0, ...next.map((value, index) => Math.abs(value - volts[index]!)));
    volts = next;
    if (moved < 1e-12) return { first, second, endVoltage: Math.min(voltage, ...volts), volts };
  }
  return null;
}
