import type { CellValue, SheetName } from '../schedule/index.ts';

/** What a cell is read of. */
export interface CellFigures {
  value(sheet: SheetName, id: number, key: string): CellValue;
}

/** What a cell is worth as a number; `null` where it is unknown, or none. */
export function numberOf(figures: CellFigures, sheet: SheetName, id: number, key: string): number | null {
  const value = figures.value(sheet, id, key);
  return typeof value === 'number' ? value : null;
}

/** The text of a cell; `null` where it holds none. */
export function textOf(figures: CellFigures, sheet: SheetName, id: number, key: string): string | null {
  const value = figures.value(sheet, id, key);
  return typeof value === 'string' && value !== '' ? value : null;
}
