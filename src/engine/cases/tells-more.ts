import { columnOf, type CellValue, type SheetName } from '../../schedule/index.ts';

interface Figures {
  value(sheet: SheetName, id: number, key: string): CellValue;
}

/** Whether a figure has a value, and as one of marked cases another than the figure itself. */
export function tellsMore(figures: Figures, sheet: SheetName, id: number, key: string): boolean {
  const value = figures.value(sheet, id, key);
  const column = columnOf(sheet, key);
  const of = column.role === 'computed' ? column.inMarkedCase?.of : undefined;
  return value !== null && (of === undefined || value !== figures.value(sheet, id, of));
}
