import { isDirect } from '../electrical/index.ts';

/**
 * Whether a voltage is extra-low: at most 50 V alternating or 120 V direct (IEC 60449 band I, IEC 60364-4-41, 414).
 * @param volts voltage [V]; `null` where it is not known.
 * @param kind kind of load, which tells direct current.
 * @returns `undefined` where it is not known.
 */
export function voltageBand(volts: number | null, kind: string): 'elv' | 'mains' | undefined {
  if (volts === null) return undefined;
  return volts <= (isDirect(kind) ? 120 : 50) ? 'elv' : 'mains';
}
