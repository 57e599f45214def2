import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA, SHEET_NAMES, type SheetName } from '../../src/schedule/index.ts';
import { SheetChooseEvent } from '../events/index.ts';
import { controls, MARK_WORDS, markShape, statusMarkStyles } from '../look/index.ts';
import { sheetMarks, type SheetMark } from './sheet-marks.ts';
import { styles } from './sheet-tabs.styles.ts';

/** The row of tabs that leads to the sheets, each with its number of rows and its worst finding. */
export class SheetTabs extends LitElement {
  static override styles = [controls, statusMarkStyles, styles];
  static override properties = {
    schedule: { attribute: false }, sheet: { attribute: false }, revision: { attribute: false },
  };

  declare schedule: LoadSchedule | undefined;
  declare sheet: SheetName;
  /** Changes whenever the schedule did. */
  declare revision: number;

  override render(): TemplateResult {
    const marks = this.schedule === undefined ? new Map<SheetName, SheetMark>() : sheetMarks(this.schedule);
    return html`<div role="tablist" aria-label="Sheets" @keydown=${this.#onKeydown}>
      ${SHEET_NAMES.map((name) => this.#tab(name, marks.get(name)))}
    </div>`;
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
    const rows = this.schedule?.rows(name).length ?? 0;
    const says = mark === undefined ? '' : `${mark.rows} ${mark.rows === 1 ? 'row' : 'rows'} ${MARK_WORDS[mark.severity]}`;
    return html`<button role="tab" id="tab-${name}" data-sheet=${name} aria-selected=${chosen} tabindex=${chosen ? 0 : -1}
      title=${says === '' ? nothing : says} @click=${() => this.#choose(name)}>
      <span class="title" data-title=${SCHEMA[name].title}>${SCHEMA[name].title}</span>
      <span class="count">${rows}<span class="unseen"> ${rows === 1 ? 'row' : 'rows'}</span></span>
      ${mark === undefined ? nothing : html`${markShape(mark.severity)}<span class="unseen">, ${says}</span>`}
    </button>`;
  }

  #choose(name: SheetName): void {
    // Also for the sheet that is chosen: it may stand behind a work area.
    this.dispatchEvent(new SheetChooseEvent(name));
  }

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const steps: Record<string, number> = getComputedStyle(this).direction === 'rtl'
      ? { ArrowLeft: 1, ArrowRight: -1 } : { ArrowLeft: -1, ArrowRight: 1 };
    const last = SHEET_NAMES.length - 1;
    const at = SHEET_NAMES.indexOf(this.sheet);
    const step = steps[event.key];
    const to = event.key === 'Home' ? 0 : event.key === 'End' ? last
      : step === undefined ? undefined : (at + step + last + 1) % (last + 1);
    if (to === undefined) return;
    event.preventDefault();
    const name = SHEET_NAMES[to]!;
    this.renderRoot.querySelector<HTMLElement>(`[data-sheet=${name}]`)?.focus();
    this.#choose(name);
  };
}
