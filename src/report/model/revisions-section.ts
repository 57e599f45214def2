import type { LoadSchedule } from '../../load-schedule.ts';
import type { IssueState } from '../../schedule/index.ts';
import { message, type Words } from '../../words/index.ts';
import { checkIssue } from '../digest/index.ts';
import { textCell, textColumns } from './cells.ts';
import type { ReportDetail, ReportSection } from './report.ts';

/** What a schedule is issued for, as it is said. */
export const ISSUE_STATE_TITLES = {
  'for approval': message('For approval'), 'for construction': message('For construction'), 'as built': message('As built'),
} as const satisfies Readonly<Record<IssueState, unknown>>;

/** As many digits of an issue as are printed on each page. */
const DIGITS = 16;

/** The first digits of a SHA-256 as they are read aloud: 3f09 1a2b …. */
export const firstDigits = (digest: string): string => digest.slice(0, DIGITS).replace(/(.{4})(?=.)/g, '$1 ');

/** The history of issues; the present one comes last, from the details where the history does not hold it yet. */
export function revisionsSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words, document: { details, revisions } } = schedule;
  const isListed = details.revision === undefined || revisions.some(({ revision }) => revision === details.revision);
  const present = isListed ? []
    : [
      {
        revision: details.revision!, date: details.date ?? '', name: details.preparedBy ?? '',
        text: revisions.some(({ digest }) => digest !== undefined) ? words.say('Not issued yet') : words.say('This issue'),
      },
    ];
  const hasIssues = revisions.some(({ digest }) => digest !== undefined);
  const rows = [...revisions, ...present].map(({ revision, date, name, text, ...issued }) => ({
    cells: [
      revision, words.date(date), name, text,
      ...hasIssues ? [
        'state' in issued && issued.state !== undefined ? words.say(ISSUE_STATE_TITLES[issued.state]) : '',
        'digest' in issued && issued.digest !== undefined ? firstDigits(issued.digest) : '',
      ] : [],
    ].map(textCell),
  }));
  if (rows.length === 0) return undefined;
  const columns = textColumns(
    words.say('Revision'), words.say('Date'), words.say('Issued by'), words.say('What is different'),
    ...hasIssues ? [words.say('Issued'), words.say('SHA-256 without this line')] : [],
  );
  return { name: 'revisions', title: words.say('Revisions'), sentences: [issueSentence(schedule, words)].filter((each) => each !== ''), tables: [{ columns, rows }] };
}

/** What the schedule is issued for, for the title block; nothing where none of it was ever issued. */
export function stateDetail(schedule: LoadSchedule): ReportDetail[] {
  const { words, document: { revisions } } = schedule;
  if (revisions.every(({ digest }) => digest === undefined)) return [];
  const checked = checkIssue(schedule.content());
  const text = checked === undefined ? words.say('Not issued yet')
    : !checked.isUnchanged ? words.say('Not as it was issued')
    : checked.issue.state === undefined ? words.say('Issued') : words.say(ISSUE_STATE_TITLES[checked.issue.state]);
  return [{ key: 'state', title: words.say('State'), text }];
}

/** Whether the schedule is what was issued last; empty where nothing is issued. */
export function issueSentence(schedule: LoadSchedule, words: Words): string {
  const { document: { details, revisions } } = schedule;
  const last = revisions.findLast(({ digest }) => digest !== undefined);
  if (last === undefined) return '';
  const checked = checkIssue(schedule.content());
  if (checked === undefined) {
    return words.say('Revision {issued} was issued on {date}. What is different since belongs to revision {revision}, which is not issued.', {
      issued: last.revision, date: words.date(last.date), revision: details.revision ?? '–',
    });
  }
  const { issue: { revision, date }, isUnchanged } = checked;
  return isUnchanged
    ? words.say('This is revision {revision} as it was issued on {date}: its SHA-256 is that of the history.', { revision, date: words.date(date) })
    : words.say('It says that it is revision {revision}, issued on {date}, but its SHA-256 is not that of the history: something was changed outside of this software, or written by another version of it. Compare it with what was issued.', { revision, date: words.date(date) });
}
