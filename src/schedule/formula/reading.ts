import type { Words } from '../../words/index.ts';
import { isNumeric, SHEET_NAMES, type Column, type SheetName } from '../schema/index.ts';
import { formulaProblem, type PlaceWords } from './formula-problem.ts';

/** Longest formula that is accepted, in characters. */
export const LONGEST_FORMULA = 2000;

/** A formula in the form that documents keep, or a sentence that says why it cannot be read. */
export type Read = { readonly ok: true; readonly formula: string } | { readonly ok: false; readonly problem: string };

/** Says why a formula cannot be read. */
export class UnreadableFormula extends Error {}

/** What comes of reading a formula. @param placed how cells are named where it stands. */
export function readingOf(words: Words, placed: PlaceWords, read: () => string): Read {
  try {
    const formula = read();
    const problem = formulaProblem(formula, words, placed);
    return problem === undefined ? { ok: true, formula } : { ok: false, problem };
  } catch (error) {
    if (error instanceof UnreadableFormula) return { ok: false, problem: error.message };
    throw error;
  }
}

/** Refuses a text that is too long for a formula, or holds the signs by which documents keep references. */
export function refuseText(text: string, words: Words): void {
  if (text.length > LONGEST_FORMULA) {
    throw new UnreadableFormula(words.say(
      'The formula has {length} characters; at most {most} are allowed. Split it over several cells.',
      { length: text.length, most: LONGEST_FORMULA }));
  }
  if (/[⟦⟧]/.test(text)) {
    throw new UnreadableFormula(words.say('The signs ⟦ and ⟧ cannot stand in a formula. Take them out.'));
  }
}

export function sheetNamed(name: string, words: Words): SheetName {
  const found = SHEET_NAMES.find((each) => each === name.toLowerCase());
  if (found === undefined) {
    throw new UnreadableFormula(words.say('There is no sheet {name}: the sheets are {sheets}.',
      { name, sheets: SHEET_NAMES.join(', ') }));
  }
  return found;
}

/** Refuses a column that formulas cannot read. */
export function refuseColumn(sheet: SheetName, column: Column, words: Words): void {
  if (column.role !== 'computed' || isNumeric(column)) return;
  throw new UnreadableFormula(words.say(
    '{title} of the sheet {sheet} is calculated last and no formula can read it. Refer to a figure.',
    { title: words.text(column.title), sheet }));
}

/** @param row its number, from 1. */
export function noSuchRow(sheet: SheetName, row: number, words: Words): UnreadableFormula {
  return new UnreadableFormula(words.say('The sheet {sheet} has no row {row}: refer to a row that is there.',
    { sheet, row: String(row) }));
}
