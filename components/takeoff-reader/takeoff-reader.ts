import { html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { tooLarge, type Problem } from '../../src/exchange/index.ts';
import {
  chooseColumn, columnsToRemember, equationOf, freeName, htmlTables, missingColumns, officeColumns, readListFile,
  readTakeoff, withOfficeNames, type LineDecision, type NameDecision, type RememberedColumns, type Takeoff,
  type TakeoffDecisions, type TakeoffPart, type TakeoffTable,
} from '../../src/exchange/takeoff/index.ts';
import { isBlank, tagOf, type Cells } from '../../src/schedule/index.ts';
import { SheetChooseEvent } from '../events/index.ts';
import { addGeneralTypes, generalTypes } from '../first-steps/general-types.ts';
import { controls, statusMarkStyles, UNFETCHED } from '../look/index.ts';
import { RevisedList, revisedListStyles } from '../revised-list/index.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { recallColumns, rememberColumns } from './column-memory.ts';
import { ElvColumnsEvent } from './columns-event.ts';
import { flaggedLines, openLines } from './flagged-lines.ts';
import { lineTables, OUTCOMES, type LineFilter } from './line-table.ts';
import { lineChoice } from './line-choice.ts';
import { nameChoices } from './name-choices.ts';
import { keyOfTable, sheetChoice } from './sheet-choice.ts';
import { pastedLists, refused, takeSource, type RefusedList } from './take-source.ts';
import { styles } from './takeoff-reader.styles.ts';

/** How many lines are shown at first. */
const FIRST_LINES = 200;
const FILTERS = ['all', 'undecided', 'taken', 'merged', 'left-out'] as const;
/** Where the work goes on, the first that there is: what to decide, then what takes the devices. */
const NEXT = [
  '[data-do=general-types]', '[data-do=confirm]', '.names [data-state=undecided] select', '[data-do=take-alike]',
  '[data-do=leave-alike]', '.decide input', '.decide button', '[data-revised=asked] select', '[data-do=take]:enabled', '.decide-on :is(button, input, select)', 'h2',
];

/** Lists that are read together, and which of them are. */
interface Source {
  readonly name: string;
  readonly tables: readonly TakeoffTable[];
  readonly notes: readonly string[];
  /** Keys of the lists that are read. */
  readonly chosen: ReadonlySet<string>;
}

/**
 * Reads a takeoff: shows what becomes of every line, lets a person decide where that is open, and overrule it
 * everywhere, and takes the devices.
 */
export class TakeoffReader extends WorkArea {
  static override styles = [controls, statusMarkStyles, workAreaStyles, revisedListStyles, styles];
  static override properties: PropertyDeclarations = {
    pageColumns: { attribute: false }, source: { state: true }, decisions: { state: true }, filter: { state: true },
    most: { state: true }, opened: { state: true }, refusal: { state: true },
  };

  /** What columns hold by what the page remembers. */
  declare pageColumns: RememberedColumns;
  declare protected source: Source | undefined;
  declare protected decisions: TakeoffDecisions;
  declare protected filter: LineFilter;
  declare protected most: number;
  /** Key of the line that is being decided on otherwise. */
  declare protected opened: string | undefined;
  declare protected refusal: RefusedList | undefined;
  #takeoff: Takeoff | undefined;
  /** The list held against a schedule that was counted before. */
  readonly #revised = new RevisedList(() => { this.requestUpdate(); });
  /** What is being read; what is read after it takes its place. */
  #reading: object | undefined;
  /** Whether the focus was within before what was drawn last. */
  #hadFocus = false;

  constructor() {
    super();
    this.pageColumns = {};
    this.#begin();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('paste', this.#onPaste);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('paste', this.#onPaste);
  }

  /**
   * Reads files, several together, unless another list is taken or put aside meanwhile. Where a list is being decided
   * on they come beside it, so that no decision is lost.
   */
  async open(files: readonly File[]): Promise<void> {
    const reading = {};
    this.#reading = reading;
    const { words } = this;
    const names = new Set(this.source?.tables.flatMap(({ file }) => file ?? []));
    const read = await Promise.all(files.map(async (file) => {
      const name = freeName(file.name, names);
      const list = tooLarge(file.size, words)
        ?? await readListFile(name, new Uint8Array(await file.arrayBuffer()), words);
      // One that cannot be read keeps no other from being read.
      const takeoff = list.ok && list.tables.length > 0 && files.length > 1
        ? readTakeoff(list.tables, { types: this.#types, words }) : list;
      return { name, list: takeoff.ok ? list : takeoff };
    }));
    if (this.#reading !== reading) return;
    const lists = read.flatMap(({ name, list }) => list.ok && list.tables.length > 0 ? [{ name, list }] : []);
    if (lists.length > 0) {
      const [name, tables, notes] = [lists.map((each) => each.name).join(', '), lists.flatMap(({ list }) => list.tables), lists.flatMap(({ list }) => list.notes)];
      const before = this.source;
      if (before === undefined) this.take(name, tables, notes);
      else {
        this.#put(words.say('{list}, {other}', { list: before.name, other: name }), [...before.tables, ...tables], [
          ...before.notes, ...notes, words.say('{name} is read beside the list that was open. “Another list” begins anew.', { name }),
        ]);
      }
    }
    const refused = read.flatMap(({ name, list }) => list.ok
      ? list.refused.map(({ sheet, why }) => ({ name: list.tables.length > 0 ? `${name}, ${sheet}` : name, problems: why.problems }))
      : [{ name, problems: list.problems }]);
    if (refused.length > 0) this.#refuse(refused.map((each) => each.name).join('; '), refused.flatMap(({ problems }) => problems));
  }

  /** Reads what was pasted: cells of a page, which tell which of them are merged or hidden, else text. */
  takePasted(list: string): void {
    const tables = htmlTables(list);
    this.take(this.words.say('The pasted list'), tables.length > 0 ? tables : [{ cells: list }]);
  }

  /**
   * Reads lists, with their columns as they were the last time.
   * @param notes sentences on how their file was read.
   */
  take(name: string, lists: readonly TakeoffTable[], notes: readonly string[] = []): void {
    this.#reading = undefined;
    const read = readTakeoff(lists, { types: this.#types, columns: this.#known, words: this.words });
    if (!read.ok) {
      this.#refuse(name, read.problems);
      return;
    }
    this.#begin();
    this.#put(name, lists, notes);
  }

  /** What columns hold by what schedule and page remember. */
  get #known(): RememberedColumns {
    return { ...officeColumns(this.schedule.document.lists), ...this.pageColumns };
  }

  #put(name: string, lists: readonly TakeoffTable[], notes: readonly string[]): void {
    const known = this.#known;
    const read = readTakeoff(lists, { types: this.#types, columns: known, words: this.words });
    if (!read.ok) {
      this.#refuse(name, read.problems);
      return;
    }
    // A sheet without cells has nothing to say.
    const tables = lists.filter((table) => lists.length === 1 || isFilled(table)).map((table) => {
      const recalled = read.parts.filter((part) => isOf(part, table)).map(({ columns }) => recallColumns(columns));
      return { ...table, columns: Object.assign({}, known, ...recalled, table.columns) as RememberedColumns };
    });
    const left = new Set(this.source?.tables.map(keyOfTable).filter((key) => !this.source!.chosen.has(key)));
    this.source = { name, tables, notes, chosen: new Set(tables.map(keyOfTable).filter((key) => !left.has(key))) };
  }

  protected override willUpdate(changed: PropertyValues): void {
    this.#hadFocus = this.hasUpdated && this.renderRoot.querySelector(':focus') !== null;
    if (!['source', 'decisions', 'revision', 'active', 'words'].some((key) => changed.has(key)) || !this.active) return;
    this.#takeoff = undefined;
    if (this.source === undefined) return;
    const { source: { name, tables, chosen }, words } = this;
    const decisions = withOfficeNames(this.decisions, this.schedule.document.lists);
    const read = readTakeoff(
      tables.filter((table) => chosen.has(keyOfTable(table))), { types: this.#types, decisions, words },
    );
    if (read.ok) {
      this.#takeoff = read;
      this.#revised.hold({ schedule: this.schedule, takeoff: read, name, words });
    } else this.refusal = { name, problems: read.problems };
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed as PropertyValues<this>);
    const isNew = changed.has('source') && changed.get('source') === undefined && this.source !== undefined;
    const fellOut = this.#hadFocus && this.renderRoot.querySelector(':focus') === null;
    if (this.active && !changed.has('active') && (isNew || fellOut)) this.#focusNext();
  }

  protected get heading(): string {
    return this.words.say('Takeoff');
  }

  protected get about(): string {
    return this.source?.name
      ?? this.words.say('A list counted off drawings becomes device rows; every line is accounted for.');
  }

  protected body(): TemplateResult {
    const takeoff = this.#takeoff;
    const { source, words } = this;
    if (takeoff === undefined || source === undefined) {
      return html`${refused(this.refusal, words)}${this.#sheets()}${takeSource({
        take: (name, lists) => { this.take(name, lists); }, open: (files) => { void this.open(files); }, words,
      })}${this.#withoutTypes()}`;
    }
    const opened = this.opened === undefined ? openLines(takeoff)[0]
      : takeoff.lines.find(({ key }) => key === this.opened);
    return html`<div class="reading"><div class="decide-on">${refused(this.refusal, words)}${this.#withoutTypes()}
      ${nameChoices({ takeoff, types: this.schedule.rows('types').map((row) => tagOf('types', row)), decide: this.#decideNames, words })}
      ${this.#revised.choices}${flaggedLines({ takeoff, decide: this.#decideLines, show: () => { this.filter = 'undecided'; }, words })}
      ${[...source.notes, ...takeoff.notes].map((note) => html`<p class="quiet spoken">${note}</p>`)}</div>
      <div class="read"><div class="options">${this.#views()}${this.#revised.showsRows ? nothing : this.#filters(takeoff)}${this.#sheets()}</div>
      <div class="scroll" tabindex="-1">${this.#revised.showsRows ? this.#revised.rows : lineTables({
        takeoff, filter: this.filter, most: this.most, opened: opened?.key, words,
        decided: (key) => this.decisions.lines?.[key] !== undefined,
        choose: (part, column, field) => { this.#choose(part, chooseColumn(part.columns, column.index, field)); },
        anew: (key) => { this.#decideLines({ [key]: undefined }); },
        open: (key) => { this.#openLine(key); },
        showAll: () => { this.most = Infinity; },
      })}</div></div>${opened === undefined || this.#revised.showsRows ? nothing
      : keyed(opened.key, lineChoice(opened, { takeoff, decide: (key, decision) => { this.#decideLines({ [key]: decision }); }, words }))}</div>`;
  }

  protected foot(): TemplateResult {
    const takeoff = this.#takeoff;
    const { words } = this;
    if (takeoff === undefined) {
      return html`<span class="quiet">${words.say('Nothing is taken before you have seen every line.')}</span>`;
    }
    const { rows, parts } = takeoff;
    const { asked, takeoff: { sums } } = this.#revised;
    const undecided = takeoff.lines.filter(({ outcome }) => outcome === 'undecided');
    const blocked = undecided.length > 0 || asked > 0 || parts.some(({ kind, columns }) => kind === 'list' && missingColumns(columns).length > 0);
    const leaveOut =
      () => { this.#decideLines(Object.fromEntries(undecided.map(({ key }) => [key, 'leave-out' as const]))); };
    return html`<span class="sum spoken" role="status">${equationOf(sums, words)}</span>
      <button type="button" class="link" data-do="another" @click=${this.#begin}>${words.say('Another list')}</button>
      ${undecided.length === 0 ? nothing : html`<button type="button" class="link" data-do="leave-undecided" @click=${leaveOut}>
        ${words.say('Leave out {count, plural, one {# undecided line} other {# undecided lines}}', { count: undecided.length })}</button>`}
      <button type="button" class="primary" data-do="take" ?disabled=${blocked || this.#revised.isAsked || rows.length === 0} @click=${this.#carryOut}
        title=${blocked ? words.say('Decide on what is open first') : words.say('One action, which Undo takes back (Ctrl+Enter)')}>
        ${undecided.length > 0 ? words.say('{count, plural, one {# line} other {# lines}} to decide first', { count: undecided.length })
          : asked > 0 ? words.say('{count, plural, one {# row} other {# rows}} to decide first', { count: asked })
          : this.#revised.offer ?? words.say('Take {devices, plural, one {# device} other {# devices}} in {rows, plural, one {# row} other {# rows}}', { devices: sums.taken, rows: rows.length })}</button>`;
  }

  #refuse(name: string, problems: readonly Pick<Problem, 'message'>[]): void {
    this.refusal = { name, problems };
  }

  #sheets(): TemplateResult | typeof nothing {
    const { source, words } = this;
    if (source === undefined) return nothing;
    const choose = (chosen: ReadonlySet<string>) => {
      this.refusal = undefined;
      this.source = { ...source, chosen };
    };
    return sheetChoice({ tables: source.tables, chosen: source.chosen, takeoff: this.#takeoff, choose, words });
  }

  get #types(): Cells[] {
    return this.schedule.rows('types').map(({ cells }) => cells);
  }

  #withoutTypes(): TemplateResult | typeof nothing {
    if (!this.schedule.rows('types').every(isBlank)) return nothing;
    return html`<p class="spoken">${this.words.say('The sheet of types is empty, so that every name becomes a new type of which only the list says something.')}
      <button type="button" class="link" data-do="general-types" @click=${this.#addGeneral}>${this.words.say('Add general device types')}</button></p>`;
  }

  readonly #addGeneral = async (): Promise<void> => {
    try {
      addGeneralTypes(this.schedule, await generalTypes());
    } catch {
      this.#refuse(this.words.say('General types'), [{ message: this.words.say(UNFETCHED) }]);
    }
  };

  /** Whether the lines of the list are shown, or what they make of the device rows. */
  #views(): TemplateResult | typeof nothing {
    if (!this.#revised.isOnto) return nothing;
    const show = (shown: boolean) => () => { this.#revised.showsRows = shown; };
    const { showsRows } = this.#revised;
    return html`<div class="choice" role="group" aria-label=${this.words.say('What is shown')}>
      <button type="button" data-view="lines" aria-pressed=${!showsRows} @click=${show(false)}>${this.words.say('lines of the list')}</button>
      <button type="button" data-view="rows" aria-pressed=${showsRows} @click=${show(true)}>${this.words.say('device rows')}</button></div>`;
  }

  #filters({ lines }: Takeoff): TemplateResult {
    return html`<div class="choice" role="group" aria-label=${this.words.say('Lines that are shown')}>${FILTERS.map((filter) => {
      const number = filter === 'all' ? lines.length : lines.filter(({ outcome }) => outcome === filter).length;
      return html`<button type="button" data-filter=${filter} aria-pressed=${filter === this.filter}
        @click=${() => { this.filter = filter; }}>${filter === 'all' ? this.words.say('all lines') : this.words.say(OUTCOMES[filter].title)} ${number}</button>`;
    })}</div>`;
  }

  /** What the columns of one of the lists hold. */
  #choose(part: TakeoffPart, columns: RememberedColumns): void {
    const { source } = this;
    if (source === undefined) return;
    const tables = source.tables.map((table) =>
      isOf(part, table) ? { ...table, columns: { ...table.columns, ...columns } } : table);
    this.source = { ...source, tables };
  }

  readonly #decideNames = (decided: Readonly<Record<string, NameDecision | undefined>>): void => {
    this.decisions = { ...this.decisions, names: merged(this.decisions.names, decided) };
  };

  readonly #decideLines = (decided: Readonly<Record<string, LineDecision | undefined>>): void => {
    this.opened = undefined;
    this.decisions = { ...this.decisions, lines: merged(this.decisions.lines, decided) };
  };

  #openLine(key: string): void {
    this.opened = key;
    void this.updateComplete.then(() => { this.#focus('.decide :is(input, button)'); });
  }

  #focusNext(): void {
    this.#focus(NEXT.find((selector) => this.renderRoot.querySelector(selector) !== null) ?? 'h2');
  }

  /** What is typed into a field takes the place of what it proposes, as in a cell. */
  #focus(selector: string): void {
    const found = this.renderRoot.querySelector<HTMLElement>(selector);
    found?.focus();
    if (found instanceof HTMLInputElement) found.select();
  }

  /** A list may be pasted wherever the focus is, as long as none is read and no field takes it. */
  readonly #onPaste = (event: ClipboardEvent): void => {
    if (!this.active || this.#takeoff !== undefined || event.defaultPrevented) return;
    const inField = event.composedPath().some((each) => each instanceof Element && each.matches('input, textarea'));
    const lists = inField ? [] : pastedLists(event);
    if (lists.length === 0) return;
    event.preventDefault();
    this.take(this.words.say('The pasted list'), lists);
  };

  /** Waits for a list. */
  readonly #begin = (): void => {
    this.source = this.refusal = this.#reading = this.opened = undefined;
    this.decisions = {};
    this.filter = 'all';
    this.most = FIRST_LINES;
    this.#revised.hold(undefined);
  };

  readonly #carryOut = (): void => {
    const takeoff = this.#takeoff!;
    const columns = takeoff.parts.map((part) => {
      const remembered = columnsToRemember(part.columns);
      rememberColumns(part.columns, remembered);
      return remembered;
    });
    this.dispatchEvent(new ElvColumnsEvent(Object.assign({}, ...columns) as RememberedColumns));
    const { label, changes } = this.#revised.action();
    this.#begin();
    this.schedule.act(label, changes);
    this.dispatchEvent(new SheetChooseEvent('devices'));
  };
}

function isFilled({ cells }: TakeoffTable): boolean {
  return typeof cells === 'string' || cells.some((row) => row.some((cell) => cell !== null && cell !== ''));
}

function isOf(part: TakeoffPart, { file, sheet }: TakeoffTable): boolean {
  return part.file === file && part.sheet === sheet;
}

/** Decisions with more of them; `undefined` takes one back. */
function merged<Decision>(
  before: Readonly<Record<string, Decision>> | undefined, more: Readonly<Record<string, Decision | undefined>>,
): Record<string, Decision> {
  const all = Object.entries({ ...before, ...more });
  return Object.fromEntries(all.filter((each): each is [string, Decision] => each[1] !== undefined));
}
