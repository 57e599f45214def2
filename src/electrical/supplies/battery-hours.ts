import { batteryNeeded } from './battery-needed.ts';

/**
 * How long a lead-acid battery bears a load, at the end of its life: the hours for which `batteryNeeded` comes to just
 * its capacity.
 *
 * `T = Cn ÷ (1.25 × D × I)`, D = 1 where `I ≤ Cn ÷ 20 h`, else 1.75
 *
 * @param loadAmps I, current of the load [A], 0 or more
 * @param batteryAmpereHours Cn, capacity at the 20-hour rate [Ah], 0 or more
 * @returns T [h]: 16 or more where D is 1, below 9.15 else; `null` when nothing is drawn and it lasts for ever
 *
 * Limits: as `batteryNeeded`; at `I = Cn ÷ 20 h` it falls from 16 h to 9.14 h. One D for every fast discharge is on the
 * safe side for those of hours: within an hour a battery with a Peukert exponent of 1.3 gives less than that.
 *
 * Source: BS 5839-1, Annex E, solved for the time.
 *
 * @example batteryHours(2, 40) // 16
 * @example batteryHours(2, 17.5) // 4
 */
export function batteryHours(loadAmps: number, batteryAmpereHours: number): number | null {
  return loadAmps === 0 ? null : batteryAmpereHours / batteryNeeded(0, 0, loadAmps, 1, batteryAmpereHours);
}
