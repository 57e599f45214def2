import type { BreakerCurve } from './breaker-curve.ts';

/** Upper end of the band of instantaneous tripping. */
const TRIPS_FROM: Record<BreakerCurve, number> = { B: 5, C: 10, D: 20 };

/**
 * Multiple of its rating at which the breaker of a mains feed acts at once on alternating current, whatever the sample.
 *
 * @param curve its curve; `null` when it is not known
 * @returns 5 (B), 10 (C) or 20 (D); `null` when the curve is not known
 *
 * Limits: whether a fault draws as much is a matter of the fault loop, which is not judged here.
 *
 * Source: IEC 60898-1, upper end of the bands.
 *
 * @example feedTripMultiple('C') // 10
 */
export function feedTripMultiple(curve: BreakerCurve | null): number | null {
  return curve === null ? null : TRIPS_FROM[curve];
}
