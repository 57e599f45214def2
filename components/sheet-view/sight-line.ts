import { html, nothing, type TemplateResult } from 'lit';
import { columnOf, type SheetName } from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { isNarrowed, type RowsOnly, type Sight } from '../grid/lines/sight-type.ts';

const ONLY: Readonly<Record<RowsOnly, string>> = {
  over: message('those that are over'), near: message('those that are over or near limit'),
  incomplete: message('those that are incomplete'), own: message('those with own values'),
};

/** Which rows are in sight and in which order, where these are not all as entered, and the way back to that. */
export function sightLine(
  sight: Sight, sheet: SheetName, { seen, all }: { readonly seen: number; readonly all: number }, words: Words,
  ask: (changed: Partial<Sight>) => void, again: () => void,
): TemplateResult | typeof nothing {
  const { panel, only, columns, sort } = sight;
  if (!isNarrowed(sight) && sort === undefined) return nothing;
  const title = (key: string) => words.text(columnOf(sheet, key).title);
  const link = (text: string, name: string, press: () => void) =>
    html`<button type="button" class="link" data-sight=${name} @click=${press}>${text}</button>`;
  return html`<div class="sight" aria-live="polite">
    <b>${words.say('{n} of {all, plural, one {# row} other {# rows}}', { n: seen, all })}</b>
    ${panel === undefined ? nothing : html`<span>${panel ?? words.say('In no panel')}</span>`}
    ${only === undefined ? nothing : html`<span>${words.say(ONLY[only])}</span>`}
    ${Object.keys(columns).map((key) => html`<span>${words.say('picked by {column}', { column: title(key) })}</span>`)}
    ${sort === undefined ? nothing : html`<span>${sort.down ? words.say('sorted by {column}, downwards', { column: title(sort.key) })
      : words.say('sorted by {column}, upwards', { column: title(sort.key) })}</span>`}
    ${link(words.say('Apply again'), 'again', again)}
    ${isNarrowed({ ...sight, panel: undefined }) || sort !== undefined
      ? link(words.say('All rows in entry order'), 'all', () => { ask({ only: undefined, columns: {}, sort: undefined }); }) : nothing}
  </div>`;
}
