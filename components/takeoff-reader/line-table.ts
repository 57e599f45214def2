import { html, nothing, type TemplateResult } from 'lit';
import {
  TAKEOFF_FIELDS, type LineDecision, type Takeoff, type TakeoffColumn, type TakeoffField, type TakeoffLine,
  type TakeoffOutcome,
} from '../../src/exchange/takeoff/index.ts';
import { columnOf } from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { markShape, type Mark } from '../look/index.ts';

export type LineFilter = TakeoffOutcome | 'all';

export interface LineTableOptions {
  readonly takeoff: Takeoff;
  readonly filter: LineFilter;
  /** How many lines are shown at most. */
  readonly most: number;
  readonly decided: (line: number) => boolean;
  readonly choose: (column: TakeoffColumn, field: TakeoffField | undefined) => void;
  readonly decide: (line: number, decision: LineDecision | undefined) => void;
  readonly showAll: () => void;
  readonly words: Words;
}

export const OUTCOMES: Readonly<Record<TakeoffOutcome, { readonly title: string; readonly mark: Mark }>> = {
  undecided: { title: message('to decide'), mark: 'incomplete' },
  taken: { title: message('taken'), mark: 'ok' },
  merged: { title: message('merged'), mark: 'ok' },
  'left-out': { title: message('left out'), mark: 'note' },
};

const FROM_WORDS = {
  remembered: message('as before'), heading: message('by its heading'), values: message('by its values'),
};

/**
 * Every line as it stands in the list, with what becomes of it and why; what each column holds is chosen in its
 * heading.
 */
export function lineTable(options: LineTableOptions): TemplateResult {
  const { takeoff, filter, most, showAll, words } = options;
  const lines = takeoff.lines.filter(({ outcome }) => filter === 'all' || outcome === filter);
  return html`<table class="lines"><caption class="unseen">${words.say('Lines of the takeoff')}</caption>
    <thead><tr><th scope="col" class="number">${words.say('Line')}</th><th scope="col">${words.say('What becomes of it')}</th>
      ${takeoff.columns.map((column) => columnHeading(column, options))}</tr></thead>
    <tbody>${lines.slice(0, most).map((line) => lineRow(line, options))}</tbody></table>
    ${lines.length > most ? html`<p><button type="button" class="link" data-do="all-lines" @click=${showAll}>${words.say('Show all {count} lines', { count: lines.length })}</button></p>` : nothing}
    ${lines.length === 0 ? html`<p class="quiet">${words.say('There is no such line.')}</p>` : nothing}`;
}

function columnHeading(column: TakeoffColumn, { choose, words }: LineTableOptions): TemplateResult {
  const { index, heading, field, from, values } = column;
  const name = heading === '' ? words.say('Column {number}', { number: index + 1 }) : heading;
  const onChange = (event: Event) => {
    const { value } = event.currentTarget as HTMLSelectElement;
    choose(column, value === '' ? undefined : value as TakeoffField);
  };
  const about = field === undefined
    || from === undefined ? words.say('{count, plural, one {# value} other {# values}}', { count: values })
    : words.say(FROM_WORDS[from]);
  return html`<th scope="col" class=${field === 'qty' ? 'number' : ''}><span class="own">${name}</span>
    <select aria-label=${words.say('What {name} holds', { name })} title=${about} data-column=${index} .value=${field ?? ''} @change=${onChange}>
      <option value="" ?selected=${field === undefined}>${words.say('not read')}</option>
      ${TAKEOFF_FIELDS.map((each) => html`<option value=${each} ?selected=${each === field}>${fieldWords(each, words)}</option>`)}
    </select></th>`;
}

const OWN_FIELDS: Readonly<Partial<Record<TakeoffField, string>>> = {
  unit: message('Unit'), total: message('Total of the line'), price: message('Price'), partNumber: message('Part number'),
};
const OF_TYPES: readonly TakeoffField[] = ['description', 'draw', 'power', 'nodes'];

function fieldWords(field: TakeoffField, words: Words): string {
  const own = OWN_FIELDS[field];
  if (own !== undefined) return words.say(own);
  return words.text(columnOf(OF_TYPES.includes(field) ? 'types' : 'devices', field).title);
}

function lineRow(line: TakeoffLine, options: LineTableOptions): TemplateResult {
  const { takeoff, decided, decide, words } = options;
  const { title, mark } = OUTCOMES[line.outcome];
  return html`<tr data-line=${line.line} data-outcome=${line.outcome}><td class="number quiet">${line.line}</td>
    <td class="becomes"><span class="status ${mark}">${markShape(mark)}${words.say(title)}</span> <span class="spoken">${line.reason}</span>
      ${decided(line.line) ? html`<button type="button" class="link" @click=${() => { decide(line.line, undefined); }}>${words.say('Decide anew')}</button>`
        : line.outcome === 'undecided' ? lineChoice(line, options) : nothing}</td>
    ${takeoff.columns.map(({ index, field }) => html`<td class="${field === 'qty' ? 'number' : ''} ${field === undefined ? 'quiet' : ''}">${line.fields[index]}</td>`)}</tr>`;
}

/** What a person can say of a line: that it does not count; or how many there are, where only that is open. */
function lineChoice({ line, qty, nameKey }: TakeoffLine, { takeoff, decide, words }: LineTableOptions): TemplateResult {
  const named = takeoff.names.some(({ key, state }) => key === nameKey && state !== 'undecided');
  const count = (event: Event) => {
    const field = (event.currentTarget as Element).closest('.decide')!.querySelector('input')!;
    if (field.value !== '' && field.reportValidity()) decide(line, { qty: field.valueAsNumber });
  };
  return html`<span class="decide">
    ${!named ? nothing : html`<label>${fieldWords('qty', words)} <input type="number" min="0" step="1" .value=${qty === null ? '' : String(qty)}
      @keydown=${(event: KeyboardEvent) => { if (event.key === 'Enter') count(event); }}></label>
      <button type="button" class="bordered" data-do="count" @click=${count}>${words.say('Count it')}</button>`}
    <button type="button" class="link" data-do="leave-out" @click=${() => { decide(line, 'leave-out'); }}>${words.say('Leave it out')}</button></span>`;
}
