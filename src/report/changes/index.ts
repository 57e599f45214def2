export { changesSection } from './changes-section.ts';
export { changesText } from './changes-text.ts';
export { compareOutcomes, OUTCOME_FIGURES, type OutcomeFigure, type RowComparison } from './compare-outcomes.ts';
export {
  compareSchedules, type FigureChange, type RowChange, type ScheduleChanges, type ValueChange,
} from './compare-schedules.ts';
export {
  onTrial, triedOn, tryChanges, type RowOutcome, type StandingChange, type TriedChanges,
} from './try-changes.ts';
