import { ENGLISH, type Words } from '../words/index.ts';

/** What can be wrong with a file; stable names, for programs. */
export const PROBLEM_CODES = [
  // any file
  'file-too-large', 'too-many-rows', 'not-text', 'formula-unreadable', 'value-refused',
  // schedule JSON
  'json-syntax', 'json-too-deep', 'json-duplicate-key', 'not-a-schedule', 'version-missing', 'version-unknown',
  'wrong-kind',
  // CSV
  'csv-syntax', 'csv-empty', 'sheet-unrecognised', 'sheet-ambiguous', 'column-duplicate', 'column-moved', 'unit-unknown',
  'too-many-fields',
  // workbook
  'not-a-workbook', 'sheet-missing', 'sheet-too-large',
  // profile
  'profile-empty', 'hours-unreadable', 'hours-incomplete', 'row-uneven', 'group-missing', 'group-twice',
] as const;

/** What kind of thing keeps a file from being read. */
export type ProblemCode = (typeof PROBLEM_CODES)[number];

/** Something that keeps a file from being read. */
export interface Problem {
  readonly code: ProblemCode;
  readonly severity: 'error';
  /** The place inside the file, part by part: `/sheets/devices/3/qty`. */
  readonly path: string;
  /** Line of the file, from 1. */
  readonly line?: number;
  /** JSON: character in the line, from 1. CSV: number of the field, from 1. */
  readonly column?: number;
  /** Where, what was found, what is allowed, what to do. */
  readonly message: string;
  readonly received?: string;
  readonly expected?: string;
}

/** A file that cannot be read: nothing of it is used. */
export interface Unreadable {
  readonly ok: false;
  /** What is wrong, in the order of the file; at most `MOST_PROBLEMS` of them. */
  readonly problems: readonly Problem[];
  /** How many problems there are in all. */
  readonly total: number;
}

/** How many problems are listed; the others are only counted. */
export const MOST_PROBLEMS = 200;
/** Largest file that is read, in characters. */
export const MOST_CHARACTERS = 64 * 1024 * 1024;

/** Most rows that one sheet of a file may have: twice what the software is measured with. */
export const MOST_ROWS = 100_000;
/** Most fields of one line: a spreadsheet has no more columns. */
export const MOST_FIELDS = 16_384;

/** Gathers problems; keeps the first ones and counts all. */
export class ProblemList {
  readonly problems: Problem[] = [];
  total = 0;

  add(code: ProblemCode, path: string, message: string, more: Partial<Problem> = {}): void {
    this.total += 1;
    if (this.problems.length < MOST_PROBLEMS) this.problems.push({ code, severity: 'error', path, message, ...more });
  }

  get unreadable(): Unreadable {
    return { ok: false, problems: this.problems, total: this.total };
  }
}

/** A size [bytes] in MB, rounded up. */
export function megabytes(bytes: number): number {
  return Math.ceil(bytes / 1024 / 1024);
}

/** A file that cannot be read for one reason. */
export function unreadable(code: ProblemCode, path: string, message: string, more: Partial<Problem> = {}): Unreadable {
  const list = new ProblemList();
  list.add(code, path, message, more);
  return list.unreadable;
}

/** The problem of a table with more rows than one sheet may have. */
export function tooManyRows(path: string, words: Words = ENGLISH): Unreadable {
  return unreadable('too-many-rows', path, words.say(
    'The table has more than {most} rows; no more are read. Split it.', { most: MOST_ROWS }
  ), {
    expected: String(MOST_ROWS),
  });
}

/** The problem of a file that is too large; `undefined` when it is not. */
export function tooLarge(characters: number, words: Words = ENGLISH): Unreadable | undefined {
  if (characters <= MOST_CHARACTERS) return undefined;
  const [found, most] = [megabytes(characters), megabytes(MOST_CHARACTERS)];
  return unreadable('file-too-large', '', words.say(
    'The file has {found} MB; at most {most} MB is read. Split it.', { found, most }
  ), {
    received: `${found} MB`, expected: `${most} MB`,
  });
}
