import {
  columnOf, namedInText, type CellValue, type InputColumn, type Row, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import { numberOf } from './designations.ts';
import type { Parts } from './parts.ts';

/** A row that an end of a terminal names. */
export interface NamedRow {
  readonly sheet: SheetName;
  readonly id: number;
  /** Its connection, with the colon before it; empty where the part alone is named. */
  readonly behind: string;
}

/** A terminal as it is listed, its texts empty where nothing is entered. */
export interface ListedTerminal {
  readonly row: Row;
  readonly terminal: string;
  readonly strip: string;
  readonly enclosure: string;
  readonly potential: string;
  readonly inside: string;
  readonly outside: string;
  readonly core: string;
  readonly bridge: string;
  readonly hasPartition: boolean;
}

/** The terminals of a schedule, in the order of the document; blank rows are left out. */
export function listTerminals(document: ScheduleDocument): ListedTerminal[] {
  return document.rows('terminals').flatMap((row): ListedTerminal[] => {
    const text = (key: string) => textOf(row.cells[key]);
    const listed = {
      row, terminal: text('terminal'), strip: text('strip'), enclosure: text('enclosure'), potential: text('potential'),
      inside: text('inside'), outside: text('outside'), core: text('core'), bridge: text('bridge'),
      hasPartition: row.cells.partition === true,
    };
    return [listed.terminal, listed.potential, listed.inside, listed.outside].some((each) => each !== '') ? [listed] : [];
  });
}

export const textOf = (value: CellValue | undefined): string => value === null || value === undefined ? '' : String(value);

const ENDS = { inside: columnOf('terminals', 'inside'), outside: columnOf('terminals', 'outside') } as
  Readonly<Record<'inside' | 'outside', InputColumn>>;

/** The rows that an end names, one of each sheet that has such a tag: more than one where it is in doubt. */
export function rowsNamed(parts: Parts, end: 'inside' | 'outside', text: string): NamedRow[] {
  return namedInText(ENDS[end], text, (sheet, tag) => parts.find(sheet, tag) !== undefined)
    .map(({ sheet, tag, behind }) => ({ sheet, id: parts.find(sheet, tag)!, behind }));
}

/** The terminals of each strip in the order of their numbers, as they stand side by side. */
export function inStripOrder(terminals: readonly ListedTerminal[]): ListedTerminal[] {
  return terminals.map((each, place) => [numberOf(each.terminal) ?? Infinity, place, each] as const)
    .sort((one, other) => one[0] === other[0] ? one[1] - other[1] : one[0] - other[0]).map(([, , each]) => each);
}
