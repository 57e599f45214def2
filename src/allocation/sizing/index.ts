export { createSized, type MadeRows } from './create-sized.ts';
export { OFFICE_LISTS, type OfficeLists } from './office-lists.ts';
export { sizePanel } from './size-panel.ts';
export { sizingCsv } from './sizing-csv.ts';
export type { SizingOptions, SizingRow } from './sizing.ts';
