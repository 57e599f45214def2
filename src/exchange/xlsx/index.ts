export { EMBEDDED_SHEET, embeddedInWorkbook, isWorkbook } from './read-workbook.ts';
