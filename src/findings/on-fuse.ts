import { exceeds, outputLimit } from '../electrical/index.ts';
import type { Gathering } from './facts.ts';

/**
 * Whether nothing but the fuse of its supply protects a cable: the supply gives more for ever than it carries, and the
 * fuse is not too large for it (IEC 60364-4-43, 433.1). All in A.
 */
export function reliesOnFuse(given: number, fuse: number | null, carries: number): fuse is number {
  return fuse !== null && exceeds(given, carries) && !exceeds(fuse, carries);
}

/** How many runs without a way rely on the fuse of a supply. */
export const ON_ITS_FUSE: Gathering<number> = {
  sheet: 'supplies',
  reads: [
    ['runs', 'rail'], ['runs', 'way'], ['runs', 'carries'], ['supplies', 'rated'], ['supplies', 'units'],
    ['supplies', 'maxOutput'], ['supplies', 'fuse'],
  ],
  gather: (document, book) => {
    const counts = new Map<number, number>();
    const rails = book.targets('runs', 'rail');
    for (const { id, cells } of document.rows('runs')) {
      const rail = rails[id]!;
      if (rail < 0 || (cells.way ?? null) !== null) continue;
      const of = (key: string) => book.number('supplies', rail, key);
      const given = outputLimit(of('rated'), of('units'), of('maxOutput'));
      if (!reliesOnFuse(given, of('fuse'), book.number('runs', id, 'carries'))) continue;
      counts.set(rail, (counts.get(rail) ?? 0) + 1);
    }
    return counts;
  },
};
