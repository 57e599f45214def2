import type { LoadSchedule } from '../../load-schedule.ts';
import { textCell, textColumns } from './cells.ts';
import type { ReportSection } from './report.ts';

/** The history of issues; the present one comes last, from the details where the history does not hold it yet. */
export function revisionsSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words, document: { details, revisions } } = schedule;
  const isListed = details.revision === undefined || revisions.some(({ revision }) => revision === details.revision);
  const present = isListed ? []
    : [
      {
        revision: details.revision!, date: details.date ?? '', name: details.preparedBy ?? '',
        text: words.say('This issue'),
      },
    ];
  const rows = [...revisions, ...present]
    .map(({ revision, date, name, text }) => ({ cells: [revision, words.date(date), name, text].map(textCell) }));
  if (rows.length === 0) return undefined;
  const columns =
    textColumns(words.say('Revision'), words.say('Date'), words.say('Issued by'), words.say('What is different'));
  return { name: 'revisions', title: words.say('Revisions'), sentences: [], tables: [{ columns, rows }] };
}
