export {
  compareList, type CellUpdate, type LeftOutRow, type ListUpdate, type RowUpdate,
} from './compare-list.ts';
export type { ListRows } from './list-formulas.ts';
export { readList, LIST_SHEETS } from './read-list.ts';
export { updateChanges, updateCounts, updateLabel, type FormulaChoice } from './update-changes.ts';
