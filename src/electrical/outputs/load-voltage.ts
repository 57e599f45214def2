import { isDirect } from './is-direct.ts';

/** Where neither rail nor feed says otherwise; IEC 60038. */
const MAINS = 230;

/**
 * Voltage of a load whose own is not entered: that of the rail that feeds it, else that of its feed, else 230 V.
 *
 * @param kind kind of load; `null` when it is not known
 * @param rail the rail that it names; `null` when it names none
 * @param railVolts voltage of that rail [V], above 0; `null` when it is not known
 * @param feedVolts voltage of its feed [V], above 0; `null` when it has none
 * @returns voltage [V]; `null` for direct current without a rail, since feeds are of alternating current, and where the
 *   voltage of the rail is not known
 *
 * Source: IEC 60038; the rest is arithmetic of the load schedule.
 *
 * @example loadVoltage('dc', 'L1', 24, null) // 24
 * @example loadVoltage('lamp', null, null, null) // 230
 */
export function loadVoltage(
  kind: string | null, rail: string | null, railVolts: number | null, feedVolts: number | null,
): number | null {
  return rail !== null || isDirect(kind) ? railVolts : feedVolts ?? MAINS;
}
