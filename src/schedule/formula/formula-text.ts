import { ENGLISH, type Words } from '../../words/index.ts';
import type { ScheduleDocument } from '../document.ts';
import { SCHEMA, type CellValue, type SheetName } from '../schema/index.ts';
import { columnLetters, columnPlace } from './column-letters.ts';
import { withDecimalSign, withPoints } from './decimals.ts';
import { BY_LETTER } from './formula-problem.ts';
import { noSuchRow, readingOf, refuseColumn, refuseText, sheetNamed, UnreadableFormula, type Read } from './reading.ts';
import { keepReference, mapReferences, type CellReference, type Reference } from './reference.ts';

/** Whether the value of a cell in a column of numbers is a formula. */
export function isFormula(value: CellValue | undefined): value is string {
  return typeof value === 'string' && value.startsWith('=');
}

const CELL = String.raw`\$?[A-Za-z]{1,2}\$?\d{1,7}`;
const SHEET = String.raw`\$?(?:\w+|'\w+')`;
/**
 * A text in quotes; a number with an exponent; a reference in the brackets of OpenFormula, [.D3] or [types.D3:.D5]; or
 * one without, D3, D3:D5, types!D3 or types.D3.
 */
const PARTS = new RegExp([
  String.raw`"(?:[^"]|"")*"`,
  String.raw`(?<![\w.$])\d+(?:\.\d*)?[Ee][-+]?\d+`,
  String.raw`\[(?:${SHEET})?\.${CELL}(?::(?:${SHEET})?\.${CELL})?\]`,
  String.raw`(?<![\w.$!'])(?:${SHEET}[!.])?${CELL}(?:\s*:\s*(?:${SHEET}[!.])?${CELL})?(?![\w(.!])`,
].join('|'), 'g');
/** One corner of a reference: the sheet, then column and row, each with its dollar sign. */
const CORNER = /^(?:\$?'?(\w+)'?[!.])?\.?(\$?)([A-Za-z]+)(\$?)(\d+)$/;

/** A cell as letters and numbers name it. */
export interface LetteredCell {
  /** As it is written; left out where it is that of the formula, or of the other corner. */
  readonly sheet: string | undefined;
  readonly letters: string;
  /** From 1. */
  readonly row: number;
  readonly fixedColumn: boolean;
  readonly fixedRow: boolean;
}

/** A formula by letters with each reference replaced by what `write` makes of it; texts in quotes stay. */
export function mapLettered(
  formula: string, write: (part: string, from: LetteredCell, to?: LetteredCell) => string,
): string {
  return formula.replace(PARTS, (part) => {
    if (part.startsWith('"')) return part;
    // The formula engine knows a small e only (hyperformula 3.5.0).
    if (/^\d/.test(part)) return part.toLowerCase();
    const [from, to] = part.replace(/^\[|\]$/g, '').split(':').map((corner) => lettered(corner.trim()));
    return write(part, from!, to);
  });
}

function lettered(corner: string): LetteredCell {
  const [, sheet, fixedColumn, letters, fixedRow, digits] = CORNER.exec(corner)!;
  const fixed = { fixedColumn: fixedColumn === '$', fixedRow: fixedRow === '$' };
  return { sheet, letters: letters!, row: Number(digits), ...fixed };
}

/** Id of the row at a place of a sheet, counted from 0. */
type RowAt = (sheet: SheetName, position: number) => number | undefined;

/** Where a formula stands, and the language in which to say what is wrong with it. */
interface Reading {
  readonly own: SheetName;
  /** References to this sheet without a dollar sign move by so many rows. */
  readonly moved?: { readonly sheet: SheetName; readonly down: number } | undefined;
  readonly rowAt: RowAt;
  readonly words: Words;
}

function readCorner(
  corner: LetteredCell, { own, rowAt, words, moved }: Reading,
): { sheet: SheetName; cell: CellReference } {
  const { letters, fixedColumn, fixedRow } = corner;
  const sheet = corner.sheet === undefined ? own : sheetNamed(corner.sheet, words);
  const column = SCHEMA[sheet].columns[columnPlace(letters)];
  if (column === undefined) {
    const last = columnLetters(SCHEMA[sheet].columns.length - 1);
    throw new UnreadableFormula(words.say('The sheet {sheet} has no column {letters}: its columns are A to {last}.',
      { sheet, letters: letters.toUpperCase(), last }));
  }
  refuseColumn(sheet, column, words);
  const row = corner.row + (moved?.sheet === sheet && !fixedRow ? moved.down : 0);
  const id = rowAt(sheet, row - 1);
  if (id === undefined) throw noSuchRow(sheet, row, words);
  return { sheet, cell: { key: column.key, id, fixedColumn, fixedRow } };
}

function readReference(text: string, start: LetteredCell, end: LetteredCell | undefined, reading: Reading): Reference {
  const { sheet, cell: from } = readCorner(start, reading);
  if (end === undefined) return { sheet, from };
  const { sheet: other, cell: to } = readCorner(end, { ...reading, own: sheet });
  if (other !== sheet) {
    throw new UnreadableFormula(reading.words.say(
      '{reference} reaches from the sheet {sheet} to {other}. Refer to cells of one sheet.',
      { reference: text, sheet, other }));
  }
  return { sheet, from, to };
}

/**
 * Reads a formula that a person typed, with references such as D3, types!D3 or [types.D3], into the form that a
 * document keeps, in which a reference follows its row wherever it moves.
 * @param sheet the sheet that the formula stands on; references without a sheet mean it.
 * @param words the language in which to say what is wrong.
 * @param down rows by which it has been copied down since it was written; what moves along is what `shiftFormula`
 * moves.
 */
export function readFormula(text: string, sheet: SheetName, rowAt: RowAt, words: Words = ENGLISH, down = 0): Read {
  return readingOf(words, BY_LETTER, () => {
    refuseText(text, words);
    const place = { own: sheet, rowAt, words, moved: { sheet, down } };
    return mapLettered(withPoints(text, words), (part, from, to) =>
      keepReference(readReference(part, from, to, place)));
  });
}

/**
 * A kept formula as a person reads and types it: references by column letter and row number.
 * @param words the language by whose decimal sign numbers are written; files keep the point.
 */
export function showFormula(
  formula: string, sheet: SheetName, document: ScheduleDocument, words: Words = ENGLISH
): string {
  const cell = (target: SheetName, { key, id, fixedColumn, fixedRow }: CellReference) => {
    const column = SCHEMA[target].columns.findIndex((each) => each.key === key);
    const row = document.position(target, id);
    if (column < 0 || row < 0) return '#REF!';
    return `${fixedColumn ? '$' : ''}${columnLetters(column)}${fixedRow ? '$' : ''}${row + 1}`;
  };
  return mapReferences(withDecimalSign(formula, words), (reference) => {
    if (reference === undefined) return '#REF!';
    const { sheet: target, from, to } = reference;
    const text = to === undefined ? cell(target, from) : `${cell(target, from)}:${cell(target, to)}`;
    return target === sheet ? text : `${target}!${text}`;
  });
}

/**
 * A kept formula as it reads when copied down by a number of rows: references to its own sheet without a dollar sign
 * move along, those to other sheets stay.
 */
export function shiftFormula(formula: string, sheet: SheetName, down: number, document: ScheduleDocument): string {
  const shifted = (target: SheetName, cell: CellReference): CellReference | undefined => {
    if (cell.fixedRow || target !== sheet) return cell;
    const row = document.rows(target)[document.position(target, cell.id) + down];
    return row === undefined ? undefined : { ...cell, id: row.id };
  };
  return mapReferences(formula, (reference): string => {
    if (reference === undefined) return keepReference(undefined);
    const from = shifted(reference.sheet, reference.from);
    const to = reference.to && shifted(reference.sheet, reference.to);
    if (from === undefined || (reference.to !== undefined && to === undefined)) return keepReference(undefined);
    return keepReference({ sheet: reference.sheet, from, ...(to === undefined ? {} : { to }) });
  });
}

/** What remains of a kept formula when rows are deleted: ranges shrink, references to a deleted row go missing. */
export function withoutRows(
  formula: string, sheet: SheetName, gone: ReadonlySet<number>, document: ScheduleDocument,
): string {
  return mapReferences(formula, (reference): string => {
    if (reference?.sheet !== sheet) return keepReference(reference);
    return keepReference(remaining(reference, gone, document));
  });
}

function remaining(reference: Reference, gone: ReadonlySet<number>, document: ScheduleDocument): Reference | undefined {
  const { sheet, from, to } = reference;
  if (to === undefined) return gone.has(from.id) ? undefined : reference;
  const rows = document.rows(sheet);
  let [first, last] = [document.position(sheet, from.id), document.position(sheet, to.id)];
  const step = first <= last ? 1 : -1;
  while (first !== last && gone.has(rows[first]!.id)) first += step;
  while (first !== last && gone.has(rows[last]!.id)) last -= step;
  if (gone.has(rows[first]!.id)) return undefined;
  return { sheet, from: { ...from, id: rows[first]!.id }, to: { ...to, id: rows[last]!.id } };
}
