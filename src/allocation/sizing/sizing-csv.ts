import Papa from 'papaparse';
import { guardText } from '../../exchange/index.ts';
import type { Words } from '../../words/index.ts';
import type { SizingRow } from './sizing.ts';

/**
 * Lines of a sizing as CSV (RFC 4180, lines end in CRLF), with a heading; where a line has a panel, it comes first. A
 * text that a spreadsheet would run as a
 * formula has an apostrophe in front.
 */
export function sizingCsv(rows: readonly SizingRow[], words: Words): string {
  const hasPanels = rows.some(({ panel }) => panel !== null);
  const withPanel = (panel: string, line: readonly string[]) => hasPanels ? [panel, ...line] : line;
  const lines = rows.map(({ panel, item, quantity, why }) =>
    withPanel(guardText(panel ?? ''), [guardText(item), String(quantity), guardText(why)]));
  const heading = withPanel(words.say('Panel'), [words.say('Item'), words.say('Quantity'), words.say('Why')]);
  const quotes = (value: unknown) => typeof value === 'string' && /[;\t]/.test(value);
  return `${Papa.unparse([heading, ...lines], { newline: '\r\n', quotes })}\r\n`;
}
