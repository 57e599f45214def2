import Papa from 'papaparse';
import { guardText } from '../../exchange/index.ts';
import type { WiringList } from './wiring-lists.ts';

/** A text that does no harm even where it is run as a formula: designations, which have no brackets or bars. */
const HARMLESS = /^[\p{L}\p{N} ._:/+=-]*$/u;

/**
 * A list as CSV (RFC 4180, lines end in CRLF), headed by its keys. Numbers have a decimal point, yes is `yes`; a text
 * that a spreadsheet would run as a formula, such as a designation that begins with a plus, has an apostrophe in front.
 * @param forPrinter designations stand as they are to be printed.
 */
export function wiringCsv({ keys, rows }: WiringList, forPrinter = false): string {
  const guarded = (text: string) => forPrinter && HARMLESS.test(text) ? text : guardText(text);
  const written = rows.map((row) => row.map((value) => typeof value === 'string' ? guarded(value)
    : typeof value === 'boolean' ? (value ? 'yes' : '') : value ?? ''));
  return `${Papa.unparse([[...keys], ...written], { newline: '\r\n' })}\r\n`;
}
