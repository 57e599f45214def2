import type { CellValue, SheetName } from '../schedule/index.ts';
import type { Severity } from './finding.ts';
import type { Only } from './only.ts';
import type { RowReader } from './row-reader.ts';

/** What a check found in a row. */
export interface Found {
  readonly value: CellValue;
  readonly limit: CellValue;
  readonly message: string;
  /** How many rows wait for what is missing, where they are others than this one. */
  readonly waiting?: number;
}

/** One rule that every row of a sheet is held against. */
export interface Check {
  readonly rule: string;
  readonly sheet: SheetName;
  /** Key of the column that the finding points to. */
  readonly key: string;
  readonly severity: Severity;
  /** What it finds counts in the status of the row. */
  readonly inStatus?: true;
  /** It is told once, in the row that lacks the input; here it only counts in the status. */
  readonly elsewhere?: true;
  /** It finds nothing where this input is empty, so that it need not be asked: most cells of most rows are. */
  readonly needs?: string;
  /** It finds nothing in other rows than these, which its columns tell more cheaply than it can. */
  readonly only?: Only;
  /**
   * Finds what is wrong with a row. It is called once to know what is found, when sentences are empty, and again when
   * somebody reads the sentence.
   */
  readonly find: (row: RowReader) => Found | undefined;
}
