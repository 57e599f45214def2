import { findColumn, grouped, namingKeys, SCHEMA, type CellValue, type Column, type SheetName } from '../../schedule/index.ts';
import { shownText } from '../../findings/index.ts';
import { detailText, DETAIL_TITLES } from '../model/detail-titles.ts';
import type { FigureChange, RowChange, ScheduleChanges, ValueChange } from './compare-schedules.ts';
import { otherChanges } from './other-changes.ts';
import { ENGLISH, type Words } from '../../words/index.ts';

/**
 * A value for a person: with its unit, a status in words, nothing as «–».
 * @param column `undefined` for a key that is not known.
 */
export function changedValue(column: Column | undefined, value: CellValue, words: Words): string {
  if (value === null || value === '') return '–';
  if (column === undefined) return String(value);
  const text = shownText(column, value, words);
  return column.unit === undefined || typeof value !== 'number' ? text : `${text}\u00a0${column.unit}`;
}

/** What became of a row, in a few words. */
export function kindWords({ kind, row, was, below = null }: RowChange, words: Words): string {
  switch (kind) {
    case 'added': return words.say('added as row {row}', { row: row! });
    case 'removed': return words.say('removed, was row {was}', { was: was! });
    case 'moved': {
      if (below === null) return words.say('moved to the top, from row {was}', { was: was! });
      const above = typeof below === 'string' ? below : words.say('row {row}', { row: below });
      // Where rows above came or went besides, a row may stand below another one and keep its number.
      return was === row ? words.say('moved below {above}', { above })
        : words.say('moved below {above}, from row {was} to row {row}', { above, was: was!, row: row! });
    }
    case 'changed': return words.say('changed');
  }
}

/** The changes between two schedules as lines for a terminal. */
export function changesText(changes: ScheduleChanges, words = ENGLISH): string {
  const { isSame, details, rows, figures } = changes;
  const lines: string[] = [];
  const block = (title: string, inner: readonly string[]) => {
    if (inner.length > 0) lines.push(title, ...inner.map((line) => `  ${line}`), '');
  };
  const line = (title: string, text: string) => words.say('{title}: {text}', { title, text });
  block(
    words.say('Details'),
    details.map(({ key, before, after }) => line(words.say(DETAIL_TITLES[key]), `${detailText(key, before, words)} → ${detailText(key, after, words)}`))
  );
  const sheets = [...new Set(rows.map(({ sheet }) => sheet))];
  for (const sheet of sheets) {
    const inner = rows.filter((each) => each.sheet === sheet).map((change) => {
      const values = valueWords(sheet, change, words);
      const kind = kindWords(change, words);
      return line(change.tag || words.say('without a tag'), values === '' ? kind : line(kind, values));
    });
    block(words.text(SCHEMA[sheet].title), inner);
  }
  for (const [title, those] of figuresByPanel(figures, words)) {
    block(title, those.map(({ sheet, tag, row, values }) => line(
      `${words.text(SCHEMA[sheet].title)}, ${tag || words.say('row {row}', { row: row })}`,
      pairWords(sheet, values, words)
    )));
  }
  for (const { title, rows: others } of otherChanges(changes, words)) {
    block(
      title,
      others.map(([first = '', ...rest]) => line(first, rest.filter((text) => text !== '').join(words.say('; '))))
    );
  }
  if (isSame) return `${words.say('Nothing is different.')}\n`;
  return lines.length > 0 ? `${lines.slice(0, -1).join('\n')}\n`
    : `${words.say('Only blank rows, or the order of revisions and acceptances, are different.')}\n`;
}

/** Figures that are others now, by the panel that their rows belong to: a title for each, or one where none is said. */
export function figuresByPanel(
  figures: readonly FigureChange[], words: Words,
): (readonly [string, readonly FigureChange[]])[] {
  const title = words.say('What that did to totals and statuses');
  if (figures.every(({ panel }) => panel === null)) return [[title, figures]];
  return [...grouped(figures, ({ panel }) => panel)].map(([panel, those]) =>
    [words.say('{title}: {text}', { title, text: panel ?? words.say('In no panel') }), those] as const);
}

/** The values of a changed row as before and after, those of an added or removed one as they are. */
export function valueWords(sheet: SheetName, { kind, values, followed = 0 }: RowChange, words: Words): string {
  if (kind === 'changed') {
    const pairs = pairWords(sheet, values, words);
    return followed === 0 ? pairs : `${pairs}${words.say('; ')}${words.say(
      '{followed, plural, one {# cell names} other {# cells name}} it so now', { followed })}`;
  }
  return values.filter(({ key }) => !namingKeys(sheet).includes(key)).map(({ key, before, after }) => {
    const column = findColumn(sheet, key);
    return `${titleOf(column, key, words)} ${changedValue(column, after ?? before, words)}`;
  }).join(words.say('; '));
}

function pairWords(sheet: SheetName, values: readonly ValueChange[], words: Words): string {
  return values.map(({ key, before, after }) => {
    const column = findColumn(sheet, key);
    return `${titleOf(column, key, words)} ${changedValue(column, before, words)} → ${changedValue(column, after, words)}`;
  }).join(words.say('; '));
}

function titleOf(column: Column | undefined, key: string, words: Words): string {
  return column === undefined ? key : words.text(column.title);
}
