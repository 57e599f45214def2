import { html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { editedText, readCell } from '../../src/editing/index.ts';
import { isInSight, type PanelChoice } from '../../src/engine/panel-of.ts';
import type { Finding } from '../../src/findings/finding.ts';
import { columnOf, isBlank, SCHEMA, setCells, titleWithUnit, type InputColumn, type Row } from '../../src/schedule/index.ts';
import { amps, volts } from '../../src/words/index.ts';
import { acceptedLine } from '../acceptance-form/accepted-line.ts';
import { GoToEvent } from '../events/index.ts';
import { controls, markShape, rowName, statusMarkStyles } from '../look/index.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { expectedAt, type MeasuredKey, type MeasuredSheet } from './expected.ts';
import { styles } from './measured-values.styles.ts';

const SHEETS: readonly MeasuredSheet[] = ['supplies', 'runs'];
const KEYS: readonly MeasuredKey[] = ['measuredVoltage', 'measuredCurrent'];
/** Rows listed at first, and with each press for more. */
const LISTED = 60;

/** What was measured at supplies and runs is entered on site, with a finger, and is judged at once. */
export class MeasuredValues extends WorkArea {
  static override styles = [controls, workAreaStyles, statusMarkStyles, styles];
  static override properties: PropertyDeclarations = {
    only: { attribute: false }, left: { state: true }, sought: { state: true }, listed: { state: true },
    wrong: { state: true },
  };

  /** The panel that is looked at. */
  declare only: PanelChoice;
  /** Whether only rows are shown in which something is still to be measured. */
  declare protected left: boolean;
  declare protected sought: string;
  declare protected listed: number;
  /** What could not be read, by field, and why. */
  declare protected wrong: ReadonlyMap<string, { readonly text: string; readonly problem: string }>;
  /** Rows that were measured since the choice: they stay in sight until it is made anew. */
  #kept = new Set<string>();

  constructor() {
    super();
    this.left = false;
    this.sought = '';
    this.listed = LISTED;
    this.wrong = new Map();
  }

  /** While it is not shown it stays as it was; whoever opens it sees what is by then. */
  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    return this.active || changed.has('active');
  }

  protected get heading(): string {
    return this.words.say('Measured values');
  }

  protected get about(): string {
    return this.words.say('With its devices on: a supply at its output, a run at its start (current) and its far end (voltage).');
  }

  protected body(): TemplateResult {
    const { words } = this;
    const find = words.say('Find by tag or note');
    const choose = (left: boolean, text: string) => html`<button type="button" aria-pressed=${this.left === left} data-left=${left}
      @click=${() => { this.#choose(left); }}>${text}</button>`;
    const rows = SHEETS.map((sheet) => ({ sheet, shown: this.#rowsOf(sheet) }));
    const none = rows.every(({ shown }) => shown.length === 0);
    return html`<div class="options">
        <div class="choice" role="group" aria-label=${words.say('Show')}>${choose(false, words.say('All'))}${choose(true, words.say('Still to be measured'))}</div>
        <input type="search" aria-label=${find} placeholder=${find} .value=${this.sought}
          @input=${({ currentTarget }: Event) => { this.sought = (currentTarget as HTMLInputElement).value; }}></div>
      ${none ? html`<p>${words.say('There is no supply and no run to measure here.')}</p>` : nothing}
      ${rows.map(({ sheet, shown }) => shown.length === 0 ? nothing : html`<h3>${words.text(SCHEMA[sheet].title)}</h3>
        <ul class="rows">${shown.slice(0, this.listed).map((row) => this.#row(sheet, row))}</ul>
        ${shown.length > this.listed ? html`<button type="button" class="link" @click=${() => { this.listed += LISTED; }}>
          ${words.say('Show {n} more of {all}', { n: Math.min(LISTED, shown.length - this.listed), all: shown.length })}</button>` : nothing}`)}`;
  }

  protected foot(): TemplateResult {
    const { schedule, words } = this;
    const all = SHEETS.flatMap((sheet) => this.#rowsIn(sheet)
      .flatMap(({ id }) => KEYS.map((key) => schedule.isOwn(sheet, id, key))));
    return html`<span class="sum" role="status">${words.say('{n} of {all} values measured', { n: all.filter(Boolean).length, all: all.length })}</span>`;
  }

  #rowsIn(sheet: MeasuredSheet): readonly Row[] {
    const { schedule, only } = this;
    return schedule.rows(sheet).filter((row) => !isBlank(row) && isInSight(schedule, sheet, row.id, only));
  }

  #rowsOf(sheet: MeasuredSheet): readonly Row[] {
    const sought = this.sought.trim().toLowerCase();
    return this.#rowsIn(sheet).filter((row) => {
      const open = KEYS.some((key) => !this.schedule.isOwn(sheet, row.id, key));
      return (!this.left || open || this.#kept.has(`${sheet} ${row.id}`))
        && [rowName(this.schedule, { sheet, id: row.id }), row.cells.note].some((text) => String(text ?? '').toLowerCase().includes(sought));
    });
  }

  #row(sheet: MeasuredSheet, { id, cells }: Row): TemplateResult {
    const { schedule } = this;
    const go = () => { this.dispatchEvent(new GoToEvent({ sheet, id, key: SCHEMA[sheet].tag })); };
    return html`<li data-row=${rowName(schedule, { sheet, id })}>
      <p class="name"><button type="button" class="link" @click=${go}>${rowName(schedule, { sheet, id })}</button><span class="quiet">${cells.note}</span></p>
      <div class="fields">${KEYS.map((key) => this.#field(sheet, id, key))}</div>
      ${this.#verdict(sheet, id)}</li>`;
  }

  #field(sheet: MeasuredSheet, id: number, key: MeasuredKey): TemplateResult {
    const { schedule, words } = this;
    const column = columnOf(sheet, key) as InputColumn;
    const place = `${sheet} ${id} ${key}`;
    const expected = expectedAt(schedule, sheet, id, key);
    const wrong = this.wrong.get(place);
    const take = ({ currentTarget }: Event) => {
      this.#take(sheet, id, column, (currentTarget as HTMLInputElement).value);
    };
    const change = (event: Event) => {
      const field = (event.currentTarget as Element).parentElement!.querySelector('input')!;
      this.#take(sheet, id, column, field.value.startsWith('-') ? field.value.slice(1) : `-${field.value}`);
    };
    return html`<div class="field"><label>${titleWithUnit(column, words)}
        <span class="measured"><input inputmode="decimal" enterkeyhint="next" autocomplete="off" data-key=${key} aria-invalid=${wrong === undefined ? nothing : 'true'}
          .value=${live(wrong?.text ?? editedText({ schedule, sheet, words }, id, column))} @change=${take} @keydown=${(event: KeyboardEvent) => { this.#onKey(event, take); }}>
        ${key === 'measuredVoltage' ? html`<button type="button" class="bordered sign" title=${words.say('Changes the sign: plus and minus are changed over')}
          aria-label=${words.say('Changes the sign: plus and minus are changed over')} ?disabled=${!schedule.isOwn(sheet, id, key)} @click=${change}>±</button>` : nothing}</span></label>
      <span class="quiet">${expected === null ? words.say('not known what to expect')
        : words.say('{value} expected', { value: key === 'measuredVoltage' ? volts(expected) : amps(expected) })}</span>
      ${wrong === undefined ? nothing : html`<span class="wrong" role="alert">${wrong.problem}</span>`}</div>`;
  }

  /** What the measured values say; where nothing speaks against them, only of what they could be held against. */
  #verdict(sheet: MeasuredSheet, id: number): TemplateResult | typeof nothing {
    const { schedule, words } = this;
    const measured = KEYS.filter((key) => schedule.isOwn(sheet, id, key));
    if (measured.length === 0) return nothing;
    // What stands there and cannot be read is told too, or it would seem judged.
    const found = schedule.findingsOf(sheet, id).filter(({ rule, key, severity }) => rule.includes('-measured-')
      || (severity === 'incomplete' && measured.some((each) => each === key)));
    const line = (finding: Finding) => html`<p class="verdict">${markShape(finding.severity)}<span>${finding.message}${acceptedLine(finding, words)}</span></p>`;
    const unjudged = measured.some((key) => expectedAt(schedule, sheet, id, key) === null);
    return html`<div class="verdicts" aria-live="polite">${found.map(line)}
      ${found.length > 0 ? nothing : unjudged
        ? html`<p class="verdict">${markShape('incomplete')}<span>${words.say('Not judged: it is not known what to expect.')}</span></p>`
        : html`<p class="verdict">${markShape('ok')}<span>${words.say('Nothing speaks against it.')}</span></p>`}</div>`;
  }

  #choose(left: boolean): void {
    this.#kept.clear();
    this.left = left;
    this.requestUpdate();
  }

  #take(sheet: MeasuredSheet, id: number, column: InputColumn, text: string): void {
    const { schedule, words } = this;
    const place = `${sheet} ${id} ${column.key}`;
    const read = readCell({ schedule, sheet, words }, id, column, text);
    const wrong = new Map(this.wrong);
    if (read.ok) {
      wrong.delete(place);
      this.#kept.add(`${sheet} ${id}`);
      const label = words.say('Edit of {column}', { column: words.text(column.title) });
      schedule.act(label, setCells(schedule.document, [{ sheet, id, key: column.key, value: read.value }]));
    } else wrong.set(place, { text, problem: read.problem });
    this.wrong = wrong;
  }

  /** Enter goes on to the next field; keys of the element find what was typed already taken. */
  #onKey(event: KeyboardEvent, take: (event: Event) => void): void {
    if (event.key === 'Enter' || event.ctrlKey || event.metaKey) take(event);
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const fields = [...this.renderRoot.querySelectorAll<HTMLInputElement>('.fields input')];
    const next = fields[fields.indexOf(event.currentTarget as HTMLInputElement) + 1];
    next?.focus();
    next?.select();
  }
}
