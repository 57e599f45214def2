import type { LoadSchedule } from '../../load-schedule.ts';
import type { Figures } from '../sharing/sharing-problem.ts';
import type { OfficeLists } from './office-lists.ts';

/** What sizing needs of a schedule, whose language it speaks. */
export type SizedSchedule = Figures & Pick<LoadSchedule, 'words'>;

/** One line of what a job needs, ready for a priced list. */
export interface SizingRow {
  readonly item: string;
  readonly quantity: number;
  /** How the quantity comes about, in a sentence. */
  readonly why: string;
}

/** What a panel is sized by. */
export interface SizingOptions {
  /** What the office keeps; the lists of the folder `data` by default. */
  readonly lists?: OfficeLists;
  /** Share of the rating of a supply that the demand may reach, above 0 to 1; 0.8 by default, as for a supply. */
  readonly target?: number;
  /** Rows of devices are not split. */
  readonly wholeRows?: boolean | undefined;
  /** Ends the search; the best so far is given. */
  readonly signal?: AbortSignal;
  /** Time after which the best so far is given [ms]; 1,500 by default. */
  readonly milliseconds?: number;
}
