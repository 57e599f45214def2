// A door of its own, so that a page loads this part only when somebody brings a takeoff.
export { columnsToRemember, type TakeoffColumn } from './columns.ts';
export type { LineDecision, NameDecision, TakeoffDecisions } from './decisions.ts';
export { TAKEOFF_FIELDS, type TakeoffField } from './field.ts';
export type { LineFlag, TakeoffLine, TakeoffOutcome } from './line.ts';
export { likeness } from './names/likeness.ts';
export { nameKeysOf } from './names/name-keys.ts';
export type { TakeoffName } from './names/name-list.ts';
export type { Candidate, TypeMatch } from './names/type-index.ts';
export { missingColumns, readTakeoff, type Takeoff, type TakeoffOptions, type TakeoffPart } from './read-takeoff.ts';
export type { RememberedColumns } from './remembered-columns.ts';
export type { LineSource, ListCells, TakeoffSource, TakeoffTable } from './source.ts';
export { equationOf, type TakeoffSums } from './sums.ts';
export { takeoffChanges, takeoffLabel } from './takeoff-changes.ts';
