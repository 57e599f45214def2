import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { Cells } from '../snapshot.ts';
import type { CellValue, SheetName } from '../schema/index.ts';
import { insertRows } from './insert-rows.ts';
import { setCells, type CellEdit } from './set-cells.ts';

/**
 * Changes that write a block of cells from place `at` on; the sheet grows where the block reaches beyond its end.
 * @param keys the column of each place in a line of the block.
 * @param values lines of the block; `undefined` leaves a cell as it is, `null` empties it.
 */
export function pasteCells(
  document: ScheduleDocument, sheet: SheetName, at: number, keys: readonly string[],
  values: readonly (readonly (CellValue | undefined)[])[],
): Change[] {
  const rows = document.rows(sheet);
  const edits: CellEdit[] = [];
  const added: Cells[] = [];
  values.forEach((line, index) => {
    const row = rows[at + index];
    const cells: Cells = {};
    keys.forEach((key, place) => {
      const value = line[place];
      if (value === undefined) return;
      if (row !== undefined) edits.push({ sheet, id: row.id, key, value });
      else if (value !== null) cells[key] = value;
    });
    if (row === undefined) added.push(cells);
  });
  return [...setCells(document, edits), ...insertRows(document, sheet, rows.length, added)];
}
