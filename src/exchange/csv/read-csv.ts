import type { Cells, SheetName } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { firstHints } from '../first-hints.ts';
import { ProblemList, unreadable, type Unreadable } from '../problem.ts';
import { checkHeadings, notesOnHeadings } from './check-headings.ts';
import { unguardText } from './guard-text.ts';
import { readHeading } from './headings.ts';
import { parseTable } from './parse-table.ts';
import { RecordReader } from './record-reader.ts';
import { recogniseSheet } from './recognise-sheet.ts';

/** A sheet that was read; `notes` says in sentences what a person should know about how. */
export interface ReadCsv {
  readonly ok: true;
  readonly sheet: SheetName;
  readonly rows: readonly Cells[];
  /** The line of the file on which each row begins, from 1. */
  readonly lines: readonly number[];
  readonly notes: readonly string[];
}

/**
 * Reads a sheet from CSV. All or nothing: every row, or every problem with line, column and what to do.
 *
 * The first line holds keys or titles of columns, in English or the language of `words`, in any order, with or without
 * a unit; numbers below another unit than the column's are converted. Computed columns are ignored; columns that the
 * sheet does not have are left out and named in a note. Lines without any character are left out, and so are rows at
 * the end in which nothing is entered.
 *
 * @param text the file as text; at most 64 MB.
 * @param sheet the sheet that the file holds; by default the one whose headings it has.
 * @param voltageOf voltage [V] of a rail, for draws in watts; 24 V where it is not known.
 * @param words the language of what is said, and of headings and values beside English ones.
 */
export function readCsv(
  text: string, sheet?: SheetName, voltageOf?: (rail: unknown) => number | undefined, words: Words = ENGLISH,
): ReadCsv | Unreadable {
  const table = parseTable(text, words);
  if (!table.ok) return table;
  const [first, ...records] = table.rows;
  if (first === undefined) {
    return unreadable(
      'csv-empty', '', words.say('The file is empty; its first line must hold headings. Choose another file.')
    );
  }
  const recognised = sheet === undefined ? recogniseSheet(first.fields, words) : { ok: true as const, sheet };
  if (!recognised.ok) return recognised;

  const list = new ProblemList();
  const headings = first.fields.map((field) => readHeading(recognised.sheet, unguardText(field), words));
  checkHeadings(headings, first.line, recognised.sheet, list, words);
  if (list.total > 0) return list.unreadable;

  const reader = new RecordReader(recognised.sheet, headings, table.delimiter, list, words, voltageOf);
  const rows = reader.read(records);
  if (list.total > 0) return list.unreadable;
  return {
    ok: true, sheet: recognised.sheet, rows, lines: rows.map((_row, index) => records[index]!.line),
    notes: [
      ...notesOnHeadings(headings, records, words), ...noteOnEmptyLines(table.emptyLines, words),
      ...firstHints(reader.hints, words)
    ],
  };
}

function noteOnEmptyLines(count: number, words: Words): string[] {
  if (count === 0) return [];
  return [
    words.say('{count, plural, one {One empty line was left out.} other {# empty lines were left out.}}', { count }),
  ];
}
