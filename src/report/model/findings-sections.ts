import { SEVERITIES, STATE_WORDS, type Finding, type Severity } from '../../findings/index.ts';
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

/** More open findings than these make the short form long. */
export const MOST_FINDINGS = 60;

/** What was found and is open, worst first; of very many the worst, and how many more there are of each kind. */
export function worstFindingsSection(schedule: LoadSchedule): ReportSection {
  const { words } = schedule;
  const open = SEVERITIES.filter((severity) => severity !== 'note').flatMap((severity) =>
    found(schedule, undefined, (finding) => finding.severity === severity && finding.accepted === undefined));
  if (open.length === 0) return findingsSection(schedule);
  const more = open.slice(MOST_FINDINGS);
  const count = (severity: Severity) => more.filter((finding) => finding.severity === severity).length;
  const counts = SEVERITIES.map((severity) => [severity, count(severity)] as const).filter(([, n]) => n > 0)
    .map(([severity, n]) => words.say('{n} {state}', { n, state: words.say(STATE_WORDS[severity]) }));
  const rows = open.slice(0, MOST_FINDINGS).map((finding) => ({ cells: briefCells(finding, words) }));
  return {
    name: 'findings', title: words.say('Findings'),
    sentences: more.length === 0 ? [] : [words.say(
      '{n, plural, one {# finding more is open} other {# findings more are open}} ({counts}); the full form lists all of them.',
      { n: more.length, counts: counts.join(', ') },
    )],
    tables: [{ columns: briefColumns(words), rows }],
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

/** The same in few columns, of very many the first and how many more there are. */
export function briefAcceptedSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const accepted = found(schedule, undefined, (finding) => finding.accepted !== undefined);
  if (accepted.length === 0) return undefined;
  const more = accepted.length - MOST_FINDINGS;
  return {
    name: 'accepted', title: words.say('Accepted findings'),
    sentences: more <= 0 ? [] : [words.say(
      '{n, plural, one {# finding more is accepted} other {# findings more are accepted}}; the full form lists all of them.', { n: more },
    )],
    tables: [{
      columns: [...briefColumns(words), ...textColumns(words.say('Accepted because'))],
      rows: accepted.slice(0, MOST_FINDINGS).map((finding) => {
        const { reason, name, date } = finding.accepted!;
        const [, ...others] = briefCells(finding, words);
        return { cells: [acceptedCell(finding, words), ...others, textCell([reason, name, words.date(date)].filter((part) => part !== '').join(' – '))] };
      }),
    }],
  };
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

const briefColumns = (words: Words): ReportColumn[] =>
  textColumns(words.say('State'), words.say('Tag'), words.say('Finding'));

/** What was found, without sheet and column, which its sentence tells; a row without a tag has those. */
function briefCells(finding: Finding, words: Words): ReportCell[] {
  const [state, sheet, row, tag, , sentence] = cells(finding, words);
  return [state!, tag!.text === '' ? textCell(`${sheet!.text} ${row!.text}`) : tag!, sentence!];
}

const acceptedCell = ({ severity }: Finding, words: Words): ReportCell =>
  ({ ...stateCell('accepted', words), text: words.say('accepted: {state}', { state: words.say(STATE_WORDS[severity]) }) });

function withAcceptance(finding: Finding, words: Words): ReportCell[] {
  const { reason, name, date } = finding.accepted!;
  const [, ...others] = cells(finding, words);
  return [acceptedCell(finding, words), ...others, ...[reason, name, words.date(date)].map(textCell)];
}
