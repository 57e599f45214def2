import { formatCell, type Column } from '../schedule/index.ts';
import type { ReadPlace } from './read-cell.ts';

/** What the editor of a cell begins with: the formula, or the value in full, with which an unchanged cell is told. */
export function editedText({ schedule, sheet, words }: ReadPlace, id: number, column: Column): string {
  return schedule.formulaText(sheet, id, column.key, words)
    ?? formatCell(column, schedule.value(sheet, id, column.key), words, 'edit');
}
