import type { Workbook } from '../engine/index.ts';
import { PURPOSES, type ScheduleDocument } from '../schedule/index.ts';
import { Gathered } from './gathered.ts';

/** Purposes that are kept on supplies of their own: common practice, no source. */
const SEPARATED = PURPOSES.filter((purpose) => purpose !== 'other');

/** The purposes that must be kept apart and are found on a supply, its own among them. */
export const railPurposes = (document: ScheduleDocument, book: Workbook) => new Gathered<readonly string[]>(
  [['devices', 'rail'], ['devices', 'type'], ['types', 'purpose'], ['supplies', 'purpose']],
  () => gather(document, book)
);

function gather(document: ScheduleDocument, book: Workbook): ReadonlyMap<number, readonly string[]> {
  const bitsOf = (sheet: 'types' | 'supplies') => document.rows(sheet).reduce((bits, { id, cells }) => {
    const index = SEPARATED.indexOf(cells.purpose as (typeof SEPARATED)[number]);
    bits[id] = index < 0 ? 0 : 1 << index;
    return bits;
  }, new Uint8Array(document.capacity(sheet)));
  const [ofType, bits] = [bitsOf('types'), bitsOf('supplies')];
  const [rails, types] = [book.targets('devices', 'rail'), book.targets('devices', 'type')];
  const count = document.capacity('devices');
  for (let id = 0; id < count; id += 1) {
    const rail = rails[id]!;
    const type = types[id]!;
    if (rail >= 0 && type >= 0) bits[rail]! |= ofType[type]!;
  }
  return new Map(document.rows('supplies').map(({ id }) =>
    [id, SEPARATED.filter((_, index) => (bits[id]! & (1 << index)) !== 0)]));
}
