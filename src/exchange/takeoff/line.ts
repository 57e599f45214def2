import type { Cells } from '../../schedule/index.ts';
import type { LineSource } from './source.ts';

/** What becomes of a line. `merged` lines are taken, their quantity added to that of an earlier line. */
export type TakeoffOutcome = 'taken' | 'merged' | 'left-out' | 'undecided';

/**
 * Why a line that can be read is asked about all the same: its row or column is hidden, it is struck through, its words
 * say that it counts no longer or perhaps, it equals the sum above without being called a total, its quantity is put in
 * a way that leaves a doubt, so that one is proposed, or it may be the other way round which is the type and which the
 * room.
 */
export type LineFlag = 'hidden' | 'struck' | 'superseded' | 'sum' | 'proposal' | 'matrix';

/** What a line of a takeoff is, before the names of devices are matched. */
export interface LineDraft {
  readonly source: LineSource;
  readonly fields: readonly string[];
  /** A device, or something that is left out or undecided whatever its name means. */
  readonly kind: 'device' | 'left-out' | 'undecided';
  readonly isTotal: boolean;
  /** What stands in the column of quantities; `null` when nothing is legible there. */
  readonly qty: number | null;
  readonly isLength: boolean;
  /** What is to be said of a number that may be a length, where the type is not counted by the metre. */
  readonly lengthDoubt?: string;
  readonly flag?: LineFlag;
  /** The quantity that is proposed for one that is put in a doubtful way. */
  readonly proposal?: number;
  /** What the device is called: its type, then its description; empty strings left out. */
  readonly names: readonly string[];
  /** Area, ref, rail, branch and note, those that are given. */
  readonly cells: Cells;
  /** The titles of storey and building of its room, as they are compared: the same room below others is another. */
  readonly below?: string;
  /** What the line says of the type of its devices: draw [mA], power [W], nodes, price, part number. */
  readonly facts: Cells;
  /** Why it is left out or undecided, or what else is to be said of it; sentences, perhaps none. */
  readonly remarks: readonly string[];
}

/** A line of a takeoff and what becomes of it. */
export interface TakeoffLine {
  /** Stays the same as long as the list does; decisions are kept by it. */
  readonly key: string;
  readonly source: LineSource;
  /** Line of the file, or row of the sheet, from 1. */
  readonly line: number;
  /** Its cells as they stand in the takeoff. */
  readonly fields: readonly string[];
  readonly outcome: TakeoffOutcome;
  /** Quantity of this line alone, the proposed one where there is a proposal; `null` when it has none. */
  readonly qty: number | null;
  /** Tag of the device type; `null` while it is not known. */
  readonly type: string | null;
  readonly area: string | null;
  /** What the line, or a legend for its code, says of the type: draw [mA], power [W], nodes, price, partNumber. */
  readonly facts: Cells;
  /** Why, in plain sentences. */
  readonly reason: string;
  /** The line to whose quantity that of a merged one is added. */
  readonly mergedInto?: number;
  /** Why a person is asked about a line that can be read; it stays when they have decided. */
  readonly flag?: LineFlag;
  /** The quantity that is proposed for one that is put in a doubtful way, as 4 for «3 + 1 spare». */
  readonly proposal?: number;
  /** Place, from 0, of the device row that a taken or merged line counts in. */
  readonly row?: number;
  /** The line is a total of others. */
  readonly isTotal?: true;
  /** Key of its name among the names of the takeoff. */
  readonly nameKey?: string;
}
