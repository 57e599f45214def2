import type { PropertyDeclarations, PropertyValues } from 'lit';
import { writeSchedule } from '../../src/exchange/index.ts';
import type { RememberedColumns } from '../../src/exchange/takeoff/index.ts';
import type { ListWay } from '../../src/exchange/update/list-ways.ts';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import { columnOf, tagOf, type Change, type Content, type SheetLook, type SheetName } from '../../src/schedule/index.ts';
import { Drafts, type DraftsHost } from '../drafts/index.ts';
import type { Task } from '../events/index.ts';
import type { Unsettled } from '../grid/unsettled.ts';
import { UNFETCHED, type Place } from '../look/index.ts';
import type { TakeRows } from '../rows-offer/offered-rows.ts';
import type { Message, Offer } from '../sheet-view/notices.ts';
import type { Trial } from '../variants/trial.ts';
import { changedPlace } from './changed-place.ts';
import { DirtyMark } from './dirty-mark.ts';
import { ElvChangeEvent, ElvErrorEvent, ElvLanguageEvent, ElvSaveEvent, type ElvProblem } from './events.ts';
import { saveFile, type NamedText } from './files.ts';
import { FormElement } from './form-element.ts';
import { GivenSchedule } from './given-schedule.ts';
import { Jumps } from './jumps.ts';
import { addressOf, fileOf, scheduleOf, sheetOf, textOf, wayOf } from './input-error.ts';
import { openOverLimits } from './open-over-limits.ts';
import { PageSaving, type Saving } from './page-saving.ts';
import { ReadValues } from './read-values.ts';
import { ScheduleFiles, type FilesHost } from './schedule-files.ts';
import { ScheduleHolder } from './schedule-holder.ts';
import { SpokenWords } from './spoken-words.ts';

/** What a page sees of the element: its schedule, its attributes, its methods, its part in a form. */
export abstract class ScheduleElement extends FormElement implements FilesHost, DraftsHost {
  static override properties: PropertyDeclarations = {
    licenseKey: { attribute: 'license-key' }, librarySrc: { attribute: 'library-src' }, demoSrc: { attribute: 'demo-src' },
    languages: {}, leads: { state: true }, storageKey: { attribute: 'storage-key' }, readonly: { type: Boolean, reflect: true },
    takeoffColumns: { attribute: false }, sheet: { state: true }, message: { state: true },
    trial: { state: true },
  };

  /** Key of the grid library. */
  declare licenseKey: string | null;
  /**
   * Address of a list that the office keeps: a sheet in CSV, or a schedule file whose types, conductors, contacts and
   * supplies are taken. It is read while the page is idle, under the same rules as `src`; what differs is offered, and
   * nothing changes by itself. Nothing is read while a person may only look.
   */
  declare librarySrc: string | null;
  /** Address of the schedule file that an empty element offers. */
  declare demoSrc: string | null;
  /**
   * Language tags with spaces between, such as `en-GB de fr`, of which a person may choose one; without them there is
   * no choice. What is chosen becomes the `lang` of the element, and the page hears of it by `elv-language`.
   */
  declare languages: string | null;
  /**
   * Name under which the browser keeps a draft of what a person does, so that a tab that goes down loses nothing;
   * without it none is kept. A key is one schedule's: a draft belongs to its key and to the address in `src`, and is
   * never shown in the place of another schedule.
   */
  declare storageKey: string | null;
  /** Whether a person may only look. */
  declare readonly: boolean;
  /** What the columns of takeoffs hold, by heading, as far as the page knows; see the event `elv-columns`. */
  declare takeoffColumns: RememberedColumns;
  declare protected sheet: SheetName;
  /** Whether the first steps are shown. */
  declare protected leads: boolean;
  /** What just happened. */
  declare protected message: Message | undefined;
  /** What is tried out in the place of the schedule; nothing of it counts before it is taken over. */
  declare protected trial: Trial | undefined;
  protected readonly holder = new ScheduleHolder(this, {
    told: (event, byPerson) => { this.#told(event, byPerson); },
    replacing: () => { this.settle(); },
    replaced: (schedule) => { this.#replaced(schedule); },
    unfetched: () => { this.say({ text: this.spoken.words.say(UNFETCHED), tone: 'refused' }); },
  });
  protected readonly spoken = new SpokenWords(this, (words) => {
    // It is read by the decimal sign with which it was typed.
    this.settle();
    this.holder.speak(words);
    this.trial?.schedule.speak(words);
  }, (sentence) => {
    this.say({ text: sentence, tone: 'refused' });
  });
  protected readonly files = new ScheduleFiles(this, this.holder);
  protected readonly drafts = new Drafts(this, () => {
    const title = this.spoken.words.say(
      'No draft is kept, because a part of the software could not be fetched. Save the schedule as a file before leaving the page.'
    );
    // It stays until it is put away: whoever works on must know.
    this.files.refuse({ title, problems: [] });
  });
  /** What becomes of the schedule where the page keeps it. */
  protected readonly saving = new PageSaving({
    markSaved: (value) => this.markSaved(value),
    again: () => { this.files.save(); },
    changed: (now) => { this.#saved(now); },
  });
  protected jumps = new Jumps();
  /** What is offered beside the message of the action that is just being told. */
  protected offers: readonly Offer[] | undefined;
  readonly #mark = new DirtyMark();
  readonly #values = new ReadValues();
  readonly #given = new GivenSchedule(this, this.files, this.drafts);
  #src: string | null = null;

  constructor() {
    super();
    this.licenseKey = this.librarySrc = this.demoSrc = this.storageKey = this.languages = null;
    this.readonly = this.leads = false;
    this.takeoffColumns = {};
    this.sheet = 'devices';
    for (const name of ['src', 'value', 'schedule'] as const) this.#takeEarly(name);
  }

  static override get observedAttributes(): string[] {
    return [...super.observedAttributes, 'lang', 'src'];
  }

  override attributeChangedCallback(name: string, before: string | null, now: string | null): void {
    super.attributeChangedCallback(name, before, now);
    if (name === 'lang' && this.isConnected) this.spoken.heed();
    if (name === 'src') this.src = now;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#given.resume();
  }

  override disconnectedCallback(): void {
    // An element that is moved is back on a page by then, and a person types on; the parts end after this.
    queueMicrotask(() => { if (!this.isConnected) this.settle(); });
    super.disconnectedCallback();
  }

  /** Moving in the page by `moveBefore` leaves everything alive; only the language may be another. */
  connectedMoveCallback(): void {
    this.spoken.moved();
  }

  /** @ignore Resetting a form takes back every action, which can be done again. */
  formResetCallback(): void {
    this.tryOut();
    while (this.undo() !== undefined) { /* one action further back */ }
  }

  /** Address of the schedule file to show. What is no address is refused with an `ElvInputError`. */
  get src(): string | null {
    return this.#src;
  }

  set src(address: string | null) {
    const before = this.#src;
    const now = addressOf(address, this.spoken.words);
    if (now === before) return;
    this.#src = now;
    this.#given.askSource();
    this.#judge();
    this.requestUpdate('src', before);
  }

  /**
   * The schedule that is shown. Putting another in leaves nothing to undo, and is silent. What is no schedule is
   * refused with an `ElvInputError`.
   */
  get schedule(): LoadSchedule {
    return this.holder.schedule;
  }

  set schedule(given: LoadSchedule) {
    const schedule = scheduleOf(given, this.spoken.words);
    this.#given.put(() => {
      this.files.began = undefined;
      this.holder.replace(schedule, false);
      this.#supersede();
      return true;
    });
  }

  /**
   * The schedule as the text of its file, with what is being typed as far as it can be read. Empty while the file that
   * `src` names is on its way, and after it could not be had until a person opens or begins something. A text that
   * cannot be read changes nothing, and its problems are shown; what is no text is refused with an `ElvInputError`.
   */
  override get value(): string {
    if (this.#given.missing !== undefined) return '';
    // What is typed where something is tried out is none of it.
    const typed = this.hasUpdated && this.trial === undefined ? this.changesTyped() : [];
    const text = writeSchedule(this.schedule.contentAfter(typed));
    // What is typed is no action yet, after which the text could be named.
    if (typed.length === 0) this.#values.note(text, this.schedule.lastAction);
    return text;
  }

  override set value(given: string) {
    const text = textOf('value', given, this.spoken.words);
    // A page that binds it both ways gives back what it was told, which leaves the undo as it is.
    if (text !== '' && text === this.value) return;
    this.#given.put(() => this.files.startText(this.spoken.words.say('The value'), text).length === 0);
  }

  /**
   * Whether a person changed something since the schedule was read, or kept by the page as `markSaved` says. A file
   * that was handed to the person counts for nothing here, since nobody can know whether it was written; see
   * `elv-save`.
   */
  get dirty(): boolean {
    return this.#mark.isDirty;
  }

  /**
   * Says that the page has kept the schedule. What it has kept is not dirty any more, and its draft ends; what a person
   * did since it was read from `value` stays dirty, and in the draft. What is no text is refused with an
   * `ElvInputError`.
   * @param value what was kept, as `value`, a form or `elv-save` gave it: where it is none of those, or older than what
   * was kept last, nothing happens. Without it, all that the schedule holds now.
   */
  async markSaved(value?: string): Promise<void> {
    const { schedule } = this;
    const now = writeSchedule(schedule.content());
    const kept = value === undefined ? now : textOf('markSaved', value, this.spoken.words);
    const state = kept === now ? this.#values.keptNow(schedule.lastAction) : this.#values.kept(kept);
    if (state === undefined) return;
    this.#mark.clean(schedule, state.after);
    this.files.began = kept;
    this.requestUpdate();
    await this.drafts.keeper?.saved(kept, !this.dirty);
  }

  /** The schedule as the object that its file holds, for `JSON.stringify`; `null` while there is no value. */
  toJSON(): unknown {
    const { value } = this;
    return value === '' ? null : JSON.parse(value);
  }

  /**
   * Opens a schedule file, which replaces everything, or a CSV file, which replaces the rows of its sheet: one action.
   * Of files that are asked for at the same time the last one is shown. What is no file is refused with an
   * `ElvInputError`.
   * @returns what is wrong with the file; nothing when it was read.
   */
  async openFile(file: File | NamedText): Promise<readonly ElvProblem[]> {
    return this.files.open(fileOf(file, this.spoken.words), false);
  }

  /**
   * Reads a CSV text into its sheet; one action to undo. What is no text, no name of a sheet and no way to take rows is
   * refused with an `ElvInputError`.
   * @param sheet the sheet that it holds; by default the one whose headings it has.
   * @param how `update`: rows with the tag of a row of the text take what that states, new ones come behind the others,
   * and all else stays, formulas of a person too; `append`: all come behind the others; `replace`: they take the place
   * of the others. Without it they replace them too.
   * @returns what is wrong with the text, and each row that an update left out; nothing when all of it was taken.
   */
  importCsv(text: string, sheet?: SheetName, how?: ListWay): Promise<readonly ElvProblem[]> {
    const { words } = this.spoken;
    const read = textOf('importCsv', text, words);
    const into = sheet === undefined ? undefined : sheetOf('importCsv', sheet, words);
    return this.files.importCsv(read, into, how === undefined ? undefined : wayOf(how, words));
  }

  /** A sheet as CSV text, with its computed columns. */
  exportCsv(sheet: SheetName): Promise<string> {
    const name = sheetOf('exportCsv', sheet, this.spoken.words);
    return import('../../src/exchange/csv/index.ts').then(({ writeCsv }) => writeCsv(this.schedule, name));
  }

  /**
   * Shows and selects a cell.
   * @param row its number in the sheet, from 1, or its tag.
   * @returns whether there is such a row.
   */
  async select(sheet: SheetName, row: number | string, key: string): Promise<boolean> {
    columnOf(sheetOf('select', sheet, this.spoken.words), key);
    const rows = this.shown.rows(sheet);
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

  /**
   * @ignore Takes over what a person is typing; what cannot be read is kept, with what is wrong, until it is put away.
   */
  settle(): void {
    const left = this.hasUpdated ? this.finishTyping() : undefined;
    if (left !== undefined) this.files.keepTyped(left);
    this.trial?.keep();
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
  pageTakes(name: string, text: string): boolean {
    if (this.saving.waits()) return true;
    this.#values.note(text, this.schedule.lastAction);
    const { began } = this.files;
    const event = new ElvSaveEvent(name, text, typeof began === 'object' ? writeSchedule(began) : began);
    this.dispatchEvent(event);
    if (event.answer !== undefined) void this.saving.follow(event.answer, text);
    return event.defaultPrevented;
  }

  /** @ignore */
  fileHandedOut(): void {
    // A page that took it for kept has ended the draft.
    if (this.dirty) void this.drafts.keeper?.handedOut();
  }

  #saved(now: Saving | undefined): void {
    const { words } = this.spoken;
    this.states.set('saving', now?.state === 'saving');
    this.states.set('failed', now?.state === 'failed');
    if (now?.state === 'failed') {
      const text = now.reason === '' ? words.say('Not saved; the page does not say why. Nothing is lost here: save again.')
        : words.say('Not saved: {reason}. Nothing is lost here: save again.', { reason: now.reason.replace(/\.$/, '') });
      this.say({ text, tone: 'refused' });
    }
    this.requestUpdate();
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
  get awaitsPage(): boolean {
    return this.#given.missing === 'loading';
  }

  /** @ignore */
  get pageContent(): Content | undefined {
    const { schedule } = this;
    return this.#given.missing === undefined && schedule.lastAction === undefined ? schedule.content() : undefined;
  }

  /** @ignore */
  showDraft(schedule: LoadSchedule): void {
    this.#given.makeWay();
    this.holder.replace(schedule, true);
    this.#supersede();
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
    if (['readonly', 'disabled', 'barred', 'licenseKey'].some((name) => changed.has(name))) this.settle();
    if (['storageKey', 'readonly', 'src'].some((name) => changed.has(name))) {
      this.drafts.keepUnder(this.storageKey ?? '', this.#source, this.readonly);
    }
    if (changed.has('src')) void this.#given.showSource();
    if (changed.has('librarySrc') && this.librarySource !== '') void import('../office-list/office-list.define.ts');
    if (changed.has('languages') && this.languages !== null) void import('../language-choice/language-choice.define.ts');
  }

  protected override updated(): void {
    this.#judge();
    this.states.set('dirty', this.dirty);
  }

  /** The changes that what a person is typing would make. */
  protected abstract changesTyped(): readonly Change[];

  /** Takes over what a person is typing, and ends it. @returns what could not be read. */
  protected abstract finishTyping(): Unsettled | undefined;

  /** Where a person is shown that the schedule is not valid; it can be given the focus. */
  protected abstract get validityPlace(): HTMLElement;

  /** Whether nothing may be changed. */
  protected get locked(): boolean {
    return this.readonly || this.disabled || this.barred;
  }

  protected override restore(value: string): void {
    const before = this.schedule;
    this.value = value;
    if (this.schedule !== before) this.#mark.soil();
  }

  /** Drafts keep more than a form can. */
  protected override get isWorthRestoring(): boolean {
    return this.dirty && this.drafts.keeper === undefined;
  }

  /** Has the sheet that is shown looked at in another way. */
  protected lookAt(changed: Partial<SheetLook>): void {
    this.schedule.setLook(this.sheet, changed);
    if (this.trial !== undefined) this.shown.setLook(this.sheet, changed);
    void this.drafts.keeper?.looked();
    this.requestUpdate();
  }

  /** Shows and selects a cell. */
  protected abstract goTo(place: Place): Promise<void>;

  /** Shows a cell that was changed without a person pointing at it; the focus stays where it is. */
  protected abstract showChanged(place: Place): Promise<void>;

  /** The schedule that a person sees. */
  protected get shown(): LoadSchedule {
    return this.trial?.schedule ?? this.schedule;
  }

  /** Shows what is tried out in the place of the schedule, or without a trial the schedule again. */
  protected tryOut(trial?: Trial): void {
    if (trial === this.trial) return;
    this.settle();
    this.#show(trial);
  }

  #show(trial: Trial | undefined): void {
    this.trial?.end();
    this.trial = trial;
    this.jumps = new Jumps();
    this.message = undefined;
    this.holder.revision += 1;
    trial?.start({
      followed: (event) => {
        this.holder.revision += 1;
        if (event.cause !== 'formulas') this.#tell(event, true);
        void this.holder.heedFormulas(this.shown);
        this.requestUpdate();
      },
      quietly: (action) => { this.holder.quietly(action); },
    });
  }

  #replaced(schedule: LoadSchedule): void {
    if (this.trial !== undefined) this.#show(undefined);
    this.#given.exchanged();
    this.#values.forget();
    this.saving.forget();
    this.jumps = new Jumps();
    this.#mark.clean(schedule);
    this.leads = false;
    this.drafts.replaced(schedule);
  }

  #told(event: ScheduleEvent, byPerson: boolean): void {
    const { label, cause } = event;
    // Nobody did anything: what was unknown shows its figures.
    if (cause === 'formulas') return;
    this.#mark.follow(this.schedule, !byPerson && cause !== 'undo' && cause !== 'redo');
    this.drafts.follow(event, byPerson);
    if (cause === 'load') {
      this.#given.replaced();
      this.leads = false;
    }
    // What is tried out belongs to what was replaced.
    if (this.trial !== undefined && event.changes.some(({ op }) => op === 'load')) this.#show(undefined);
    if (this.trial === undefined) this.#tell(event, byPerson);
    if (this.files.refusal?.passing === true) this.files.dismiss();
    if (byPerson) this.dispatchEvent(new ElvChangeEvent(label, cause));
  }

  /** Tells a person of an action in what they see. */
  #tell(event: ScheduleEvent, byPerson: boolean): void {
    const { label, cause } = event;
    const { words } = this.spoken;
    this.jumps.heed(event);
    const back = cause === 'undo' ? 'redo' : 'undo';
    this.offers = event.moved === undefined || event.moved.length === 0 ? [back] : [back, 'whatChanged'];
    queueMicrotask(() => { this.offers = undefined; });
    const text = cause === 'undo' ? words.say('Undone: {action}', { action: label })
      : cause === 'redo' ? words.say('Redone: {action}', { action: label }) : label;
    this.message = { text, tone: 'info', offers: this.offers };
    const place = cause === 'undo' || cause === 'redo' ? changedPlace(this.shown, event.changes) : undefined;
    if (byPerson && place !== undefined && this.hasUpdated) void this.showChanged(place);
  }

  /** What is shown now is newer than whatever was asked for before. */
  #supersede(): void {
    this.files.show(this.files.next());
  }

  /** Takes over what a page set before the element was defined. */
  #takeEarly(name: 'src' | 'value' | 'schedule'): void {
    if (!Object.hasOwn(this, name)) return;
    const given = (this as Record<typeof name, unknown>)[name];
    Reflect.deleteProperty(this, name);
    try {
      Object.assign(this, { [name]: given });
    } catch (error) {
      // Whoever set it is gone.
      reportError(error);
      this.files.refuse({ title: (error as Error).message, problems: [] });
    }
  }

  /** The whole address of the page's file; empty where there is none. */
  get #source(): string {
    return this.#whole(this.#src);
  }

  /** The whole address of the office's list; empty where there is none. */
  protected get librarySource(): string {
    return this.#whole(this.librarySrc);
  }

  #whole(address: string | null): string {
    if (address === null || address === '') return '';
    return URL.canParse(address, this.baseURI) ? new URL(address, this.baseURI).href : address;
  }

  /** Takes of the office's list what a person says, as one action. */
  protected readonly takeLibrary: TakeRows = (make) => {
    this.settle();
    const taken = make(this.schedule);
    if ('changes' in taken) this.schedule.act(taken.label, taken.changes);
  };

  /** Speaks the language that a person chose. */
  protected readonly chooseLanguage = (tag: string): void => {
    this.lang = tag;
    this.dispatchEvent(new ElvLanguageEvent(tag));
  };

  protected readonly libraryFailed = (name: string, problems: readonly ElvProblem[]): void => {
    this.dispatchEvent(new ElvErrorEvent(name, problems));
  };

  #judge(): void {
    this.judge(this.#fault, this.hasUpdated ? this.validityPlace : undefined);
  }

  /** Why a form must not be sent; empty when it may. */
  get #fault(): string {
    const { words } = this.spoken;
    const { missing } = this.#given;
    if (missing === 'loading') {
      return words.say('The schedule is still being read. Wait until it is shown, or cancel the reading.');
    }
    if (missing === 'failed') {
      return words.say('The schedule of this page could not be read. Open a file or begin a schedule first.');
    }
    const open = openOverLimits(this.schedule);
    return open === 0 ? '' : words.say(
      '{open, plural, one {# finding is over a limit: put it right or accept it.} other {# findings are over a limit: put them right or accept them.}}',
      { open },
    );
  }
}
