import { columnPlace } from '../../schedule/index.ts';
import { attribute, attributesOf } from './xml-elements.ts';

/**
 * Repeats a text in cells that are merged downwards, as a room that stands once beside all of its devices. Numbers are
 * not repeated, as a quantity would count again, nor cells that are merged sideways, as titles are.
 * @param rows rows of cells, of which only the first of merged ones has content; they are changed.
 * @param xml the part of the sheet.
 */
export function fillMerged(rows: readonly unknown[][], xml: string): void {
  for (const attributes of attributesOf(xml, 'mergeCell')) {
    const ends = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(attribute(attributes, 'ref') ?? '');
    if (ends === null || ends[1] !== ends[3]) continue;
    const column = columnPlace(ends[1]!);
    const [first, last] = [Number(ends[2]) - 1, Math.min(Number(ends[4]), rows.length) - 1];
    const text = rows[first]?.[column];
    if (typeof text !== 'string') continue;
    // A cell with content ends it: ranges that overlap, which no program writes, would else cost time without end.
    for (let row = first + 1; row <= last && rows[row]![column] === null; row += 1) rows[row]![column] = text;
  }
}
