import { html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { decodeText, type Problem } from '../../src/exchange/index.ts';
import {
  columnsToRemember, equationOf, missingColumns, readTakeoff, takeoffChanges, takeoffLabel,
  type LineDecision, type NameDecision, type RememberedColumns, type Takeoff, type TakeoffDecisions,
} from '../../src/exchange/takeoff/index.ts';
import { isBlank, tagOf, type Cells } from '../../src/schedule/index.ts';
import { SheetChooseEvent } from '../events/index.ts';
import { controls, statusMarkStyles } from '../look/index.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { addGeneralTypes } from './general-types.ts';
import { chooseColumn } from './choose-column.ts';
import { recallColumns, rememberColumns } from './column-memory.ts';
import { ElvColumnsEvent } from './columns-event.ts';
import { lineTable, OUTCOMES, type LineFilter } from './line-table.ts';
import { count, nameChoices } from './name-choices.ts';
import { takeSource } from './take-source.ts';
import { styles } from './takeoff-reader.styles.ts';

/** How many lines are shown at first. */
const FIRST_LINES = 200;
/** How a workbook begins, which is a package of files. */
const PACKAGE = 'PK';
const WORKBOOK = { message: 'It is a workbook, not text. Save the sheet with the list as CSV, or copy its cells and paste them.' };
const FILTERS = ['all', 'undecided', 'taken', 'merged', 'left-out'] as const;

/** Reads a takeoff: shows what becomes of every line, lets a person decide where that is open, and takes the devices. */
export class TakeoffReader extends WorkArea {
  static override styles = [controls, statusMarkStyles, workAreaStyles, styles];
  static override properties: PropertyDeclarations = {
    pageColumns: { attribute: false }, source: { state: true }, columns: { state: true }, decisions: { state: true },
    filter: { state: true }, most: { state: true }, refusal: { state: true },
  };

  /** What columns hold by what the page remembers. */
  declare pageColumns: RememberedColumns;
  declare protected source: { readonly name: string; readonly text: string } | undefined;
  declare protected columns: RememberedColumns;
  declare protected decisions: TakeoffDecisions;
  declare protected filter: LineFilter;
  declare protected most: number;
  declare protected refusal: { readonly name: string; readonly problems: readonly Pick<Problem, 'message'>[] } | undefined;
  protected readonly heading = 'Takeoff';
  #takeoff: Takeoff | undefined;

  constructor() {
    super();
    this.pageColumns = {};
    this.#begin();
  }

  /** Reads a file. */
  async open(file: File): Promise<void> {
    const { name } = file;
    const bytes = new Uint8Array(await file.arrayBuffer());
    const decoded = decodeText(bytes);
    if (decoded.ok) this.take(name, decoded.text);
    else this.refusal = { name, problems: String.fromCharCode(bytes[0]!, bytes[1]!) === PACKAGE ? [WORKBOOK] : decoded.problems };
  }

  /** Reads a list, with its columns as they were the last time. */
  take(name: string, text: string): void {
    const first = readTakeoff(text, { types: this.#types, columns: this.pageColumns });
    if (!first.ok) {
      this.refusal = { name, problems: first.problems };
      return;
    }
    this.#begin();
    this.columns = { ...this.pageColumns, ...recallColumns(first.columns) };
    this.source = { name, text };
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!['source', 'columns', 'decisions', 'revision', 'active'].some((key) => changed.has(key)) || !this.active) return;
    if (this.source === undefined) {
      this.#takeoff = undefined;
      return;
    }
    const read = readTakeoff(this.source.text, { types: this.#types, columns: this.columns, decisions: this.decisions });
    this.#takeoff = read.ok ? read : undefined;
    if (!read.ok) this.refusal = { name: this.source.name, problems: read.problems };
  }

  protected get about(): string {
    return this.source?.name ?? 'A list of counts measured off drawings becomes device rows; every line is accounted for.';
  }

  protected body(): TemplateResult {
    const takeoff = this.#takeoff;
    if (takeoff === undefined) {
      return html`${takeSource({
        refusal: this.refusal, take: (name, text) => { this.take(name, text); }, open: (file) => { void this.open(file); },
      })}${this.#withoutTypes()}`;
    }
    return html`${this.#withoutTypes()}
      ${takeoff.notes.map((note) => html`<p class="quiet english">${note}</p>`)}
      ${nameChoices({ takeoff, types: this.schedule.rows('types').map((row) => tagOf('types', row)), decide: this.#decideNames })}
      <div class="options">${this.#filters(takeoff)}</div>
      ${lineTable({
        takeoff, filter: this.filter, most: this.most,
        decided: (line) => this.decisions.lines?.[line] !== undefined,
        choose: (column, field) => { this.columns = chooseColumn(takeoff.columns, column.index, field); },
        decide: (line, decision) => { this.#decideLines({ [line]: decision }); },
        showAll: () => { this.most = Infinity; },
      })}`;
  }

  protected foot(): TemplateResult {
    const takeoff = this.#takeoff;
    if (takeoff === undefined) return html`<span class="quiet">Nothing is taken before you have seen every line.</span>`;
    const { sums, rows } = takeoff;
    const undecided = takeoff.lines.filter(({ outcome }) => outcome === 'undecided');
    const blocked = undecided.length > 0 || missingColumns(takeoff.columns).length > 0;
    const leaveOut = () => { this.#decideLines(Object.fromEntries(undecided.map(({ line }) => [line, 'leave-out' as const]))); };
    return html`<span class="sum english" role="status">${equationOf(sums)}</span>
      <button type="button" class="link" @click=${this.#begin}>Another list</button>
      ${undecided.length === 0 ? nothing : html`<button type="button" class="link" data-do="leave-undecided" @click=${leaveOut}>
        Leave out ${count(undecided.length, 'undecided line')}</button>`}
      <button type="button" class="primary" data-do="take" ?disabled=${blocked || rows.length === 0} @click=${this.#carryOut}
        title=${blocked ? 'Decide on what is open first' : 'One action, which Undo takes back'}>
        ${undecided.length > 0 ? `${count(undecided.length, 'line')} to decide first` : `Take ${count(sums.taken, 'device')} in ${count(rows.length, 'row')}`}</button>`;
  }

  get #types(): Cells[] {
    return this.schedule.rows('types').map(({ cells }) => cells);
  }

  #withoutTypes(): TemplateResult | typeof nothing {
    if (!this.schedule.rows('types').every(isBlank)) return nothing;
    return html`<p class="english">The sheet of types is empty, so that every name becomes a new type without a draw.
      <button type="button" class="link" data-do="general-types" @click=${() => addGeneralTypes(this.schedule)}>Add general device types</button></p>`;
  }

  #filters({ lines }: Takeoff): TemplateResult {
    return html`<div class="choice" role="group" aria-label="Lines that are shown">${FILTERS.map((filter) => {
      const number = filter === 'all' ? lines.length : lines.filter(({ outcome }) => outcome === filter).length;
      return html`<button type="button" data-filter=${filter} aria-pressed=${filter === this.filter}
        @click=${() => { this.filter = filter; }}>${filter === 'all' ? 'all lines' : OUTCOMES[filter].words} ${number}</button>`;
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
    this.source = this.refusal = undefined;
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
    this.schedule.act(takeoffLabel(takeoff), takeoffChanges(this.schedule.document, takeoff));
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
