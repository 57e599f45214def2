import Papa from 'papaparse';
import {
  SCHEMA, type Cells, type CellValue, type Column, type Content, type Row, type SheetName,
} from '../../schedule/index.ts';
import { guardText } from './guard-text.ts';
import { headingsOf } from './headings.ts';

/** What writing needs of a schedule. */
interface Figures {
  rows(sheet: SheetName): readonly Row[];
  value(sheet: SheetName, id: number, key: string): CellValue;
  content(): Content;
}

/**
 * Writes a sheet as CSV (RFC 4180, lines end in CRLF): what was entered, so that it comes back without loss, and what
 * is worked out, unrounded. Formulas name cells by key, as in schedule files. Numbers have a decimal point, shares are
 * 0 to 1, defaults stay empty. A text that a spreadsheet would run as a formula, and a formula of this schedule, has an
 * apostrophe in front, which reading takes off.
 */
export function writeCsv(schedule: Figures, sheet: SheetName): string {
  const entered = schedule.content().sheets[sheet] ?? [];
  const lines = schedule.rows(sheet).map(({ id }, place) =>
    SCHEMA[sheet].columns.map((column) => fieldOf(schedule, sheet, id, entered[place]!, column)));
  // A semicolon or tab parts fields in other settings of spreadsheets: quoted, it does not.
  const quotes = (value: unknown) => typeof value === 'string' && /[;\t]/.test(value);
  return `${Papa.unparse([headingsOf(sheet), ...lines], { newline: '\r\n', quotes })}\r\n`;
}

function fieldOf(schedule: Figures, sheet: SheetName, id: number, entered: Cells, column: Column): string {
  const value = column.role === 'computed' ? schedule.value(sheet, id, column.key) : entered[column.key] ?? null;
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' ? String(value) : guardText(value);
}
