import type { TakeoffColumn } from './columns.ts';
import type { TakeoffLine } from './line.ts';
import type { TakeoffRecord } from './records.ts';
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
}

/** The part on which a line stands: the last one of its sheet that begins above it. */
export function partOf({ source: { file, sheet, line } }: TakeoffLine, parts: readonly TakeoffPart[]): TakeoffPart {
  return parts.findLast((part) => part.file === file && part.sheet === sheet && part.firstLine <= line)!;
}
