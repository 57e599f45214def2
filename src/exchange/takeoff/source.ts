import type { RememberedColumns } from './remembered-columns.ts';

/** A list as text (CSV with comma, semicolon or tab), or as rows of cells, as a spreadsheet gives them. */
export type ListCells = string | readonly (readonly unknown[])[];

/** A list, where it comes from, and what its file says of it beside its cells. */
export interface TakeoffTable {
  readonly cells: ListCells;
  /** Name of the file; left out for what was pasted. */
  readonly file?: string;
  /** Name of the sheet; it is the area of lines for which the list gives none. */
  readonly sheet?: string;
  /** What its own columns hold, where a person said so; it goes before what is known of all lists. */
  readonly columns?: RememberedColumns;
  /** Places of rows and columns, from 0, that are hidden. */
  readonly hiddenRows?: ReadonlySet<number>;
  readonly hiddenColumns?: ReadonlySet<number>;
  /** Places of rows, from 0, in which the text is struck through. */
  readonly struckRows?: ReadonlySet<number>;
}

/** What a takeoff is read from: a list, or several, such as the sheets of a workbook. */
export type TakeoffSource = ListCells | TakeoffTable | readonly TakeoffTable[];

/** Where a quantity stands. */
export interface LineSource {
  readonly file?: string;
  readonly sheet?: string;
  /** Line of the file, or row of the sheet, from 1. */
  readonly line: number;
  /** Number of its column, from 1, where the line has several counts. */
  readonly column?: number;
}

/** Where a quantity of a list stands. */
export function sourceOf({ file, sheet }: TakeoffTable, line: number, column?: number): LineSource {
  return {
    ...(file === undefined ? {} : { file }), ...(sheet === undefined ? {} : { sheet }), line,
    ...(column === undefined ? {} : { column }),
  };
}

/** The lists of a source, at least one unless it is an empty list of tables. */
export function tablesOf(source: TakeoffSource): readonly TakeoffTable[] {
  if (typeof source === 'string') return [{ cells: source }];
  if ('cells' in source) return [source];
  return source.length > 0 && source.every(isTable) ? withOwnNames(source) : [{ cells: source as ListCells }];
}

/** Files of the same name get numbers, so that what is decided on a line of one holds for it alone. */
function withOwnNames(tables: readonly TakeoffTable[]): TakeoffTable[] {
  const met = new Map<string, number>();
  return tables.map((table) => {
    const key = JSON.stringify([table.file, table.sheet]);
    const number = (met.get(key) ?? 0) + 1;
    met.set(key, number);
    return number === 1 || table.file === undefined ? table : { ...table, file: `${table.file} (${number})` };
  });
}

function isTable(item: TakeoffTable | readonly unknown[]): item is TakeoffTable {
  return 'cells' in item;
}

/** Key of a quantity among all of a takeoff, by which decisions are kept: `12`, `Level 1!12`, `a.xlsx!Level 1!12/4`. */
export function lineKey({ file, sheet, line, column }: LineSource): string {
  const place = column === undefined ? String(line) : `${line}/${column}`;
  return [file, sheet, place].filter((part) => part !== undefined).join('!');
}
