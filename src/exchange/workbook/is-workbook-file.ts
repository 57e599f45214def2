import { isWorkbook } from '../xlsx/index.ts';

/** Whether a file is a workbook, or by its name should be one. It stands apart from what reads workbooks, so as to be small. */
export function isWorkbookFile(name: string, bytes: Uint8Array): boolean {
  return isWorkbook(bytes) || /\.xls[xm]?$/i.test(name);
}
