import type { SheetName } from '../../src/schedule/index.ts';

/** A text that stood in an open editor and could not be taken over. */
export interface Unsettled {
  readonly sheet: SheetName;
  /** Number of the row in its sheet, from 1. */
  readonly row: number;
  readonly text: string;
  /** What is wrong with it, and what to do. */
  readonly problem: string;
}
