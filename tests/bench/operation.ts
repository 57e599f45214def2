import type { Cells, CellValue } from '../../src/schedule/index.ts';

/** Sheets of the workload. */
export type WorkSheet = 'devices' | 'types' | 'supplies' | 'branches';

/** Columns of a pasted block. */
export const PASTE_KEYS = ['ref', 'area', 'type', 'qty', 'rail', 'branch', 'diversity', 'note'] as const;

/** Something that a person does to the workload; rows are named by their place, from 0. */
export type Operation =
  | {
    readonly op: 'set'; readonly sheet: WorkSheet; readonly at: number; readonly key: string; readonly value: CellValue;
  }
  | { readonly op: 'paste'; readonly at: number; readonly lines: readonly (readonly CellValue[])[] }
  | { readonly op: 'insert'; readonly at: number; readonly cells: Cells }
  | { readonly op: 'remove'; readonly at: number }
  | { readonly op: 'move'; readonly from: number; readonly to: number };

/** What every candidate works out, and what is compared after each kind of operation. */
export const COMPARED = {
  devices: ['unitDraw', 'diversity', 'connected', 'demand', 'share', 'nodes'],
  supplies: [
    'usable', 'connected', 'demand', 'loading', 'spare', 'limitDiversity', 'fuseLoading', 'loss', 'status',
  ],
  branches: ['nodes', 'free', 'used', 'status'],
} as const;

/** Values by sheet, row and the keys of `COMPARED`. */
export type Results = Readonly<Record<keyof typeof COMPARED, readonly (readonly CellValue[])[]>>;

/** One way to hold the workload and keep its figures current. */
export interface Candidate {
  apply(operation: Operation): void;
  undo(): void;
  results(): Results;
  /** Makes ready for formulas, as a page does while it is idle. */
  prepare?(): void;
  /** Types a SUM over a column of devices, as the first formula of a session. */
  typeFormula?(): void;
  /** Puts everything that was found in order, as a list on the screen needs it, where the candidate has such a list. */
  listFindings?(): number;
}
