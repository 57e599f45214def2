import type { CellValue, SheetName } from './schema/index.ts';
import type { View } from './view.ts';

/** Details of the whole schedule, for the title block. */
export const DETAIL_KEYS = [
  'project', 'panel', 'revision', 'date', 'preparedBy', 'checkedBy', 'remarks', 'documentNumber', 'client',
] as const;
/** Details of the documents alone, which those that have none do without. */
export const DOCUMENT_DETAILS = ['documentNumber', 'client'] as const satisfies readonly (typeof DETAIL_KEYS)[number][];
/** Key of a detail of the whole schedule. */
export type DetailKey = (typeof DETAIL_KEYS)[number];
/** Whether a detail is one of documents alone. */
export const isOfDocuments = (key: DetailKey): boolean => (DOCUMENT_DETAILS as readonly DetailKey[]).includes(key);
/** Details of the whole schedule; one that is absent is empty. */
export type Details = Partial<Record<DetailKey, string>>;

/** Details with what was typed for one of them; `undefined` when that is nothing new. */
export function withDetail(details: Details, key: DetailKey, typed: string): Details | undefined {
  const text = typed.trim();
  const { [key]: before = '', ...others } = details;
  return text === before ? undefined : text === '' ? others : { ...others, [key]: text };
}

/** Cells of one row by key; a key that is absent is an empty cell. */
export type Cells = Record<string, CellValue>;

/**
 * One row of a sheet. Its `id` stays the same while the row is in the document, wherever it moves; the id of a
 * deleted row may be given to a later one, so that ids stay small and can index the engine's columns.
 */
export interface Row {
  readonly id: number;
  cells: Cells;
  /** Findings of the row that a person accepted; it keeps them under whatever tag. */
  accepted?: readonly RowAcceptance[];
}

/** A finding of a row that a person accepts, with the reason. */
export interface RowAcceptance {
  readonly rule: string;
  /** Key of the column that it points to; where it is left out, every column is meant. */
  readonly key?: string;
  readonly reason: string;
  readonly name: string;
  /** Date as ISO 8601, YYYY-MM-DD. */
  readonly date: string;
  /** The value when it was accepted. */
  readonly value: CellValue;
  /** The limit when it was accepted. */
  readonly limit?: CellValue;
  /** How many rows waited for what is missing when it was accepted; absent where none did. */
  readonly waiting?: number;
}

/** An acceptance with the row that it is meant for, as files hold it. */
export interface Acceptance extends RowAcceptance {
  readonly sheet: SheetName;
  readonly tag: string;
  /** Number of the row, from 1, where its tag is empty or stands twice; 0 where another bears its tag by now. */
  readonly row?: number;
}

/** What a schedule is issued for. */
export const ISSUE_STATES = ['for approval', 'for construction', 'as built'] as const;
export type IssueState = (typeof ISSUE_STATES)[number];

/** One revision of the schedule, for the history in the title block. With a digest it is issued, and stays as it is. */
export interface Revision {
  readonly revision: string;
  /** Date as ISO 8601, YYYY-MM-DD. */
  readonly date: string;
  /** Who issued it. */
  readonly name: string;
  /** What is different from the issue before. */
  readonly text: string;
  /** What it was issued for. */
  readonly state?: IssueState;
  /** The SHA-256 of the schedule as it was issued, without this entry: 64 hexadecimal digits in small letters. */
  readonly digest?: string;
}

/** What an office calls things in its takeoffs; keys that are not known are kept. */
export interface OfficeLists {
  /** What stands below a heading: a field of takeoffs, or `ignore`. */
  readonly headings?: Readonly<Record<string, string>>;
  /** Names that count nothing, each with `leave-out`; those of types are their aliases. */
  readonly names?: Readonly<Record<string, string>>;
}

/** The sheets of a schedule that a variant is about, as they are at one time; rows and acceptances as in files. */
export interface VariantPart {
  readonly sheets: Partial<Record<SheetName, readonly Cells[]>>;
  /** Acceptances of findings of their rows. */
  readonly accepted?: readonly Acceptance[];
}

/**
 * Another way to do it, kept beside the schedule; nothing of it counts before it is taken over. It holds the sheets
 * that differ, and those that their formulas name. Keys that are not known are kept.
 */
export interface Variant {
  /** Tells it from the others; never empty. */
  readonly name: string;
  readonly note?: string;
  /** Date on which it was kept last, as ISO 8601, YYYY-MM-DD. */
  readonly date?: string;
  /** The sheets of the schedule as they were when it was tried out. */
  readonly base: VariantPart;
  /** The same sheets as they are in it. */
  readonly tried: VariantPart;
}

/** Everything that a schedule holds, as in a file: without ids of rows, and formulas name cells by key: `=[qty]*2`. */
export interface Content {
  readonly details: Details;
  readonly sheets: Partial<Record<SheetName, readonly Cells[]>>;
  readonly accepted?: readonly Acceptance[];
  /** The issues of the schedule, the first one first. */
  readonly revisions?: readonly Revision[];
  readonly view?: View | undefined;
  readonly lists?: OfficeLists | undefined;
  readonly variants?: readonly Variant[] | undefined;
  /** Keys of a file that this version does not know; kept and written back. */
  readonly unknown?: Readonly<Record<string, unknown>>;
}

/**
 * The state of a document with the rows' ids, so that what is kept of an earlier state can still name its rows.
 * Formulas are in the form of `readFormula`.
 */
export interface Snapshot {
  readonly details: Details;
  /** Acceptances that are meant for rows that are not there; kept and written back. */
  readonly unattached: readonly Acceptance[];
  readonly revisions: readonly Revision[];
  readonly unknown: Readonly<Record<string, unknown>>;
  readonly view?: View | undefined;
  readonly lists?: OfficeLists | undefined;
  readonly variants?: readonly Variant[] | undefined;
  readonly sheets: Readonly<Record<SheetName, readonly Row[]>>;
}
