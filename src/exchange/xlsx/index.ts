export { EMBEDDED_SHEET, embeddedInWorkbook, isWorkbook } from './read-workbook.ts';
export { sheetsOf, type WorkbookSheet } from './workbook-sheets.ts';
