import type { Cells } from '../../schedule/index.ts';

/** What becomes of a line. `merged` lines are taken, their quantity added to that of an earlier line. */
export type TakeoffOutcome = 'taken' | 'merged' | 'left-out' | 'undecided';

/** What a line of a takeoff is, before the names of devices are matched. */
export interface LineDraft {
  readonly line: number;
  readonly fields: readonly string[];
  /** A device, or something that is left out or undecided whatever its name means. */
  readonly kind: 'device' | 'left-out' | 'undecided';
  readonly isTotal: boolean;
  /** What stands in the column of quantities; `null` when nothing is legible there. */
  readonly qty: number | null;
  readonly isLength: boolean;
  /** What the device is called: its type, then its description; empty strings left out. */
  readonly names: readonly string[];
  /** Area, ref, rail, branch and note, those that are given. */
  readonly cells: Cells;
  /** Why it is left out or undecided, or what else is to be said of it; sentences, perhaps none. */
  readonly remarks: readonly string[];
}

/** A line of a takeoff and what becomes of it. */
export interface TakeoffLine {
  /** Line of the file, or row of the sheet, from 1. */
  readonly line: number;
  /** Its cells as they stand in the takeoff. */
  readonly fields: readonly string[];
  readonly outcome: TakeoffOutcome;
  /** Quantity of this line alone; `null` when it has none. */
  readonly qty: number | null;
  /** Tag of the device type; `null` while it is not known. */
  readonly type: string | null;
  readonly area: string | null;
  /** Why, in plain sentences. */
  readonly reason: string;
  /** The line to whose quantity that of a merged one is added. */
  readonly mergedInto?: number;
  /** The line is a total of others. */
  readonly isTotal?: true;
  /** Key of its name among the names of the takeoff. */
  readonly nameKey?: string;
}
