import type { LoadSchedule } from '../../load-schedule.ts';

/** What devices are shared out over. */
export type SharedSheet = 'branches' | 'supplies';

/** What reading needs of a schedule. */
export type Figures = Pick<LoadSchedule, 'document' | 'rows' | 'value' | 'target'>;

/** What is to be shared out, over what, and what stays as it is. */
export interface ShareRequest {
  readonly over: SharedSheet;
  /** Rows are not split. */
  readonly wholeRows?: boolean | undefined;
  /** Devices that have a place keep it. */
  readonly keepPlaced?: boolean | undefined;
}

/** Why devices were left out of the sharing. */
export type LeftOutCode =
  | 'quantity-unknown' | 'size-unknown' | 'takes-none' | 'too-large' | 'no-room' | 'nothing-to-share-over' | 'mixed-run'
  | 'run-elsewhere';

/** What found no room in one piece. */
export interface LeftOutPiece {
  /** What it consists of: all devices of a run, or of a row, or one device. */
  readonly of: 'run' | 'row' | 'device';
  /** What it takes: nodes, or demand [A]. */
  readonly size: number;
  /** The most that one branch or supply has room for. */
  readonly most: number;
}

/** Devices that the sharing gives no place. */
export type LeftOut = {
  /** Place of the row in the sheet of devices, from 0. */
  readonly row: number;
  readonly id: number;
  readonly ref: string | null;
  /** How many of them; `null` where that is not known. */
  readonly qty: number | null;
} & (
  | { readonly code: Exclude<LeftOutCode, 'too-large' | 'no-room'> }
  | { readonly code: 'too-large' | 'no-room'; readonly piece: LeftOutPiece }
);

/** What a person should know of a branch or a supply to which nothing is added. */
export interface SharingNote {
  readonly code: 'limit-unknown' | 'nodes-unknown' | 'rating-unknown' | 'purposes-mixed' | 'demand-unknown';
  readonly tag: string;
}

/** What supplies of their own are for. */
export interface Served {
  readonly purpose: string;
  /** [V] */
  readonly voltage: number;
}

/** A device row that needs a place. */
export interface ShareRow {
  /** Place of the row in the sheet of devices, from 0. */
  readonly row: number;
  readonly id: number;
  readonly ref: string | null;
  readonly area: string | null;
  /** Number of devices, above 0. */
  readonly qty: number;
  /** What one device takes: nodes, or demand [A]. */
  readonly each: number;
  /** The devices of the row stay together. */
  readonly whole: boolean;
  /** Id of the run that feeds it; rows of one run stay together. */
  readonly run: number | null;
}

/** A branch or a supply that devices can be put on. */
export interface ShareBin {
  /** Id of its row. */
  readonly id: number;
  readonly tag: string;
  /** What it may carry: nodes, or demand [A]; `null` where that is not known, and nothing is put on it. */
  readonly capacity: number | null;
  /** What it carries of devices that stay. */
  readonly kept: number;
  /** Whether devices stay on it, so that it is in use anyway. */
  readonly inUse: boolean;
}

/** Further branches or supplies, as many as are needed. */
export interface FurtherBins {
  /** Id of the row that they are made like. */
  readonly like: number;
  /** Tag of that row, from which theirs follow. */
  readonly tag: string;
  readonly capacity: number;
  /** Cells in which they differ from it. */
  readonly cells: Readonly<Record<string, string | number>>;
}

/** Devices that share branches or supplies of their own. */
export interface ShareGroup {
  /** What is common to them; `null` where there is one group. */
  readonly serves: Served | null;
  /** Groups with the same pool may each take bins from it. */
  readonly pool: string;
  readonly rows: readonly ShareRow[];
  readonly bins: readonly ShareBin[];
  readonly further: FurtherBins | undefined;
}

/** Some devices on one branch or supply. */
export interface Placement {
  /** Place of the row in the sheet of devices, from 0. */
  readonly row: number;
  readonly id: number;
  readonly ref: string | null;
  readonly tag: string;
  readonly qty: number;
}

/** All that a sharing needs to know; plain data, so that it can be sent to a worker. */
export interface SharingProblem {
  readonly over: SharedSheet;
  readonly groups: readonly ShareGroup[];
  /** Bins that belong to no group yet, by pool. */
  readonly pools: Readonly<Record<string, readonly ShareBin[]>>;
  /** Devices that stay where they are. */
  readonly kept: readonly Placement[];
  /** Devices whose place follows from what stays. */
  readonly pinned: readonly Placement[];
  readonly leftOut: readonly LeftOut[];
  /** Tags that new rows must not bear. */
  readonly takenTags: readonly string[];
  readonly notes: readonly SharingNote[];
}

/** How full a branch or supply is. */
export interface Filling {
  readonly tag: string;
  /** Id of its row; `null` where it is to be made. */
  readonly id: number | null;
  /** What it is for; `null` for branches. */
  readonly serves: Served | null;
  /** What it may carry; `null` where that is not known. */
  readonly capacity: number | null;
  /** What it carries of devices that stay. */
  readonly kept: number;
  /** What the sharing adds. */
  readonly placed: number;
}

/** A row to be made. */
export interface AddedBin {
  readonly tag: string;
  /** Id of the row that it is made like. */
  readonly like: number;
  readonly cells: Readonly<Record<string, string | number>>;
}

/** How devices are shared out. */
export interface Sharing {
  readonly over: SharedSheet;
  /** What goes where, by row of the devices. */
  readonly placements: readonly Placement[];
  readonly kept: readonly Placement[];
  readonly leftOut: readonly LeftOut[];
  /** Number of branches or supplies that carry devices. */
  readonly used: number;
  /** No sharing of these devices does with fewer. */
  readonly lowerBound: number;
  /** Whether `used` is the least number: it equals the lower bound, and no device was left out for want of room. */
  readonly proven: boolean;
  /** Branches or supplies in use. */
  readonly fillings: readonly Filling[];
  readonly added: readonly AddedBin[];
  readonly notes: readonly SharingNote[];
}
