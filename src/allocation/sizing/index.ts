export { createSized, type MadeRows } from './create-sized.ts';
export { OFFICE_LISTS, type OfficeLists } from './office-lists.ts';
export { sizeJob, sizePanel } from './size-panel.ts';
export { sizingCsv } from './sizing-csv.ts';
export type { Sized, SizingOptions, SizingRow } from './sizing.ts';
