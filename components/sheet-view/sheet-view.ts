import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { isBlank, type Change, type SheetLook, type SheetName } from '../../src/schedule/index.ts';
import { CommandEvent, type Grouping } from '../events/index.ts';
import type { CellSelectEvent } from '../grid/events.ts';
import type { ScheduleGrid } from '../grid/schedule-grid.ts';
import type { Unsettled } from '../grid/unsettled.ts';
import type { SelectionStatistics } from '../grid/selection-statistics.ts';
import { controls, remember, remembered, statusMarkStyles, type Place } from '../look/index.ts';
import type { RowCommand } from '../schedule-toolbar/commands.ts';
import { emptySheet } from './empty-sheet.ts';
import { keyNeeded } from './key-needed.ts';
import { messageLine, refusalList, type Message, type Refusal } from './notices.ts';
import { selectionSum } from './selection-sum.ts';
import { styles } from './sheet-view.styles.ts';
import type { Words } from '../../src/words/index.ts';

/** One sheet: its tools, its rows in the grid, the explanation of the selected figure, and what just happened. */
export class SheetView extends LitElement {
  static override styles = [controls, statusMarkStyles, styles];
  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, sheet: { attribute: false },
    grouping: { attribute: false }, look: { attribute: false }, readonly: { type: Boolean },
    licenseKey: { attribute: false }, words: { attribute: false }, message: { attribute: false },
    refusal: { attribute: false }, unsettled: { attribute: false }, demo: { type: Boolean },
    place: { state: true }, explained: { state: true }, pictured: { type: Boolean, reflect: true },
    statistics: { state: true }, gridState: { state: true },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule did. */
  declare revision: number;
  declare sheet: SheetName;
  declare grouping: Grouping;
  /** How the sheet is looked at. */
  declare look: SheetLook;
  declare readonly: boolean;
  /** Key of the grid library; without it the rows cannot be shown. */
  declare licenseKey: string | null;
  declare words: Words;
  /** What just happened. */
  declare message: Message | undefined;
  /** What was refused last, until it is dismissed. */
  declare refusal: Refusal | undefined;
  /** What was being typed and could not be taken over, until it is dismissed. */
  declare unsettled: Refusal | undefined;
  /** Whether an empty sheet offers the demo of the page. */
  declare demo: boolean;
  declare protected place: Place | undefined;
  declare protected statistics: SelectionStatistics | undefined;
  /** Whether the area below the rows is open, and the picture in it. */
  declare protected explained: boolean;
  declare pictured: boolean;
  declare protected gridState: 'absent' | 'ready' | 'failed';

  constructor() {
    super();
    this.readonly = this.demo = false;
    this.licenseKey = null;
    this.gridState = 'absent';
    this.explained = remembered('explained', true);
    this.pictured = remembered('pictured', false);
  }

  /** Selects a cell of the sheet and shows it. @param focus whether it takes the focus, or that stays where it is. */
  async goTo(place: Place, focus: 'take' | 'keep' = 'take'): Promise<void> {
    this.place = place;
    await this.updateComplete;
    const grid = this.#grid;
    await grid?.updateComplete;
    grid?.goTo(place.id, place.key, focus);
  }

  /** Gives the selected cell, or the first one, the focus. */
  focusRows(): void {
    this.#grid?.focusGrid();
  }

  /** Carries out a command on the selected rows. */
  do(command: RowCommand): void {
    this.#grid?.[command]();
  }

  /** The changes that what stands in the open editor would make. */
  changesTyped(): readonly Change[] {
    return this.#grid?.changesTyped() ?? [];
  }

  /** Takes over what stands in the open editor, and closes it. @returns what could not be read. */
  finishTyping(): Unsettled | undefined {
    return this.#grid?.finishTyping();
  }

  /** What explains figures is fetched after the rest is on the screen. */
  protected override firstUpdated(): void {
    import('../cell-explanation/cell-explanation.define.ts').catch(reportError);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('sheet') && this.place?.sheet !== this.sheet) this.place = this.statistics = undefined;
    if (changed.has('licenseKey') && this.#hasKey && this.gridState !== 'ready') void this.#prepareGrid();
  }

  override render(): TemplateResult {
    const { schedule, revision, sheet, readonly, words, refusal, unsettled } = this;
    const ready = this.#hasKey && this.gridState === 'ready';
    return html`
      <elv-schedule-toolbar .sheet=${sheet} .grouping=${this.grouping} ?readonly=${readonly} ?rowsReady=${ready} .look=${this.look}
        .words=${words}></elv-schedule-toolbar>
      ${unsettled === undefined ? nothing : refusalList(unsettled, words, this.#ask('dismissTyped'))}
      ${refusal === undefined ? nothing : refusalList(refusal, words, this.#ask('dismiss'))}
      <div class="rows" @elv-cell-select=${this.#onCellSelect}>
        ${ready ? this.#rows() : nothing}
        ${this.#hasKey ? nothing : keyNeeded(words)}
        ${this.gridState === 'failed' ? html`<p class="card" role="alert">
          ${words.say('The rows cannot be shown: the grid could not be fetched. Reload the page.')}</p>` : nothing}
      </div>
      <elv-cell-explanation id="explanation" ?hidden=${!this.explained} ?pictured=${this.pictured} ?readonly=${readonly}
        .schedule=${schedule} .place=${this.place} .revision=${revision}></elv-cell-explanation>
      <div class="line">${messageLine(this.message, words, (offer) => { this.#ask(offer)(); })}
        <span class="sum">${this.statistics === undefined ? nothing : selectionSum(this.statistics, words)}</span>${this.#views()}</div>`;
  }

  /** Buttons that open and close what stands below the rows. */
  #views(): TemplateResult {
    const [explained, pictured] = [this.explained, this.explained && this.pictured];
    const { words } = this;
    const button = (name: string, title: string, open: boolean, press: () => void) =>
      html`<button type="button" title=${title}
      aria-expanded=${open} aria-controls="explanation" @click=${press}>${name}</button>`;
    return html`<span class="views">
      ${button(words.say('Explanation'), words.say('How the selected figure comes about'), explained, () => { this.#view(!explained, this.pictured); })}
      ${button(words.say('Picture'), words.say('Voltage along the selected run; how full supplies and branches are'), pictured, () => { this.#view(true, !pictured); })}</span>`;
  }

  #view(explained: boolean, pictured: boolean): void {
    [this.explained, this.pictured] = [explained, pictured];
    remember('explained', explained);
    remember('pictured', pictured);
    void this.updateComplete.then(() => { this.#grid?.showSelected(); });
  }

  #rows(): TemplateResult {
    const { schedule, sheet, readonly, words } = this;
    const empty = schedule.rows(sheet).every(isBlank);
    return html`<elv-schedule-grid .schedule=${schedule} .sheet=${sheet} .readonly=${readonly} .licenseKey=${this.licenseKey}
        .grouping=${sheet === 'devices' ? this.grouping : 'entered'} .look=${this.look} .words=${words}></elv-schedule-grid>
      ${empty ? emptySheet(sheet, { readonly, demo: this.demo, words, ask: (command) => { this.#ask(command)(); } }) : nothing}`;
  }

  get #hasKey(): boolean {
    return this.licenseKey !== null && this.licenseKey !== '';
  }

  get #grid(): ScheduleGrid | null {
    return this.renderRoot.querySelector('elv-schedule-grid');
  }

  #ask(command: CommandEvent['command']): () => void {
    return () => { this.dispatchEvent(new CommandEvent(command)); };
  }

  /** The grid library is fetched when there is a key for it, and after the rest is on the screen. */
  async #prepareGrid(): Promise<void> {
    try {
      await import('../grid/schedule-grid.define.ts');
      this.gridState = 'ready';
    } catch (error) {
      this.gridState = 'failed';
      reportError(error);
    }
  }

  readonly #onCellSelect = ({ sheet, id, key, statistics }: CellSelectEvent): void => {
    this.place = id < 0 ? undefined : { sheet, id, key };
    this.statistics = statistics;
  };
}
