export { changesSection } from './changes-section.ts';
export { changesText } from './changes-text.ts';
export {
  compareSchedules, type FigureChange, type RowChange, type ScheduleChanges, type ValueChange,
} from './compare-schedules.ts';
export {
  onTrial, triedOn, tryChanges, type RowOutcome, type StandingChange, type TriedChanges,
} from './try-changes.ts';
