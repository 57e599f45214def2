export { EMBEDDED_SHEET, embeddedInWorkbook, isWorkbook } from './read-workbook.ts';
export { attribute, attributesOf } from './xml-elements.ts';
export { sheetsOf, type WorkbookSheet } from './workbook-sheets.ts';
