import Papa from 'papaparse';
import {
  isFormula, isNumeric, renumberKeyForm, SCHEMA, tagOf, type CellValue, type Column, type Content, type Row,
  type SheetName,
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
 * @param isShown the rows that are written, by id; all by default. Of some, formulas name rows of the sheet by their
 * numbers in the file, and one that names a row that is not in it stands as its figure.
 */
export function writeCsv(schedule: Figures, sheet: SheetName, isShown?: (id: number) => boolean): string {
  const entered = schedule.content().sheets[sheet] ?? [];
  const shown = schedule.rows(sheet)
    .map((row, place) => ({ id: row.id, tag: tagOf(sheet, row), cells: entered[place]!, place }))
    .filter(({ id }) => isShown?.(id) ?? true);
  const numbers = isShown && new Map(shown.flatMap(({ place, tag }, index): [number | string, number][] =>
    [[place + 1, index + 1], [tag, index + 1]]));
  const lines = shown.map(({ id, cells }) => SCHEMA[sheet].columns.map((column) => {
    const value = cells[column.key];
    const formula = numbers === undefined || !isFormula(value) || !isNumeric(column) ? value
      : withNumbers(value, sheet, numbers) ?? schedule.value(sheet, id, column.key);
    return fieldOf(schedule, sheet, id, formula ?? null, column);
  }));
  // A semicolon or tab parts fields in other settings of spreadsheets: quoted, it does not.
  const quotes = (value: unknown) => typeof value === 'string' && /[;\t]/.test(value);
  return `${Papa.unparse([headingsOf(sheet), ...lines], { newline: '\r\n', quotes })}\r\n`;
}

/**
 * A formula that names rows of its sheet by their numbers in the file; `undefined` where one of them is not in it.
 * @param numbers in the file, by the number in the schedule and by tag.
 */
function withNumbers(
  formula: string, sheet: SheetName, numbers: ReadonlyMap<number | string, number>,
): string | undefined {
  const all: (number | string)[] = [];
  const text = renumberKeyForm(formula, sheet, sheet, (row) => {
    all.push(row);
    return typeof row === 'string' ? undefined : numbers.get(row);
  });
  const named = all.filter((row) => typeof row === 'number');
  // A range takes in what stands between its ends.
  const between = named.length === 0 || !formula.includes(':') ? []
    : Array.from({ length: Math.max(...named) - Math.min(...named) }, (_row, index) => Math.min(...named) + index);
  return [...all, ...between].every((row) => numbers.has(row)) ? text : undefined;
}

function fieldOf(schedule: Figures, sheet: SheetName, id: number, entered: CellValue, column: Column): string {
  const value = column.role === 'computed' ? schedule.value(sheet, id, column.key) : entered;
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' ? String(value) : guardText(value);
}
