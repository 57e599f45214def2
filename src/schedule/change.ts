import type { Details, OfficeLists, Revision, Row, RowAcceptance, Snapshot, Variant } from './snapshot.ts';
import type { CellValue, SheetName } from './schema/index.ts';

/** One elementary change of a document; every action of a person is a list of these. */
export type Change =
  /** Gives a cell a value; `null` empties it. A text that begins with `=` in a column of numbers is a formula. */
  | {
    readonly op: 'set';
    readonly sheet: SheetName;
    readonly id: number;
    readonly key: string;
    readonly value: CellValue
  }
  /** Puts rows in before place `at`. Their ids are those of `freeIds`, or those that they had before. */
  | { readonly op: 'insert'; readonly sheet: SheetName; readonly at: number; readonly rows: readonly Row[] }
  /** Takes `count` rows out from place `at` on. */
  | { readonly op: 'remove'; readonly sheet: SheetName; readonly at: number; readonly count: number }
  /** Takes `count` rows out from place `from` and puts them in at place `to` of what remains. */
  | {
    readonly op: 'move';
    readonly sheet: SheetName;
    readonly from: number;
    readonly count: number;
    readonly to: number
  }
  | { readonly op: 'details'; readonly details: Details }
  /** Puts other acceptances in the place of those of a row. */
  | {
    readonly op: 'accept'; readonly sheet: SheetName; readonly id: number;
    readonly accepted: readonly RowAcceptance[];
  }
  | { readonly op: 'revisions'; readonly revisions: readonly Revision[] }
  /** Puts what an office calls things in the place of what was known of it. */
  | { readonly op: 'lists'; readonly lists: OfficeLists | undefined }
  /** Takes `count` variants out from place `at` on, and puts others in there. */
  | { readonly op: 'variants'; readonly at: number; readonly count: number; readonly variants: readonly Variant[] }
  /** Replaces everything, as when a file is opened. */
  | { readonly op: 'load'; readonly snapshot: Snapshot };
