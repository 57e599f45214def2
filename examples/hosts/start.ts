import type { RememberedColumns } from '../../src/exchange/takeoff/index.ts';
import greenhouse from '../schedules/greenhouse.schedule.json';

/** The text of the schedule that a host begins with. */
export const START = JSON.stringify(greenhouse);

/** What the columns of takeoffs hold: an object, which only a property can carry. */
export const COLUMNS: RememberedColumns = { item: 'type', pieces: 'qty' };

/** The part of a schedule's file that the hosts use. */
interface ScheduleFile {
  readonly details: Readonly<Record<string, string>>;
}

/** Name of the project in the text of a schedule. */
export function projectOf(text: string): string {
  return (JSON.parse(text) as ScheduleFile).details.project ?? '';
}

/** The text of a schedule with another name of its project. */
export function withProject(text: string, project: string): string {
  const file = JSON.parse(text) as ScheduleFile;
  return JSON.stringify({ ...file, details: { ...file.details, project } });
}
