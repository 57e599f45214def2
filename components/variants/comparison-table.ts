import { html, nothing, type TemplateResult } from 'lit';
import type { OutcomeFigure, RowComparison } from '../../src/report/changes/compare-outcomes.ts';
import { columnOf, formatCell, SCHEMA, withUnit, type SheetName } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { signed, statusMark, valueText } from '../look/index.ts';

/** Rows that are shown; the rest is told by its number. */
const MOST_SHOWN = 200;

/** A row with the figures that are shown of it. */
interface ShownRow {
  readonly row: RowComparison;
  readonly figures: readonly OutcomeFigure[];
}

/** Rows of a comparison that differ as they are read, each with the figures that do; or all of them. */
export function shownRows(rows: readonly RowComparison[], all: boolean, words: Words): ShownRow[] {
  return rows.flatMap((row) => {
    const figures = row.figures.filter((figure) => all ? figure.before !== null || figure.after !== null
      : textsOf(row.sheet, figure, words).reduce((was, is) => was === is ? '' : '≠') !== '');
    return all || row.before !== row.after || figures.length > 0 ? [{ row, figures }] : [];
  });
}

/** Before and after of rows, with the differences. */
export function comparisonTable(
  rows: readonly ShownRow[], titles: readonly [before: string, after: string], words: Words,
): TemplateResult {
  const caption = words.say('Before and after');
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${caption}><table class="comparison">
    <thead><tr><th scope="col">${words.say('Row')}</th><th scope="col">${words.say('Status')}</th><th scope="col">${words.say('Figure')}</th>
      ${titles.map((title) => html`<th scope="col" class="number">${title}</th>`)}<th scope="col" class="number">${words.say('Difference')}</th></tr></thead>
    ${rows.slice(0, MOST_SHOWN).map((each) => rowGroup(each, words))}</table></div>
    ${rows.length > MOST_SHOWN ? html`<p class="quiet">${words.say('and {more} more', { more: rows.length - MOST_SHOWN })}</p>` : nothing}`;
}

function rowGroup({ row: { sheet, tag, row, before, after }, figures }: ShownRow, words: Words): TemplateResult {
  const count = Math.max(1, figures.length);
  const head = html`<th scope="rowgroup" rowspan=${count}><b>${tag || words.say('row {row}', { row })}</b>
    <span class="quiet">${words.text(SCHEMA[sheet].title)}</span></th><td rowspan=${count}>${statuses(before, after, words)}</td>`;
  return html`<tbody data-row=${`${sheet}/${tag}`}>${figures.length === 0 ? html`<tr>${head}<td colspan="4"></td></tr>`
    : figures.map((figure, index) => html`<tr data-key=${figure.key}>${index === 0 ? head : nothing}${figureCells(sheet, figure, words)}</tr>`)}</tbody>`;
}

function statuses(before: RowComparison['before'], after: RowComparison['after'], words: Words): TemplateResult | typeof nothing {
  const mark = (status: RowComparison['before'], otherwise: string) =>
    status === undefined ? html`<span class="quiet">${otherwise}</span>` : status === null ? nothing : statusMark(status, words);
  return before === after ? mark(after, '')
    : html`<span class="moved">${mark(before, words.say('not there'))} → ${mark(after, words.say('gone'))}</span>`;
}

function figureCells(sheet: SheetName, figure: OutcomeFigure, words: Words): TemplateResult {
  const column = columnOf(sheet, figure.key);
  return html`<td>${words.text(column.title)}</td>${textsOf(sheet, figure, words).map((text) => html`<td class="number">${text}</td>`)}
    <td class="number">${differenceText(sheet, figure, words)}</td>`;
}

/** A figure before and after as it is read, a case that nobody named as what it stands for. */
function textsOf(sheet: SheetName, { key, before, after, signs }: OutcomeFigure, words: Words): [string, string] {
  const text = (value: OutcomeFigure['before'], sign: string) =>
    value === null ? '–' : signed(sign, valueText(sheet, key, value, words), value);
  return [text(before, signs[0]), text(after, signs[1])];
}

/** How much more or less it is, with its sign; shares of a whole differ by points. */
function differenceText(sheet: SheetName, { key, difference }: OutcomeFigure, words: Words): string {
  if (difference === null || difference === 0) return '';
  // Rounded as the figures are between which it lies.
  const column = columnOf(sheet, key);
  const size = Math.abs(difference);
  const text = column.kind === 'ratio'
    ? words.say('{points} points', { points: formatCell({ ...column, kind: 'number', decimals: 0 }, size * 100, words, 'show') })
    : withUnit(column, size, words);
  return `${difference < 0 ? '−' : '+'}${text}`;
}
