import { DELIMITERS, parseTable, type Delimiter } from '../csv/parse-table.ts';
import type { Words } from '../../words/index.ts';
import { MOST_ROWS, tooManyRows, unreadable, type Unreadable } from '../problem.ts';
import { headingScore, MOST_LINES_ABOVE } from './find-heading.ts';
import { freeText } from './free-text.ts';
import { mendQuotes } from './mend-quotes.ts';
import type { RememberedColumns } from './remembered-columns.ts';
import type { ListCells } from './source.ts';

/** One line of a takeoff. */
export interface TakeoffRecord {
  /** Line of the file, or row of the sheet, on which it begins, from 1. */
  readonly line: number;
  /** Its cells, without spaces around them and without line breaks. */
  readonly fields: readonly string[];
}

interface Records {
  readonly ok: true;
  readonly records: readonly TakeoffRecord[];
}

/** How much of a text shows what parts its fields [characters]. */
const SAMPLE = 20_000;

/**
 * Takes a takeoff apart into lines, blank ones included, so that each can be accounted for.
 * @returns the lines; else what is wrong with the file, by line.
 */
export function recordsOf(source: ListCells, remembered: RememberedColumns, words: Words): Records | Unreadable {
  if (typeof source !== 'string') {
    if (source.length > MOST_ROWS + 1) return tooManyRows('', words);
    const lines = source.map((cells, index) => ({ line: index + 1, fields: Array.from(cells, cellText) }));
    const isLone = lines.every(({ fields }) => fields.filter((text) => text !== '').length < 2);
    const free = isLone ? freeText(lines.map(({ fields }) => fields.find((text) => text !== '') ?? '')) : undefined;
    return filled(free === undefined ? lines : lines.map(({ line }, index) => ({ line, fields: free[index]! })), words);
  }
  const free = /[\t;]/.test(source) ? undefined : freeText(source.split(/\r\n?|\n/).map((text) => cellText(text.replace(/^\ufeff|^"(.*)"$/g, '$1'))));
  if (free !== undefined) return filled(free.map((fields, index) => ({ line: index + 1, fields })), words);
  const sign = delimiterOf(source, remembered, words);
  const table = parseTable(sign === undefined ? source : mendQuotes(source, sign), words, sign);
  if (!table.ok) return table;
  const records: TakeoffRecord[] = [];
  let next = 1;
  for (const { line, fields } of table.rows) {
    for (; next < line; next += 1) records.push({ line: next, fields: [] });
    records.push({ line, fields: fields.map(cellText) });
    next = line + 1 + fields.reduce((sum, field) => sum + (field.match(/\n|\r\n?/g)?.length ?? 0), 0);
  }
  return filled(records, words);
}

/** A cell of a spreadsheet as text; empty for what is neither text, number, yes or no, nor a date. */
function writtenCell(cell: unknown): string {
  if (typeof cell === 'string') return cell;
  if (typeof cell === 'boolean') return String(cell);
  // With a nought behind its decimals, 1.234 cannot be read as 1234.
  if (typeof cell === 'number') return Number.isInteger(cell) ? String(cell) : `${cell}0`;
  return cell instanceof Date && !Number.isNaN(cell.getTime()) ? cell.toISOString().slice(0, 10) : '';
}

/** The lines up to the last one with text. */
function filled(lines: readonly TakeoffRecord[], words: Words): Records | Unreadable {
  const records = lines.slice(0, lines.findLastIndex(({ fields }) => fields.some((field) => field !== '')) + 1);
  if (records.length > 0) return { ok: true, records };
  return unreadable(
    'csv-empty', '', words.say('The takeoff is empty. Choose another file, or paste the list with its headings.')
  );
}

function cellText(cell: unknown): string {
  // Neither may stand in a file: NUL is no text, and half of a surrogate pair no character.
  return writtenCell(cell).replace(/\p{Surrogate}|\0/gu, '\ufffd').replace(/\s+/g, ' ').trim();
}

/**
 * What parts the fields: the sign with which a line of headings shows best, as a title above them may hold a comma and
 * quantities a decimal one; without headings the sign that most lines have as often as one another.
 */
function delimiterOf(text: string, remembered: RememberedColumns, words: Words): Delimiter | undefined {
  const sample = text.length > SAMPLE ? text.slice(0, text.lastIndexOf('\n', SAMPLE) + 1 || SAMPLE) : text;
  const fits = DELIMITERS.map((sign) => {
    const part = parseTable(mendQuotes(sample, sign), words, sign);
    // The sample may end within a quoted text.
    const table = part.ok ? part : parseTable(mendQuotes(text, sign), words, sign);
    const rows = table.ok ? table.rows.map(({ fields }) => fields.map(cellText)) : [];
    const scores = rows.slice(0, MOST_LINES_ABOVE).map((fields) => headingScore(fields, remembered));
    return { sign, points: Math.max(0, ...scores) * 1e6 + evenLines(rows) };
  });
  const best = fits.reduce((most, fit) => fit.points > most.points ? fit : most);
  return best.points > 0 ? best.sign : undefined;
}

/** How many lines have the number of fields that occurs most, one field alone apart. */
function evenLines(rows: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  for (const { length } of rows) if (length > 1) counts.set(length, (counts.get(length) ?? 0) + 1);
  return Math.max(0, ...counts.values());
}
