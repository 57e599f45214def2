import type { LoadSchedule } from '../../src/load-schedule.ts';
import {
  isStatus, SCHEMA, type Cells, type Column, type InputColumn, type SheetLook, type SheetName,
} from '../../src/schedule/index.ts';
import type { Grouping } from '../events/index.ts';
import type { RefusedTexts } from './editing/refused-texts.ts';
import type { HeadingLine, Lines, Sight } from './lines/index.ts';
import type { Words } from '../../src/words/index.ts';

/** What a grid shows: one sheet of a schedule, as lines and columns. It holds no values. */
export interface GridModel extends Lines {
  readonly schedule: LoadSchedule;
  readonly sheet: SheetName;
  readonly grouping: Grouping;
  readonly look: SheetLook;
  /** The language in which cells are shown and read. */
  readonly words: Words;
  readonly columns: readonly Column[];
  readonly sight: Sight;
  /** What was typed and could not be taken. */
  readonly refused: RefusedTexts;
}

/** How many columns stay in view: the tag, the status where there is one, and what a person froze. */
export function frozenColumns({ columns, look }: GridModel): number {
  return Math.max(isStatus(columns[1]) ? 2 : 1, columns.findIndex(({ key }) => key === look.frozen) + 1);
}

/** The columns in the order of the schema, in which the clipboard has them, so that a status parts no pasted block. */
export function clipboardColumns({ sheet, columns }: GridModel): Column[] {
  return SCHEMA[sheet].columns.filter((column) => columns.includes(column));
}

/** Id of the row on a line; -1 when the line is no row. */
export function idAt(model: GridModel, index: number): number {
  const line = model.lines[index];
  return line?.kind === 'row' ? line.id : -1;
}

/** The column at a place when a person may fill it in. */
export function inputAt(model: GridModel, index: number): InputColumn | undefined {
  const column = model.columns[index];
  return column?.role === 'input' ? column : undefined;
}

/** Whether rows are out of sight, by what they hold or folded under their heading. */
export function hidesRows({ unseen, lines }: GridModel): boolean {
  return unseen.size > 0 || lines.some((line) => line.kind === 'heading' && line.folded);
}

/** What a new row holds by belonging to the group of a line: the tag of what its rows name, or their area. */
export function cellsOfGroup(model: GridModel, index: number): Cells {
  const { schedule, grouping, lines } = model;
  if (grouping === 'entered') return {};
  for (let at = Math.min(index, lines.length - 1); at >= 0; at -= 1) {
    const line = lines[at]!;
    if (line.kind === 'blank') return {};
    if (line.kind === 'heading') return ofGroup(schedule, line);
  }
  return {};
}

function ofGroup(schedule: LoadSchedule, { by, sheet, id, text }: HeadingLine): Cells {
  // The way of a device is that of its run.
  if (by === 'way') return {};
  const shared = id < 0 ? text : schedule.document.row(sheet, id)?.cells[SCHEMA[sheet].tag] ?? '';
  return shared === '' ? {} : { [by]: shared };
}
