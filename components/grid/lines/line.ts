import type { SheetName } from '../../../src/schedule/index.ts';

/** By what device rows are gathered under headings: a column, or the way of their run. */
export type GroupedBy = 'rail' | 'branch' | 'way' | 'run' | 'area' | 'type';

/** One line of a grid: a row of the sheet, the heading of a group of rows, or the blank line in which to add a row. */
export type Line =
  | { readonly kind: 'row'; readonly id: number }
  | HeadingLine
  | { readonly kind: 'blank' };

const ROWS: Line[] = [];

/** The line of a row: one object for each id, as a large sheet has a hundred thousand of them at every look at it. */
export function rowLine(id: number): Line {
  return ROWS[id] ??= { kind: 'row', id };
}

/** The heading of rows that have something in common. */
export interface HeadingLine {
  readonly kind: 'heading';
  readonly by: GroupedBy;
  /** The sheet of the row that they name; that of the rows themselves where they only share a text. */
  readonly sheet: SheetName;
  /** Id of the row that they name; -1 where they share a text, or name none. */
  readonly id: number;
  /** The text that they share; empty for those that name none. */
  readonly text: string;
  /** Ids of the rows in sight under it, folded away or not. */
  readonly members: readonly number[];
  /** How many rows there are in all, in sight or not. */
  readonly all: number;
  /** Its rows are folded away. */
  readonly folded: boolean;
}

/** By which a group is known as long as rows are gathered in one way. */
export const groupName = ({ by, id, text }: Pick<HeadingLine, 'by' | 'id' | 'text'>): string => `${by} ${id} ${text}`;
