import type { LoadSchedule } from '../load-schedule.ts';
import { isFormula, type Cells, type SheetName } from '../schedule/index.ts';

/**
 * The cells of a row for another one like it: a formula, which would go on reading the row that it was typed in, as
 * what it comes to.
 * @param without keys that are left out
 */
export function cellsLike(
  schedule: LoadSchedule, sheet: SheetName, id: number, without: ReadonlySet<string> = new Set(),
): Cells {
  return Object.fromEntries(Object.entries(schedule.document.row(sheet, id)!.cells)
    .filter(([key]) => !without.has(key))
    .map(([key, value]) => [key, isFormula(value) ? schedule.value(sheet, id, key) : value]));
}

/** What is said of a way itself, and not of another one like it. */
export const NOTE: ReadonlySet<string> = new Set(['note']);
