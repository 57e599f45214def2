import Papa from 'papaparse';
import { guardText } from '../../exchange/index.ts';
import type { Words } from '../../words/index.ts';
import { billTables, type BillTable } from './bill-table.ts';
import type { Bill } from './bill.ts';

/**
 * A bill by panel as CSV (RFC 4180, lines end in CRLF); below it, after a blank line each, what is more or less than in
 * an older one, by panel and in all. Numbers have a decimal point and a cell of their own; a text that a spreadsheet
 * would run as a formula has an apostrophe in front.
 */
export function billCsv(bill: Bill, older: Bill | undefined, words: Words): string {
  const tables = billTables(bill, older, words);
  const lines = ({ headings, rows }: BillTable) => [
    headings, ...rows.map((row) => row.map((value) => typeof value === 'string' ? guardText(value) : value ?? '')),
  ];
  const below = [tables.changes, tables.changesInAll].flatMap((table) =>
    table === undefined ? [] : [[], [table.title], ...lines(table)]);
  const quotes = (value: unknown) => typeof value === 'string' && /[;\t]/.test(value);
  return `${Papa.unparse([...lines(tables.byPanel), ...below], { newline: '\r\n', quotes })}\r\n`;
}
