import Papa from 'papaparse';
import { guardText } from '../../exchange/index.ts';
import type { Words } from '../../words/index.ts';
import type { SizingRow } from './sizing.ts';

/**
 * Lines of a sizing as CSV (RFC 4180, lines end in CRLF), with a heading. A text that a spreadsheet would run as a
 * formula has an apostrophe in front.
 */
export function sizingCsv(rows: readonly SizingRow[], words: Words): string {
  const lines = rows.map(({ item, quantity, why }) => [guardText(item), String(quantity), guardText(why)]);
  const quotes = (value: unknown) => typeof value === 'string' && /[;\t]/.test(value);
  return `${Papa.unparse([[words.say('Item'), words.say('Quantity'), words.say('Why')], ...lines], { newline: '\r\n', quotes })}\r\n`;
}
