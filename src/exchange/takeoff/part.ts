import type { TakeoffColumn } from './columns.ts';
import type { TakeoffLine } from './line.ts';
import type { TakeoffRecord } from './records.ts';
import type { Band } from './side-by-side.ts';
import type { TakeoffTable } from './source.ts';

/** One of the lists of a takeoff. */
export interface TakeoffPart {
  readonly file?: string;
  readonly sheet?: string;
  /** A list; a legend, which explains the codes of lists; or a sheet beside lists that counts nothing. */
  readonly kind: 'list' | 'legend' | 'none';
  /** Its first line: a list below another one on the same sheet is a part of its own. */
  readonly firstLine: number;
  /** The line that holds the headings; `undefined` when none does. */
  readonly headingLine: number | undefined;
  readonly columns: readonly TakeoffColumn[];
  /** Numbers of the columns that are its own, from 1, where lists stand side by side. */
  readonly ownColumns?: readonly number[];
}

/** A part of a takeoff with its lines. */
export interface OpenPart {
  readonly table: TakeoffTable;
  readonly records: readonly TakeoffRecord[];
  readonly kind: TakeoffPart['kind'];
  readonly firstLine: number;
  readonly headingLine: number | undefined;
  /** The second line of headings in two lines, else the same. */
  readonly lastHeading: number | undefined;
  readonly columns: readonly TakeoffColumn[];
  readonly sheetArea: string | undefined;
  readonly band?: Band;
}

/** The part on which a line stands: the last one of its sheet, and of its columns, that begins above it. */
export function partOf(
  { source: { file, sheet, line, column } }: TakeoffLine, parts: readonly TakeoffPart[],
): TakeoffPart {
  return parts.findLast((part) => part.file === file && part.sheet === sheet && part.firstLine <= line
    && (part.ownColumns === undefined || part.ownColumns.includes(column!)))!;
}
