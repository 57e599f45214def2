import { exceeds } from '../limits/index.ts';
import { leastTripMultiple } from './least-trip-multiple.ts';
import type { ProtectionDevice, WayKind } from './way-kinds.ts';

/** Two steps of the series of ratings, 1.6 in name, which are 25 ÷ 16 at the least. */
const TWO_STEPS = 25 / 16;

/** All curves of a breaker act alike on overload. */
const family = (kind: WayKind) => leastTripMultiple(kind) === null ? kind : 'breaker';

/**
 * Whether a fault on a way leaves the fuse of its supply whole, so that the other ways go on.
 *
 * A gG fuse behind a gG fuse: two steps of the series of ratings, 1.6 times. A breaker behind a breaker, a fast or slow
 * fuse behind its like: twice the rating; the breaker of the supply may not see what makes it act at once either: less
 * than 4 (B), 7 (C) or 10 (D) times its rating. An electronic channel: no more than the rating.
 *
 * @param upstream fuse or breaker of the supply
 * @param way what protects the way
 * @param availableAmps current that the supply has for a fault on the way [A]; `null` when it is not known
 * @returns whether it does; `null` where no rule shows it, as with a fuse behind a breaker
 *
 * Limits: a rule for kinds; the tables of makers come first, and may show more.
 *
 * Source: 1.6, IEC 60269-1, by the gates of its Table 7; 4 and 7, IEC 60898-2, from memory, sure; 10, IEC 60898-1.
 * Twice the rating, and electronic channels: common practice, no source.
 *
 * @example discriminates({ kind: 'gG', ratedAmps: 16 }, { kind: 'gG', ratedAmps: 10 }, null) // true
 * @example discriminates({ kind: 'B', ratedAmps: 16 }, { kind: 'B', ratedAmps: 6 }, 80) // false
 * @example discriminates({ kind: 'C', ratedAmps: 16 }, { kind: 'fast', ratedAmps: 4 }, 12) // null
 */
export function discriminates(
  upstream: ProtectionDevice, way: ProtectionDevice, availableAmps: number | null,
): boolean | null {
  if (way.kind === 'electronic') return !exceeds(way.ratedAmps, upstream.ratedAmps);
  if (family(way.kind) !== family(upstream.kind)) return null;
  if (exceeds((way.kind === 'gG' ? TWO_STEPS : 2) * way.ratedAmps, upstream.ratedAmps)) return false;
  const mayActFrom = leastTripMultiple(upstream.kind);
  if (mayActFrom === null) return true;
  return availableAmps === null ? null : exceeds(mayActFrom * upstream.ratedAmps, availableAmps);
}
