import { formatCell } from '../../../src/schedule/index.ts';
import { idAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { writeTable } from './read-table.ts';

/** The selected cells as a table for the clipboard, with figures in full; headings are left out. */
export function copyText(model: GridModel, selection: GridSelection): string {
  const { schedule, sheet, locale } = model;
  const columns = selection.columns.map((index) => model.columns[index]!);
  const ids = selection.lines.map((line) => idAt(model, line)).filter((id) => id >= 0);
  return writeTable(ids.map((id) =>
    columns.map((column) => formatCell(column, schedule.value(sheet, id, column.key), locale, 'copy'))));
}
