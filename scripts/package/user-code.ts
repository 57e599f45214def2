/**
 * TypeScript of a user of the package: every line compiles, and every line marked so does not, so that no type is
 * `any`.
 */
export const USER_CODE = `
import {
  buildReport, LoadSchedule, loadTableHtml, readSchedule, setCells, writeSchedule, type Finding, type ScheduleEvent, type SheetName,
} from 'elv-load-schedule';
import { demandCurrent } from 'elv-load-schedule/electrical.js';
import { ElvErrorEvent, LoadScheduleElement } from 'elv-load-schedule/element.js';
import 'elv-load-schedule/define.js';

const element: LoadScheduleElement = document.createElement('elv-load-schedule');
element.licenseKey = 'key';
element.addEventListener('elv-change', (event) => {
  const said: [label: string, cause: 'act' | 'undo' | 'redo' | 'load'] = [event.label, event.cause];
  // @ts-expect-error There is no such field.
  return [said, event.nothing];
});
document.addEventListener('elv-error', (event) => event instanceof ErrorEvent);
element.addEventListener('elv-error', ({ problems }: ElvErrorEvent) => problems.map(({ message, line }) => \`\${line ?? ''} \${message}\`));
// @ts-expect-error A property of another type.
element.readonly = 'yes';

const schedule: LoadSchedule = element.schedule;
const sheet: SheetName = 'supplies';
schedule.subscribe(({ label }: ScheduleEvent) => { label.trim(); });
schedule.act('Rating', setCells(schedule.document, [{ sheet, id: 0, key: 'rated', value: 10 }]));
// @ts-expect-error There is no such sheet.
schedule.rows('pages');
const worst: Finding | undefined = schedule.findings[0];
const amps: number = demandCurrent(2, 0.7);
const read = readSchedule(writeSchedule(schedule.content()));
const page: string = loadTableHtml(buildReport(schedule, { generated: '2026-01-01' }));
// @ts-expect-error What was read is known only where it is ok.
read.content;
export const seen = [worst?.message, amps, read.ok, page];
`;
