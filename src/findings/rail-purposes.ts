import { PURPOSES } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

/** Purposes that are kept on supplies of their own: common practice, no source. */
const SEPARATED = PURPOSES.filter((purpose) => purpose !== 'other');

/** A bit for a purpose that must be kept apart. */
const bitOf = (purpose: unknown): number => {
  const index = SEPARATED.indexOf(purpose as (typeof SEPARATED)[number]);
  return index < 0 ? 0 : 1 << index;
};

/** The purposes that must be kept apart and are found on a rail, its own among them, where there are several. */
export const MIXED_PURPOSES: Gathering<readonly string[]> = {
  sheet: 'supplies',
  reads: [['devices', 'rail'], ['devices', 'type'], ['types', 'purpose'], ['supplies', 'purpose']],
  gather: (document, book) => {
    const [ofType, ofRail] = (['types', 'supplies'] as const).map((sheet) => {
      const bits = new Uint8Array(document.capacity(sheet));
      for (const { id, cells } of document.rows(sheet)) bits[id] = bitOf(cells.purpose);
      return bits;
    }) as [Uint8Array, Uint8Array];
    const [rails, types] = [book.targets('devices', 'rail'), book.targets('devices', 'type')];
    const count = document.capacity('devices');
    for (let id = 0; id < count; id += 1) {
      const rail = rails[id]!;
      const type = types[id]!;
      if (rail >= 0 && type >= 0) ofRail[rail]! |= ofType[type]!;
    }
    const of = (rail: number) => SEPARATED.filter((purpose) => (ofRail[rail]! & bitOf(purpose)) !== 0);
    return new Map(document.rows('supplies').map(({ id }) => [id, of(id)] as const)
      .filter(([, purposes]) => purposes.length > 1));
  },
};
