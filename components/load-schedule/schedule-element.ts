import { LitElement, type PropertyDeclarations, type PropertyValues } from 'lit';
import { writeCsv, writeSchedule } from '../../src/exchange/index.ts';
import type { RememberedColumns } from '../../src/exchange/takeoff/index.ts';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import { columnOf, tagOf, type SheetName } from '../../src/schedule/index.ts';
import type { Place } from '../look/index.ts';
import type { Message, Offer } from '../sheet-view/notices.ts';
import { ElvChangeEvent, type ElvProblem } from './events.ts';
import type { NamedText } from './files.ts';
import { FormDataSource } from './form-data.ts';
import { localeOf } from './locale-of.ts';
import { readSheetFile } from './read-file.ts';
import { ScheduleFiles, type FilesHost } from './schedule-files.ts';
import { ScheduleHolder } from './schedule-holder.ts';
import { SpokenWords } from './spoken-words.ts';

/** What a page sees of the element: its schedule, its attributes, its methods, its part in a form. */
export abstract class ScheduleElement extends LitElement implements FilesHost {
  static readonly formAssociated = true;
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false, noAccessor: true }, value: { attribute: false, noAccessor: true },
    licenseKey: { attribute: 'license-key' }, src: {}, demoSrc: { attribute: 'demo-src' },
    readonly: { type: Boolean, reflect: true }, name: { reflect: true }, disabled: { state: true },
    takeoffColumns: { attribute: false }, sheet: { state: true }, message: { state: true }, locale: { state: true },
  };

  /** Key of the grid library. */
  declare licenseKey: string | null;
  /** Address of the schedule file to show. */
  declare src: string | null;
  /** Address of the schedule file that an empty element offers. */
  declare demoSrc: string | null;
  /** Whether a person may only look. */
  declare readonly: boolean;
  /** Name under which a form is given the value. */
  declare name: string;
  /** What the columns of takeoffs hold, by heading, as far as the page knows; see the event `elv-columns`. */
  declare takeoffColumns: RememberedColumns;
  /** Whether a form that the element is in is disabled. */
  declare protected disabled: boolean;
  declare protected sheet: SheetName;
  /** What just happened. */
  declare protected message: Message | undefined;
  declare protected locale: string;
  protected readonly holder = new ScheduleHolder(this, (event, byPerson) => { this.#told(event, byPerson); });
  protected readonly spoken = new SpokenWords(this, (words) => { this.holder.speak(words); }, () => {
    this.message = { text: 'The words of this language could not be loaded: check the connection and reload the page. Until then this is English.', tone: 'refused' };
  });
  protected readonly files = new ScheduleFiles(this, this.holder);
  /** What is offered beside the message of the action that is just being told. */
  protected offer: Offer | undefined;
  readonly #form = new FormDataSource(this);

  constructor() {
    super();
    this.licenseKey = this.src = this.demoSrc = null;
    this.readonly = this.disabled = false;
    this.name = '';
    this.takeoffColumns = {};
    this.sheet = 'devices';
    this.locale = 'en';
  }

  static override get observedAttributes(): string[] {
    return [...super.observedAttributes, 'lang'];
  }

  override attributeChangedCallback(name: string, before: string | null, now: string | null): void {
    super.attributeChangedCallback(name, before, now);
    if (name === 'lang' && this.isConnected) this.#speak();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#speak();
    void this.files.resume();
  }

  /** Moving in the page by `moveBefore` needs nothing to be done. */
  connectedMoveCallback(): void { /* everything stays alive */ }

  /** @ignore The form that the element belongs to changed. */
  formAssociatedCallback(form: HTMLFormElement | null): void {
    this.#form.follow(form);
  }

  /** @ignore A disabled form may only be looked at. */
  formDisabledCallback(disabled: boolean): void {
    this.disabled = disabled;
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
    this.holder.replace(schedule, false);
  }

  /** The schedule as the text of its file. A text that cannot be read changes nothing, and its problems are shown. */
  get value(): string {
    return writeSchedule(this.schedule.content());
  }

  set value(text: string) {
    this.files.startText('The value', text);
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

  /** The first words that a person sees are those of the page. */
  protected override async scheduleUpdate(): Promise<unknown> {
    if (this.spoken.ready !== undefined) await this.spoken.ready;
    return super.scheduleUpdate();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('src') && this.src !== null && this.src !== '') void this.files.startFrom(this.src);
  }

  /** Whether nothing may be changed. */
  protected get locked(): boolean {
    return this.readonly || this.disabled;
  }

  /** Shows and selects a cell. */
  protected abstract goTo(place: Place): Promise<void>;

  #speak(): void {
    this.locale = localeOf(this);
    this.spoken.speak(this.locale);
  }

  #told({ label, cause }: ScheduleEvent, byPerson: boolean): void {
    const words = { act: label, load: label, undo: `Undone: ${label}`, redo: `Redone: ${label}` };
    this.offer = cause === 'undo' ? 'redo' : 'undo';
    queueMicrotask(() => { this.offer = undefined; });
    this.message = { text: words[cause], tone: 'info', offers: [this.offer] };
    if (this.files.refusal?.passing === true) this.files.dismiss();
    if (byPerson) this.dispatchEvent(new ElvChangeEvent(label, cause));
  }
}
