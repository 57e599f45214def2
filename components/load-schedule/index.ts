export { ElvColumnsEvent } from '../takeoff-reader/columns-event.ts';
export {
  ElvChangeEvent, ElvErrorEvent, ElvLanguageEvent, ElvLoadEvent, ElvSaveEvent, type ElvProblem,
} from './events.ts';
export type { NamedText } from './files.ts';
export { ElvInputError } from './input-error.ts';
export { LoadScheduleElement } from './load-schedule.ts';
