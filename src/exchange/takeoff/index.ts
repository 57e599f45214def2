// A door of its own, so that a page loads this part only when somebody brings a takeoff.
export { chooseColumn } from './choose-column.ts';
export { columnsToRemember, type TakeoffColumn } from './columns.ts';
export { countedList, type CountedList, type OpenLine } from './counted-list.ts';
export type { LineDecision, NameDecision, TakeoffDecisions } from './decisions.ts';
export { TAKEOFF_FIELDS, type TakeoffField } from './field.ts';
export type { LineFlag, TakeoffLine, TakeoffOutcome } from './line.ts';
export { likeness } from './names/likeness.ts';
export { nameKeysOf } from './names/name-keys.ts';
export type { TakeoffName } from './names/name-list.ts';
export type { Candidate, TypeMatch } from './names/type-index.ts';
export { factsOfNew, type TypeFacts } from './new-types.ts';
export { officeColumns, withOfficeNames } from './office-lists.ts';
export { missingColumns, readTakeoff, type Takeoff, type TakeoffOptions, type TakeoffPart } from './read-takeoff.ts';
export type { RememberedColumns } from './remembered-columns.ts';
export { tablesOf, type LineSource, type ListCells, type TakeoffSource, type TakeoffTable } from './source.ts';
export { listsOf } from './source-text.ts';
export { equationOf, type TakeoffSums } from './sums.ts';
export { takeoffChanges, takeoffLabel, typeChanges } from './takeoff-changes.ts';
