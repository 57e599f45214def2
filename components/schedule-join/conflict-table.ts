import { html, type TemplateResult } from 'lit';
import { conflictRow, conflictSentence, type JoinChoice, type JoinConflict } from '../../src/exchange/join/index.ts';
import { changedValue } from '../../src/report/changes/changes-text.ts';
import { DETAIL_TITLES } from '../../src/report/model/detail-titles.ts';
import { findColumn, SCHEMA, type Cells, type CellValue, type DetailKey, type SheetName, type Variant } from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';

/** Conflicts that are shown; the rest is decided once these are. */
const MOST_SHOWN = 200;

/** How conflicts are asked: by English words, and a sentence about each. */
export interface ConflictWords {
  readonly caption: string;
  /** Where it stands, what both began with, mine, theirs, what counts. */
  readonly titles: readonly string[];
  readonly choices: Readonly<Record<JoinChoice, string>>;
  readonly sentence: (conflict: JoinConflict, words: Words) => string;
}

const OF_PERSONS: ConflictWords = {
  caption: message('What both changed'),
  titles: [message('Where'), message('Both began with'), message('Yours'), message('Theirs'), message('What counts')],
  choices: { mine: message('Yours'), theirs: message('Theirs'), both: message('Both, theirs with a tag of its own') },
  sentence: conflictSentence,
};

/** What both changed, with the value with which they began and those of both, and what counts. */
export function conflictTable(
  conflicts: readonly JoinConflict[], words: Words, choose: (conflict: JoinConflict, choice: JoinChoice) => void,
  { caption, titles, choices: named, sentence }: ConflictWords = OF_PERSONS,
): TemplateResult {
  return html`<table><caption class="unseen">${words.say<string>(caption)}</caption>
    <thead><tr>${titles.map((title) => html`<th scope="col">${words.say<string>(title)}</th>`)}</tr></thead>
    <tbody>${conflicts.slice(0, MOST_SHOWN).map((conflict) => {
      const { name, base, mine, theirs, choices, choice } = conflict;
      const place = placeOf(conflict, words);
      const button = (each: JoinChoice) => html`<button type="button" data-choice=${each} aria-pressed=${each === choice}
        @click=${() => { choose(conflict, each); }}>${words.say<string>(named[each])}</button>`;
      return html`<tr data-conflict=${name}><td><strong>${place}</strong><br><span class="quiet spoken">${sentence(conflict, words)}</span></td>
        ${[base, mine, theirs].map((value) => html`<td>${valueText(conflict, value, words)}</td>`)}
        <td><span class="choice" role="group" aria-label=${place}>${choices.map(button)}</span></td></tr>`;
    })}</tbody></table>
    ${conflicts.length > MOST_SHOWN ? html`<p>${words.say('And {count} more, which are not shown.', { count: conflicts.length - MOST_SHOWN })}</p>` : ''}`;
}

/** Where it stands: «Supplies, L1, Rated». */
function placeOf(conflict: JoinConflict, words: Words): string {
  const { sheet, key, kind } = conflict;
  if (kind === 'detail') return words.say(DETAIL_TITLES[key as DetailKey]);
  if (sheet === '') return key;
  const column = findColumn(sheet as SheetName, key);
  return [
    words.text(SCHEMA[sheet as SheetName].title), conflictRow(conflict, words),
    ...(column === undefined ? kind === 'cell' ? [key] : [] : [words.text(column.title)]),
  ].join(', ');
}

/** A value of a conflict for a person: that of a cell, the cells of a row, or what was written. */
function valueText({ sheet, key, kind }: JoinConflict, value: unknown, words: Words): string {
  if (value === null || value === undefined) return '–';
  const cellText = (of: string, cell: unknown) => {
    const plain = typeof cell === 'object' ? JSON.stringify(cell) : cell as CellValue;
    return sheet === '' ? String(plain) : changedValue(findColumn(sheet as SheetName, of), plain, words);
  };
  if (typeof value !== 'object') return cellText(key, value);
  if (kind === 'parts') {
    return (value as readonly Cells[]).map(({ ref, branch, rail, qty }) =>
      [ref, branch, rail, cellText('qty', qty ?? null)].filter((each) => each !== undefined && each !== null).join(' '))
      .join(words.say('; '));
  }
  if (kind === 'acceptance' || kind === 'revision') {
    const { reason, text, name, date } = value as Readonly<Record<'reason' | 'text' | 'name' | 'date', string | undefined>>;
    return [reason ?? text, name, date && words.date(date)].filter((each) => each !== undefined && each !== '').join(', ');
  }
  if (kind === 'variant') {
    const { note, date } = value as Variant;
    return [note, date && words.date(date)].filter((each) => each !== undefined && each !== '').join(', ');
  }
  if (kind === 'other') return JSON.stringify(value);
  return Object.entries(value).map(([of, cell]) => {
    const column = findColumn(sheet as SheetName, of);
    return `${column === undefined ? of : words.text(column.title)} ${cellText(of, cell)}`;
  }).join(words.say('; '));
}
