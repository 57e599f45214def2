import type { WayKind } from './way-kinds.ts';

const MULTIPLES: Record<WayKind, number> = { B: 7.5, C: 15, D: 30, gG: 7, fast: 4, slow: 10, electronic: 1.8 };

/**
 * Multiple of its rating at which a way acts on a short circuit, on direct current, within 0.4 s and whatever the
 * sample.
 *
 * Breakers 1.5 times the upper end of their band on alternating current: B 7.5, C 15, D 30. Fuses: gG 7, fast 4, slow
 * 10. Electronic channels 1.8.
 *
 * @param kind kind of way; `null` when it is not known
 * @returns the multiple; `null` when the kind is not known
 *
 * Limits: a breaker marked for direct current by IEC 60898-2 may act sooner, B at 7; the maker's figure comes first.
 * gG up to 100 A. Electronic channels have no common value.
 *
 * Source: bands of IEC 60898-1 (5, 10, 20), and 1.4 to 1.5 times that on direct current: practice, from memory, sure.
 * gG: BS 7671, Table 41.2, at 0.4 s, up to 6.9 times. Fast: IEC 60127-2, quick-acting, 4 times within 0.3 s, read in an
 * article; slow: time-lag, 10 times within 0.3 s, from memory. Electronic: above the 1.7 times to which the highest of
 * three makers limits; common practice, no source.
 *
 * @example tripMultiple('B') // 7.5
 */
export function tripMultiple(kind: WayKind | null): number | null {
  return kind === null ? null : MULTIPLES[kind];
}
