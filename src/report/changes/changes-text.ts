import { columnOf, formatCell, SCHEMA, type CellValue, type Column, type SheetName } from '../../schedule/index.ts';
import { DETAIL_TITLES } from '../model/detail-titles.ts';
import { STATE_WORDS } from '../model/state-words.ts';
import type { RowChange, ScheduleChanges, ValueChange } from './compare-schedules.ts';
import { ENGLISH, type Words } from '../../words/index.ts';

/** A value for a person: with its unit, a status in words, nothing as «–». */
export function changedValue(column: Column, value: CellValue, words: Words): string {
  if (value === null || value === '') return '–';
  if (column.role === 'computed' && column.status === true) return STATE_WORDS[value as keyof typeof STATE_WORDS];
  const text = formatCell(column, value, words, 'show');
  return column.unit === undefined || typeof value !== 'number' ? text : `${text}\u00a0${column.unit}`;
}

/** What became of a row, in a few words. */
export function kindWords({ kind, row, was }: RowChange): string {
  switch (kind) {
    case 'added': return `added as row ${row}`;
    case 'removed': return `removed, was row ${was}`;
    case 'moved': return `moved from row ${was} to row ${row}`;
    case 'changed': return 'changed';
  }
}

/** The changes between two schedules as lines for a terminal. */
export function changesText({ details, rows, figures }: ScheduleChanges, words = ENGLISH): string {
  const lines: string[] = [];
  const block = (title: string, inner: readonly string[]) => {
    if (inner.length > 0) lines.push(title, ...inner.map((line) => `  ${line}`), '');
  };
  block('Details', details.map(({ key, before, after }) => `${DETAIL_TITLES[key]}: ${before ?? '–'} → ${after ?? '–'}`));
  const sheets = [...new Set(rows.map(({ sheet }) => sheet))];
  for (const sheet of sheets) {
    const inner = rows.filter((each) => each.sheet === sheet).map((change) => {
      const values = valueWords(sheet, change, words);
      return `${change.tag || 'without a tag'}: ${kindWords(change)}${values === '' ? '' : `: ${values}`}`;
    });
    block(SCHEMA[sheet].title, inner);
  }
  block('What that did to totals and statuses', figures.map(({ sheet, tag, row, values }) =>
    `${SCHEMA[sheet].title}, ${tag || `row ${row}`}: ${pairWords(sheet, values, words)}`));
  return lines.length === 0 ? 'Nothing is different.\n' : `${lines.slice(0, -1).join('\n')}\n`;
}

/** The values of a changed row as before and after, those of an added or removed one as they are. */
export function valueWords(sheet: SheetName, { kind, values }: RowChange, words: Words): string {
  if (kind === 'changed') return pairWords(sheet, values, words);
  return values.filter(({ key }) => key !== SCHEMA[sheet].tag).map(({ key, before, after }) => {
    const column = columnOf(sheet, key);
    return `${column.title} ${changedValue(column, after ?? before, words)}`;
  }).join('; ');
}

function pairWords(sheet: SheetName, values: readonly ValueChange[], words: Words): string {
  return values.map(({ key, before, after }) => {
    const column = columnOf(sheet, key);
    return `${column.title} ${changedValue(column, before, words)} → ${changedValue(column, after, words)}`;
  }).join('; ');
}
