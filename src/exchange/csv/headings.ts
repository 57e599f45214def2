import {
  isNumeric, SCHEMA, SHEET_NAMES, titleWithUnit, understandsUnit, type Column, type SheetName,
} from '../../schedule/index.ts';

/** What a heading of a CSV file stands for. */
export interface Heading {
  readonly text: string;
  /** The column that it names; `undefined` for one that the sheet does not have. */
  readonly column: Column | undefined;
  /** A unit in brackets behind the name, where it is not that of the column. */
  readonly unit: string | undefined;
}

const plain = (text: string) => text.trim().replace(/\s+/g, ' ').toLowerCase();

/** Columns by key and by title, for each sheet. */
const byName = new Map(SHEET_NAMES.map((sheet) => [sheet, new Map(
  // Keys go last, as a key always means its own column.
  [...SCHEMA[sheet].columns.map((column) => [plain(column.title), column] as const),
    ...SCHEMA[sheet].columns.map((column) => [plain(column.key), column] as const)],
)]));

/** Reads a heading: the key or the title of a column, with or without a unit in brackets, in any case. */
export function readHeading(sheet: SheetName, text: string): Heading {
  const names = byName.get(sheet)!;
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

/** Headings of a sheet as they are written. */
export function headingsOf(sheet: SheetName): string[] {
  return SCHEMA[sheet].columns.map(titleWithUnit);
}
