// A door of its own, so that a page loads this part only when somebody brings a workbook.
export { openWorkbook, type Workbook } from './open-workbook.ts';
export type { SheetRows } from './read-rows.ts';
export type { WorksheetCell } from './read-cells.ts';
