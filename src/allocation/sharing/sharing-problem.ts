import type { LoadSchedule } from '../../load-schedule.ts';

/** What devices are shared out over. */
export type SharedSheet = 'branches' | 'supplies';

/** What reading needs of a schedule. */
export type Figures = Pick<LoadSchedule, 'document' | 'rows' | 'value' | 'target' | 'cases'>;

/** What is to be shared out, over what, and what stays as it is. */
export interface ShareRequest {
  readonly over: SharedSheet;
  /** Rows are not split. */
  readonly wholeRows?: boolean | undefined;
  /** Devices that have a place keep it. */
  readonly keepPlaced?: boolean | undefined;
  /** Devices may go to branches or supplies of another panel than the one that they belong to. */
  readonly acrossPanels?: boolean | undefined;
  /** What may come later, as a share of what there is, 0 or more: so much less is put on each; 0 by default. */
  readonly extension?: number | undefined;
}

/** Why devices were left out of the sharing. */
export type LeftOutCode =
  | 'quantity-unknown' | 'size-unknown' | 'takes-none' | 'too-large' | 'no-room' | 'nothing-to-share-over' | 'mixed-run'
  | 'run-elsewhere' | 'run-between-panels';

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

/** What a person should know of a branch or a supply: why nothing is added to it, or what is not heeded there. */
export interface SharingNote {
  readonly code:
    | 'limit-unknown' | 'nodes-unknown' | 'bus-current-unheeded' | 'rating-unknown' | 'purposes-mixed' | 'demand-unknown'
    | 'cases-added';
  /** Of the branch or the supply; empty where it holds for all of them. */
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

/** What sets how much a branch or a supply may carry. */
export type CapacityLimit = 'limit' | 'reserve' | 'target' | 'fuse' | 'extension';

/** A branch or a supply that devices can be put on. */
export interface ShareBin {
  /** Id of its row; `null` where it is to be made. */
  readonly id: number | null;
  readonly tag: string;
  /** The panel that it belongs to; `null` where it says none. */
  readonly panel: string | null;
  readonly limitedBy: CapacityLimit;
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
  readonly limitedBy: CapacityLimit;
  /** Cells in which they differ from it; `null` for one that is empty. */
  readonly cells: Readonly<Record<string, string | number | null>>;
}

/** Devices that share branches or supplies of their own. */
export interface ShareGroup {
  /** What is common to them; `null` where there is one group. */
  readonly serves: Served | null;
  /** The panel whose branches or supplies they stay on; `null` where they may go to any. */
  readonly panel: string | null;
  /** Groups with the same pool may each take bins from it, those of their panel. */
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
  readonly panel: string | null;
  readonly limitedBy: CapacityLimit;
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
  /** Id of the row that it is made like; `null` for none. */
  readonly like: number | null;
  readonly cells: FurtherBins['cells'];
}

/** What decides how many branches or supplies some devices need. */
export interface SharingLimit {
  readonly serves: Served | null;
  /** The panel that they stay in; `null` where they may go to any. */
  readonly panel: string | null;
  /** What they take: nodes, or demand [A]. */
  readonly size: number;
  /** Branches or supplies that carry them, and what stays beside them. */
  readonly used: number;
  /** As many would do if the devices could be divided at will. */
  readonly byTotal: number;
  /** No sharing of them does with fewer. */
  readonly lowerBound: number;
  /** What sets how much each of these may carry. */
  readonly limitedBy: readonly CapacityLimit[];
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
  /**
   * Whether `used` is the least number: it equals the lower bound, no device was left out for want of
   * room, and what each takes is known.
   */
  readonly proven: boolean;
  /** What decides the number, by panel and by what supplies are for. */
  readonly limits: readonly SharingLimit[];
  /** Branches or supplies in use. */
  readonly fillings: readonly Filling[];
  readonly added: readonly AddedBin[];
  readonly notes: readonly SharingNote[];
}
