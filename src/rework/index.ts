export {
  belongingRows, DUPLICATED, runsOfWay, taggedWays, type DuplicatedSheet, type DuplicateOf, type RowIds,
} from './belonging.ts';
export {
  duplicateRows, proposeRenamings, type CopiedRow, type DuplicatePlan, type Duplication,
} from './duplicate.ts';
export {
  moveDevices, type DeviceMove, type MovePlan, type PartlyFate, type PartlyMoved, type SharedWay, type WayFate,
} from './move-devices.ts';
export { alongRun, splitRun, type RunSplit, type SplitPlan, type SplitProblem, type SplitWay } from './split-run.ts';
export { mayHaveRemedies } from './may-have-remedies.ts';
export { triedRemedies, type TriedRemedy } from './remedies.ts';
export {
  ownOfType, rowsToSwap, sumDevices, swapType, TYPE_VALUES, type DeviceSums, type TypeSwap,
} from './swap-type.ts';
export { renamedTag, type Renaming } from './renamed.ts';
