import { checkCell, tagOf, type InputColumn, type ParsedCell } from '../../../src/schedule/index.ts';
import type { EnteredCells } from '../clipboard/entered-cells.ts';
import type { GridModel } from '../grid-model.ts';

/** A cell that was copied here or in another schedule, and where it goes. */
export interface Landing {
  /** Place of its line and of its column in what was copied. */
  readonly line: number;
  readonly place: number;
  readonly column: InputColumn;
  /** Number of the row that it goes to, from 1. */
  readonly row: number;
  /** Ids of the rows that are still to come at the end of the sheet. */
  readonly coming: readonly number[];
}

/**
 * What was entered in a copied cell, for the cell that it goes to; formulas move along as a fill moves them.
 * @returns `undefined` where its text counts: in another column, and for a formula that names rows of another sheet
 * which are
 *   others here.
 */
export function readEnteredCell(
  { schedule, sheet, words }: GridModel, entered: EnteredCells, landing: Landing
): ParsedCell | undefined {
  const { column, coming } = landing;
  const source = entered.rows[landing.line];
  const cell = source?.cells[landing.place];
  if (source === undefined || cell === undefined || entered.keys[landing.place] !== column.key) return undefined;
  if (cell === null || typeof cell !== 'object') {
    const problem = checkCell(column, cell, undefined, words);
    return problem === undefined ? { ok: true, value: cell } : { ok: false, problem };
  }
  const isSame = cell.names.every(([target, number, tag]) => {
    const row = schedule.rows(target)[number - 1];
    return row !== undefined && tagOf(target, row) === tag;
  });
  return isSame
    ? schedule.checkFormula(sheet, column.key, cell.formula, { down: landing.row - source.number, coming })
    : undefined;
}
