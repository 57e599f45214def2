import { findColumn, isNumeric, type SheetName } from '../schema/index.ts';
import type { Cells } from '../snapshot.ts';
import { isFormula } from './formula-text.ts';

const NONE: readonly [key: string, formula: string][] = [];

/** The formulas in the cells of a row, with their keys. */
export function formulasIn(sheet: SheetName, cells: Cells): typeof NONE {
  let found = NONE;
  for (const key in cells) {
    const value = cells[key]!;
    if (!isFormula(value)) continue;
    const column = findColumn(sheet, key);
    if (column?.role === 'input' && isNumeric(column)) found = [...found, [key, value]];
  }
  return found;
}
