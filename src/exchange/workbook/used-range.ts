import { columnPlace } from '../../schedule/index.ts';

/** How far a sheet reaches. */
export interface UsedRange {
  readonly rows: number;
  readonly columns: number;
}

/**
 * How far the cells with content of a sheet reach from its first cell; both 0 for an empty one. A single cell far away
 * makes a table of billions, which is known here before that table is built.
 * @param xml the part of the sheet.
 */
export function usedRange(xml: string): UsedRange {
  let [rows, columns] = [0, 0];
  for (const [tag, letters, digits] of xml.matchAll(/<(?:\w+:)?c\s(?:[^<>]*?\s)?r=["']([A-Z]+)(\d+)["'][^<>]*>/g)) {
    if (tag.endsWith('/>')) continue;
    rows = Math.max(rows, Number(digits));
    columns = Math.max(columns, columnPlace(letters!) + 1);
  }
  return { rows, columns };
}

/** Number of the last row of a sheet, with cells or without; rows without a number follow one another. */
export function lastRow(xml: string): number {
  let last = 0;
  for (const [, attributes = ''] of xml.matchAll(/<(?:\w+:)?row\b([^<>]*)/g)) {
    const digits = /\sr=["'](\d+)/.exec(attributes)?.[1];
    last = Math.max(last + 1, Number(digits ?? 0));
  }
  return last;
}
