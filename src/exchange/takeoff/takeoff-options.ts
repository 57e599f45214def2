import type { Cells, DecimalSign } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import type { TakeoffDecisions } from './decisions.ts';
import type { RememberedColumns } from './remembered-columns.ts';

/** What a takeoff is read by. */
export interface TakeoffOptions {
  /** Rows of the sheet of types, among which the names are looked up. */
  readonly types: readonly Cells[];
  /** What columns hold, by heading or number, where it is known from before or a person corrected it. */
  readonly columns?: RememberedColumns;
  /** The decimal sign of the quantities; found out from them by default. */
  readonly decimal?: DecimalSign;
  readonly decisions?: TakeoffDecisions;
  /**
   * The language of what is said; English by default. Lists are understood in every language that the software speaks.
   */
  readonly words?: Words;
}
