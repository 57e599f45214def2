import type { Cells, SheetName } from '../../schedule/index.ts';
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
  readonly notes: readonly string[];
}

/**
 * Reads a sheet from CSV. All or nothing: every row, or every problem with line, column and what to do.
 *
 * The first line holds keys or titles of columns, in any order, with or without a unit; numbers below another unit than
 * the column's are converted. Computed columns are ignored; columns that the sheet does not have are left out and named
 * in a note. Lines without any character are left out, and so are rows at the end in which nothing is entered.
 *
 * @param text the file as text; at most 64 MB.
 * @param sheet the sheet that the file holds; by default the one whose headings it has.
 * @param voltageOf voltage [V] of a rail, for draws in watts; 24 V where it is not known.
 */
export function readCsv(
  text: string, sheet?: SheetName, voltageOf?: (rail: unknown) => number | undefined,
): ReadCsv | Unreadable {
  const table = parseTable(text);
  if (!table.ok) return table;
  const [first, ...records] = table.rows;
  if (first === undefined) {
    return unreadable('csv-empty', '', 'The file is empty; its first line must hold headings. Choose another file.');
  }
  const recognised = sheet === undefined ? recogniseSheet(first.fields) : { ok: true as const, sheet };
  if (!recognised.ok) return recognised;

  const list = new ProblemList();
  const headings = first.fields.map((field) => readHeading(recognised.sheet, unguardText(field)));
  checkHeadings(headings, first.line, recognised.sheet, list);
  if (list.total > 0) return list.unreadable;

  const reader = new RecordReader(recognised.sheet, headings, table.delimiter, list, voltageOf);
  const rows = reader.read(records);
  if (list.total > 0) return list.unreadable;
  return {
    ok: true, sheet: recognised.sheet, rows,
    notes: [...notesOnHeadings(headings, records), ...noteOnEmptyLines(table.emptyLines), ...firstHints(reader.hints)],
  };
}

function noteOnEmptyLines(count: number): string[] {
  if (count === 0) return [];
  return [count === 1 ? 'One empty line was left out.' : `${count} empty lines were left out.`];
}
