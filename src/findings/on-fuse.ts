import { exceeds, mostProtection, operatingMultiple, outputLimit, type WayKind } from '../electrical/index.ts';
import type { Gathering } from './facts.ts';

/** What protects a cable without a way, as far as that is known. */
export interface Guard {
  /** `unsure` where the kind of the fuse decides. */
  readonly is: 'safe' | 'unsafe' | 'unsure';
  /** Where the fuse is not too large for the cable but acts too late: its k2, and the most that would do [A]. */
  readonly late?: { readonly k2: number; readonly most: number };
  /** The fuse, where nothing else makes the cable safe. */
  readonly by?: { readonly kind: WayKind; readonly fuse: number };
}

/**
 * What protects a cable without a way, by IEC 60364-4-43, 433.1: the supply itself where it never gives for ever what
 * the cable does not carry, else the fuse of the supply.
 * @param given what all units together give for ever [A]
 * @param fuse rating of the fuse [A]; `null` where there is none
 * @param carries what the cable carries [A]
 */
export function guardOf(given: number, fuse: number | null, kind: WayKind | null, carries: number): Guard {
  if (!exceeds(given, carries)) return { is: 'safe' };
  if (fuse === null || exceeds(fuse, carries)) return { is: 'unsafe' };
  const k2 = operatingMultiple(kind, fuse);
  if (kind === null || k2 === null) return { is: 'unsure' };
  const most = mostProtection(carries, k2)!;
  return exceeds(fuse, most) ? { is: 'unsafe', late: { k2, most } } : { is: 'safe', by: { kind, fuse } };
}

/** How many runs without a way the fuse of a supply protects, or may by its kind. */
export const ON_ITS_FUSE: Gathering<number> = {
  sheet: 'supplies',
  reads: [
    ['runs', 'rail'], ['runs', 'way'], ['runs', 'carries'], ['supplies', 'rated'], ['supplies', 'units'],
    ['supplies', 'maxOutput'], ['supplies', 'fuse'], ['supplies', 'fuseKind'],
  ],
  gather: (document, book) => {
    const counts = new Map<number, number>();
    const rails = book.targets('runs', 'rail');
    for (const { id, cells } of document.rows('runs')) {
      const rail = rails[id]!;
      if (rail < 0 || (cells.way ?? null) !== null) continue;
      const of = (key: string) => book.number('supplies', rail, key);
      const [fuse, carries] = [of('fuse'), book.number('runs', id, 'carries')];
      const given = outputLimit(of('rated'), of('units'), of('maxOutput'));
      if (Number.isNaN(given + fuse + carries)) continue;
      const { is, by } = guardOf(given, fuse, book.value('supplies', rail, 'fuseKind') as WayKind | null, carries);
      if (is !== 'unsure' && by === undefined) continue;
      counts.set(rail, (counts.get(rail) ?? 0) + 1);
    }
    return counts;
  },
};
