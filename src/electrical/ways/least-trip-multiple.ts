import type { WayKind } from './way-kinds.ts';

const LEAST: Partial<Record<WayKind, number>> = { B: 4, C: 7, D: 10 };

/**
 * Multiple of its rating from which a breaker may act at once on direct current, the most sensitive sample of it.
 *
 * @param kind kind of way
 * @returns 4 (B), 7 (C) or 10 (D); `null` of what is no breaker
 *
 * Source: 4 and 7, IEC 60898-2, from memory, sure; 10, IEC 60898-1.
 *
 * @example leastTripMultiple('C') // 7
 */
export function leastTripMultiple(kind: WayKind): number | null {
  return LEAST[kind] ?? null;
}
