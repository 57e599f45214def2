import { ENGLISH, type Words } from '../../words/index.ts';
import { acceptancesOf, attachAcceptances } from '../acceptances.ts';
import type { ScheduleDocument } from '../document.ts';
import type { Cells, Content, Row, Snapshot } from '../snapshot.ts';
import { SHEET_NAMES, type SheetName } from '../schema/index.ts';
import { FileRows } from './file-rows.ts';
import { formulasIn } from './formulas-in.ts';
import { readKeyForm, writeKeyForm } from './key-form.ts';

/** A formula of a file that cannot be read. */
export interface FormulaProblem {
  readonly sheet: SheetName;
  /** Row number, from 1. */
  readonly row: number;
  readonly key: string;
  readonly text: string;
  readonly problem: string;
}

/**
 * Content of a file, made ready to be a document: rows get their ids, formulas the form that documents keep. A formula
 * that cannot be read is left out and reported. Rows without formulas share their cells with the content.
 * @param words the language in which to say what is wrong.
 */
export function toSnapshot(content: Content, words: Words = ENGLISH): {
  snapshot: Snapshot;
  problems: FormulaProblem[]
} {
  const problems: FormulaProblem[] = [];
  const sheets = {} as Record<SheetName, Row[]>;
  for (const sheet of SHEET_NAMES) {
    sheets[sheet] = (content.sheets[sheet] ?? []).map((cells, id) => ({ id, cells }));
  }
  const rows = new FileRows((sheet) => sheets[sheet]);
  for (const sheet of SHEET_NAMES) {
    for (const row of sheets[sheet]) {
      for (const [key, text] of formulasIn(sheet, row.cells)) {
        const read = readKeyForm(text, { sheet, row: row.id, rows }, words);
        row.cells = { ...row.cells };
        if (read.ok) row.cells[key] = read.formula;
        else {
          problems.push({ sheet, row: row.id + 1, key, text, problem: read.problem });
          delete row.cells[key];
        }
      }
    }
  }
  const unattached = attachAcceptances(content.accepted ?? [], sheets, rows);
  const { details, revisions = [], unknown = {}, view, lists, variants } = content;
  return {
    snapshot: { details: { ...details }, unattached, revisions, unknown, view, lists, variants, sheets }, problems,
  };
}

/** What a file of this document holds: input cells by row, formulas by key. */
export function toContent(document: ScheduleDocument): Content {
  const rows = new FileRows((sheet) => document.rows(sheet), (sheet, id) => document.position(sheet, id));
  const sheets = {} as Record<SheetName, Cells[]>;
  for (const sheet of SHEET_NAMES) {
    sheets[sheet] = document.rows(sheet).map(({ cells }, row) => {
      const written = { ...cells };
      for (const [key, formula] of formulasIn(sheet, cells)) written[key] = writeKeyForm(formula, { sheet, row, rows });
      return written;
    });
  }
  const { details, revisions, unknown, view, lists, variants } = document;
  const accepted = acceptancesOf(document, rows);
  return { details: { ...details }, sheets, accepted, revisions, unknown, view, lists, variants };
}
