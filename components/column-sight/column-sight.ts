import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { shownText } from '../../src/findings/shown-text.ts';
import {
  columnOf, decimalSign, formatCell, isBlank, isNumeric, parseCell, SCHEMA, type CellValue, type Column,
  type InputColumn, type SheetLook, type SheetName,
} from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { LookEvent, SightEvent } from '../events/index.ts';
import { heldText, orderOf } from '../grid/lines/sight.ts';
import type { ColumnSight, Sight } from '../grid/lines/sight-type.ts';
import { controls } from '../look/index.ts';

/** Values listed at most; a field finds the others. */
const LISTED = 200;

/** What can be done with one column: sort by it, pick rows by what it holds, put it away. */
export class ColumnSightChoice extends LitElement {
  static override styles = [controls, css`
    :host { display: grid; gap: 8px; }
    h3 { margin: 0; font-size: 1em; font-weight: 600; }
    .ways { display: flex; flex-wrap: wrap; gap: 4px; }
    .range { display: grid; grid-template-columns: 1fr 1fr; gap: 8px; }
    label { display: flex; align-items: center; gap: 0.5em; min-block-size: 24px; }
    .range label { display: grid; }
    input:not([type=checkbox]) {
      inline-size: 100%;
      min-block-size: 28px;
      padding: 0 0.5em;
      border: 1px solid var(--elv-line-strong);
      border-radius: var(--elv-radius);
      background: var(--elv-surface);
    }
    ul { max-block-size: 16em; margin: 0; padding: 0; overflow-y: auto; list-style: none; scrollbar-width: thin; }
    li label { overflow-wrap: anywhere; }
    .quiet { margin-inline-start: auto; }
    .wrong { margin: 0; color: var(--elv-over); }
  `];

  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, sheet: { attribute: false },
    key: { attribute: false }, sight: { attribute: false }, look: { attribute: false }, words: { attribute: false },
    sought: { state: true }, wrong: { state: true },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule did. */
  declare revision: number;
  declare sheet: SheetName;
  /** Key of the column. */
  declare key: string;
  declare sight: Sight;
  declare look: SheetLook;
  declare words: Words;
  /** What the listed values are to contain. */
  declare protected sought: string;
  /** A bound that could not be read. */
  declare protected wrong: string;

  constructor() {
    super();
    this.sought = this.wrong = '';
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('key')) this.sought = this.wrong = '';
  }

  override render(): TemplateResult {
    const { words, key, sight } = this;
    const column = columnOf(this.sheet, key);
    const numeric = isNumeric(column);
    const sorts = (down: boolean) => sight.sort?.key === key && sight.sort.down === down;
    const sort = (text: string, down: boolean) => html`<button type="button" class="bordered" data-sort=${down ? 'down' : 'up'}
      aria-pressed=${sorts(down)} @click=${() => { this.#ask({ sort: sorts(down) ? undefined : { key, down } }); }}>${text}</button>`;
    return html`<h3>${words.text(column.title)}</h3>
      <div class="ways" role="group" aria-label=${words.say('Sort')}>
        ${sort(numeric ? words.say('Smallest first') : words.say('A first'), false)}
        ${sort(numeric ? words.say('Largest first') : words.say('Z first'), true)}</div>
      ${column.role === 'input' && column.derived !== undefined ? html`<label>
        <input type="checkbox" data-own .checked=${this.#picked.own === true} @change=${this.#onOwn}>${words.say('Own values only')}</label>` : nothing}
      ${numeric ? this.#range(column) : this.#values(column)}
      ${this.wrong === '' ? nothing : html`<p class="wrong" role="alert">${this.wrong}</p>`}
      <div class="ways">
        ${this.#picks ? html`<button type="button" class="bordered" data-clear @click=${() => { this.#pick({}); }}>${words.say('All values')}</button>` : nothing}
        ${SCHEMA[this.sheet].tag === key ? nothing : html`<button type="button" class="bordered" data-hide
          @click=${() => { this.#look({ hidden: [...this.look.hidden, key] }); }}>${words.say('Hide the column')}</button>`}
        <button type="button" class="bordered" data-freeze
          @click=${() => { this.#look({ frozen: key }); }}>${words.say('Keep in view up to here')}</button>
      </div>`;
  }

  /** What picks rows by the column at present. */
  get #picked(): ColumnSight {
    return this.sight.columns[this.key] ?? {};
  }

  get #picks(): boolean {
    return this.key in this.sight.columns;
  }

  #range(column: Column): TemplateResult {
    const field = (title: string, name: 'least' | 'most') => html`<label>${title}<input data-bound=${name} inputmode="decimal" autocomplete="off"
      .value=${formatCell(column, this.#picked[name] ?? null, this.words, 'edit')} @change=${(event: Event) => { this.#onBound(column, name, event); }}></label>`;
    return html`<div class="range">${field(this.words.say('From'), 'least')}${field(this.words.say('Up to'), 'most')}</div>`;
  }

  #values(column: Column): TemplateResult {
    const { words } = this;
    const counts = new Map<CellValue, number>();
    for (const row of this.schedule.document.rows(this.sheet)) {
      if (isBlank(row)) continue;
      const value = this.schedule.shown(this.sheet, row.id, this.key);
      counts.set(value, (counts.get(value) ?? 0) + 1);
    }
    const { compare } = new Intl.Collator(words.locale, { numeric: true });
    const all = [...counts].sort(([one], [other]) => compare(String(orderOf(column, one, words) ?? ''), String(orderOf(column, other, words) ?? '')))
      .map(([value, count]) => ({ held: heldText(value), text: shownText(column, value, words), count }));
    const found = all.filter(({ text }) => text.toLowerCase().includes(this.sought.trim().toLowerCase()));
    const { texts } = this.#picked;
    const press = (held: string) => {
      const kept = texts?.includes(held) === true ? texts.filter((each) => each !== held) : [...texts ?? [], held];
      const { texts: _, ...others } = this.#picked;
      this.#pick(kept.length === 0 ? others : { ...others, texts: kept });
    };
    return html`${all.length > 8 ? html`<input type="search" data-sought aria-label=${words.say('Find a value')} placeholder=${words.say('Find a value')}
        .value=${this.sought} @input=${(event: Event) => { this.sought = (event.currentTarget as HTMLInputElement).value; }}>` : nothing}
      <ul aria-label=${words.say('Values')}>${found.slice(0, LISTED).map(({ held, text, count }) => html`<li><label>
        <input type="checkbox" data-value=${held} .checked=${texts?.includes(held) === true} @change=${() => { press(held); }}>
        ${text === '' ? words.say('(empty)') : text}<span class="quiet">${count}</span></label></li>`)}</ul>`;
  }

  readonly #onOwn = (event: Event): void => {
    const { own: _, ...others } = this.#picked;
    this.#pick((event.currentTarget as HTMLInputElement).checked ? { ...others, own: true } : others);
  };

  #onBound(column: Column, name: 'least' | 'most', event: Event): void {
    const { value: text } = event.currentTarget as HTMLInputElement;
    const { words } = this;
    // A bound may be any number of the column, also of one that nobody enters.
    const { key, title, kind, unit, help } = column;
    const plain: InputColumn = { role: 'input', key, title, kind, help, ...(unit === undefined ? {} : { unit }) };
    const read = parseCell(plain, text, { words, decimal: decimalSign(words.locale) });
    this.wrong = read.ok ? '' : read.problem;
    if (!read.ok || typeof read.value === 'string') return;
    const { [name]: _, ...others } = this.#picked;
    this.#pick(typeof read.value === 'number' ? { ...others, [name]: read.value } : others);
  }

  #pick(column: ColumnSight): void {
    const { [this.key]: _, ...others } = this.sight.columns;
    this.#ask({ columns: Object.keys(column).length === 0 ? others : { ...others, [this.key]: column } });
  }

  #ask(changed: Partial<Sight>): void {
    this.dispatchEvent(new SightEvent(changed));
  }

  #look(changed: Partial<SheetLook>): void {
    this.dispatchEvent(new LookEvent(changed));
  }
}
