import type { LoadKind } from './contact-rating.ts';

/** A contact of category AC-15 makes ten times its rated current, as a coil takes before its iron has closed. */
const COIL = 10;

/**
 * Peak current at switching on of loads whose own is not entered.
 *
 * `î = m × I`, m = 10 for coils, else 1
 *
 * @param kind kind of load; `null` when it is not known
 * @param currentAmps I, their steady current [A], 0 or more; `null` when it is not known
 * @returns î [A]; `null` for lamps and motors, of which each has its own, and where kind or current is not known
 *
 * Limits: a coil on direct current takes no more than its steady current.
 *
 * Source: make and break currents of AC-15 and DC-13, IEC 60947-5-1.
 *
 * @example usualInrush('coil', 0.2) // 2
 */
export function usualInrush(kind: LoadKind | null, currentAmps: number | null): number | null {
  if (kind === null || kind === 'lamp' || kind === 'motor' || currentAmps === null) return null;
  return kind === 'coil' ? COIL * currentAmps : currentAmps;
}
