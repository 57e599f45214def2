import {
  isNumeric, SCHEMA, SHEET_NAMES, titleWithUnit, understandsUnit, type Column, type SheetName,
} from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';

/** What a heading of a CSV file stands for. */
export interface Heading {
  readonly text: string;
  /** The column that it names; `undefined` for one that the sheet does not have. */
  readonly column: Column | undefined;
  /** A unit in brackets behind the name, where it is not that of the column. */
  readonly unit: string | undefined;
}

/** Titles that files of earlier versions were written with. */
const FORMER: Readonly<Partial<Record<string, string>>> = {
  minVoltage: 'Least voltage', fullUpTo: 'Full up to', lessPerKelvin: 'Less per kelvin', maxOutput: 'Most output',
  maxDrop: 'Most drop', maxCurrent: 'Most current', maxInside: 'Most inside',
};

const plain = (text: string) => text.trim().replace(/\s+/g, ' ').toLowerCase();

type ColumnsByName = ReadonlyMap<SheetName, ReadonlyMap<string, Column>>;

const known = new WeakMap<Words, ColumnsByName>();

/** Columns by key and by title, in English and in another language, for each sheet. */
function columnsByName(words: Words): ColumnsByName {
  let byName = known.get(words);
  if (byName === undefined) {
    byName = new Map(SHEET_NAMES.map((sheet) => [sheet, new Map(
      // What files are written with goes last, as it always means its own column.
      [
        ({ key, title }: Column) => FORMER[key] ?? title, (column: Column) => words.text(column.title),
        ({ title }: Column) => title, ({ key }: Column) => key,
      ].flatMap((nameOf) => SCHEMA[sheet].columns.map((column) => [plain(nameOf(column)), column] as const)),
    )]));
    known.set(words, byName);
  }
  return byName;
}

/**
 * Reads a heading: the key or the title of a column, with or without a unit in brackets, in any case.
 * @param words the language in which a title may stand beside English.
 */
export function readHeading(sheet: SheetName, text: string, words: Words = ENGLISH): Heading {
  const names = columnsByName(words).get(sheet)!;
  const whole = names.get(plain(text));
  if (whole !== undefined) return { text, column: whole, unit: undefined };
  const [, name = '', unit] = /^([^([]*)[([](.*)[)\]]$/.exec(text.trim()) ?? [];
  const column = names.get(plain(name));
  const isOwn = unit !== undefined && column?.unit !== undefined && plain(unit) === plain(column.unit);
  return { text, column, unit: isOwn ? undefined : unit?.trim() };
}

/** Whether the numbers below a heading can be turned into the unit of their column. */
export function hasKnownUnit({ column, unit }: Heading): boolean {
  return column === undefined || column.role === 'computed' || unit === undefined || !isNumeric(column)
    || understandsUnit(column, unit);
}

/**
 * Headings of a sheet as they are written, in English whatever the language of a person: files stay the same
 * everywhere.
 */
export function headingsOf(sheet: SheetName): string[] {
  return SCHEMA[sheet].columns.map((column) => titleWithUnit(column));
}
