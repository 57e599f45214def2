import { ENGLISH, type Words } from '../../words/index.ts';
import type { ScheduleDocument } from '../document.ts';
import type { Cells, Content, Row, Snapshot } from '../snapshot.ts';
import { isNumeric, SCHEMA, SHEET_NAMES, type SheetName } from '../schema/index.ts';
import { isFormula, readFormula, showFormula } from './formula-text.ts';

/** A formula of a file that cannot be read. */
export interface FormulaProblem {
  readonly sheet: SheetName;
  /** Row number, from 1. */
  readonly row: number;
  readonly key: string;
  readonly text: string;
  readonly problem: string;
}

const numericKeys = Object.fromEntries(SHEET_NAMES.map((name) =>
  [name, SCHEMA[name].columns.filter((column) => column.role === 'input' && isNumeric(column)).map(({ key }) => key)],
)) as Record<SheetName, string[]>;

/** Cells with each formula replaced by what `write` makes of it. */
function mapFormulas(sheet: SheetName, cells: Cells, write: (formula: string, key: string) => string): Cells {
  const copy = { ...cells };
  for (const key of numericKeys[sheet]) {
    const value = copy[key];
    if (isFormula(value)) copy[key] = write(value, key);
  }
  return copy;
}

/**
 * Content of a file, made ready to be a document: rows get their ids, formulas the form that documents keep. A formula
 * that cannot be read is left out and reported.
 * @param words the language in which to say what is wrong.
 */
export function toSnapshot(content: Content, words: Words = ENGLISH): { snapshot: Snapshot; problems: FormulaProblem[] } {
  const problems: FormulaProblem[] = [];
  const rowAt = (sheet: SheetName, position: number) =>
    position >= 0 && position < (content.sheets[sheet]?.length ?? 0) ? position : undefined;
  const sheets = {} as Record<SheetName, Row[]>;
  for (const sheet of SHEET_NAMES) {
    sheets[sheet] = (content.sheets[sheet] ?? []).map((cells, id) => ({
      id,
      cells: mapFormulas(sheet, cells, (text, key) => {
        const read = readFormula(text, sheet, rowAt, words);
        if (read.ok) return read.formula;
        problems.push({ sheet, row: id + 1, key, text, problem: read.problem });
        return text;
      }),
    }));
    for (const { row, key } of problems.filter((each) => each.sheet === sheet)) delete sheets[sheet][row - 1]!.cells[key];
  }
  return {
    snapshot: {
      details: { ...content.details }, accepted: content.accepted ?? [], revisions: content.revisions ?? [],
      unknown: content.unknown ?? {}, sheets,
    },
    problems,
  };
}

/** What a file of this document holds: input cells by row, formulas as a person reads them. */
export function toContent(document: ScheduleDocument): Content {
  const sheets = {} as Record<SheetName, Cells[]>;
  for (const sheet of SHEET_NAMES) {
    sheets[sheet] = document.rows(sheet).map((row) =>
      mapFormulas(sheet, row.cells, (formula) => showFormula(formula, sheet, document)));
  }
  const { accepted, revisions, unknown } = document;
  return { details: { ...document.details }, sheets, accepted, revisions, unknown };
}
