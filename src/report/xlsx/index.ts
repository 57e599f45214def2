// A door of its own, so that a page loads this part only when somebody saves or opens a workbook.
export { loadTableXlsx } from './load-table-xlsx.ts';
export { readLoadTable, type CarriedSchedule } from './read-load-table.ts';
