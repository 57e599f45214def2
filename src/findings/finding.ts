import type { CellValue, RowAcceptance, SheetName } from '../schedule/index.ts';

/** How much a finding matters, worst first. */
export const SEVERITIES = ['over', 'near', 'incomplete', 'note'] as const;
/**
 * How much a finding matters: a limit that is passed, one that is near, something that is not known, something to know.
 */
export type Severity = (typeof SEVERITIES)[number];

/** What the limits of a row say, worst first. */
export type Status = 'over' | 'near' | 'incomplete' | 'ok';

/** How rows stand, worst first: by their status, or that a person accepts all that counts against it. */
export const STANDINGS = ['over', 'near', 'incomplete', 'accepted', 'ok'] as const;
/** How one row stands. */
export type Standing = (typeof STANDINGS)[number];

/**
 * A row that stands otherwise than before an action, `null` for one that is not there, is blank, or has no limits. Of
 * one that came `from` is how a row within limits stands.
 */
export interface StatusMove {
  readonly sheet: SheetName;
  readonly id: number;
  readonly from: Standing | null;
  readonly to: Standing | null;
}

/** Something to look at in a schedule. */
export interface Finding {
  /** Name of the rule, such as `supply-over-usable`. */
  readonly rule: string;
  readonly severity: Severity;
  readonly sheet: SheetName;
  readonly id: number;
  readonly tag: string;
  /** Number of the row in its sheet, from 1. */
  readonly row: number;
  /** Key of the column. */
  readonly key: string;
  readonly value: CellValue;
  readonly limit: CellValue;
  /** One plain sentence: what is wrong, by how much, what would put it right. */
  readonly message: string;
  /** How many other rows are incomplete until what is missing is entered; absent where none is. */
  readonly waiting?: number;
  /** Set when a person has accepted it. */
  readonly accepted?: RowAcceptance;
  /** Set when a person had accepted it and it has grown worse since: it is open again. */
  readonly reopened?: RowAcceptance;
}
