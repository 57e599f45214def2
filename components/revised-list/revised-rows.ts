import { html, nothing, type TemplateResult } from 'lit';
import { askedRows, countOutcomes, type RevisedRow, type ListRevision } from '../../src/exchange/revision/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf } from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';

/** Which device rows are shown. */
export type RowFilter = RevisedRow['outcome'] | 'differing';

export interface RevisedRowsOptions {
  readonly revision: ListRevision;
  readonly schedule: LoadSchedule;
  readonly filter: RowFilter;
  /** Ids of device rows that a person says rows of the list are, by key. */
  readonly same: ReadonlyMap<string, number | null>;
  /** Key of a row of the list by its place. */
  readonly keyOf: (place: number) => string;
  readonly show: (filter: RowFilter) => void;
  readonly choose: (key: string, id: number | null | undefined) => void;
  readonly words: Words;
}

const FILTERS: Readonly<Record<RowFilter, string>> = {
  differing: message('what differs'), asked: message('to decide'), came: message('came'), changed: message('changed'), went: message('went'),
  kept: message('kept'),
};
const SIGNS: Readonly<Record<RevisedRow['outcome'], string>> = { asked: '?', came: '+', changed: '±', went: '−', kept: '=' };
/** How many rows are shown; more are found by a filter. */
const MOST_ROWS = 500;

/** The device rows of a schedule with what a list that comes again makes of them. */
export function revisedRows(options: RevisedRowsOptions): TemplateResult {
  const { revision: { rows }, filter, words } = options;
  const found = rows.filter(({ outcome }) => filter === 'differing' ? outcome !== 'kept' : outcome === filter);
  // What is to decide stands first.
  const shown = [true, false].flatMap((isAsked) => found.filter(({ outcome }) => (outcome === 'asked') === isAsked));
  const title = (key: 'ref' | 'area' | 'type') => words.text(columnOf('devices', key).title);
  return html`${filters(options)}
    ${shown.length === 0 ? html`<p class="quiet">${filter === 'differing' ? words.say('The schedule has all of it. Nothing changes.') : words.say('There is no such row.')}</p>`
      : html`<table class="revised"><caption class="unseen">${words.say('Device rows and what becomes of them')}</caption>
    <thead><tr><th scope="col">${words.say('What becomes of it')}</th>${(['ref', 'area', 'type'] as const).map((key) => html`<th scope="col">${title(key)}</th>`)}
      <th scope="col" class="number">${words.say('Was')}</th><th scope="col" class="number">${words.say('Is')}</th><th scope="col" class="because">${words.say('Why')}</th></tr></thead>
    <tbody>${shown.slice(0, MOST_ROWS).map((row) => rowLine(row, options))}</tbody></table>`}
    ${shown.length > MOST_ROWS ? html`<p class="quiet">${words.say('and {n} more', { n: shown.length - MOST_ROWS })}</p>` : nothing}`;
}

function filters({ revision, filter, show, words }: RevisedRowsOptions): TemplateResult {
  const counts = { ...countOutcomes(revision), asked: askedRows(revision).length };
  const number = (each: RowFilter) => each === 'differing' ? counts.asked + counts.came + counts.changed + counts.went : counts[each];
  return html`<div class="choice" role="group" aria-label=${words.say('Device rows that are shown')}>
    ${(Object.keys(FILTERS) as RowFilter[]).filter((each) => each !== 'asked' || counts.asked > 0 || filter === 'asked').map((each) => html`<button type="button" data-rows=${each} aria-pressed=${each === filter}
      @click=${() => { show(each); }}>${words.say<string>(FILTERS[each])} ${number(each)}</button>`)}</div>`;
}

function rowLine(row: RevisedRow, options: RevisedRowsOptions): TemplateResult {
  const { words } = options;
  const { outcome, ref, area, type, before, after, reason } = row;
  const figure = (qty: number | null) => qty === null ? '' : words.number(qty);
  return html`<tr data-revised=${outcome}><td class="nowrap"><span class="sign" aria-hidden="true">${SIGNS[outcome]}</span> ${words.say<string>(FILTERS[outcome])}</td>
    <td class="ref">${ref}</td><td>${area}</td><td>${type}</td><td class="number">${figure(before)}</td><td class="number">${figure(after)}</td>
    <td class="because spoken">${reason} ${sameChoice(row, options)}</td></tr>`;
}

/** Which device row of the schedule a row of the list is, where it may be one. */
function sameChoice(
  { place, outcome, maybe = [] }: RevisedRow, { schedule, same, keyOf, choose, words }: RevisedRowsOptions,
): TemplateResult | typeof nothing {
  if (place === undefined || maybe.length === 0) return nothing;
  const key = keyOf(place);
  const onChange = (event: Event) => {
    const { value } = event.currentTarget as HTMLSelectElement;
    choose(key, value === '' ? undefined : value === 'new' ? null : Number(value));
  };
  return html`<select aria-label=${words.say('Which device row it is')} data-choose="same" @change=${onChange}>
    ${outcome !== 'asked' && !same.has(key) ? nothing : html`<option value="" ?selected=${!same.has(key)}>${words.say('to be decided')}</option>`}
    <option value="new" ?selected=${outcome === 'came'}>${words.say('a new row')}</option>
    ${maybe.map((id) => html`<option value=${id} ?selected=${same.get(key) === id}>${nameOf(schedule, id, words)}</option>`)}</select>`;
}

function nameOf(schedule: LoadSchedule, id: number, words: Words): string {
  const { ref, area } = schedule.document.row('devices', id)!.cells;
  const qty = schedule.value('devices', id, 'qty');
  return words.say('the row {name}', {
    name: [ref, area, typeof qty === 'number' ? words.number(qty) : ''].filter((text) => (text ?? '') !== '').join(', '),
  });
}
