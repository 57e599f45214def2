export {
  compareWithList, type CellUpdate, type LeftOutRow, type ListUpdate, type RowUpdate,
} from './compare-with-list.ts';
export type { ListRows } from './list-formulas.ts';
export { LIST_SHEETS, readList, type ReadList } from './read-list.ts';
export { LIST_WAYS, type ListWay } from './list-ways.ts';
export { takeList, type TakenList } from './take-list.ts';
export { replaceWithList, type ContentWithList } from './replace-list.ts';
export { updateChanges, updateCounts, updateLabel, type UpdateOptions } from './update-changes.ts';
