import type { Finding } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, SCHEMA, type SheetName } from '../../schedule/index.ts';
import { numberCell, stateCell, textCell, textColumns } from './cells.ts';
import type { ReportCell, ReportColumn, ReportSection } from './report.ts';

const PLACE: readonly ReportColumn[] = [
  ...textColumns('State', 'Sheet'), { title: 'Row', kind: 'number' }, ...textColumns('Tag', 'Column', 'Finding'),
];

/** What was found and is open. @param only the sheet that is printed; by default all of them. */
export function findingsSection(schedule: LoadSchedule, only?: SheetName): ReportSection {
  const findings = found(schedule, only, ({ severity, accepted }) => severity !== 'note' && accepted === undefined);
  const section = { name: 'findings', title: 'Findings' };
  return findings.length === 0 ? { ...section, sentences: ['Nothing is open.'], tables: [] }
    : { ...section, sentences: [], tables: [{ columns: PLACE, rows: findings.map((finding) => ({ cells: place(finding) })) }] };
}

/** What was found and accepted, by whom, when and why; `undefined` when nothing was. */
export function acceptedSection(schedule: LoadSchedule, only?: SheetName): ReportSection | undefined {
  const findings = found(schedule, only, ({ accepted }) => accepted !== undefined);
  if (findings.length === 0) return undefined;
  const columns = [...PLACE, ...textColumns('Reason', 'Accepted by', 'Date')];
  const rows = findings.map((finding) => ({ cells: withAcceptance(finding) }));
  return { name: 'accepted', title: 'Accepted findings', sentences: [], tables: [{ columns, rows }] };
}

/** What was not checked and other notes; `undefined` when there are none. */
export function notesSection(schedule: LoadSchedule, only?: SheetName): ReportSection | undefined {
  const findings = found(schedule, only, ({ severity, accepted }) => severity === 'note' && accepted === undefined);
  if (findings.length === 0) return undefined;
  const rows = findings.map((finding) => ({ cells: place(finding).slice(1) }));
  return { name: 'notes', title: 'Not checked, and other notes', sentences: [], tables: [{ columns: PLACE.slice(1), rows }] };
}

function found(schedule: LoadSchedule, only: SheetName | undefined, isMeant: (finding: Finding) => boolean): Finding[] {
  return schedule.findings.filter((finding) => (only === undefined || finding.sheet === only) && isMeant(finding));
}

function place({ severity, sheet, row, tag, key, message, reopened }: Finding): ReportCell[] {
  const again = reopened === undefined ? ''
    : ` It was accepted by ${reopened.name} on ${reopened.date} and has grown worse since.`;
  return [
    stateCell(severity), textCell(SCHEMA[sheet].title), numberCell(String(row)), textCell(tag), textCell(columnOf(sheet, key).title),
    textCell(message + again),
  ];
}

function withAcceptance(finding: Finding): ReportCell[] {
  const { reason, name, date } = finding.accepted!;
  return [...place(finding), ...[reason, name, date].map(textCell)];
}
