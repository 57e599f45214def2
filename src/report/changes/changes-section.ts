import { columnOf, SCHEMA } from '../../schedule/index.ts';
import { numberCell, textCell, textColumns } from '../model/cells.ts';
import { DETAIL_TITLES } from '../model/detail-titles.ts';
import type { ReportSection, ReportTable } from '../model/report.ts';
import { changedValue, kindWords, valueWords } from './changes-text.ts';
import type { ScheduleChanges } from './compare-schedules.ts';
import type { Words } from '../../words/index.ts';

/**
 * What has changed since an older schedule, as a part of the load table.
 * @param since names the older schedule: `revision B of 2026-10-02`.
 */
export function changesSection({ details, rows, figures }: ScheduleChanges, since: string, words: Words): ReportSection {
  const tables: ReportTable[] = [];
  const add = (table: ReportTable) => { if (table.rows.length > 0) tables.push(table); };
  add({
    title: 'Details', columns: textColumns('Detail', 'Before', 'Now'),
    rows: details.map(({ key, before, after }) => ({ cells: [DETAIL_TITLES[key], String(before ?? '–'), String(after ?? '–')].map(textCell) })),
  });
  add({
    title: 'Rows', columns: textColumns('Sheet', 'Tag', 'What became of it', 'Values'),
    rows: rows.map((change) => ({
      cells: [SCHEMA[change.sheet].title, change.tag, kindWords(change), valueWords(change.sheet, change, words)].map(textCell),
    })),
  });
  add({
    title: 'What that did to totals and statuses',
    columns: [...textColumns('Sheet', 'Tag', 'Figure'), { title: 'Before', kind: 'number' }, { title: 'Now', kind: 'number' }],
    rows: figures.flatMap(({ sheet, tag, values }) => values.map(({ key, before, after }) => {
      const column = columnOf(sheet, key);
      const [was, is] = [before, after].map((value) => numberCell(changedValue(column, value, words)));
      return { cells: [textCell(SCHEMA[sheet].title), textCell(tag), textCell(column.title), was!, is!] };
    })),
  });
  const sentences = tables.length === 0 ? [`Nothing is different from ${since}.`] : [`Compared with ${since}. Rows are matched by their tags, then by what they hold.`];
  return { name: 'changes', title: 'Changes', sentences, tables };
}
