import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { panelKeys, type PanelChoice } from '../../src/engine/panel-of.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { isBlank, type Change, type SheetLook, type SheetName } from '../../src/schedule/index.ts';
import { CommandEvent, type Grouping, type SightEvent } from '../events/index.ts';
import type { CellSelectEvent, HeadingOpenEvent, RowsInSightEvent } from '../grid/events.ts';
import { ALL_ROWS, type Sight } from '../grid/lines/sight-type.ts';
import type { ChosenRows } from '../rework/job.ts';
import type { ScheduleGrid } from '../grid/schedule-grid.ts';
import type { Unsettled } from '../grid/unsettled.ts';
import type { SelectionStatistics } from '../grid/selection-statistics.ts';
import { controls, remember, remembered, statusMarkStyles, zoomOf, type Place } from '../look/index.ts';
import type { RowCommand } from '../schedule-toolbar/commands.ts';
import type * as BesideRows from './beside-rows.ts';
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
    refusal: { attribute: false }, unsettled: { attribute: false }, led: { type: Boolean },
    panel: { attribute: false }, place: { state: true }, explained: { state: true },
    pictured: { type: Boolean, reflect: true }, statistics: { state: true }, gridState: { state: true },
    beside: { state: true },
    sights: { state: true }, counted: { state: true }, heading: { state: true },
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
  /** Whether first steps say how to begin. */
  declare led: boolean;
  declare protected place: Place | undefined;
  declare protected statistics: SelectionStatistics | undefined;
  /** Whether the area below the rows is open, and the picture in it. */
  declare protected explained: boolean;
  declare pictured: boolean;
  /** The panel that is looked at. */
  declare panel: PanelChoice;
  /** Which rows are in sight, by sheet. */
  declare protected sights: ReadonlyMap<SheetName, Sight>;
  /** How many rows are in sight, and how many there are. */
  declare protected counted: Pick<RowsInSightEvent, 'seen' | 'all'>;
  /** The column of which the ways to sort and to pick rows are shown. */
  declare protected heading: string | undefined;
  /** What is fetched with the rows. */
  declare protected beside: typeof BesideRows | undefined;
  declare protected gridState: 'absent' | 'ready' | 'failed';

  constructor() {
    super();
    this.readonly = this.led = false;
    this.licenseKey = null;
    this.gridState = 'absent';
    this.sights = new Map();
    this.counted = { seen: 0, all: 0 };
    this.explained = remembered('explained', true);
    this.pictured = remembered('pictured', false);
  }

  /**
   * Selects a cell of the sheet and shows it; where the row is not there, the one that a person was at.
   * @param focus whether it takes the focus, or that stays where it is.
   */
  async goTo(place: Place, focus: 'take' | 'keep' = 'take'): Promise<void> {
    const isThere = this.schedule.document.row(place.sheet, place.id) !== undefined;
    if (isThere) this.place = place;
    await this.updateComplete;
    const grid = this.#grid;
    await grid?.updateComplete;
    if (isThere) grid?.goTo(place.id, place.key, focus);
    else if (focus === 'take') grid?.focusGrid();
  }

  /** The cell that is selected. */
  get selected(): Place | undefined {
    return this.place;
  }

  /** The rows with a selected cell; `undefined` where there is none. */
  get selectedRows(): ChosenRows | undefined {
    const ids = this.#grid?.selectedRows ?? [];
    return ids.length === 0 ? undefined : { sheet: this.sheet, ids };
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

  /** What explains figures, and the tools of the sheet, are fetched after the rest is on the screen. */
  protected override firstUpdated(): void {
    import('../schedule-toolbar/schedule-toolbar.define.ts').catch(reportError);
    import('./beside-rows.ts').then((beside) => { this.beside = beside; }).catch(reportError);
    import('../cell-explanation/cell-explanation.define.ts').catch(reportError);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('schedule')) this.sights = new Map();
    // The column that is picked by is one of the sheet before.
    if (changed.has('sheet')) this.heading = undefined;
    if (changed.has('sheet') && this.place?.sheet !== this.sheet) this.place = this.statistics = undefined;
    if (changed.has('licenseKey') && this.#hasKey && this.gridState !== 'ready') void this.#prepareGrid();
  }

  override render(): TemplateResult {
    const { schedule, revision, sheet, readonly, words, refusal, unsettled } = this;
    const ready = this.#hasKey && this.gridState === 'ready';
    return html`
      <elv-schedule-toolbar .sheet=${sheet} .grouping=${this.grouping} ?readonly=${readonly} ?rowsReady=${ready} .only=${this.#sight.only} .look=${this.look}
        .words=${words} @elv-sight=${this.#onSight}></elv-schedule-toolbar>
      ${ready ? this.beside!.sightLine(this.#sight, sheet, this.counted, words, this.#askSight, () => { this.#grid?.applySight(); }) : nothing}
      ${unsettled === undefined ? nothing : refusalList(unsettled, words, this.#ask('dismissTyped'))}
      ${refusal === undefined ? nothing : refusalList(refusal, words, this.#ask('dismiss'))}
      <div popover id="heading" class="floating" role="dialog" tabindex="-1" aria-label=${words.say('Sort and pick rows')} @elv-sight=${this.#onSight}>
        ${this.heading === undefined ? nothing : html`<elv-column-sight .schedule=${schedule} .revision=${revision} .sheet=${sheet}
          .key=${this.heading} .sight=${this.#sight} .look=${this.look} .words=${words}></elv-column-sight>`}</div>
      <div class="rows" @elv-cell-select=${this.#onCellSelect} @elv-rows-in-sight=${this.#onRowsInSight} @elv-heading-open=${this.#onHeadingOpen} @elv-mend=${this.#onMend}>
        ${ready ? this.#rows() : nothing}
        ${this.#hasKey ? nothing : this.beside?.keyNeeded(words)}
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
      ${button(words.say('Explanation'), words.say('How the selected figure is calculated'), explained, () => { this.#view(!explained, this.pictured); })}
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
        .grouping=${sheet === 'devices' ? this.grouping : 'entered'} .look=${this.look} .sight=${this.#sight} .words=${words}></elv-schedule-grid>
      ${empty ? this.beside!.emptySheet(sheet, { readonly, led: this.led, words }) : nothing}`;
  }

  get #sight(): Sight {
    const own = this.#ownSight;
    return this.panel === undefined || panelKeys(this.sheet).length === 0 ? own : { ...own, panel: this.panel };
  }

  /** What a person picked on this sheet, whichever panel is looked at. */
  get #ownSight(): Sight {
    return this.sights.get(this.sheet) ?? ALL_ROWS;
  }

  readonly #askSight = (changed: Partial<Sight>): void => {
    this.sights = new Map(this.sights).set(this.sheet, { ...this.#ownSight, ...changed });
  };

  readonly #onSight = ({ changed }: SightEvent): void => { this.#askSight(changed); };

  readonly #onRowsInSight = ({ seen, all }: RowsInSightEvent): void => {
    if (seen !== this.counted.seen || all !== this.counted.all) this.counted = { seen, all };
  };

  readonly #onMend = (): void => { this.renderRoot.querySelector('elv-cell-explanation')?.focusRemedy(); };

  /** What can be done with a column is fetched when it is asked for first. */
  readonly #onHeadingOpen = async ({ key, box }: HeadingOpenEvent): Promise<void> => {
    await import('../column-sight/column-sight.define.ts');
    this.heading = key;
    await this.updateComplete;
    const popover = this.renderRoot.querySelector<HTMLElement>('#heading')!;
    const zoom = zoomOf(this);
    popover.style.setProperty('top', `${box.bottom / zoom + 2}px`);
    popover.style.setProperty('left', `clamp(8px, ${box.left / zoom}px, 100vi - 8px - min(20rem, 100vi - 16px))`);
    popover.showPopover();
    popover.focus();
  };

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
      [this.beside] = await Promise.all([
        import('./beside-rows.ts'), import('../grid/schedule-grid.define.ts'),
        import('../schedule-toolbar/schedule-toolbar.define.ts'),
      ]);
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
