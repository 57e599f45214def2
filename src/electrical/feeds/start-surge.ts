import type { BreakerCurve } from './breaker-curve.ts';
import { breakerShare } from './breaker-share.ts';
import { inrushLimit } from './inrush-limit.ts';

/**
 * Current by which the start of like loads or supplies goes beyond their steady current: how much more their feed sees.
 *
 * `î = max(0, s × îb − I)` where their maker says how many a breaker stands, else `max(0, ît − I)`; s is their
 * `breakerShare`, îb the `inrushLimit` of the breaker
 *
 * @param quantity n, how many start, 0 or more; `null` when it is not known, as of the others
 * @param inrushAmps ît, peak current when all of them start [A], 0 or more
 * @param runningAmps I, their steady current [A], 0 or more
 * @param maxOnB16 how many of them their maker allows on a breaker B 16, above 0
 * @param ratedAmps rating of the breaker [A], above 0
 * @param curve its curve
 * @param pulseFactor see `inrushLimit`, 1 or more
 * @returns î [A]; `null` where it is not known
 *
 * Limits: sets a peak against a steady current as r.m.s.
 *
 * Source: arithmetic; that a maker's number comes before the peak: a trade association (2021), as `breakerShare`.
 *
 * @example startSurge(1, 80, 2, null, null, null, 1) // 78
 * @example startSurge(5, null, 2, 10, 16, 'B', 1) // 31.84
 */
export function startSurge(
  quantity: number | null, inrushAmps: number | null, runningAmps: number | null, maxOnB16: number | null,
  ratedAmps: number | null, curve: BreakerCurve | null, pulseFactor: number | null,
): number | null {
  let peak = inrushAmps;
  if (quantity !== null && maxOnB16 !== null && ratedAmps !== null && curve !== null && pulseFactor !== null) {
    const share = breakerShare(quantity, maxOnB16, ratedAmps, curve);
    peak = share === null ? null : share * inrushLimit(ratedAmps, curve, pulseFactor);
  }
  return peak === null || runningAmps === null ? null : Math.max(0, peak - runningAmps);
}
