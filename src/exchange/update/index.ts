export {
  compareWithList, type CellUpdate, type LeftOutRow, type ListUpdate, type RowUpdate,
} from './compare-with-list.ts';
export type { ListRows } from './list-formulas.ts';
export { readList, LIST_SHEETS } from './read-list.ts';
export { updateChanges, updateCounts, updateLabel, type UpdateOptions } from './update-changes.ts';
