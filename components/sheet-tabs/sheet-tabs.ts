import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA, SHEET_NAMES, type SheetName } from '../../src/schedule/index.ts';
import { SheetChooseEvent } from '../events/index.ts';
import { message } from '../../src/words/index.ts';
import { controls, markShape, statusMarkStyles } from '../look/index.ts';
import { sheetMarks, type SheetMark } from './sheet-marks.ts';
import { styles } from './sheet-tabs.styles.ts';

/** How many rows of a sheet have its worst finding. */
const ROWS: Readonly<Record<SheetMark['severity'], string>> = {
  over: message('{n, plural, one {# row} other {# rows}} over limit'),
  near: message('{n, plural, one {# row} other {# rows}} near limit'),
  incomplete: message('{n, plural, one {# row} other {# rows}} incomplete'),
};

/** Sheets that are looked up rather than worked on, each the same in many schedules: they stand apart at the end. */
const LISTS: ReadonlySet<SheetName> = new Set(['types', 'conductors', 'contacts']);
/** Sheets that a work area shows together: their tabs wait until they are gone to, or all are asked for. */
const IN_AREA: ReadonlySet<SheetName> = new Set(['cases', 'factors', 'terminals']);
const IN_ORDER = [...SHEET_NAMES.filter((name) => !LISTS.has(name)), ...LISTS];

/** Width [px] below which only the tab of the sheet that is shown stands, until the others are asked for. */
const NARROW = 560;

/** The row of tabs that leads to the sheets, each with its number of rows and its worst finding. */
export class SheetTabs extends LitElement {
  static override styles = [controls, statusMarkStyles, styles];
  static override properties = {
    schedule: { attribute: false }, sheet: { attribute: false }, revision: { attribute: false },
    all: { type: Boolean, reflect: true },
  };

  declare schedule: LoadSchedule;
  declare sheet: SheetName;
  /** Changes whenever the schedule, or its language, did. */
  declare revision: number;
  /** Whether a person asks for the sheets without rows. */
  declare protected all: boolean;

  constructor() {
    super();
    this.all = false;
  }

  /** The sheets that have a tab, in their order: those with rows, the one that is shown, and all where asked for. */
  get sheets(): readonly SheetName[] {
    return IN_ORDER.filter((name) => this.all || name === this.sheet
      || (this.schedule.rows(name).length > 0 && !IN_AREA.has(name)));
  }

  override render(): TemplateResult {
    const { words } = this.schedule;
    const marks = sheetMarks(this.schedule);
    const empty = IN_ORDER.filter((name) =>
      name !== this.sheet && this.schedule.rows(name).length === 0 && !IN_AREA.has(name)).length;
    return html`<div class="tabs"><div id="sheets" role="tablist" aria-label=${words.say('Sheets')} @keydown=${this.#onKeydown}>
      ${this.sheets.map((name) => this.#tab(name, marks.get(name)))}
    </div><button type="button" class="more ${empty === 0 ? 'only' : ''}" aria-expanded=${this.all} aria-controls="sheets"
      title=${empty === 0 ? nothing : words.say('Sheets without rows, {n} of them', { n: empty })} @click=${() => { this.all = !this.all; }}>
      ${this.all ? words.say('Fewer sheets') : words.say('More sheets')}</button></div>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('sheet')) return;
    const list = this.renderRoot.querySelector('[role=tablist]');
    const tab = this.renderRoot.querySelector<HTMLElement>('[aria-selected=true]');
    if (list === null || tab === null) return;
    // Only the row of tabs may scroll, never the page: scrollIntoView would move both.
    const [outer, inner] = [list.getBoundingClientRect(), tab.getBoundingClientRect()];
    if (inner.left < outer.left) list.scrollLeft += inner.left - outer.left;
    if (inner.right > outer.right) list.scrollLeft += inner.right - outer.right;
  }

  #tab(name: SheetName, mark: SheetMark | undefined): TemplateResult {
    const chosen = name === this.sheet;
    const { words } = this.schedule;
    const title = words.text(SCHEMA[name].title);
    const { length } = this.schedule.rows(name);
    const counted = words.say('{n, plural, one {# row} other {# rows}}', { n: length });
    const says = mark === undefined ? '' : words.say(ROWS[mark.severity], { n: mark.rows });
    return html`<button role="tab" id="tab-${name}" class=${LISTS.has(name) ? 'list' : 'work'} data-sheet=${name} aria-selected=${chosen} tabindex=${chosen ? 0 : -1}
      title=${says === '' ? counted : `${counted}, ${says}`} @click=${() => { this.#choose(name); if (this.#isNarrow) this.all = false; }}>
      <span class="title" data-title=${title}>${title}</span>
      <span class="count">${length}<span class="unseen">${counted.replace(String(length), '')}</span></span>
      ${mark === undefined ? nothing : html`${markShape(mark.severity)}<span class="unseen">, ${says}</span>`}
    </button>`;
  }

  get #isNarrow(): boolean {
    return (this.closest('.element') ?? this).clientWidth < NARROW;
  }

  #choose(name: SheetName): void {
    // Also for the sheet that is chosen: it may stand behind a work area.
    this.dispatchEvent(new SheetChooseEvent(name));
  }

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const steps: Record<string, number> = getComputedStyle(this).direction === 'rtl'
      ? { ArrowLeft: 1, ArrowRight: -1 } : { ArrowLeft: -1, ArrowRight: 1 };
    const { sheets } = this;
    const last = sheets.length - 1;
    const at = sheets.indexOf(this.sheet);
    const step = steps[event.key];
    const to = event.key === 'Home' ? 0 : event.key === 'End' ? last
      : step === undefined ? undefined : (at + step + last + 1) % (last + 1);
    if (to === undefined) return;
    event.preventDefault();
    if (this.#isNarrow) this.all = true;
    const name = sheets[to]!;
    this.#choose(name);
    void this.updateComplete.then(() => { this.renderRoot.querySelector<HTMLElement>(`[data-sheet=${name}]`)?.focus(); });
  };
}
