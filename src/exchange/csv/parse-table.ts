import Papa from 'papaparse';
import { ENGLISH, type Words } from '../../words/index.ts';
import { MOST_FIELDS, MOST_ROWS, ProblemList, tooLarge, tooManyRows, unreadable, type Unreadable } from '../problem.ts';

/** One record of a CSV file. */
export interface TableRow {
  /** Line of the file on which it begins, from 1. */
  readonly line: number;
  readonly fields: readonly string[];
}

/** A CSV file taken apart, up to its last record with text. `emptyLines` counts the lines without any character. */
export interface Table {
  readonly ok: true;
  readonly delimiter: Delimiter;
  readonly rows: readonly TableRow[];
  readonly emptyLines: number;
}

export const DELIMITERS = [',', ';', '\t'] as const;
export type Delimiter = (typeof DELIMITERS)[number];

const BREAK = /\r\n|\r|\n/g;

/**
 * Takes a CSV file apart, RFC 4180: comma, semicolon or tab; CRLF, LF or CR, also mixed; with or without a byte order
 * mark.
 * @param known what parts the fields; by default whichever the first line has most of.
 * @returns the records; else what is wrong with the quotes, by line.
 */
export function parseTable(source: string, words = ENGLISH, known?: Delimiter): Table | Unreadable {
  const refused = tooLarge(source.length, words) ?? notText(source, words);
  if (refused !== undefined) return refused;
  const text = withPlainBreaks(source.replace(/^\ufeff/, ''));
  const delimiter = known ?? delimiterOf(text);
  // The headings, the rows, and the empty rest behind the last line break: whoever has more is cut off there.
  const parsed = Papa.parse<string[]>(text, { delimiter, newline: '\n', preview: MOST_ROWS + 3 });
  const lines = linesOf(parsed.data);
  if (parsed.errors.length > 0) return quoteProblems(parsed.errors, lines, words);
  if (parsed.meta.truncated) return tooManyRows('', words);
  const wide = parsed.data.findIndex((fields) => fields.length > MOST_FIELDS);
  if (wide >= 0) return tooWide(lines[wide]!, words);
  const all = parsed.data.map((fields, index): TableRow => ({ line: lines[index]!, fields }));
  const last = all.findLastIndex(({ fields }) => fields.some((field) => field !== ''));
  const rows = all.slice(0, last + 1).filter(({ fields }) => !isEmpty(fields));
  if (rows.length > MOST_ROWS + 1) return tooManyRows('', words);
  return { ok: true, delimiter, rows, emptyLines: last + 1 - rows.length };
}

/**
 * The text with every line break outside quotes turned into LF, as the parser knows one kind a file; those inside
 * quotes belong to their text and stay. A quote opens a text only where a field begins.
 */
function withPlainBreaks(text: string): string {
  if (!text.includes('\r')) return text;
  if (!text.includes('"')) return text.replaceAll('\r\n', '\n').replaceAll('\r', '\n');
  const parts: string[] = [];
  let start = 0;
  let quoted = false;
  let closed = -1;
  for (const { 0: sign, index } of text.matchAll(/"|\r\n?/g)) {
    if (sign !== '"') {
      if (quoted) continue;
      parts.push(text.slice(start, index), '\n');
      start = index + sign.length;
    } else if (quoted) {
      quoted = false;
      closed = index;
    } else {
      quoted = index === 0 || index === closed + 1 || ',;\t\r\n'.includes(text[index - 1]!);
    }
  }
  return parts.join('') + text.slice(start);
}

function isEmpty(fields: readonly string[]): boolean {
  return fields.length === 1 && fields[0] === '';
}

function notText(text: string, words: Words): Unreadable | undefined {
  if (!text.includes('\0')) return undefined;
  const line = text.slice(0, text.indexOf('\0')).split(BREAK).length;
  const message = words.say('The file holds NUL characters, as no text file does. Save it as CSV in UTF-8.');
  return unreadable('not-text', '', message, { line });
}

/** The delimiter that the first line with text has most of, outside quotes. */
function delimiterOf(text: string): Delimiter {
  const heading = /^\s*?((?:"[^"]*"|[^"\n]+)+)/.exec(text)?.[1]?.replace(/"[^"]*"/g, '') ?? '';
  const count = (sign: string) => heading.split(sign).length;
  return DELIMITERS.reduce((best, sign) => count(sign) > count(best) ? sign : best);
}

function linesOf(records: readonly (readonly string[])[]): number[] {
  let line = 1;
  return records.map((fields) => {
    const first = line;
    line += 1;
    for (const field of fields) line += field.match(BREAK)?.length ?? 0;
    return first;
  });
}

function tooWide(line: number, words: Words): Unreadable {
  const message = words.say(
    'Line {line} has more than {most} fields, as no table has. Check what parts the fields, and save the file again.',
    { line, most: MOST_FIELDS }
  );
  return unreadable('too-many-fields', `/${line}`, message, { line, expected: String(MOST_FIELDS) });
}

function quoteProblems(errors: readonly Papa.ParseError[], lines: readonly number[], words: Words): Unreadable {
  const list = new ProblemList();
  for (const { code, row = 0 } of errors) {
    const line = lines[Math.min(row, lines.length - 1)] ?? 1;
    const message = code === 'MissingQuotes'
      ? words.say(
        'Line {line}: nothing closes a quote; a quoted text must end with a quote, and quotes in it be doubled. Put the quotes right.',
        { line }
      )
      : words.say(
        'Line {line}: text follows a closing quote; a quoted text must end with a quote, and quotes in it be doubled. Put the quotes right.',
        { line }
      );
    list.add('csv-syntax', `/${line}`, message, { line });
  }
  return list.unreadable;
}
