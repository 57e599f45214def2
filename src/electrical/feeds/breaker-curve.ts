/** Curves of breakers of a mains feed, IEC 60898-1. */
export const BREAKER_CURVES = ['B', 'C', 'D'] as const;

/** How a breaker of a mains feed acts at once: B from 3, C from 5, D from 10 times its rating. */
export type BreakerCurve = (typeof BREAKER_CURVES)[number];
