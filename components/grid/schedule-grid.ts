import { html, LitElement, type PropertyDeclarations, type PropertyValues } from 'lit';
import type { Touched } from '../../src/engine/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import {
  asEntered, columnOf, findColumn, namingCells, PLAIN_LOOK, SCHEMA, setCells, tagOf,
  type Change, type Column, type NamingCell, type SheetLook, type SheetName,
} from '../../src/schedule/index.ts';
import { CommandEvent, LookEvent, type Grouping } from '../events/index.ts';
import {
  clearCells, enterText, enterTextInAll, fillDown, fillFrom, fillRight, insertBeside, moveSelected, moveSelectedTo,
  pasteText, removeSelected, selectedIds, toggle, type Plan,
} from './actions/index.ts';
import { listenToClipboard, writeClipboard, type ClipboardHost } from './clipboard/clipboard.ts';
import type { ListLines } from './actions/list-lines.ts';
import { copyCells, type Copied } from './clipboard/copy-text.ts';
import { readEntered } from './clipboard/entered-cells.ts';
import { isList } from './clipboard/list-headings.ts';
import { readTable } from './clipboard/read-table.ts';
import { CellNote } from './editing/cell-note.ts';
import { RefusedTexts } from './editing/refused-texts.ts';
import { CellSelectEvent, HeadingOpenEvent, MessageEvent, RowsInSightEvent } from './events.ts';
import { idAt, type GridModel } from './grid-model.ts';
import type { GridSelection } from './grid-selection.ts';
import { GridView, type ViewHost } from './grid-view.ts';
import { commandOf, type GridCommand } from './keys.ts';
import {
  ALL_ROWS, buildLines, groupName, linesAfter, linesWith, type HeadingLine, type LinesOf, type Sight,
} from './lines/index.ts';
import type { CellMenu, MenuPoint } from './menu/cell-menu.ts';
import type { MenuCommand, MenuPlace } from './menu/menu-entries.ts';
import { scheduleGridStyles } from './schedule-grid.styles.ts';
import { selectionStatistics } from './selection-statistics.ts';
import { shownColumns } from './shown-columns.ts';
import type { Unsettled } from './unsettled.ts';
import { UNFETCHED } from '../look/unfetched.ts';
import { JOBS_OF } from '../rework/job-sheets.ts';
import { ENGLISH, type Words } from '../../src/words/index.ts';

const isOther = (one: unknown, other: unknown): boolean => JSON.stringify(one) !== JSON.stringify(other);

/** The tag that was probably meant in a cell that names a row which is not there. */
interface Proposal {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
  readonly typed: string;
  readonly tag: string;
}

/**
 * One sheet of a schedule as a grid in which to type, paste and choose. It shows what the schedule holds and turns what
 * a person does into actions of the schedule; it keeps no data.
 * @fires elv-cell-select the selected cell, or what the selected cells come to, changed
 * @fires elv-rows-in-sight how many rows are in sight may have changed
 * @fires elv-heading-open what can be done with a column is asked for
 * @fires elv-message something happened, or was refused, that a person is to be told
 */
export class ScheduleGrid extends LitElement implements ClipboardHost {
  static override styles = scheduleGridStyles;

  static override properties: PropertyDeclarations = {
    schedule: { attribute: false },
    sheet: { type: String },
    grouping: { type: String },
    look: { attribute: false, hasChanged: isOther },
    sight: { attribute: false, hasChanged: isOther },
    readonly: { type: Boolean },
    licenseKey: { type: String, attribute: 'license-key' },
    words: { attribute: false },
  };

  declare schedule: LoadSchedule | undefined;
  declare sheet: SheetName;
  declare grouping: Grouping;
  /** How the sheet is looked at, as the schedule has it. */
  declare look: SheetLook;
  /** Which rows are in sight, and in which order. */
  declare sight: Sight;
  declare readonly: boolean;
  declare licenseKey: string;
  declare words: Words;

  #view: GridView | undefined;
  #unsubscribe: (() => void) | undefined;
  #unlisten: (() => void) | undefined;
  #menu: CellMenu | undefined;
  /** Column of the place at which it was opened. */
  #menuColumn = 0;
  #note: CellNote | undefined;
  readonly #refused = new RefusedTexts();
  #proposal: Proposal | undefined;
  /** What was copied last, to be pasted by the menu, which is given its text alone. */
  #lastCopied: Copied | undefined;
  #resizing: ResizeObserver | undefined;
  #frame = 0;
  /** Names of the groups that are folded. */
  #folded: ReadonlySet<string> = new Set();

  constructor() {
    super();
    this.sheet = 'devices';
    this.grouping = 'entered';
    this.look = PLAIN_LOOK;
    this.sight = ALL_ROWS;
    this.readonly = false;
    this.licenseKey = '';
    this.words = ENGLISH;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#unlisten ??= listenToClipboard(this, this);
    this.#unsubscribe ??= this.#follow();
    this.#resizing ??= new ResizeObserver(() => { this.#resized(); });
    this.#resizing.observe(this);
    this.#view?.revive();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    // An element that is moved is connected again before the microtask, and keeps its grid, selection and editor.
    queueMicrotask(() => { if (!this.isConnected) this.#release(); });
  }

  /** Moving in the page by `moveBefore` needs nothing to be done. */
  connectedMoveCallback(): void { /* the grid stays alive */ }

  protected override render(): unknown {
    return html`<div class="grid"></div><div class="groups" aria-hidden="true" hidden></div><div class="layer"></div>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('schedule')) {
      this.#unsubscribe?.();
      this.#unsubscribe = this.#follow();
    }
    const remade = ['schedule', 'licenseKey', 'readonly'] as const;
    if (remade.some((name) => changed.has(name))) {
      this.#view?.destroy();
      this.#view = undefined;
    }
    if (this.#view === undefined) this.#make();
    else this.#view.show(this.#model()!);
    this.#tellSight();
    this.#selectionChanged();
  }

  /** The columns that are shown, in their order. */
  get columns(): readonly Column[] {
    return this.#view?.model.columns ?? [];
  }

  /**
   * Selects a cell, whose column and row are shown if they were not.
   * @param focus whether it takes the focus, or that stays where it is.
   * @returns whether it is there.
   */
  goTo(id: number, key: string, focus: 'take' | 'keep' = 'take'): boolean {
    const view = this.#view;
    if (view === undefined) return false;
    const { schedule, sheet, columns } = view.model;
    const column = findColumn(sheet, key);
    if (column !== undefined && !columns.includes(column)) {
      view.refresh({ ...view.model, columns: shownColumns(schedule, sheet, [...columns, column]) });
    }
    this.#bringIntoSight(view, id);
    if (!view.select([id], [key], true, focus === 'take')) return false;
    if (focus === 'take') view.focus();
    return true;
  }

  /** A row that is out of sight comes in, with its group. */
  #bringIntoSight(view: GridView, id: number): void {
    const { model } = view;
    const under = model.lines.find((line) => line.kind === 'heading' && line.folded && line.members.includes(id));
    if (under !== undefined) this.#fold(under as HeadingLine, false);
    if (model.unseen.has(id)) view.refresh({ ...view.model, ...linesWith(view.model, id, this.#linesOf()) });
    this.#tellSight();
  }

  /** Applies what a person asked for to the rows as they are by now. */
  applySight(): void {
    this.#view?.show(this.#model()!);
    this.#tellSight();
  }

  /** Folds the rows of a group under its heading, or shows them. */
  #fold(line: HeadingLine, folded: boolean): void {
    const view = this.#view;
    if (view === undefined) return;
    const others = [...this.#folded].filter((name) => name !== groupName(line));
    this.#folded = new Set(folded ? [...others, groupName(line)] : others);
    view.refresh({ ...view.model, ...linesAfter(view.model, this.#linesOf()) });
    view.selectLine(view.model.lines.findIndex((each) => each.kind === 'heading' && groupName(each) === groupName(line)));
  }

  /** Folds all groups, or shows the rows of all where all are folded. */
  foldGroups(): void {
    const view = this.#view;
    if (view === undefined) return;
    const headings = view.model.lines.filter((line) => line.kind === 'heading');
    this.#folded = new Set(headings.every(({ folded }) => folded) ? [] : headings.map(groupName));
    view.refresh({ ...view.model, ...linesAfter(view.model, this.#linesOf()) });
  }

  /** Folds the group of the selected line, or shows its rows. @returns whether there is one that is not so yet. */
  #foldSelected(folded: boolean): boolean {
    const { lines } = this.#view!.model;
    const at = this.#view!.selection()?.line ?? -1;
    const line = lines.slice(0, at + 1).findLast(({ kind }) => kind !== 'row');
    if (line?.kind !== 'heading' || line.folded === folded) return false;
    this.#fold(line, folded);
    return true;
  }

  /** Gives the selected cell, or the first one, the focus. */
  focusGrid(): void {
    this.#view?.focus();
  }

  /** Brings the selected cell into view where the grid has become smaller. */
  showSelected(): void {
    this.#view?.revive();
    this.#view?.hot.scrollToFocusedCell();
  }

  /** Ids of the rows with a selected cell. */
  get selectedRows(): number[] {
    const [view, selection] = [this.#view, this.#view?.selection()];
    return view === undefined || selection === undefined ? [] : selectedIds(view.model, selection);
  }

  /** Opens the editor of the selected cell. */
  startEditing(): void {
    this.#view?.edit();
  }

  /** The changes that what stands in the open editor would make. */
  changesTyped(): readonly Change[] {
    const plan = this.#view?.typed(false)?.plan;
    return plan?.kind === 'act' ? this.#asEntered(plan.changes) : [];
  }

  /** Takes over what stands in the open editor, and closes it. @returns what could not be read. */
  finishTyping(): Unsettled | undefined {
    const view = this.#view;
    const typed = view?.typed(true);
    if (view === undefined || typed === undefined) return undefined;
    const { line, text, plan } = typed;
    if (plan.kind !== 'refused') {
      this.#perform(plan);
      return undefined;
    }
    const { schedule, sheet } = view.model;
    const id = idAt(view.model, line);
    const position = id < 0 ? schedule.rows(sheet).length : schedule.document.position(sheet, id);
    return { sheet, row: position + 1, text, problem: plan.text };
  }

  insertAbove(): void { this.#act((model, selection) => insertBeside(model, selection, 'above')); }

  insertBelow(): void { this.#act((model, selection) => insertBeside(model, selection, 'below')); }

  removeRows(): void {
    const ids = this.selectedRows;
    const naming = this.readonly || ids.length === 0 ? [] : namingCells(this.schedule!.document, this.sheet, ids);
    if (naming.length === 0) this.#act(removeSelected);
    else void this.#askDeletion(ids, naming);
  }

  moveUp(): void { this.#act((model, selection) => moveSelected(model, selection, 'up')); }

  moveDown(): void { this.#act((model, selection) => moveSelected(model, selection, 'down')); }

  fillDown(): void { this.#act(fillDown); }

  fillRight(): void { this.#act(fillRight); }

  clearCells(): void { this.#act(clearCells); }

  /**
   * Pastes a text as if it came from the clipboard. A list of devices goes through the reader of takeoffs, which says
   * whether each of its lines is plain.
   * @param page the same as the clipboard has it for pages, with cells that are merged, hidden or struck through.
   */
  pasteText(text: string, entered = '', page = ''): void {
    const paste = (pasted: string, lines?: ListLines) => {
      this.#act((model, selection) =>
        pasteText(model, selection, pasted, readEntered(entered, pasted, model.sheet), lines));
    };
    if (this.#view?.model.sheet !== 'devices' || entered !== '' || !isList(readTable(text), this.words)) paste(text);
    else {
      void this.#fetched(import('./actions/list-lines.ts')).then((part) => {
        const lines = part?.listLines(text, page, this.schedule!.rows('types').map(({ cells }) => cells));
        if (lines !== undefined) paste(lines.text, lines);
      });
    }
  }

  /** Puts the selected cells on the clipboard. */
  async copy(): Promise<void> {
    const copied = this.copied();
    if (copied !== undefined && !await writeClipboard(copied)) {
      this.#say(
        this.words.say('The browser does not let the page write to the clipboard. Use Ctrl+C in the table instead.'),
        'refused'
      );
    }
  }

  /** Puts the selected cells on the clipboard and empties them. */
  async cut(): Promise<void> {
    const copied = this.copied();
    if (copied === undefined) return;
    if (await writeClipboard(copied)) this.cutDone();
    else this.#say(
      this.words.say('The browser does not let the page write to the clipboard. Use Ctrl+X in the table instead.'),
      'refused'
    );
  }

  /** Pastes what is on the clipboard, where the browser lets the page read it. */
  async paste(): Promise<void> {
    let text: string;
    try {
      text = await navigator.clipboard.readText();
    } catch {
      // Refused by the person or the page's permissions policy, or absent without a secure context.
      this.#say(
        this.words.say('The browser does not let the page read the clipboard. Use Ctrl+V in the table instead.'), 'refused'
      );
      return;
    }
    this.pasteText(text, this.#lastCopied?.entered ?? '');
  }

  get takesClipboard(): boolean {
    return this.#view?.hot.isListening() === true && !this.#view.isEditing;
  }

  copied(): Copied | undefined {
    const selection = this.#view?.selection();
    if (this.#view === undefined || selection === undefined) return undefined;
    const copied = copyCells(this.#view.model, selection);
    if (copied === undefined) {
      this.#say(
        this.words.say(
          'The selected blocks are no table together. Select blocks of the same rows or of the same columns to copy them.'
        ),
        'refused'
      );
    }
    this.#lastCopied = copied ?? this.#lastCopied;
    return copied;
  }

  cutDone(): void {
    this.#act((model, selection) => clearCells(model, selection, 'cut'));
  }

  /**
   * What is to be shown.
   * @param before what is shown now, when only the schedule has changed.
   * @param touched what an action changed.
   */
  #model(before?: GridModel, touched?: Touched): GridModel | undefined {
    const { schedule, sheet, sight, words } = this;
    if (schedule === undefined) return undefined;
    const lines = before === undefined ? buildLines(this.#linesOf()) : linesAfter(before, this.#linesOf());
    const shown = this.#view?.model;
    // Who only looks at other rows, or gathers them, keeps the columns, so that these are not gone through for it.
    const isSame = before === undefined && shown?.schedule === schedule && shown.sheet === sheet
      && shown.look === schedule.look(sheet);
    const columns = isSame ? shown.columns : shownColumns(schedule, sheet, before?.columns, touched);
    return {
      ...lines, schedule, sheet, grouping: this.#grouping, look: schedule.look(sheet), sight, words, columns,
      refused: this.#refused,
    };
  }

  #linesOf(): LinesOf {
    const { schedule, sheet, sight, words } = this;
    return {
      schedule: schedule!, sheet, sight, words, grouping: this.#grouping, folded: this.#folded, canAdd: !this.readonly,
    };
  }

  /** Only devices are gathered in groups. */
  get #grouping(): Grouping {
    return this.sheet === 'devices' ? this.grouping : 'entered';
  }

  /** Says how many rows are in sight. */
  #tellSight(): void {
    const { seen, unseen } = this.#view?.model ?? { seen: [], unseen: new Set() };
    this.dispatchEvent(new RowsInSightEvent(seen.length, seen.length + unseen.size));
  }

  #make(): void {
    const model = this.#model();
    const [box, groups] = [
      this.renderRoot.querySelector<HTMLElement>('.grid')!, this.renderRoot.querySelector<HTMLElement>('.groups')!,
    ];
    // The library measures itself when it is made: it waits for a size.
    if (
      model === undefined || this.licenseKey === '' || !this.isConnected || box.offsetHeight === 0
        || box.offsetWidth === 0
    ) return;
    this.#view = new GridView(this.#viewHost(), model, box, groups);
  }

  #viewHost(): ViewHost {
    return {
      licenseKey: this.licenseKey,
      readonly: this.readonly,
      layer: this.renderRoot.querySelector<HTMLElement>('.layer')!,
      plan: (line, column, text) => enterText(this.#view!.model, line, column, text),
      enter: (line, column, text) => { this.#enter(line, column, text); },
      giveUp: (line, column) => {
        const { model } = this.#view!;
        if (this.#refused.forget(model.sheet, idAt(model, line), model.columns[column]!.key)) this.#view!.repaint();
      },
      planForAll: (text) => enterTextInAll(this.#view!.model, this.#view!.selection()!, text),
      perform: (plan) => { this.#perform(plan); },
      takeKey: (event) => this.#takeKey(event),
      fill: (from, into) => {
        this.#act((model) => fillFrom(model, [{ from: from.lines, into: into.lines, columns: from.columns }]));
      },
      selectionChanged: () => { this.#selectionChanged(); },
      dropRows: (line) => { this.#act((model, selection) => moveSelectedTo(model, selection, line)); },
      openMenu: (place, at, column) => { void this.#openMenu(place, at, column); },
      fold: (line) => { this.#fold(line, !line.folded); },
      headingOpened: (key, box) => { this.dispatchEvent(new HeadingOpenEvent(this.sheet, key, box)); },
      widened: (key, width) => {
        this.dispatchEvent(new LookEvent({ wide: { ...this.schedule!.look(this.sheet).wide, [key]: width } }));
      },
    };
  }

  /** Enters a text in a cell; one that cannot be taken is kept there, with what is wrong beside it. */
  #enter(line: number, place: number, text: string): void {
    const view = this.#view!;
    const { model } = view;
    const column = model.columns[place]!;
    const plan = enterText(model, line, place, text);
    const box = view.boxOf(line, place);
    if (plan.kind === 'refused') {
      this.#refused.keep(model.sheet, idAt(model, line), column.key, { text, problem: plan.text });
      view.repaint();
      if (box !== undefined) this.#showNote(plan.text, box);
    }
    this.#perform(plan);
    if (plan.kind !== 'act' || column.role !== 'input' || column.to === undefined) return;
    const id = idAt(model, line);
    void this.#propose(id < 0 ? model.schedule.rows(model.sheet).at(-1)!.id : id, column.key, column.to, box);
  }

  #showNote(text: string, beside: DOMRect): void {
    this.#note ??= new CellNote(this.renderRoot.querySelector<HTMLElement>('.layer')!);
    this.#note.show(text, beside);
  }

  /** Says which tag was probably meant where no row has the one that was typed. */
  async #propose(id: number, key: string, to: SheetName, box: DOMRect | undefined): Promise<void> {
    const { sheet, words } = this;
    const { document } = this.schedule!;
    const typed = document.row(sheet, id)?.cells[key];
    if (typeof typed !== 'string' || document.rows(to).some((row) => tagOf(to, row) === typed)) return;
    const { likelyTag } = await import('../../src/editing/likely-tag.ts');
    const tag = likelyTag(document, to, typed);
    if (tag === undefined || document.row(sheet, id)?.cells[key] !== typed) return;
    this.#proposal = { sheet, id, key, typed, tag };
    const text = to === 'types' ? words.say('No type “{typed}”. Did you mean {tag}? Ctrl+. takes it.', { typed, tag })
      : words.say('No “{typed}” on the sheet {sheet}. Did you mean {tag}? Ctrl+. takes it.', { typed, sheet: words.text(SCHEMA[to].title), tag });
    this.#say(text, 'info', true);
    if (box !== undefined) this.#showNote(text, box);
  }

  takeProposal(): void {
    const proposal = this.#proposal;
    this.#proposal = undefined;
    if (this.readonly) return;
    if (proposal === undefined) {
      this.dispatchEvent(new Event('elv-mend', { bubbles: true }));
      return;
    }
    const { sheet, id, key, typed, tag } = proposal;
    const { document } = this.schedule!;
    if (document.row(sheet, id)?.cells[key] !== typed) return;
    const label = this.words.say('Edit of {column}', { column: this.words.text(columnOf(sheet, key).title) });
    this.#perform({ kind: 'act', label, changes: setCells(document, [{ sheet, id, key, value: tag }]) });
  }

  /** Rows that others name are deleted only once a person has said what becomes of these. */
  async #askDeletion(ids: readonly number[], naming: readonly NamingCell[]): Promise<void> {
    const { sheet, words } = this;
    const { document } = this.schedule!;
    const part = await this.#fetched(import('./menu/ask-deletion.ts'));
    if (part === undefined) return;
    const going = new Set(ids);
    const tagsOf = (stay: boolean) => [...new Set(document.rows(sheet)
      .filter(({ id }) => going.has(id) !== stay).map((row) => tagOf(sheet, row)).filter((tag) => tag !== ''))];
    const layer = this.renderRoot.querySelector<HTMLElement>('.layer')!;
    const to = await part.askDeletion(layer, { sheet, tags: tagsOf(false), naming, others: tagsOf(true) }, words);
    this.#view?.focus();
    if (to === undefined) return;
    const moved = to === '' ? [] : setCells(document, naming.map((cell) => ({ ...cell, value: to })));
    this.#act((model, selection) => {
      const plan = removeSelected(model, selection);
      return plan.kind === 'act' ? { ...plan, changes: [...moved, ...plan.changes] } : plan;
    });
  }

  /** A part that is fetched when it is first asked for; where it cannot be had, that is said. */
  async #fetched<Part>(part: Promise<Part>): Promise<Part | undefined> {
    try {
      return await part;
    } catch (error) {
      this.#say(this.words.say(UNFETCHED), 'refused');
      reportError(error);
      return undefined;
    }
  }

  /**
   * The menu is fetched when it is first asked for.
   * @param column at whose heading or in which cell it was asked for.
   */
  async #openMenu(place: MenuPlace, at: MenuPoint, column: number): Promise<void> {
    const part = await this.#fetched(import('./menu/cell-menu.ts'));
    const [view, selection] = [this.#view, this.#view?.selection()];
    if (part === undefined || view === undefined || selection === undefined) return;
    this.#menu ??= new part.CellMenu({
      layer: this.renderRoot.querySelector<HTMLElement>('.layer')!,
      leave: () => { this.#view?.focus(); },
      take: (command) => { this.#take(command); },
    });
    this.#menuColumn = column;
    this.#menu.open(part.menuEntries(place, view.model, selection, this.readonly), at, this.words);
  }

  #take(command: MenuCommand): void {
    switch (command) {
      case 'startEditing': case 'clearCells': this[command](); break;
      case 'cut': case 'copy': case 'paste': void this[command](); break;
      case 'columnMenu': this.#view?.openHeading(this.#menuColumn); break;
      default: this.dispatchEvent(new CommandEvent(command));
    }
  }

  #takeKey(event: KeyboardEvent): boolean {
    const command = commandOf(event);
    if (command === undefined) return false;
    const selection = this.#view!.selection();
    const column = selection === undefined ? undefined : this.#view!.model.columns[selection.column];
    if (command === 'fold' || command === 'unfold') return this.#foldSelected(command === 'fold');
    const line = this.#view!.model.lines[selection?.line ?? -1];
    if (command === 'toggle' && line?.kind === 'heading') {
      this.#fold(line, !line.folded);
      return true;
    }
    if (command === 'toggle' && column?.kind !== 'boolean') return false;
    if (command === 'columnMenu') {
      if (column !== undefined) this.#view!.openHeading(selection!.column);
      return true;
    }
    this.#run(command);
    return true;
  }

  #run(command: Exclude<GridCommand, 'fold' | 'unfold' | 'columnMenu'>): void {
    switch (command) {
      case 'undo': this.#takeBack('undo'); break;
      case 'redo': this.#takeBack('redo'); break;
      case 'duplicate': case 'moveTo': case 'swapType': case 'splitRun':
        // The ids of other rows would be taken for those of devices and runs.
        if (JOBS_OF[this.sheet]?.includes(command) === true) this.dispatchEvent(new CommandEvent(command));
        break;
      case 'openList': this.startEditing(); break;
      case 'openMenu': this.#view!.openMenu(); break;
      case 'toggle': this.#act((model, { line, column }) => toggle(model, line, column)); break;
      case 'rowStart': this.#view!.goToStart('row'); break;
      case 'tableStart': this.#view!.goToStart('table'); break;
      case 'extendToRowStart': this.#view!.goToStart('row', true); break;
      case 'extendToTableStart': this.#view!.goToStart('table', true); break;
      default: this[command]();
    }
  }

  #takeBack(cause: 'undo' | 'redo'): void {
    if (this.readonly) return;
    const label = this.schedule?.[cause]();
    const { words } = this;
    if (label === undefined) {
      this.#say(cause === 'undo' ? words.say('There is nothing to undo.') : words.say('There is nothing to redo.'));
    }
    else this.#say(
      cause === 'undo'
        ? words.say('Undone: {action}.', { action: label })
        : words.say('Redone: {action}.', { action: label })
    );
  }

  #act(plan: (model: GridModel, selection: GridSelection) => Plan): void {
    const selection = this.#view?.selection();
    if (this.#view === undefined) return;
    if (this.readonly) {
      this.#say(this.words.say('This schedule is shown read-only: nothing can be changed.'));
      return;
    }
    if (selection === undefined) { this.#say(this.words.say('Select a cell first.')); return; }
    this.#perform(plan(this.#view.model, selection));
  }

  #perform(plan: Plan): void {
    if (plan.kind !== 'act') {
      if (plan.kind === 'refused') this.#say(plan.text, 'refused', false, plan.details, plan.list);
      else if (plan.message !== undefined) this.#say(plan.message);
      return;
    }
    const selection = this.#view?.selection();
    const keys = plan.select?.keys
      ?? selection?.blocks.at(-1)?.columns.map((index) => this.#view!.model.columns[index]!.key) ?? [];
    const changes = this.#asEntered(plan.changes);
    const made = changes.slice(plan.changes.length).flatMap((change) => (change.op === 'insert' ? change.rows : [])).length;
    this.schedule!.act(plan.label, changes);
    if (plan.select !== undefined) this.#view?.select(plan.select.ids, keys);
    const message = made === 0 ? plan.message : this.words.say(
      '{n, plural, one {# way} other {# ways}} made by kind and rating, on the sheet {sheet}.',
      { n: made, sheet: this.words.text(SCHEMA.ways.title) }
    );
    if (message !== undefined) this.#say(message, 'info', true);
  }

  #asEntered(changes: readonly Change[]): readonly Change[] {
    return asEntered(this.schedule!.document, changes, this.words);
  }

  #say(
    text: string, tone: 'info' | 'refused' = 'info', undoable = false, details: readonly string[] = [], list?: string,
  ): void {
    this.dispatchEvent(new MessageEvent({ text, tone, undoable, details, list }));
  }

  #follow(): (() => void) | undefined {
    return this.schedule?.subscribe((event) => {
      const { touched } = event;
      this.#refused.heed(event);
      const view = this.#view;
      const { sheet, grouping } = view?.model ?? {};
      // A property that waits to be shown brings the action with it.
      if (
        view === undefined || sheet !== this.sheet || grouping !== this.#grouping
      ) {
        return;
      }
      if (touched.all) view.restart(this.#model()!);
      else view.refresh(this.#model(view.model, touched)!);
      this.#tellSight();
      this.#selectionChanged();
    });
  }

  /** Tells of the selection once a frame, however often it changes in between. */
  #selectionChanged(): void {
    this.#frame ||= requestAnimationFrame(() => {
      this.#frame = 0;
      const selection = this.#view?.selection();
      if (this.#view === undefined || selection === undefined) return;
      const { model } = this.#view;
      const line = model.lines[selection.line];
      const key = model.columns[selection.column]?.key ?? '';
      const statistics = selectionStatistics(model, selection);
      this.dispatchEvent(new CellSelectEvent(model.sheet, line?.kind === 'row' ? line.id : -1, key, statistics));
    });
  }

  #resized(): void {
    if (this.#view === undefined && this.hasUpdated) this.#make();
    else this.#view?.resize();
  }

  #release(): void {
    this.#resizing?.disconnect();
    this.#unsubscribe?.();
    this.#unlisten?.();
    this.#view?.destroy();
    if (this.#frame !== 0) cancelAnimationFrame(this.#frame);
    this.#resizing = this.#unsubscribe = this.#unlisten = this.#view = undefined;
    this.#frame = 0;
  }
}
