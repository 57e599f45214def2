import type { Run, Tap } from './run.ts';
import { keepsLimits, type RunLimits } from './run-limits.ts';
import { heaviestFirst, tapOrder } from './tap-order.ts';

/** Runs that would be this many times longer have no limit in practice. */
const UNLIMITED = 2 ** 40;
const PRECISION = 1e-12;
/** A run that fails at any length would be halved for ever. */
const MOST_HALVINGS = 100;

/**
 * The longest that a run may be before it fails, with all distances scaled along. Of one that is fed again, the cable
 * from its far end to there stays as it is.
 *
 * The run fails where a tap has less voltage than it needs, from the lowest voltage where the run starts; where the
 * drop from the voltage of the supply exceeds `maxDrop × U0`, no working voltage exists, its current is more than its
 * protection or either more than `carriesAmps`, or the short circuit at the far end is less than
 * `trip × protectionAmps`. None gets better with length, so the limit is found by halving.
 *
 * @param run supply voltage [V], loop resistance [Ω/m], taps (distance [m], current [A], power [W], need [V]), and
 *   where it is fed again, if it is [m]
 * @param lengthMetres length of the run as it is [m], above 0
 * @param limits what the run has to keep to; a limit left out is not checked
 * @param faultOhmPerMetre loop resistance when a short circuit comes [Ω/m], that of the run where it is left out
 * @param others what hangs on it in other cases, in which it may not fail either
 * @returns the length [m]; 0 when it fails at any length (a supply that limits its output below what clears the
 *   protection, devices that need more than the supply has, a conductor that does not carry the current), `null` when
 *   nothing limits it
 *
 * Limits: accurate to 1e-12, on the side that works.
 *
 * Source: follows from `solveRun` and `faultCurrent`.
 *
 * @example longestRun(
 *   { supplyVolts: 24, loopOhmPerMetre: 0.05, taps: [{ distanceMetres: 20, amps: 1 }] }, 20, { maxDrop: 0.05 },
 * ) // 24
 */
export function longestRun(
  { supplyVolts, loopOhmPerMetre, taps, fedAgainMetres }: Run, lengthMetres: number, limits: RunLimits,
  faultOhmPerMetre = loopOhmPerMetre, others: readonly (readonly Tap[])[] = [],
): number | null {
  // In units of the length as it is; in cases after the first it only matters whether it may be as long as that.
  let most = Infinity;
  for (const each of heaviestFirst([taps, ...others], supplyVolts)) {
    const tried = { supplyVolts, lengthMetres, order: tapOrder(each) };
    /** With the cable behind its end as much shorter as the run is longer, so that it stays what it is. */
    const triedFedAgain = (metres: number) =>
      ({ supplyVolts, lengthMetres: metres, order: tapOrder(each, metres) });
    // Longer by a factor is the same as more resistance on each metre, by that factor.
    most = mostFactor((factor) => keepsLimits(fedAgainMetres === undefined ? tried
      : triedFedAgain(lengthMetres + (fedAgainMetres - lengthMetres) / factor), {
      loopOhmPerMetre: loopOhmPerMetre * factor, faultOhmPerMetre: faultOhmPerMetre * factor,
    }, limits), most);
    if (most === 0) return 0;
  }
  return most === Infinity ? null : lengthMetres * most;
}

/** The most that still holds, up to a limit, by halving; without end where nothing limits it, 0 where nothing holds. */
function mostFactor(holds: (factor: number) => boolean, limit: number): number {
  if (limit !== Infinity && holds(limit)) return limit;
  let fails = Math.min(1, limit);
  while (holds(fails)) {
    if (fails >= UNLIMITED) return Infinity;
    fails *= 2;
  }
  let works = fails > 1 ? fails / 2 : 0;
  for (let halving = 0; halving < MOST_HALVINGS && fails - works > PRECISION * fails; halving += 1) {
    const middle = (works + fails) / 2;
    if (holds(middle)) works = middle;
    else fails = middle;
  }
  return works;
}
