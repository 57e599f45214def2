import type { LoadSchedule } from '../../src/load-schedule.ts';
import { isBlank, type SheetName } from '../../src/schedule/index.ts';
import type { Finding } from '../../src/findings/finding.ts';
import { message } from '../../src/words/index.ts';

/** One step from counts to what is handed over. */
export interface Step {
  readonly title: string;
  /** What is to be done, in a sentence. */
  readonly hint: string;
  /** Where it is done: a sheet, the worst finding, or the load table. */
  readonly place: SheetName | 'findings' | 'loadTable';
  /** Whether the document holds what the step is to give. */
  readonly isDone: (schedule: LoadSchedule) => boolean;
}

const has = (schedule: LoadSchedule, sheet: SheetName): boolean => !schedule.rows(sheet).every(isBlank);

/** Whether something is still missing that is entered on these sheets, or in these columns of device rows. */
function lacks(schedule: LoadSchedule, sheets: readonly SheetName[], keys: readonly string[]): boolean {
  return schedule.findings.some((finding) => finding.severity === 'incomplete' && isOpen(finding)
    && (sheets.includes(finding.sheet) || (finding.sheet === 'devices' && keys.includes(finding.key))));
}

const isOpen = ({ accepted }: Finding): boolean => accepted === undefined;

export const STEPS: readonly Step[] = [
  {
    title: message('Counts'), place: 'devices',
    hint: message('List the devices: type them, paste rows of any spreadsheet, or read a takeoff.'),
    isDone: (schedule) => has(schedule, 'devices') && !lacks(schedule, [], ['qty', 'state']),
  },
  {
    title: message('Types'), place: 'types',
    hint: message('Give each device type its draw, nodes and voltage; general types are taken by name.'),
    isDone: (schedule) => has(schedule, 'devices') && has(schedule, 'types')
      && !lacks(schedule, ['types'], ['type', 'unitDraw', 'nodes']),
  },
  {
    title: message('Supplies and branches'), place: 'supplies',
    hint: message('List supplies and bus branches and give each device row its own; Share out and Sizing do it for you.'),
    isDone: (schedule) => has(schedule, 'supplies') && !lacks(schedule, ['supplies', 'branches'], ['rail', 'branch']),
  },
  {
    title: message('Runs'), place: 'runs',
    hint: message('List the field cables with conductor, length and protection, and give each device row its run.'),
    isDone: (schedule) => has(schedule, 'runs')
      && !lacks(schedule, ['runs', 'ways', 'conductors'], ['run', 'distance']),
  },
  {
    title: message('Check'), place: 'findings',
    hint: message('Put right what was found, or accept it with a reason; the worst comes first.'),
    isDone: (schedule) => has(schedule, 'devices')
      && !schedule.findings.some((finding) => finding.severity !== 'note' && isOpen(finding)),
  },
  {
    title: message('Hand over'), place: 'loadTable',
    hint: message('Note the revision in the load table, then print it or save it.'),
    isDone: ({ document }) => document.revisions.length > 0,
  },
];
