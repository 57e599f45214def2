import type { ScheduleDocument } from '../document.ts';
import { SCHEMA, SHEET_NAMES, type CellValue, type SheetName } from '../schema/index.ts';
import { keepReference, mapReferences, type CellReference, type Reference } from './reference.ts';

/** Longest formula that is accepted, in characters. */
export const LONGEST_FORMULA = 2000;

/** Whether the value of a cell in a column of numbers is a formula. */
export function isFormula(value: CellValue | undefined): value is string {
  return typeof value === 'string' && value.startsWith('=');
}

/** Letters of a column, as spreadsheets name it: 0 is A, 26 is AA. */
export function columnLetters(index: number): string {
  return (index >= 26 ? columnLetters(Math.floor(index / 26) - 1) : '') + String.fromCharCode(65 + (index % 26));
}

function columnIndex(letters: string): number {
  let index = 0;
  for (const letter of letters.toUpperCase()) index = index * 26 + letter.charCodeAt(0) - 64;
  return index - 1;
}

const CELL = String.raw`(\$?)([A-Za-z]{1,2})(\$?)(\d{1,7})`;
/**
 * A text in quotes; a reference in the brackets of OpenFormula, [.D3] or [types.D3:.D5]; or one without, D3, D3:D5,
 * types!D3 or types.D3.
 */
const PARTS = new RegExp([
  String.raw`"(?:[^"]|"")*"`,
  String.raw`\[(\w*)\.${CELL}(?::\.${CELL})?\]`,
  String.raw`(?<![\w.$!])(?:(\w+)[!.])?${CELL}(?::${CELL})?(?![\w(.!])`,
].join('|'), 'g');

type Read = { readonly ok: true; readonly formula: string } | { readonly ok: false; readonly problem: string };
/** Id of the row at a place of a sheet, counted from 0. */
type RowAt = (sheet: SheetName, position: number) => number | undefined;

class Unreadable extends Error {}

function readCell(sheet: SheetName, parts: readonly (string | undefined)[], rowAt: RowAt): CellReference {
  const [fixedColumn, letters, fixedRow, digits] = parts;
  const column = SCHEMA[sheet].columns[columnIndex(letters!)];
  if (column === undefined) {
    const last = columnLetters(SCHEMA[sheet].columns.length - 1);
    throw new Unreadable(`The sheet ${sheet} has no column ${letters!.toUpperCase()}: its columns are A to ${last}.`);
  }
  const id = rowAt(sheet, Number(digits) - 1);
  if (id === undefined) throw new Unreadable(`The sheet ${sheet} has no row ${digits}: refer to a row that is there.`);
  return { key: column.key, id, fixedColumn: fixedColumn === '$', fixedRow: fixedRow === '$' };
}

/**
 * Reads a formula that a person typed, with references such as D3, types!D3 or [types.D3], into the form that a document
 * keeps, in which a reference follows its row wherever it moves.
 * @param sheet the sheet that the formula stands on; references without a sheet mean it.
 */
export function readFormula(text: string, sheet: SheetName, rowAt: RowAt): Read {
  if (text.length > LONGEST_FORMULA) {
    return { ok: false, problem: `The formula has ${text.length} characters; at most ${LONGEST_FORMULA} are allowed. Split it over several cells.` };
  }
  if (/[⟦⟧]/.test(text)) return { ok: false, problem: 'The signs ⟦ and ⟧ cannot stand in a formula. Take them out.' };
  const named = (name: string | undefined): SheetName => {
    if (name === undefined || name === '') return sheet;
    const found = SHEET_NAMES.find((each) => each === name.toLowerCase());
    if (found === undefined) throw new Unreadable(`There is no sheet ${name}: the sheets are ${SHEET_NAMES.join(', ')}.`);
    return found;
  };
  try {
    const formula = text.replace(PARTS, (all: string, ...groups: (string | undefined)[]) => {
      if (all.startsWith('"')) return all;
      const own = all.startsWith('[') ? groups.slice(0, 9) : groups.slice(9, 18);
      const target = named(own[0]);
      const from = readCell(target, own.slice(1, 5), rowAt);
      if (own[6] === undefined) return keepReference({ sheet: target, from });
      return keepReference({ sheet: target, from, to: readCell(target, own.slice(5, 9), rowAt) });
    });
    return { ok: true, formula };
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, problem: error.message };
    throw error;
  }
}

/** A kept formula as a person reads and types it: references by column letter and row number. */
export function showFormula(formula: string, sheet: SheetName, document: ScheduleDocument): string {
  const cell = (target: SheetName, { key, id, fixedColumn, fixedRow }: CellReference) => {
    const column = SCHEMA[target].columns.findIndex((each) => each.key === key);
    const row = document.position(target, id);
    if (column < 0 || row < 0) return '#REF!';
    return `${fixedColumn ? '$' : ''}${columnLetters(column)}${fixedRow ? '$' : ''}${row + 1}`;
  };
  return mapReferences(formula, (reference) => {
    if (reference === undefined) return '#REF!';
    const { sheet: target, from, to } = reference;
    const text = to === undefined ? cell(target, from) : `${cell(target, from)}:${cell(target, to)}`;
    return target === sheet ? text : `${target}!${text}`;
  });
}

/** A kept formula as it reads when copied down by a number of rows: references without a dollar sign move along. */
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
export function withoutRows(formula: string, sheet: SheetName, gone: ReadonlySet<number>, document: ScheduleDocument): string {
  return mapReferences(formula, (reference): string => {
    if (reference === undefined || reference.sheet !== sheet) return keepReference(reference);
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
