import { loopResistancePerMetre } from '../conductors/index.ts';
import { FAULT_TEMPERATURE } from '../protection/index.ts';
import type { Run, Tap } from './run.ts';
import { keepsLimits, type RunLimits } from './run-limits.ts';
import { heaviestFirst, tapOrder } from './tap-order.ts';

/** A conductor that a run could be made of. */
export interface CandidateConductor {
  /** Resistance of one conductor at 20 °C [Ω/km], above 0. */
  readonly ohmPerKm: number;
  /** Current that its pairs together would carry where the run lies [A], 0 or more; see `carriedCurrent`. */
  readonly carriesAmps: number;
  /** Temperature that it would have on the run [°C]; see `conductorTemperature`. */
  readonly temperature: number;
}

/** A run whose conductor is still to be chosen. */
export interface RunToCable extends Omit<Run, 'loopOhmPerMetre'> {
  /** Length, one way [m], above 0. */
  readonly lengthMetres: number;
  /** Pairs in parallel, 1 or more. */
  readonly pairs: number;
}

/**
 * The conductor of highest resistance with which a run does not fail.
 *
 * A candidate fails where the run breaks one of its limits (see `longestRun`), or where its current or its protection
 * is more than the conductor carries. A short circuit finds it at 70 °C.
 *
 * @param run supply voltage [V], taps, length [m] and pairs
 * @param limits what the run has to keep to; a limit left out is not checked, and what the conductors carry follows
 *   from the candidates
 * @param candidates the conductors to choose from, in any order
 * @param others what hangs on it in other cases, in which it may not fail either
 * @returns place of the conductor in `candidates`, the first of equals; `null` when none of them does
 *
 * Source: Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1; else follows from `solveRun` and `faultCurrent`.
 *
 * @example smallestConductor(
 *   { supplyVolts: 24, lengthMetres: 40, pairs: 1, taps: [{ distanceMetres: 40, amps: 1 }] }, { maxDrop: 0.05 },
 *   [
 *     { ohmPerKm: 7.41, carriesAmps: 23, temperature: 20 }, { ohmPerKm: 12.1, carriesAmps: 16.5, temperature: 20 },
 *     { ohmPerKm: 18.1, carriesAmps: 13, temperature: 20 },
 *   ],
 * ) // 1
 */
export function smallestConductor(
  run: RunToCable, limits: Omit<RunLimits, 'carriesAmps'>, candidates: readonly CandidateConductor[],
  others: readonly (readonly Tap[])[] = [],
): number | null {
  const { fedAgainMetres = run.lengthMetres } = run;
  const cases = heaviestFirst([run.taps, ...others], run.supplyVolts)
    .map((taps) => ({ ...run, lengthMetres: fedAgainMetres, order: tapOrder(taps, run.fedAgainMetres) }));
  const holds = ({ ohmPerKm, carriesAmps, temperature }: CandidateConductor) => {
    const loopOhmPerMetre = loopResistancePerMetre(ohmPerKm, temperature, run.pairs);
    const faultOhmPerMetre = loopResistancePerMetre(ohmPerKm, FAULT_TEMPERATURE, run.pairs);
    return loopOhmPerMetre !== null && faultOhmPerMetre !== null
      && cases.every((tried) => keepsLimits(tried, { loopOhmPerMetre, faultOhmPerMetre }, { ...limits, carriesAmps }));
  };
  const thinnestFirst = [...candidates.entries()].sort(([, one], [, other]) => other.ohmPerKm - one.ohmPerKm);
  return thinnestFirst.find(([, candidate]) => holds(candidate))?.[0] ?? null;
}
