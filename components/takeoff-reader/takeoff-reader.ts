import { html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import type { Problem } from '../../src/exchange/index.ts';
import {
  chooseColumn, columnsToRemember, equationOf, missingColumns, officeColumns, readTakeoff, takeoffChanges, takeoffLabel,
  withOfficeNames,
  type LineDecision, type NameDecision, type RememberedColumns, type Takeoff, type TakeoffDecisions, type TakeoffSource,
} from '../../src/exchange/takeoff/index.ts';
import { isBlank, tagOf, type Cells } from '../../src/schedule/index.ts';
import { SheetChooseEvent } from '../events/index.ts';
import { controls, statusMarkStyles } from '../look/index.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { addGeneralTypes } from './general-types.ts';
import { recallColumns, rememberColumns } from './column-memory.ts';
import { ElvColumnsEvent } from './columns-event.ts';
import { lineTable, OUTCOMES, type LineFilter } from './line-table.ts';
import { nameChoices } from './name-choices.ts';
import { openList, openSheet, type OpenSheet } from './open-list.ts';
import { sheetChoice } from './sheet-choice.ts';
import { refused, takeSource, type RefusedList } from './take-source.ts';
import { styles } from './takeoff-reader.styles.ts';

/** How many lines are shown at first. */
const FIRST_LINES = 200;
const FILTERS = ['all', 'undecided', 'taken', 'merged', 'left-out'] as const;

/**
 * Reads a takeoff: shows what becomes of every line, lets a person decide where that is open, and takes the devices.
 */
export class TakeoffReader extends WorkArea {
  static override styles = [controls, statusMarkStyles, workAreaStyles, styles];
  static override properties: PropertyDeclarations = {
    pageColumns: { attribute: false }, source: { state: true }, columns: { state: true }, decisions: { state: true },
    filter: { state: true }, most: { state: true }, refusal: { state: true }, from: { state: true },
  };

  /** What columns hold by what the page remembers. */
  declare pageColumns: RememberedColumns;
  declare protected source: { readonly name: string; readonly list: TakeoffSource } | undefined;
  /** The workbook that was opened last, of which another sheet may be chosen. */
  declare protected from: OpenSheet | undefined;
  declare protected columns: RememberedColumns;
  declare protected decisions: TakeoffDecisions;
  declare protected filter: LineFilter;
  declare protected most: number;
  declare protected refusal: RefusedList | undefined;
  #takeoff: Takeoff | undefined;
  /** What is being read; what is read after it takes its place. */
  #reading: object | undefined;

  constructor() {
    super();
    this.pageColumns = {};
    this.#begin();
  }

  /** Reads a file. */
  async open(file: File): Promise<void> {
    await this.#takeWhenRead(file.name, openList(file, this.words));
  }

  /** Reads a list, with its columns as they were the last time. */
  take(name: string, list: TakeoffSource, from?: OpenSheet): void {
    this.#reading = undefined;
    const known = { ...officeColumns(this.schedule.document.lists), ...this.pageColumns };
    const first = readTakeoff(list, { types: this.#types, columns: known, words: this.words });
    if (!first.ok) {
      this.#refuse(name, first.problems, from);
      return;
    }
    this.#begin();
    this.from = from;
    this.columns = { ...known, ...recallColumns(first.columns) };
    this.source = { name, list };
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (![
      'source', 'columns', 'decisions', 'revision', 'active', 'words',
    ].some((key) => changed.has(key)) || !this.active) return;
    if (this.source === undefined) {
      this.#takeoff = undefined;
      return;
    }
    const { columns, words } = this;
    const decisions = withOfficeNames(this.decisions, this.schedule.document.lists);
    const read = readTakeoff(this.source.list, { types: this.#types, columns, decisions, words });
    this.#takeoff = read.ok ? read : undefined;
    if (!read.ok) this.refusal = { name: this.source.name, problems: read.problems };
  }

  protected get heading(): string {
    return this.words.say('Takeoff');
  }

  protected get about(): string {
    return this.source?.name
      ?? this.words.say('A list of counts measured off drawings becomes device rows; every line is accounted for.');
  }

  protected body(): TemplateResult {
    const takeoff = this.#takeoff;
    const { words } = this;
    if (takeoff === undefined) {
      return html`${refused(this.refusal, words)}${this.#sheets()}${takeSource({
        take: (name, text) => { this.take(name, text); }, open: (file) => { void this.open(file); }, words,
      })}${this.#withoutTypes()}`;
    }
    return html`${refused(this.refusal, words)}${this.#withoutTypes()}${this.#sheets()}
      ${takeoff.notes.map((note) => html`<p class="quiet spoken">${note}</p>`)}
      ${nameChoices({ takeoff, types: this.schedule.rows('types').map((row) => tagOf('types', row)), decide: this.#decideNames, words })}
      <div class="options">${this.#filters(takeoff)}</div>
      ${lineTable({
        takeoff, filter: this.filter, most: this.most, words,
        decided: (line) => this.decisions.lines?.[line] !== undefined,
        choose: (column, field) => { this.columns = chooseColumn(takeoff.columns, column.index, field); },
        decide: (line, decision) => { this.#decideLines({ [line]: decision }); },
        showAll: () => { this.most = Infinity; },
      })}`;
  }

  protected foot(): TemplateResult {
    const takeoff = this.#takeoff;
    const { words } = this;
    if (takeoff === undefined) {
      return html`<span class="quiet">${words.say('Nothing is taken before you have seen every line.')}</span>`;
    }
    const { sums, rows } = takeoff;
    const undecided = takeoff.lines.filter(({ outcome }) => outcome === 'undecided');
    const blocked = undecided.length > 0 || missingColumns(takeoff.columns).length > 0;
    const leaveOut =
      () => { this.#decideLines(Object.fromEntries(undecided.map(({ line }) => [line, 'leave-out' as const]))); };
    return html`<span class="sum spoken" role="status">${equationOf(sums, words)}</span>
      <button type="button" class="link" @click=${this.#begin}>${words.say('Another list')}</button>
      ${undecided.length === 0 ? nothing : html`<button type="button" class="link" data-do="leave-undecided" @click=${leaveOut}>
        ${words.say('Leave out {count, plural, one {# undecided line} other {# undecided lines}}', { count: undecided.length })}</button>`}
      <button type="button" class="primary" data-do="take" ?disabled=${blocked || rows.length === 0} @click=${this.#carryOut}
        title=${blocked ? words.say('Decide on what is open first') : words.say('One action, which Undo takes back')}>
        ${undecided.length > 0 ? words.say('{count, plural, one {# line} other {# lines}} to decide first', { count: undecided.length })
          : words.say('Take {devices, plural, one {# device} other {# devices}} in {rows, plural, one {# row} other {# rows}}', { devices: sums.taken, rows: rows.length })}</button>`;
  }

  /** Takes a list from a file, unless another one was taken or put aside meanwhile. */
  async #takeWhenRead(name: string, list: ReturnType<typeof openList>): Promise<void> {
    this.#reading = list;
    const { read, from } = await list;
    if (this.#reading !== list) return;
    if (read.ok) this.take(name, read.source, from);
    else this.#refuse(name, read.problems, from);
  }

  #refuse(name: string, problems: readonly Pick<Problem, 'message'>[], from: OpenSheet | undefined): void {
    // A sheet that cannot be read takes the place of the one before, so that the choice shows what is meant.
    if (from !== undefined) this.#begin();
    this.from = from ?? this.from;
    this.refusal = { name, problems };
  }

  #sheets(): TemplateResult | typeof nothing {
    const { from } = this;
    if (from === undefined) return nothing;
    const choose = (sheet: string) => { void this.#takeWhenRead(from.name, openSheet({ ...from, sheet })); };
    return sheetChoice({ sheets: from.workbook.sheets, sheet: from.sheet, choose, words: this.words });
  }

  get #types(): Cells[] {
    return this.schedule.rows('types').map(({ cells }) => cells);
  }

  #withoutTypes(): TemplateResult | typeof nothing {
    if (!this.schedule.rows('types').every(isBlank)) return nothing;
    return html`<p class="spoken">${this.words.say('The sheet of types is empty, so that every name becomes a new type without a draw.')}
      <button type="button" class="link" data-do="general-types" @click=${() => addGeneralTypes(this.schedule)}>${this.words.say('Add general device types')}</button></p>`;
  }

  #filters({ lines }: Takeoff): TemplateResult {
    return html`<div class="choice" role="group" aria-label=${this.words.say('Lines that are shown')}>${FILTERS.map((filter) => {
      const number = filter === 'all' ? lines.length : lines.filter(({ outcome }) => outcome === filter).length;
      return html`<button type="button" data-filter=${filter} aria-pressed=${filter === this.filter}
        @click=${() => { this.filter = filter; }}>${filter === 'all' ? this.words.say('all lines') : this.words.say(OUTCOMES[filter].title)} ${number}</button>`;
    })}</div>`;
  }

  readonly #decideNames = (decided: Readonly<Record<string, NameDecision | undefined>>): void => {
    this.decisions = { ...this.decisions, names: merged(this.decisions.names, decided) };
  };

  #decideLines(decided: Readonly<Record<number, LineDecision | undefined>>): void {
    this.decisions = { ...this.decisions, lines: merged(this.decisions.lines, decided) };
  }

  /** Waits for a list. */
  readonly #begin = (): void => {
    this.source = this.refusal = this.from = this.#reading = undefined;
    this.columns = {};
    this.decisions = {};
    this.filter = 'all';
    this.most = FIRST_LINES;
  };

  readonly #carryOut = (): void => {
    const takeoff = this.#takeoff!;
    const columns = columnsToRemember(takeoff.columns);
    rememberColumns(takeoff.columns, columns);
    this.dispatchEvent(new ElvColumnsEvent(columns));
    this.#begin();
    this.schedule.act(takeoffLabel(takeoff, this.words), takeoffChanges(this.schedule.document, takeoff, this.words));
    this.dispatchEvent(new SheetChooseEvent('devices'));
  };
}

/** Decisions with more of them; `undefined` takes one back. */
function merged<Decision>(
  before: Readonly<Record<string, Decision>> | undefined, more: Readonly<Record<string, Decision | undefined>>,
): Record<string, Decision> {
  const all = Object.entries({ ...before, ...more });
  return Object.fromEntries(all.filter((each): each is [string, Decision] => each[1] !== undefined));
}
