import type { WayKind } from './way-kinds.ts';

/** gG fuses, by rating [A]. */
function ofFuse(ratedAmps: number): number {
  if (ratedAmps >= 16) return 1.6;
  return ratedAmps > 4 ? 1.9 : 2.1;
}

/**
 * k2, multiple of its rating at which a way acts on overload within its conventional time: an hour for breakers and
 * most fuses.
 *
 * Breakers 1.45; gG 1.6 from 16 A, 1.9 above 4 A, else 2.1; fast and slow fuses 2.1; electronic channels 1.45.
 *
 * @param kind kind of way; `null` when it is not known
 * @param ratedAmps its rating [A], above 0
 * @returns k2; `null` when the kind is not known
 *
 * Limits: BS 7671, 433.1.201, lets 1.45 count for gG, by the test of its type; the fuse's own current is on the safe
 * side.
 *
 * Source: IEC 60898-1, 1.45, read; IEC 60269-1, 1.6 read, 1.9 and 2.1 from memory, sure; IEC 60127-2, 2.1 within half
 * an hour, read for quick-acting fuses, for time-lag ones from memory. Electronic: the highest of three makers, 1.45.
 *
 * @example operatingMultiple('gG', 10) // 1.9
 */
export function operatingMultiple(kind: WayKind | null, ratedAmps: number): number | null {
  switch (kind) {
    case null: return null;
    case 'gG': return ofFuse(ratedAmps);
    case 'fast':
    case 'slow': return 2.1;
    default: return 1.45;
  }
}
