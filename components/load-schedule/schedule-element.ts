import type { PropertyDeclarations, PropertyValues } from 'lit';
import { writeCsv, writeSchedule } from '../../src/exchange/index.ts';
import type { RememberedColumns } from '../../src/exchange/takeoff/index.ts';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import { columnOf, tagOf, type SheetName } from '../../src/schedule/index.ts';
import { Drafts, type DraftsHost } from '../drafts/index.ts';
import type { Task } from '../events/index.ts';
import type { Place } from '../look/index.ts';
import type { Message, Offer } from '../sheet-view/notices.ts';
import { DirtyMark } from './dirty-mark.ts';
import { ElvChangeEvent, type ElvProblem } from './events.ts';
import { saveFile, type NamedText } from './files.ts';
import { FormElement } from './form-element.ts';
import { GivenSchedule } from './given-schedule.ts';
import { openOverLimits } from './open-over-limits.ts';
import { readSheetFile } from './read-file.ts';
import { ScheduleFiles, type FilesHost } from './schedule-files.ts';
import { ScheduleHolder } from './schedule-holder.ts';
import { SpokenWords } from './spoken-words.ts';

/** What a page sees of the element: its schedule, its attributes, its methods, its part in a form. */
export abstract class ScheduleElement extends FormElement implements FilesHost, DraftsHost {
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false, noAccessor: true }, value: { attribute: false, noAccessor: true },
    licenseKey: { attribute: 'license-key' }, src: {}, demoSrc: { attribute: 'demo-src' },
    storageKey: { attribute: 'storage-key' }, readonly: { type: Boolean, reflect: true },
    takeoffColumns: { attribute: false }, sheet: { state: true }, message: { state: true },
  };

  /** Key of the grid library. */
  declare licenseKey: string | null;
  /** Address of the schedule file to show. */
  declare src: string | null;
  /** Address of the schedule file that an empty element offers. */
  declare demoSrc: string | null;
  /**
   * Name under which the browser keeps a draft of what a person does, so that a tab that goes down loses nothing; without it
   * none is kept.
   */
  declare storageKey: string | null;
  /** Whether a person may only look. */
  declare readonly: boolean;
  /** What the columns of takeoffs hold, by heading, as far as the page knows; see the event `elv-columns`. */
  declare takeoffColumns: RememberedColumns;
  declare protected sheet: SheetName;
  /** What just happened. */
  declare protected message: Message | undefined;
  protected readonly holder = new ScheduleHolder(this, {
    told: (event, byPerson) => { this.#told(event, byPerson); },
    replaced: (schedule) => { this.#replaced(schedule); },
  });
  protected readonly spoken = new SpokenWords(this, (words) => { this.holder.speak(words); }, (sentence) => {
    this.say({ text: sentence, tone: 'refused' });
  });
  protected readonly files = new ScheduleFiles(this, this.holder);
  protected readonly drafts = new Drafts(this, () => {
    const title = this.spoken.words.say('No draft is kept, because a part of the software could not be fetched. Save the schedule as a file before leaving the page.');
    // It stays until it is put away: whoever works on must know.
    this.files.refuse({ title, problems: [] });
  });
  /** What is offered beside the message of the action that is just being told. */
  protected offer: Offer | undefined;
  readonly #mark = new DirtyMark();
  readonly #given = new GivenSchedule(this, this.files, this.drafts);

  constructor() {
    super();
    this.licenseKey = this.src = this.demoSrc = this.storageKey = null;
    this.readonly = false;
    this.takeoffColumns = {};
    this.sheet = 'devices';
  }

  static override get observedAttributes(): string[] {
    return [...super.observedAttributes, 'lang'];
  }

  override attributeChangedCallback(name: string, before: string | null, now: string | null): void {
    super.attributeChangedCallback(name, before, now);
    if (name === 'lang' && this.isConnected) this.spoken.heed();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.files.resume();
  }

  /** Moving in the page by `moveBefore` leaves everything alive; only the language may be another. */
  connectedMoveCallback(): void {
    this.spoken.moved();
  }

  /** @ignore Resetting a form takes back every action, which can be done again. */
  formResetCallback(): void {
    while (this.undo() !== undefined) { /* one action further back */ }
  }

  /** The schedule that is shown. Putting another in leaves nothing to undo, and is silent. */
  get schedule(): LoadSchedule {
    return this.holder.schedule;
  }

  set schedule(schedule: LoadSchedule) {
    this.#given.put(() => {
      this.holder.replace(schedule, false);
      return true;
    });
  }

  /** The schedule as the text of its file. A text that cannot be read changes nothing, and its problems are shown. */
  override get value(): string {
    return writeSchedule(this.schedule.content());
  }

  override set value(text: string) {
    // A page that binds it both ways gives back what it was told, which leaves the undo as it is.
    if (text === this.value) return;
    this.#given.put(() => this.files.startText(this.spoken.words.say('The value'), text).length === 0);
  }

  /** Whether a person changed something since the schedule was read or saved, or since `markSaved`. */
  get dirty(): boolean {
    return this.#mark.isDirty;
  }

  /** Says that the page has kept what the schedule holds: it is not dirty any more, and its draft ends. */
  async markSaved(): Promise<void> {
    this.#mark.clean(this.schedule);
    this.requestUpdate();
    await this.drafts.keeper?.saved();
  }

  /** The schedule as the object that its file holds, for `JSON.stringify`. */
  toJSON(): unknown {
    return JSON.parse(this.value);
  }

  /**
   * Opens a schedule file, which replaces everything, or a CSV file, which replaces the rows of its sheet: one action.
   * @returns what is wrong with the file; nothing when it was read.
   */
  openFile(file: File | NamedText): Promise<readonly ElvProblem[]> {
    return this.files.open(file, false);
  }

  /**
   * Reads a CSV text, whose rows replace those of its sheet; one action to undo.
   * @param sheet the sheet that it holds; by default the one whose headings it has.
   * @returns what is wrong with the text; nothing when it was read.
   */
  importCsv(text: string, sheet?: SheetName): readonly ElvProblem[] {
    const name = 'CSV';
    return this.files.take(name, readSheetFile({ name, text }, this.schedule, sheet), false);
  }

  /** A sheet as CSV text, with its computed columns. */
  exportCsv(sheet: SheetName): string {
    return writeCsv(this.schedule, sheet);
  }

  /**
   * Shows and selects a cell.
   * @param row its number in the sheet, from 1, or its tag.
   * @returns whether there is such a row.
   */
  async select(sheet: SheetName, row: number | string, key: string): Promise<boolean> {
    columnOf(sheet, key);
    const rows = this.schedule.rows(sheet);
    const found = typeof row === 'number' ? rows[row - 1] : rows.find((each) => tagOf(sheet, each) === row);
    if (found !== undefined) await this.goTo({ sheet, id: found.id, key });
    return found !== undefined;
  }

  /** Takes the last action back. @returns its name. */
  undo(): string | undefined {
    return this.holder.quietly(() => this.schedule.undo());
  }

  /** Does the last action that was taken back again. @returns its name. */
  redo(): string | undefined {
    return this.holder.quietly(() => this.schedule.redo());
  }

  /** @ignore Tells the person what happened. */
  say(message: Message): void {
    this.message = message;
  }

  /** @ignore Shows another sheet. */
  showSheet(sheet: SheetName): void {
    this.sheet = sheet;
  }

  /** @ignore What is shown is the same as in a file that the person has. */
  fileOpened(): void {
    this.#mark.clean(this.schedule);
  }

  /** @ignore */
  fileSaved(): void {
    void this.markSaved();
  }

  /** @ignore */
  busy(task: Task, isRunning: boolean): void {
    this.states.busy(task, isRunning);
  }

  /** @ignore */
  get untouched(): boolean {
    return !this.#given.isShown && this.schedule.lastAction === undefined;
  }

  /** @ignore */
  showDraft(schedule: LoadSchedule): void {
    this.#given.makeWay();
    this.holder.replace(schedule, true);
    this.#mark.soil();
  }

  /** @ignore */
  showPage(): Promise<void> {
    return this.#given.bringBack();
  }

  /** @ignore */
  saveText(name: string, text: string): void {
    saveFile({ name, text }, 'application/json');
  }

  /** The first words that a person sees are those of the page. */
  protected override async scheduleUpdate(): Promise<unknown> {
    if (this.spoken.ready !== undefined) await this.spoken.ready;
    return super.scheduleUpdate();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('storageKey') || changed.has('readonly')) this.drafts.keepUnder(this.readonly ? '' : this.storageKey ?? '');
    if (changed.has('src')) void this.#given.showSource();
  }

  protected override updated(): void {
    const open = openOverLimits(this.schedule);
    this.judge(open === 0 ? '' : this.spoken.words.say(
      '{open, plural, one {# finding is over a limit: put it right or accept it.} other {# findings are over a limit: put them right or accept them.}}',
      { open },
    ), this.validityPlace);
    this.states.set('dirty', this.dirty);
  }

  /** Where a person is shown that the schedule is not valid; it can be given the focus. */
  protected abstract get validityPlace(): HTMLElement;

  /** Whether nothing may be changed. */
  protected get locked(): boolean {
    return this.readonly || this.disabled || this.barred;
  }

  protected override restore(value: string): void {
    const before = this.schedule;
    this.value = value;
    if (this.schedule === before) return;
    this.#mark.soil();
    // The page's file, which is on its way or asked for with the first update, is older than this.
    this.#given.outdate(!this.hasUpdated);
  }

  /** Drafts keep more than a form can. */
  protected override get isWorthRestoring(): boolean {
    return this.dirty && this.drafts.keeper === undefined;
  }

  /** Shows and selects a cell. */
  protected abstract goTo(place: Place): Promise<void>;

  #replaced(schedule: LoadSchedule): void {
    this.#given.replaced();
    this.#mark.clean(schedule);
    this.drafts.replaced(schedule);
  }

  #told(event: ScheduleEvent, byPerson: boolean): void {
    const { label, cause } = event;
    const { words } = this.spoken;
    this.#mark.follow(this.schedule, !byPerson && cause !== 'undo' && cause !== 'redo');
    this.drafts.follow(event, byPerson);
    this.offer = cause === 'undo' ? 'redo' : 'undo';
    queueMicrotask(() => { this.offer = undefined; });
    const text = cause === 'undo' ? words.say('Undone: {action}', { action: label })
      : cause === 'redo' ? words.say('Redone: {action}', { action: label }) : label;
    this.message = { text, tone: 'info', offers: [this.offer] };
    if (this.files.refusal?.passing === true) this.files.dismiss();
    if (byPerson) this.dispatchEvent(new ElvChangeEvent(label, cause));
  }
}
