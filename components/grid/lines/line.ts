import type { SheetName } from '../../../src/schedule/index.ts';

/** One line of a grid: a row of the sheet, the heading of a group of rows, or the blank line in which to add a row. */
export type Line =
  | { readonly kind: 'row'; readonly id: number }
  | HeadingLine
  | { readonly kind: 'blank' };

/** The heading of the rows that name one supply or branch; `id` is -1 for the rows that name none. */
export interface HeadingLine {
  readonly kind: 'heading';
  readonly sheet: SheetName;
  readonly id: number;
  /** Ids of the rows under it. */
  readonly members: readonly number[];
}
