import { html, nothing, type TemplateResult } from 'lit';
import type { CellUpdate, ListUpdate, RowUpdate } from '../../src/exchange/update/index.ts';
import { changedValue } from '../../src/report/changes/changes-text.ts';
import { columnOf, nameOf, namingKeys, SCHEMA, type SheetName } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';

/** Cells, and names of rows, that are shown; more tell a person nothing. */
const MOST_SHOWN = 200;

/** What a person says about the parts of an update. */
export interface UpdateChoices {
  takes(sheet: SheetName, row: RowUpdate, cell: CellUpdate): boolean;
  toggle(sheet: SheetName, row: RowUpdate, cell: CellUpdate): void;
  readonly adds: boolean;
  readonly toggleAdds: () => void;
}

/** What a list would change, cell by cell with before and after, each of which can be left as it is. */
export function updatePreview(update: ListUpdate, words: Words, choices: UpdateChoices): TemplateResult {
  const { sheet, changed, added, absent, leftOut } = update;
  const cells = changed.flatMap((row) => row.cells.map((cell) => ({ row, cell })));
  const hasFormulas = cells.some(({ cell }) => cell.isOwnFormula);
  return html`${cells.length === 0 ? nothing : html`<table>
      <caption class="unseen">${words.say('What the list changes in {sheet}', { sheet: words.text(SCHEMA[sheet].title) })}</caption>
      <thead><tr><th scope="col">${words.say('Take')}</th>${[namingKeys(sheet).map((key) => words.text(columnOf(sheet, key).title)).join(', '), words.say('Column'), words.say('Before'), words.say('In the list')]
        .map((title) => html`<th scope="col">${title}</th>`)}</tr></thead>
      <tbody>${cells.slice(0, MOST_SHOWN).map(({ row, cell }) => cellLine(sheet, row, cell, words, choices))}</tbody></table>`}
    ${cells.length > MOST_SHOWN ? html`<p>${words.say('And {count} more, which are not shown.', { count: cells.length - MOST_SHOWN })}</p>` : nothing}
    ${hasFormulas ? html`<p class="quiet spoken">${words.say('Formulas that somebody typed stay unless you take the value of the list.')}</p>` : nothing}
    ${added.length === 0 ? nothing : html`<p><label><input type="checkbox" data-do="adds" .checked=${choices.adds} @change=${choices.toggleAdds}>
      ${words.say('{count, plural, one {One new row} other {# new rows}}: {names}', { count: added.length, names: names(added.map((row) => nameOf(sheet, { cells: row }))) })}</label></p>`}
    ${absent.length === 0 ? nothing : html`<p class="quiet spoken">${words.say('Not in the list, and left as they are: {names}', { names: names(absent) })}</p>`}
    ${leftOut.length === 0 ? nothing : html`<ul class="left-out">${leftOut.slice(0, MOST_SHOWN).map(({ reason }) => html`<li>${reason}</li>`)}</ul>`}`;
}

function cellLine(
  sheet: SheetName, row: RowUpdate, cell: CellUpdate, words: Words, choices: UpdateChoices,
): TemplateResult {
  const column = columnOf(sheet, cell.key);
  const title = words.text(column.title);
  return html`<tr><td><input type="checkbox" aria-label=${words.say('Take {column} of {name}', { column: title, name: row.tag })}
      .checked=${choices.takes(sheet, row, cell)} @change=${() => { choices.toggle(sheet, row, cell); }}></td>
    <td>${row.tag}</td><td>${title}</td><td>${changedValue(column, cell.before, words)}</td><td>${changedValue(column, cell.after, words)}</td></tr>`;
}

function names(all: readonly string[]): string {
  return [...all.slice(0, 12), ...(all.length > 12 ? ['…'] : [])].join(', ');
}
