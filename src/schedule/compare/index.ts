export { compareLists, compareUnknown, isSameData, type ListChange, type UnknownChange } from './compare-lists.ts';
export { inOrder } from './in-order.ts';
export { matchRows, pairRows, type MatchedRows, type RowPair } from './match-rows.ts';
