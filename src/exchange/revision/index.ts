// A door of its own, so that a page loads this part only when a list comes again.
export { askedRows, withAsked } from './asked-rows.ts';
export type { RevisedList } from './choose-lists.ts';
export type { Matched } from './match-units.ts';
export {
  countOutcomes, reviseSchedule, type RevisedOutcome, type RevisedRow, type ListRevision, type RevisionOptions,
} from './revise.ts';
export { revisionChanges, revisionLabel } from './revision-changes.ts';
export type { RevisedSchedule } from './units.ts';
