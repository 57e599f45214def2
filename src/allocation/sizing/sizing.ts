import type { LoadSchedule } from '../../load-schedule.ts';
import type { Cells } from '../../schedule/index.ts';
import type { Stop } from '../packing/index.ts';
import type { AddedBin, Figures, Placement } from '../sharing/sharing-problem.ts';
import type { OfficeLists } from './office-lists.ts';

/** What sizing needs of a schedule, whose language it speaks. */
export type SizedSchedule = Figures & Pick<LoadSchedule, 'words'>;

/** One line of what a job needs, ready for a priced list. */
export interface SizingRow {
  /** Tag of the enclosure that it belongs to; `null` where none is said. */
  readonly panel: string | null;
  readonly item: string;
  readonly quantity: number;
  /** How the quantity comes about, in a sentence. */
  readonly why: string;
}

/** What a panel is sized by. */
export interface SizingOptions {
  /** What the office keeps; the lists of the folder `data` by default. */
  readonly lists?: OfficeLists;
  /**
   * Share of the rating of a supply that the demand may reach, above 0 to 1; that of the last rail for the purpose by
   * default, and 0.8 where there is none.
   */
  readonly target?: number | undefined;
  /** Rows of devices are not split. */
  readonly wholeRows?: boolean | undefined;
  /** What may come later, as a share of what there is, 0 or more; 0 by default. It counts in everything. */
  readonly extension?: number | undefined;
  /** Supplies for one purpose and voltage in one panel are of one rating. */
  readonly equalUnits?: boolean | undefined;
  /** Only devices without a rail or a branch, and outputs without a module. */
  readonly unplaced?: boolean | undefined;
  /** The panel of what belongs to none; the only one of the schedule by default. */
  readonly panel?: string | undefined;
  /** Ends the search; the best so far is given. */
  readonly signal?: AbortSignal;
  /** Time after which the best so far is given [ms]; 1,500 by default. */
  readonly milliseconds?: number;
}

/** How something is sized. */
export interface SizingRules extends Required<Pick<SizingOptions, 'wholeRows' | 'extension' | 'equalUnits' | 'unplaced'>> {
  readonly lists: OfficeLists;
  readonly target: number | undefined;
  readonly stop: Stop;
  /** The panel that a row belongs to. */
  readonly panelOf: (sheet: 'devices' | 'outputs', id: number) => string | null;
}

/** One way that a sizing asks for. */
export interface SizedWay {
  readonly cells: Cells;
  /** Ids of the runs that it feeds. */
  readonly runs: readonly number[];
}

/** A supply or a bus branch that a sizing asks for, and what is put on it. */
export interface SizedBin extends Omit<AddedBin, 'tag' | 'like'> {
  readonly over: 'supplies' | 'branches';
  readonly panel: string | null;
  /** Id of the row that it is made like; `null` for none. */
  readonly like: number | null;
  /** Tag from which its own follows. */
  readonly after: string;
  readonly placements: readonly Omit<Placement, 'tag'>[];
  /** The ways behind a supply. */
  readonly ways: readonly SizedWay[];
}

/** A mains feed that a sizing asks for. */
export interface SizedFeed {
  readonly panel: string | null;
  readonly cells: Cells;
  /** The supplies that hang on it, by their places among those of the sizing. */
  readonly supplies: readonly number[];
}

/** A relay module that a sizing asks for. */
export interface SizedModule {
  readonly panel: string | null;
  readonly cells: Cells;
  /** Ids of the outputs that are put on it. */
  readonly outputs: readonly number[];
}

/** What a sizing comes to: lines for a person, and rows that can be made of them. */
export interface Sized {
  readonly rows: readonly SizingRow[];
  readonly bins: readonly SizedBin[];
  readonly feeds: readonly SizedFeed[];
  readonly modules: readonly SizedModule[];
}
