import Papa from 'papaparse';
import { guardText } from '../../exchange/index.ts';
import type { WiringList } from './wiring-lists.ts';

/**
 * A list as CSV (RFC 4180, lines end in CRLF), headed by its keys. Numbers have a decimal point, yes is `yes`; a text
 * that a spreadsheet would run as a formula, such as a designation that begins with a plus, has an apostrophe in front.
 */
export function wiringCsv({ keys, rows }: WiringList): string {
  const written = rows.map((row) => row.map((value) => typeof value === 'string' ? guardText(value)
    : typeof value === 'boolean' ? (value ? 'yes' : '') : value ?? ''));
  return `${Papa.unparse([[...keys], ...written], { newline: '\r\n' })}\r\n`;
}
