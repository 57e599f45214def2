import { SCHEMA, titleWithUnit, type Column, type SheetName } from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';

/** A column that a pasted heading names, with the unit that it gives where it gives one. */
export interface NamedColumn {
  readonly column: Column | undefined;
  readonly unit: string | undefined;
}

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

/**
 * Reads the first line of a pasted table as headings: keys or titles of the sheet in the language of the person or in
 * English, with a unit in brackets or without.
 * @returns the column of each cell; `undefined` when the line is no line of headings.
 */
export function headingColumns(sheet: SheetName, cells: readonly string[], words: Words): NamedColumn[] | undefined {
  // Headings are for the most part those of the sheet: a line that is many times as long is none, and need not be
  // looked through.
  if (cells.length > SCHEMA[sheet].columns.length * 4) return undefined;
  const named = cells.map((text) => columnNamed(sheet, text, words));
  const filled = cells.filter((text) => text.trim() !== '').length;
  const found = named.filter(({ column }) => column !== undefined).length;
  return found > 0 && (found >= 2 || filled === 1) && found * 2 > filled ? named : undefined;
}

/** The column of a sheet that a heading names by key or title, with a unit in brackets or without. */
export function columnNamed(sheet: SheetName, text: string, words: Words): NamedColumn {
  const found = /^(.*?)\s*(?:[([]([^()[\]]*(?:\([^)]*\))?)[)\]])?$/s.exec(text.trim());
  const names = [plain(text), plain(found?.[1] ?? '')];
  const column = SCHEMA[sheet].columns.find((each) =>
    names.some((name) => name !== '' && [
      each.key, each.title, words.text(each.title), titleWithUnit(each), titleWithUnit(each, words),
    ].map(plain).includes(name)));
  const unit = found?.[2]?.trim();
  return { column, unit: unit === undefined || unit === '' ? undefined : unit };
}
