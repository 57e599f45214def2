import { columnOf, SCHEMA } from '../../schedule/index.ts';
import { numberCell, textCell, textColumns } from '../model/cells.ts';
import { detailText, DETAIL_TITLES } from '../model/detail-titles.ts';
import type { ReportSection, ReportTable } from '../model/report.ts';
import { changedValue, figuresByPanel, kindWords, valueWords } from './changes-text.ts';
import type { ScheduleChanges } from './compare-schedules.ts';
import { otherChanges } from './other-changes.ts';
import type { Words } from '../../words/index.ts';

/**
 * What has changed since an older schedule, as a part of the load table.
 * @param since names the older schedule: `revision B of 2026-10-02`.
 */
export function changesSection(changes: ScheduleChanges, since: string, words: Words): ReportSection {
  const { isSame, details, rows, figures } = changes;
  const tables: ReportTable[] = [];
  const add = (table: ReportTable) => { if (table.rows.length > 0) tables.push(table); };
  add({
    title: words.say('Details'), columns: textColumns(words.say('Detail'), words.say('Before'), words.say('Now')),
    rows: details.map(({ key, before, after }) => {
      const texts = [before, after].map((text) => detailText(key, text, words));
      return { cells: [words.say(DETAIL_TITLES[key]), ...texts].map(textCell) };
    }),
  });
  add({
    title: words.say('Rows'),
    columns: textColumns(words.say('Sheet'), words.say('Tag'), words.say('What became of it'), words.say('Values')),
    rows: rows.map((change) => ({
      cells: [
        words.text(SCHEMA[change.sheet].title), change.tag, kindWords(change, words),
        valueWords(change.sheet, change, words),
      ].map(textCell),
    })),
  });
  for (const [title, those] of figuresByPanel(figures, words)) add({
    title,
    columns: [
      ...textColumns(words.say('Sheet'), words.say('Tag'), words.say('Figure')),
      { title: words.say('Before'), kind: 'number' }, { title: words.say('Now'), kind: 'number' },
    ],
    rows: those.flatMap(({ sheet, tag, values }) => values.map(({ key, before, after }) => {
      const column = columnOf(sheet, key);
      const [was, is] = [before, after].map((value) => numberCell(changedValue(column, value, words)));
      const texts = [words.text(SCHEMA[sheet].title), tag, words.text(column.title)].map(textCell);
      return { cells: [...texts, was!, is!] };
    })),
  });
  for (const { title, columns, rows: lines } of otherChanges(changes, words)) {
    add({ title, columns: textColumns(...columns), rows: lines.map((texts) => ({ cells: texts.map(textCell) })) });
  }
  return {
    name: 'changes', title: words.say('Changes'), sentences: [sentenceOf(isSame, tables.length > 0, since, words)],
    tables,
  };
}

function sentenceOf(isSame: boolean, isListed: boolean, since: string, words: Words): string {
  if (isSame) return words.say('Nothing is different from {since}.', { since });
  if (isListed) {
    return words.say('Compared with {since}. Rows are matched by their tags, then by what they hold.', { since });
  }
  return words.say(
    'Compared with {since}. Only blank rows, or the order of revisions and acceptances, are different.', { since }
  );
}
