import type { BreakerCurve } from './breaker-curve.ts';

/** Lower end of the band of instantaneous tripping. */
const HOLDS_TO: Record<BreakerCurve, number> = { B: 3, C: 5, D: 10 };

/** Peak over r.m.s. of a sine, a little on the safe side. */
const CREST = 1.41;

/**
 * Peak current that a breaker of a mains feed certainly stands without tripping.
 *
 * `î = 1.41 × In × b × f`, b = 3 (B), 5 (C), 10 (D)
 *
 * @param ratedAmps In, rating of the breaker [A], above 0
 * @param curve its curve
 * @param pulseFactor f, how much more a pulse of this length may be, by the maker's curve, 1 or more; 1 where it is
 *   not known
 * @returns î [A]
 *
 * Limits: for pulses of about 10 ms, half a period; a shorter one may be higher.
 *
 * Source: IEC 60898-1, lower end of the bands; that the peak counts is common practice, no source.
 *
 * @example inrushLimit(16, 'B', 1) // 67.68
 */
export function inrushLimit(ratedAmps: number, curve: BreakerCurve, pulseFactor: number): number {
  return CREST * ratedAmps * HOLDS_TO[curve] * pulseFactor;
}
