import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import {
  partOf, TAKEOFF_FIELDS, type Takeoff, type TakeoffColumn, type TakeoffField, type TakeoffLine,
  type TakeoffOutcome, type TakeoffPart,
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
  /** Key of the line that is being decided on. */
  readonly opened: string | undefined;
  readonly decided: (key: string) => boolean;
  readonly choose: (part: TakeoffPart, column: TakeoffColumn, field: TakeoffField | undefined) => void;
  /** Takes back what was decided on a line. */
  readonly anew: (key: string) => void;
  readonly open: (key: string) => void;
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
 * Every line as it stands in its list, with what becomes of it and why; what each column holds is chosen in its
 * heading. Lists of several sheets stand one below the other.
 */
export function lineTables(options: LineTableOptions): TemplateResult {
  const { takeoff, filter, most, showAll, words } = options;
  const lines = takeoff.lines.filter(({ outcome }) => filter === 'all' || outcome === filter);
  const shown = lines.slice(0, most);
  // What counts nothing, as a cover or a legend, does not stand before what is to decide.
  const parts = [true, false].flatMap((isList) => takeoff.parts.filter(({ kind }) => (kind === 'list') === isList));
  return html`${parts.map((part) => {
    const own = shown.filter((line) => partOf(line, takeoff.parts) === part);
    return own.length === 0 && takeoff.parts.length > 1 ? nothing : partTable(part, own, options);
  })}
    ${lines.length > most ? html`<p><button type="button" class="link" data-do="all-lines" @click=${showAll}>${words.say('Show all {count} lines', { count: lines.length })}</button></p>` : nothing}
    ${lines.length === 0 ? html`<p class="quiet">${words.say('There is no such line.')}</p>` : nothing}`;
}

function partTable(part: TakeoffPart, lines: readonly TakeoffLine[], options: LineTableOptions): TemplateResult {
  const { takeoff, words } = options;
  const caption = takeoff.parts.length > 1 && part.sheet !== undefined
    ? html`<caption>${part.sheet}</caption>` : html`<caption class="unseen">${words.say('Lines of the takeoff')}</caption>`;
  return html`<table class="lines ${part.columns.length < 5 ? 'few' : ''}">${caption}
    <thead><tr><th scope="col" class="number">${words.say('Line')}</th><th scope="col">${words.say('Outcome')}</th>
      ${part.columns.map((column) => columnHeading(part, column, options))}<th scope="col" class="why">${words.say('Why')}</th></tr></thead>
    <tbody>${repeat(lines, ({ key }) => key, (line) => lineRow(part, line, options))}</tbody></table>`;
}

function columnHeading(part: TakeoffPart, column: TakeoffColumn, { choose, words }: LineTableOptions): TemplateResult {
  const { index, heading, field, from, values } = column;
  const name = heading === '' ? words.say('Column {number}', { number: index + 1 }) : heading;
  const onChange = (event: Event) => {
    const { value } = event.currentTarget as HTMLSelectElement;
    choose(part, column, value === '' ? undefined : value as TakeoffField);
  };
  const about = field === undefined
    || from === undefined ? words.say('{count, plural, one {# value} other {# values}}', { count: values })
    : words.say(FROM_WORDS[from]);
  return html`<th scope="col" class=${field === 'qty' ? 'number' : ''}><span class="own" title=${name}>${name}</span>
    <select aria-label=${words.say('What {name} holds', { name })} title=${about} data-column=${index} .value=${field ?? ''} @change=${onChange}>
      <option value="" ?selected=${field === undefined}>${words.say('not read')}</option>
      ${TAKEOFF_FIELDS.map((each) => html`<option value=${each} ?selected=${each === field}>${fieldWords(each, words)}</option>`)}
    </select></th>`;
}

const OWN_FIELDS: Readonly<Partial<Record<TakeoffField, string>>> = {
  unit: message('Unit'), total: message('Total of the line'), times: message('How often it is there'), price: message('Price'), partNumber: message('Part number'),
};
const OF_TYPES: readonly TakeoffField[] = ['description', 'draw', 'power', 'nodes'];

/** What a column holds, for a person. */
export function fieldWords(field: TakeoffField, words: Words): string {
  const own = OWN_FIELDS[field];
  if (own !== undefined) return words.say(own);
  return words.text(columnOf(OF_TYPES.includes(field) ? 'types' : 'devices', field).title);
}

function lineRow({ columns }: TakeoffPart, line: TakeoffLine, options: LineTableOptions): TemplateResult {
  const { opened, decided, anew, open, words } = options;
  const { key, outcome, reason, fields, source } = line;
  const { title, mark } = OUTCOMES[outcome];
  const isOpen = key === opened;
  const classOf = ({ index, field }: TakeoffColumn) => {
    const isOther = source.column !== undefined && source.column !== index + 1;
    if (field !== 'qty') return field === undefined ? 'quiet' : '';
    return isOther ? 'number quiet' : source.column === undefined ? 'number' : 'number counted';
  };
  const isFilled = fields.some((field) => field !== '');
  return html`<tr data-line=${source.line} data-key=${key} data-outcome=${outcome} ?data-open=${isOpen}><td class="number quiet">${source.line}</td>
    <td><span class="status ${mark}">${markShape(mark)}${words.say(title)}</span></td>
    ${columns.map((column) => html`<td class=${classOf(column)} title=${fields[column.index] ?? ''}>${fields[column.index]}</td>`)}
    <td class="why"><div><span class="reason spoken" title=${reason}>${reason}</span>
      ${decided(key) ? html`<button type="button" class="link" data-do="anew" @click=${() => { anew(key); }}>${words.say('Decide anew')}</button>`
        : !isFilled ? nothing
        : html`<button type="button" class="link ${outcome === 'undecided' ? '' : 'change'}" data-do="change" aria-label=${words.say('Decide on line {line}', { line: source.line })}
          @click=${() => { open(key); }}>${outcome === 'undecided' ? words.say('Decide') : words.say('Change')}</button>`}</div></td></tr>`;
}
