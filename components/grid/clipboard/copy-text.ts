import { shownText } from '../../../src/findings/shown-text.ts';
import { formatCell, isStatus } from '../../../src/schedule/index.ts';
import { clipboardColumns, idAt, type GridModel } from '../grid-model.ts';
import { asOneBlock, type GridSelection } from '../grid-selection.ts';
import { enteredCells } from './entered-cells.ts';
import { writeTable } from './read-table.ts';

/** What goes to the clipboard: what is shown, for every program, and what was entered, for a schedule. */
export interface Copied {
  readonly text: string;
  /** As `readEntered` reads it. */
  readonly entered: string;
}

/**
 * The selected cells as a table for the clipboard, with figures in full, columns in the order of the schema;
 * headings are left out. A status is taken when it is selected by itself or with the column before it in that order.
 * @returns `undefined` when blocks do not align, so that they are no table together.
 */
export function copyCells(model: GridModel, selection: GridSelection): Copied | undefined {
  const { schedule, sheet, words } = model;
  const block = asOneBlock(selection);
  if (block === undefined) return undefined;
  const selected = block.columns.map((index) => model.columns[index]!);
  const ordered = clipboardColumns(model);
  const columns = ordered.filter((column, place) => selected.includes(column)
    && (!isStatus(column) || selected.length === 1 || selected.includes(ordered[place - 1]!)));
  const ids = block.lines.map((line) => idAt(model, line)).filter((id) => id >= 0);
  const text = writeTable(ids.map((id) => columns.map((column) => {
    const value = schedule.shown(sheet, id, column.key);
    return isStatus(column) ? shownText(column, value, words) : formatCell(column, value, words, 'copy');
  })));
  return { text, entered: JSON.stringify(enteredCells(model, ids, columns, text)) };
}
