import { STATE_WORDS, type Finding } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, SCHEMA, type SheetName } from '../../schedule/index.ts';
import { numberCell, stateCell, textCell, textColumns } from './cells.ts';
import type { ReportCell, ReportColumn, ReportSection } from './report.ts';
import type { Words } from '../../words/index.ts';

const place = (words: Words): readonly ReportColumn[] => [
  ...textColumns(words.say('State'), words.say('Sheet')), { title: words.say('Row'), kind: 'number' },
  ...textColumns(words.say('Tag'), words.say('Column'), words.say('Finding')),
];

/** What was found and is open. @param only the sheet that is printed; by default all of them. */
export function findingsSection(schedule: LoadSchedule, only?: SheetName): ReportSection {
  const { words } = schedule;
  const findings = found(schedule, only, ({ severity, accepted }) => severity !== 'note' && accepted === undefined);
  const section = { name: 'findings', title: words.say('Findings') };
  return findings.length === 0 ? { ...section, sentences: [words.say('Nothing is open.')], tables: [] }
    : {
      ...section, sentences: [],
      tables: [{ columns: place(words), rows: findings.map((each) => ({ cells: cells(each, words) })) }],
    };
}

/** What was found and accepted, by whom, when and why; `undefined` when nothing was. */
export function acceptedSection(schedule: LoadSchedule, only?: SheetName): ReportSection | undefined {
  const { words } = schedule;
  const findings = found(schedule, only, ({ accepted }) => accepted !== undefined);
  if (findings.length === 0) return undefined;
  const columns = [...place(words), ...textColumns(words.say('Reason'), words.say('Accepted by'), words.say('Date'))];
  const rows = findings.map((finding) => ({ cells: withAcceptance(finding, words) }));
  return { name: 'accepted', title: words.say('Accepted findings'), sentences: [], tables: [{ columns, rows }] };
}

/** What was not checked and other notes; `undefined` when there are none. */
export function notesSection(schedule: LoadSchedule, only?: SheetName): ReportSection | undefined {
  const { words } = schedule;
  const findings = found(schedule, only, ({ severity, accepted }) => severity === 'note' && accepted === undefined);
  if (findings.length === 0) return undefined;
  const rows = findings.map((finding) => ({ cells: cells(finding, words).slice(1) }));
  return {
    name: 'notes', title: words.say('Not checked, and other notes'), sentences: [],
    tables: [{ columns: place(words).slice(1), rows }],
  };
}

function found(schedule: LoadSchedule, only: SheetName | undefined, isMeant: (finding: Finding) => boolean): Finding[] {
  return schedule.findings.filter((finding) => (only === undefined || finding.sheet === only) && isMeant(finding));
}

function cells({ severity, sheet, row, tag, key, message, reopened }: Finding, words: Words): ReportCell[] {
  const again = reopened === undefined ? []
    : [
      words.say(
        'It was accepted by {name} on {date} and has grown worse since.', { name: reopened.name, date: words.date(reopened.date) }
      ),
    ];
  return [
    stateCell(severity, words), textCell(words.text(SCHEMA[sheet].title)), numberCell(String(row)), textCell(tag),
    textCell(words.text(columnOf(sheet, key).title)), textCell([message, ...again].join(' ')),
  ];
}

function withAcceptance(finding: Finding, words: Words): ReportCell[] {
  const { reason, name, date } = finding.accepted!;
  const [, ...others] = cells(finding, words);
  const state = { ...stateCell('accepted', words), text: words.say('accepted: {state}', { state: words.say(STATE_WORDS[finding.severity]) }) };
  return [state, ...others, ...[reason, name, words.date(date)].map(textCell)];
}
