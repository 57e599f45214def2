import { alternatingCurrent } from './alternating-current.ts';

/**
 * Current of the loads of an output: by the current on their plates where that is known, else by their power.
 *
 * `I = n × Ir`, else `I = n × P ÷ (U × cos φ × η)`
 *
 * @param quantity n, how many there are, 0 or more; `null` when it is not known, as of the others
 * @param powerWatts P, see `alternatingCurrent` [W], 0 or more
 * @param voltageVolts U [V], above 0
 * @param powerFactor cos φ, above 0 to 1; 1 on direct current
 * @param efficiency η, above 0 to 1
 * @param ratedAmps Ir, rated current of one load [A], above 0
 * @returns I [A]; loads of no power take none whatever the rest, as a spare output; `null` when it is not known
 *
 * Limits: a load in steady state; single phase or direct current.
 *
 * Source: as `alternatingCurrent`; a plate gives the current at rated load, IEC 60034-1.
 *
 * @example loadCurrent(2, null, 230, null, null, 1.5) // 3
 * @example loadCurrent(2, 230, 230, 0.5, 1, null) // 4
 */
export function loadCurrent(
  quantity: number | null, powerWatts: number | null, voltageVolts: number | null, powerFactor: number | null,
  efficiency: number | null, ratedAmps: number | null,
): number | null {
  if (quantity === null) return null;
  if (ratedAmps !== null) return quantity * ratedAmps;
  if (powerWatts === 0) return quantity * powerWatts;
  if (powerWatts === null || voltageVolts === null || powerFactor === null || efficiency === null) return null;
  return alternatingCurrent(quantity, powerWatts, voltageVolts, powerFactor, efficiency);
}
