import { htmlTables, partOf, readTakeoff, type TakeoffLine } from '../../../src/exchange/takeoff/index.ts';
import { readHtmlTables } from '../../../src/exchange/index.ts';
import type { Cells } from '../../../src/schedule/index.ts';
import { writeTable } from '../clipboard/read-table.ts';

/** What the reader of takeoffs says of a list that is to be pasted. */
export interface ListLines {
  /** Its cells as text, merged ones filled. */
  readonly text: string;
  /** What a takeoff is to read in its place. */
  readonly list: string;
  /** Every line is a device whose cells say all that there is to say of it. */
  readonly isPlain: boolean;
  /** No line is a total, hidden or struck through, whatever else it is. */
  readonly countsOnce: boolean;
}

/** Reads a list as a takeoff does. @param page the clipboard as a page, empty where it has none. */
export function listLines(text: string, page: string, types: readonly Cells[]): ListLines {
  const tables = htmlTables(page);
  const takeoff = readTakeoff(tables.length > 0 ? tables : text, { types });
  const [table, ...others] = readHtmlTables(page);
  const shared = {
    text: table !== undefined && others.length === 0 ? writeTable(table.cells) : text,
    list: tables.length > 0 ? page : text,
  };
  if (!takeoff.ok) return { ...shared, isPlain: false, countsOnce: true };
  const { lines, parts } = takeoff;
  const cell = (line: TakeoffLine, field: string) => partOf(line, parts).columns
    .filter((column) => column.field === field)
    .map(({ index }) => line.fields[index] ?? '').filter((each) => each !== '').join(', ');
  const isPlain = (line: TakeoffLine) => line.outcome === 'left-out'
    ? line.fields.every((each) => each === '') || line.line === partOf(line, parts).headingLine
    : line.outcome !== 'undecided' && line.type === cell(line, 'type') && (line.area ?? '') === cell(line, 'area');
  return {
    ...shared, isPlain: parts.length === 1 && lines.every(isPlain),
    countsOnce: lines.every(({ isTotal, flag }) => isTotal !== true && (flag === undefined || !['sum', 'hidden', 'struck'].includes(flag))),
  };
}
