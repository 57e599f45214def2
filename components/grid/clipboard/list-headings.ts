import { findColumn } from '../../../src/schedule/index.ts';
import { findHeading, headingFields, headingScore } from '../../../src/exchange/takeoff/find-heading.ts';
import type { Words } from '../../../src/words/index.ts';
import { columnNamed, headingColumns, type NamedColumn } from './heading-columns.ts';

/** How far down the headings of a list are looked for, below titles. */
const MOST_ABOVE = 10;

/**
 * Reads the headings of a list of devices in the words of takeoffs, which are others than those of the sheet.
 * @returns the columns of devices where every heading plainly means one of them; `unclear` for a list that only a
 * takeoff can read; `undefined` for what is no such list.
 */
export function listHeadings(
  table: readonly (readonly string[])[], words: Words,
): readonly NamedColumn[] | 'unclear' | undefined {
  const place = table.slice(0, MOST_ABOVE).findIndex((cells) => headingScore(cells, {}) > 0);
  if (place < 0) {
    // Headings of a table of rooms and types name no field.
    const above = table[findHeading(table.map((fields) => ({ fields })), {})]?.filter((text) => text.trim() !== '') ?? [];
    return above.every((text) => columnNamed('devices', text, words).column !== undefined) ? undefined : 'unclear';
  }
  const headings = table[place]!.map((text) => ({ own: columnNamed('devices', text, words), said: headingFields(text) }));
  const isOwn = headings.every(({ own, said }) => own.column !== undefined || said.length === 0);
  if (place > 0) return headings.some(({ said }) => said[0]?.field === 'qty') ? 'unclear' : undefined;
  if (isOwn) return undefined;
  const named = headings.map(({ own, said: [first] }): NamedColumn => own.column !== undefined || first?.exact !== true
    ? own : { column: findColumn('devices', first.field), unit: undefined });
  const keys = new Set(named.map(({ column }) => column?.key));
  const isPlain = keys.size === named.length && !keys.has(undefined) && keys.has('type') && keys.has('qty');
  return isPlain ? named : 'unclear';
}

/** Whether a table is a list of devices with headings, in the words of takeoffs or of the sheet. */
export function isList(table: readonly (readonly string[])[], words: Words): boolean {
  if (table.length < 2) return false;
  const own = new Set(headingColumns('devices', table[0]!, words)?.map(({ column }) => column?.key));
  return (own.has('type') && own.has('qty')) || listHeadings(table, words) !== undefined;
}
