export { CAUTIONS } from './cautions.ts';
export { loadTableHtml, type LoadTableOptions } from './load-table-html.ts';
export { tableJson, type TableFinding, type TableJson } from './table-json.ts';
