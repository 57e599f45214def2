import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { panelNames, type PanelChoice } from '../../src/engine/panel-of.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { panelView } from '../../src/report/panel-view.ts';
import { SCHEMA, SHEET_NAMES, type Change, type SheetName } from '../../src/schedule/index.ts';
import type {
  AskedCommand, BusyEvent, CommandEvent, GoToEvent, Grouping, GroupingEvent, LookEvent, SheetChooseEvent, TryEvent,
} from '../events/index.ts';
import type { FindBar } from '../find-bar/find-bar.ts';
import type { GoToBar } from '../find-bar/go-to-bar.ts';
import type { DetailsStrip } from '../details-strip/details-strip.ts';
import type { MessageEvent } from '../grid/events.ts';
import type { Unsettled } from '../grid/unsettled.ts';
import { controls, icon, remember, remembered, statusMarkStyles, tokens, UNFETCHED, type Place } from '../look/index.ts';
import type { Message } from '../sheet-view/notices.ts';
import type { TakeRows } from '../rows-offer/offered-rows.ts';
import type { SheetView } from '../sheet-view/sheet-view.ts';
import { commandButton } from '../schedule-toolbar/command-button.ts';
import {
  COMMANDS, isJobCommand, isRowCommand, isSeekCommand, isWorkCommand, WORK_COMMANDS, type SeekCommand, type WorkCommand,
} from '../schedule-toolbar/commands.ts';
import { timeIn } from '../drafts/time-in.ts';
import { cautions } from './cautions.ts';
import { DropTarget } from './drop-target.ts';
import { helpPopover } from './help-popover.ts';
import { keyPopover } from './key-popover.ts';
import { styles } from './load-schedule.styles.ts';
import { panelChoice } from './panel-choice.ts';
import { keyAction } from './own-keys.ts';
import { ScheduleElement } from './schedule-element.ts';
import { WorkAreas } from './work-areas.ts';

/** Parts in which Ctrl+Z is theirs. */
const OWN_UNDO = 'textarea, elv-schedule-grid';
/** Fields that hold text. */
const TYPED_IN = 'input:not([type=checkbox], [type=radio], [type=file]), textarea';

/**
 * The load schedule of extra-low-voltage control panels: its sheets, what they come to, and what was found in them.
 *
 * @element elv-load-schedule
 *
 * @attr {string} license-key - Key of the grid library; without it the element says what is needed and shows the rest.
 * @attr {string} src - Address of a schedule file to show.
 * @attr {string} library-src - Address of the office's list (CSV, or a schedule file); what differs is offered.
 * @attr {string} demo-src - Address of a schedule file that an empty element offers to load.
 * @attr {string} name - Name under which a form is given the value, which is the text of the schedule's file.
 * @attr {string} storage-key - Name under which the browser keeps a draft of what a person does; without it none is
 * kept.
 * @attr {boolean} readonly - A person may look, select, copy and save, and change nothing; no draft is begun.
 * @attr {boolean} disabled - The same, and a form is given nothing.
 * @attr {string} languages - Language tags, such as `en-GB de fr`, of which a person may choose one.
 * @attr {string} lang - Language of the words and numbers; else that of the page.
 *
 * @fires elv-change - A person changed the schedule.
 * @fires elv-load - The file that `src` names, or one that a person opened, was read.
 * @fires elv-save - A person saves the schedule; a page that keeps it answers with `respondWith`, else it is handed out
 * as a file.
 * @fires elv-error - A file could not be read; the schedule is as it was.
 * @fires elv-language - A person chose a language; `lang` is that by then.
 * @fires elv-columns - A takeoff was taken; it says what its columns hold, which `takeoffColumns` takes another day.
 *
 * @cssState dirty - A person changed something since the schedule was read, or kept by the page.
 * @cssState invalid - A finding is over a limit and not accepted, or the file of `src` is missing: no form is sent.
 * @cssState saving - The page keeps the schedule that a person saved, and is not done yet.
 * @cssState failed - The page could not keep the schedule when it was saved last.
 * @cssState computing - A file is being read, or devices are being shared out.
 *
 * @slot tools - Buttons of the page, beside Open and Save.
 * @slot empty - What an empty sheet says, in place of how to begin.
 *
 * @csspart header - Title block and the buttons of the whole schedule.
 * @csspart panel - Loadings and findings.
 * @csspart footer - The cautions.
 *
 * @cssprop --elv-font - Typeface.
 * @cssprop --elv-size - Size of type.
 * @cssprop --elv-size-large - Size of type of headings of areas and of verdicts.
 * @cssprop --elv-size-small - Size of type of what stands beside something else.
 * @cssprop --elv-size-label - Size of type of labels over fields and of units.
 * @cssprop --elv-radius - Radius of corners.
 * @cssprop --elv-accent - Colour of focus, links and what is chosen.
 * @cssprop --elv-surface - Colour behind the parts.
 * @cssprop --elv-surface-raised - Colour behind the rows and fields.
 * @cssprop --elv-line - Colour of lines.
 * @cssprop --elv-line-strong - Colour of lines that must be seen.
 * @cssprop --elv-ink - Colour of what a person typed.
 * @cssprop --elv-ink-default - Colour of defaults and of quiet texts.
 * @cssprop --elv-ink-computed - Colour of what is worked out.
 * @cssprop --elv-over - Colour of «over».
 * @cssprop --elv-near - Colour of «near the limit».
 * @cssprop --elv-incomplete - Colour of «incomplete».
 * @cssprop --elv-ok - Colour of «within limits».
 */
export class LoadScheduleElement extends ScheduleElement {
  static override styles = [tokens, controls, statusMarkStyles, styles];
  static override properties = {
    grouping: { state: true }, panelOpen: { state: true }, panel: { state: true }, seeking: { state: true },
    unfolded: { state: true },
  };

  declare protected grouping: Grouping;
  declare protected panelOpen: boolean;
  /** The panel that a person wants to look at. */
  declare protected panel: PanelChoice;
  /** The bar that is open above the rows. */
  declare protected seeking: SeekCommand | undefined;
  /** Whether all of the header is shown where there is little room. */
  declare protected unfolded: boolean;
  /** The field of a part, but the grid, in which something was typed since it got the focus. */
  #typedIn: HTMLElement | undefined;
  /** What was typed for it before it was there. */
  #typedAhead = '';
  /** Where the person was when it was opened. */
  #soughtFrom: Place | undefined;
  #seen: { readonly schedule: LoadSchedule; readonly panel: PanelChoice; readonly view: LoadSchedule } | undefined;
  readonly #drop = new DropTarget(
    this, (files) => { void this.#openDropped(files); }, () => !this.locked && this.trial === undefined,
  );
  readonly #work = new WorkAreas(this, () => { this.#sayMissing(); });
  /** The sheet that the file being chosen is for. */
  #csvFor: SheetName | undefined;

  /**
   * Defines the element under a tag of the page's own, or in another registry; where the tag is taken nothing happens.
   * The parts within keep their tags, which begin with `elv-`, in the registry of the page.
   * @param tag as custom elements are named.
   * @param registry that of the page unless said otherwise.
   */
  static async define(tag: string, registry: CustomElementRegistry = customElements): Promise<void> {
    await import('./parts.define.ts');
    // A class can be defined once only.
    if (registry.get(tag) === undefined) registry.define(tag, class extends LoadScheduleElement {});
  }

  constructor() {
    super();
    this.grouping = 'entered';
    this.unfolded = false;
    this.panelOpen = remembered('panel', true);
  }

  /** Like the grid, the overview is fetched after what is seen first is on the screen. */
  protected override firstUpdated(): void {
    import('../schedule-panel/schedule-panel.define.ts').catch(reportError);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (this.locked) this.tryOut();
    // What may not be changed any more is not offered any longer.
    const { active } = this.#work;
    if (active !== undefined && this.locked && (active === 'rework' || COMMANDS[active].changes)) this.#work.close();
    if (this.locked) this.leads = false;
    else if (!this.leads && this.#isToBeLed) this.#lead();
  }

  /** Whether the page says itself how to begin. */
  get #saysHowToBegin(): boolean {
    return this.querySelector(':scope > [slot=empty]') !== null;
  }

  /** An empty schedule leads, unless the page does, something is on its way, or a person put the steps away. */
  get #isToBeLed(): boolean {
    return SHEET_NAMES.every((name) => this.schedule.rows(name).length === 0)
      && !this.#saysHowToBegin && !this.awaitsPage && remembered<boolean>('leads', true);
  }

  #lead(): void {
    this.leads = true;
    import('../first-steps/first-steps.define.ts').catch(reportError);
  }

  /** Shows the first steps, or puts them away until a person asks for them again. */
  #remindOfSteps(leads: boolean): void {
    remember('leads', leads);
    if (leads) {
      this.#popover('help').hidePopover();
      this.#work.close();
      this.#lead();
    } else this.#leave();
  }

  /** Who was in the steps goes on at the rows; nobody else is moved. */
  #leave(): void {
    const isWithin = this.renderRoot.querySelector('elv-first-steps:focus-within') !== null;
    this.leads = false;
    if (isWithin) this.#view.focusRows();
  }

  override render(): TemplateResult {
    const { trial, shown: schedule } = this;
    const readonly = this.locked;
    const { revision } = this.holder;
    const { words } = this.spoken;
    const working = this.#work.active !== undefined;
    const { panelOpen } = this;
    const panels = panelNames(schedule);
    // The enclosure may be gone by now, or be called otherwise.
    const panel = panels.length > 1 && (this.panel === null || panels.includes(this.panel!)) ? this.panel : undefined;
    const seen = this.#viewOf(schedule, panel);
    return html`<div class="element" lang=${words.language} @keydown=${this.#onKeydown} @elv-command=${this.#onCommand} @elv-go-to=${this.#onGoTo}
      @elv-sheet-choose=${this.#onSheetChoose} @elv-grouping=${this.#onGrouping} @elv-look=${this.#onLook}
      @elv-message=${this.#onMessage} @elv-try=${this.#onTry} @elv-busy=${this.#onBusy} @input=${this.#onInput} @focusout=${this.#onLeft}>
      <div class="layout ${working ? 'alone' : panelOpen ? '' : 'folded'}">
        <div class="header ${this.unfolded ? 'unfolded' : ''}" part="header">
          <elv-details-strip ?unfolded=${this.unfolded} .schedule=${this.schedule} .revision=${revision} ?readonly=${readonly || trial !== undefined}></elv-details-strip>
          <div class="commands" role="toolbar" aria-label=${words.say('Tools of the schedule')}>
            ${commandButton('undo', words, { disabled: readonly || schedule.undoLabel === undefined, about: schedule.undoLabel, small: true })}
            ${commandButton('redo', words, { disabled: readonly || schedule.redoLabel === undefined, about: schedule.redoLabel, small: true })}
            ${commandButton('open', words, { disabled: readonly })}${commandButton('save', words)}${this.#savingState()}
            ${WORK_COMMANDS.map((name) => commandButton(name, words, { disabled: readonly && COMMANDS[name].changes, pressed: this.#work.active === name, about: this.#aboutWork(name) }))}<slot name="tools"></slot>
            ${this.languages === null ? nothing : html`<elv-language-choice .tags=${this.languages} .words=${words} .choose=${this.chooseLanguage}></elv-language-choice>`}
            <button type="button" id="unfold" aria-expanded=${this.unfolded} title=${words.say('Title block and every command')}
              @click=${() => { this.unfolded = !this.unfolded; }}>${icon('menu')}<span class="unseen">${words.say('Title block and every command')}</span></button>
          </div>
        </div>
        <div class="tabs">
          <elv-sheet-tabs .schedule=${seen} .sheet=${this.sheet} .revision=${revision}></elv-sheet-tabs>
          ${panelChoice(panels, panel, words, (chosen) => { this.panel = chosen; })}
          ${commandButton('find', words, { pressed: this.seeking === 'find', small: true })}${keyPopover(words)}${helpPopover(words, this.#here)}
          <button type="button" aria-expanded=${panelOpen && !working} aria-controls="panel" title=${words.say('Loadings and findings')} ?disabled=${working}
            @click=${() => { this.#openPanel(!panelOpen); }}>${icon('panel')}<span class="word">${words.say('Overview')}</span></button>
        </div>
        <div class="notices">${this.leads ? html`<elv-first-steps ?hidden=${working} .schedule=${schedule} .revision=${revision}
          ?demo=${this.demoSrc !== null}></elv-first-steps>` : nothing}${this.#trialBar()}${this.#draftNotices()}${this.#officeList()}${this.#offeredRows()}${this.#seekBar()}</div>
        <elv-sheet-view role="tabpanel" ?inert=${working} aria-label=${words.text(SCHEMA[this.sheet].title)} .schedule=${schedule} .revision=${revision}
          .sheet=${this.sheet} .panel=${panel} .grouping=${this.grouping} .look=${schedule.look(this.sheet)} ?readonly=${readonly} .licenseKey=${this.licenseKey} .words=${words}
          .message=${this.#shownMessage} .refusal=${this.files.refusal} .unsettled=${this.files.unsettled} ?led=${this.leads}>
          ${this.#saysHowToBegin ? html`<slot name="empty" slot="empty"></slot>` : nothing}
        </elv-sheet-view>
        <elv-schedule-panel id="panel" part="panel" role="complementary" aria-label=${words.say('Loadings and findings')} tabindex="0"
          ?hidden=${working} ?folded=${!panelOpen} @unfold=${() => { this.#openPanel(true); }} ?readonly=${readonly} .schedule=${seen} .revision=${revision}></elv-schedule-panel>
        ${this.#work.render({ schedule: this.schedule, trial, revision, readonly, words, panel, takeoffColumns: this.takeoffColumns })}
        <div class="footer" part="footer">${cautions(words)}</div>
      </div>
      ${this.#drop.active ? html`<div class="drop">${this.#dropWords}</div>` : nothing}
      <input type="file" hidden aria-label=${words.say('File to open')} @change=${this.#onFile}>
    </div>`;
  }

  /** The schedule as it is seen in the panel that is looked at: the same object as long as both are the same. */
  #viewOf(schedule: LoadSchedule, panel: PanelChoice): LoadSchedule {
    if (this.#seen?.schedule !== schedule || this.#seen.panel !== panel) {
      this.#seen = { schedule, panel, view: panelView(schedule, panel) };
    }
    return this.#seen.view;
  }

  #openPanel(open: boolean): void {
    this.panelOpen = open;
    remember('panel', open);
  }

  get #dropWords(): string {
    const { words } = this.spoken;
    if (this.#work.active === 'join') return words.say('Drop the other schedule (.json, .html, .xlsx)');
    if (this.#work.active === 'takeoff') return words.say('Drop takeoffs, one or several (.xlsx, .csv, .tsv)');
    if (this.#comparing) return words.say('Drop the older schedule (.json, .html, .xlsx)');
    return words.say('Drop a schedule (.json, or a load table .html, .xlsx) or one sheet (.csv)');
  }

  /** Whether what is dropped is an older schedule to compare with. */
  get #comparing(): boolean {
    return this.#work.active === 'loadTable' && this.renderRoot.querySelector('elv-load-table')?.view === 'changes';
  }

  get #shownMessage(): Message | undefined {
    const { waitingFor } = this.files;
    if (waitingFor !== '') {
      const text = this.spoken.words.say('Reading {file} …', { file: waitingFor });
      return { text, tone: 'info', offers: ['cancelReading'] };
    }
    return this.locked && this.message !== undefined ? { ...this.message, offers: [] } : this.message;
  }

  protected override get validityPlace(): HTMLElement {
    return this.renderRoot.querySelector<HTMLElement>('#panel:not([hidden])')
      ?? this.renderRoot.querySelector<HTMLElement>('[data-command=save]')!;
  }

  /** What its button says of a work area beside what it is for: how many variants are kept. */
  #aboutWork(name: WorkCommand): string | undefined {
    const n = name === 'variants' ? this.schedule.document.variants.length : 0;
    return n === 0 ? undefined : this.spoken.words.say('{n, plural, one {# is kept} other {# are kept}}', { n });
  }

  /** What is tried out; its part of the software is there before anything is. */
  #trialBar(): TemplateResult | typeof nothing {
    const { trial } = this;
    return trial === undefined ? nothing
      : html`<elv-trial-bar .trial=${trial} .schedule=${this.schedule} .revision=${this.holder.revision} .words=${this.spoken.words}
      .settle=${() => { this.settle(); }}></elv-trial-bar>`;
  }

  readonly #onTry = ({ trial }: TryEvent): void => {
    const left = this.trial?.name;
    this.tryOut(trial);
    if (trial === undefined && this.schedule.document.variants.some(({ name }) => name === left)) {
      const text = this.spoken.words.say(
        'The schedule is shown again. “{name}” is kept under “Variants”, and nothing of it counts.', { name: left! });
      this.say({ text, tone: 'info' });
    }
    this.#work.close();
    void this.updateComplete.then(() => { this.#view.focusRows(); });
  };

  /** What became of the schedule where the page keeps it; that it was saved is told until something changes. */
  #savingState(): TemplateResult {
    const { now } = this.saving;
    const { words } = this.spoken;
    const text = now === undefined || (now.state === 'saved' && this.dirty) ? ''
      : now.state === 'saving' ? words.say('Saving…')
      : now.state === 'saved' ? words.say('Saved {time}', { time: timeIn(words, now.at) }) : words.say('Not saved');
    return html`<span id="saving" role="status" class=${now?.state === 'failed' ? 'failed' : ''}>${text}</span>`;
  }

  /** What a person is told about drafts; its part of the software is there only where drafts are kept. */
  #draftNotices(): TemplateResult | typeof nothing {
    const { keeper } = this.drafts;
    return keeper === undefined
      ? nothing
      : html`<elv-draft-notices .keeper=${keeper} .notices=${this.locked ? [] : keeper.notices}
      .words=${this.spoken.words}></elv-draft-notices>`;
  }

  /** Asks what becomes of rows of a file that was read into a sheet that has some. */
  #offeredRows(): TemplateResult | typeof nothing {
    const { files, shown: schedule } = this;
    return files.offered === undefined || this.locked ? nothing
      : html`<elv-rows-offer .schedule=${schedule} .revision=${this.holder.revision} .words=${this.spoken.words}
      .offer=${files.offered} .take=${files.takeOffered} .cancel=${files.dismissOffer}></elv-rows-offer>`;
  }

  /** The bar to look for something, whose part of the software is fetched when it is first asked for. */
  #seekBar(): TemplateResult | typeof nothing {
    const { seeking, shown: schedule, spoken: { words } } = this;
    if (seeking === undefined) return nothing;
    // Keys that come before it is fetched are meant for it, and not for the cell that had the focus.
    if (customElements.get('elv-find-bar') === undefined) {
      return html`<input class="unseen" id="typed-ahead" aria-label=${words.say(COMMANDS[seeking].title)} @input=${this.#onInputAhead} @keydown=${this.#onKeyAhead}>`;
    }
    return seeking === 'goTo'
      ? html`<elv-go-to-bar .schedule=${schedule} .words=${words} .here=${this.#here}></elv-go-to-bar>`
      : html`<elv-find-bar .schedule=${schedule} .revision=${this.holder.revision} .words=${words} ?readonly=${this.locked}
      .replacing=${seeking === 'replace'} .here=${this.#here}></elv-find-bar>`;
  }

  /** What differs from the list of the office; its part of the software is there only where the page names one. */
  #officeList(): TemplateResult | typeof nothing {
    return this.librarySource === '' || this.locked || this.trial !== undefined ? nothing
      : html`<elv-office-list .address=${this.librarySource} .schedule=${this.schedule} .revision=${this.holder.revision}
      .words=${this.spoken.words}
      .take=${this.#takeLibrary} .failed=${this.libraryFailed}></elv-office-list>`;
  }

  /** The notice is gone then, and with it what had the focus: the work goes on at the rows. */
  readonly #takeLibrary: TakeRows = (make) => {
    this.takeLibrary(make);
    this.#view.focusRows();
  };

  protected override changesTyped(): readonly Change[] {
    return [...this.#details.changesTyped(), ...this.#view.changesTyped()];
  }

  protected override finishTyping(): Unsettled | undefined {
    this.#details.finishTyping();
    // A field takes what is typed in it by the change that leaving makes.
    const field = this.#typed;
    field?.blur();
    field?.focus();
    return this.#view.finishTyping();
  }

  protected override async goTo(place: Place): Promise<void> {
    this.jumps.jump(this.#here(), place);
    await this.#show(place);
  }

  /** Shows a place: a cell, or a sheet where a person was last there. */
  async #show(place: Place, focus: 'take' | 'keep' = 'take'): Promise<void> {
    this.showSheet(place.sheet);
    await this.updateComplete;
    await this.#view.goTo(place, focus);
  }

  /** Where the person is; the id is -1 where no row is selected. */
  readonly #here = (): Place => {
    const { sheet } = this;
    const { selected } = this.#view;
    return selected?.sheet === sheet ? selected : { sheet, id: -1, key: SCHEMA[sheet].tag };
  };

  #chooseSheet(sheet: SheetName): void {
    this.jumps.jump(this.#here(), { sheet, id: -1, key: SCHEMA[sheet].tag });
    this.showSheet(sheet);
  }

  #sayMissing(): void {
    const text = this.spoken.words.say(UNFETCHED);
    this.say({ text, tone: 'refused' });
  }

  /** Opens a bar above the rows, or gives its field the focus where it is open. */
  async #seek(command: SeekCommand): Promise<void> {
    this.#work.close();
    this.#soughtFrom ??= this.#here();
    this.seeking = command;
    await this.updateComplete;
    const ahead = this.renderRoot.querySelector<HTMLElement>('#typed-ahead');
    // Once the bar is known it stands with this update: a focus that came later would take it from whoever has gone on.
    if (ahead !== null) {
      ahead.focus();
      try {
        await import('../find-bar/find-bar.define.ts');
      } catch (error) {
        this.#closeSeek();
        this.#sayMissing();
        reportError(error);
        return;
      }
      this.requestUpdate();
      await this.updateComplete;
    }
    this.#seekElement?.focusField(this.#typedAhead);
    this.#typedAhead = '';
  }

  get #seekElement(): FindBar | GoToBar | null {
    return this.renderRoot.querySelector<FindBar | GoToBar>('elv-find-bar, elv-go-to-bar');
  }

  #closeSeek(): void {
    this.seeking = undefined;
    this.#typedAhead = '';
    if (this.#soughtFrom !== undefined) this.jumps.jump(this.#soughtFrom, this.#here());
    this.#soughtFrom = undefined;
    this.#view.focusRows();
  }

  readonly #onInputAhead = ({ currentTarget }: Event): void => {
    this.#typedAhead = (currentTarget as HTMLInputElement).value;
  };

  readonly #onKeyAhead = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') this.#closeSeek();
  };

  #findOn(by: 1 | -1): void {
    const bar = this.renderRoot.querySelector('elv-find-bar');
    if (bar === null) void this.#seek('find');
    else bar.step(by);
  }

  protected override async showChanged(place: Place): Promise<void> {
    // A work area that is open is not left for it.
    if (this.#work.active !== undefined) return;
    const focused = focusedElement();
    super.showSheet(place.sheet);
    await this.updateComplete;
    await this.#view.goTo(place);
    if (focused?.closest('.grid') === null) focused.focus({ preventScroll: true });
  }

  /** @ignore */
  override showSheet(sheet: SheetName): void {
    this.settle();
    super.showSheet(sheet);
    if (this.#work.active === undefined) return;
    this.#work.close();
    // What was carried out in an area leaves the focus in the rows that it led to, where every key is heard.
    void this.updateComplete.then(() => { if (this.renderRoot.querySelector('.tabs :focus') === null) this.#view.focusRows(); });
  }

  /** Opens a work area; the takeoff with the list that was just offered to it. */
  async #open(work: WorkCommand): Promise<void> {
    const list = work === 'takeoff' ? this.message?.list : undefined;
    await this.#work.open(work);
    this.unfolded = false;
    if (list === undefined || this.#work.active !== 'takeoff') return;
    this.message = undefined;
    await this.updateComplete;
    this.renderRoot.querySelector('elv-takeoff-reader')!.takePasted(list);
  }

  async #openDropped(files: readonly File[]): Promise<void> {
    if (this.#work.active === 'takeoff') {
      await this.renderRoot.querySelector('elv-takeoff-reader')!.open(files);
      return;
    }
    if (this.#work.active !== 'join' && !this.#comparing) {
      for (const file of files) if ((await this.files.open(file, true)).length > 0) return;
      return;
    }
    const [file, ...others] = files;
    if (others.length > 0) {
      const text = this.spoken.words.say('One schedule is taken at a time: {name}. Not read: {others}.',
        { name: file!.name, others: others.map(({ name }) => name).join(', ') });
      this.message = { text, tone: 'info' };
    }
    if (this.#comparing) await this.renderRoot.querySelector('elv-load-table')!.compareWith(file!);
    else await this.renderRoot.querySelector('elv-schedule-join')!.open(file!);
  }

  get #view(): SheetView {
    return this.renderRoot.querySelector('elv-sheet-view')!;
  }

  #popover(name: 'keys' | 'help'): HTMLElement {
    return this.renderRoot.querySelector<HTMLElement>(`#${name}`)!;
  }

  get #details(): DetailsStrip {
    return this.renderRoot.querySelector('elv-details-strip')!;
  }

  #do(command: AskedCommand): void {
    switch (command) {
      case 'dismiss': this.files.dismiss(); return;
      case 'dismissTyped': this.files.dismissTyped(); return;
      case 'cancelReading': this.files.cancel(true); return;
      case 'closeFind': this.#closeSeek(); return;
      case 'whatChanged':
        this.#openPanel(true);
        void this.renderRoot.querySelector('elv-schedule-panel')?.showChanges();
        return;
      case 'closeSteps': this.#remindOfSteps(false); return;
      case 'stepsDone': this.#leave(); return;
      case 'begin': void this.goTo({ sheet: 'devices', id: -1, key: 'ref' }); return;
      case 'help': this.#popover('help').togglePopover(); return;
      default:
    }
    this.settle();
    if (command === 'closeWork') {
      const opener = this.renderRoot.querySelector<HTMLElement>(`[data-command=${this.#work.active}]`);
      this.#work.close();
      if (opener === null) void this.updateComplete.then(() => { this.#view.focusRows(); });
      else (opener.checkVisibility() ? opener : this.renderRoot.querySelector<HTMLElement>('#unfold')!).focus();
      return;
    }
    if (isJobCommand(command)) {
      const rows = this.#view.selectedRows;
      if (!this.locked && rows !== undefined) void this.#work.open('rework', { job: command, rows });
      return;
    }
    if (this.locked && (command === 'loadDemo' || COMMANDS[command].changes)) return;
    const refused = this.trial?.refuses(command);
    if (refused !== undefined) {
      this.say({ text: refused, tone: 'refused' });
      return;
    }
    if (command === 'loadDemo') void this.files.openFrom(this.demoSrc!);
    else if (isRowCommand(command)) this.#view.do(command);
    else if (isWorkCommand(command)) void this.#open(command);
    else if (isSeekCommand(command)) void this.#seek(command);
    else if (command === 'firstSteps') this.#remindOfSteps(true);
    else if (command === 'save') this.files.save();
    else if (command === 'csvOut') void this.files.saveCsv(this.sheet);
    else if (command === 'moreColumns') {
      this.lookAt({ all: !this.schedule.look(this.sheet).all, groups: [] });
    } else if (command === 'undo' || command === 'redo') this.shown[command]();
    else this.#chooseFile(command === 'csvIn' ? this.sheet : undefined);
  }

  #chooseFile(csvFor: SheetName | undefined): void {
    this.#csvFor = csvFor;
    const field = this.renderRoot.querySelector<HTMLInputElement>('input[type=file]')!;
    field.accept = csvFor === undefined ? '.json,.html,.htm,.xlsx,.csv,.tsv,.txt' : '.csv,.tsv,.txt,.json';
    field.value = '';
    field.click();
  }

  readonly #onFile = (event: Event): void => {
    const file = (event.currentTarget as HTMLInputElement).files?.[0];
    if (file !== undefined) void this.files.open(file, true, this.#csvFor);
  };

  readonly #onCommand = (event: CommandEvent): void => { this.#do(event.command); };

  readonly #onGoTo = ({ place, keepsFocus }: GoToEvent): void => {
    void (keepsFocus ? this.#show(place, 'keep') : this.goTo(place));
  };

  readonly #onSheetChoose = (event: SheetChooseEvent): void => { this.#chooseSheet(event.sheet); };

  readonly #onLook = ({ changed }: LookEvent): void => { this.lookAt(changed); };

  readonly #onGrouping = (event: GroupingEvent): void => { this.grouping = event.grouping; };

  readonly #onBusy = ({ task, isRunning }: BusyEvent): void => { this.busy(task, isRunning); };

  readonly #onMessage = ({ text, tone, undoable, details, list }: MessageEvent): void => {
    // What the grid says of an action of this moment says more than its name, and offers the same.
    const offers = this.offers ?? (undoable ? ['undo'] : list === undefined ? [] : ['takeoff']);
    this.message = { text, tone, offers, list };
    if (details.length === 0) return;
    this.files.refuse({ title: text, problems: details.map((detail) => ({ message: detail })), passing: true });
  };

  /** The field that is typed in; one that went with what it was in has no focus any more. */
  get #typed(): HTMLElement | undefined {
    return this.#typedIn?.matches(':focus') === true ? this.#typedIn : undefined;
  }

  readonly #onInput = (event: Event): void => {
    const [field] = event.composedPath();
    const inGrid = event.composedPath().some((each) => each instanceof Element && each.matches('elv-schedule-grid'));
    this.#typedIn = field instanceof HTMLElement && !inGrid && field.matches(TYPED_IN) ? field : undefined;
  };

  readonly #onLeft = (): void => { this.#typedIn = undefined; };

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const action = keyAction(event);
    if (event.defaultPrevented || action === undefined) return;
    // A field takes back what is typed in it, and the grid, which hears of keys after this, sees to its own.
    const inOwn = this.#typed !== undefined
      || event.composedPath().some((each) => each instanceof Element && each.matches(OWN_UNDO));
    if (inOwn && (action === 'undo' || action === 'redo')) return;
    const inField = event.composedPath()[0] instanceof HTMLInputElement
      || event.composedPath()[0] instanceof HTMLTextAreaElement;
    if (inField && (action === 'back' || action === 'forth')) return;
    event.preventDefault();
    if (action === 'keys') this.#popover('keys').togglePopover();
    else if (action === 'nextSheet' || action === 'previousSheet') {
      const { sheets } = this.renderRoot.querySelector('elv-sheet-tabs')!;
      const step = action === 'nextSheet' ? 1 : sheets.length - 1;
      this.#chooseSheet(sheets[(sheets.indexOf(this.sheet) + step) % sheets.length]!);
    } else if (action === 'back' || action === 'forth') {
      const to = this.jumps.step(action === 'back' ? -1 : 1, this.#here());
      if (to !== undefined) void this.#show(to);
    } else if (action === 'findNext' || action === 'findPrevious') this.#findOn(action === 'findNext' ? 1 : -1);
    else this.#do(action);
  };
}

/** What has the focus, however deep in shadow roots it is. */
function focusedElement(): HTMLElement | undefined {
  let at = document.activeElement;
  for (let inner = at; inner !== null; inner = inner.shadowRoot?.activeElement ?? null) at = inner;
  return at instanceof HTMLElement ? at : undefined;
}
