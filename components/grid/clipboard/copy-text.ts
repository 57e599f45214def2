import { formatCell } from '../../../src/schedule/index.ts';
import { clipboardColumns, idAt, isStatus, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { writeTable } from './read-table.ts';

/**
 * The selected cells as a table for the clipboard, with figures in full, columns in the order of the schema;
 * headings are left out. A status is taken when it is selected by itself or with the column before it in that order.
 */
export function copyText(model: GridModel, selection: GridSelection): string {
  const { schedule, sheet, words } = model;
  const selected = selection.columns.map((index) => model.columns[index]!);
  const ordered = clipboardColumns(model);
  const columns = ordered.filter((column, place) => selected.includes(column)
    && (!isStatus(column) || selected.length === 1 || selected.includes(ordered[place - 1]!)));
  const ids = selection.lines.map((line) => idAt(model, line)).filter((id) => id >= 0);
  return writeTable(ids.map((id) =>
    columns.map((column) => formatCell(column, schedule.value(sheet, id, column.key), words, 'copy'))));
}
