import { html, LitElement, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { panelNames, type PanelChoice } from '../../src/engine/panel-of.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { drawing, type Drawing, type DrawingKind } from '../../src/report/drawings/index.ts';
import { pictureText, type Shape } from '../../src/report/pictures/index.ts';
import { ENGLISH, type Words } from '../../src/words/index.ts';
import { fileName, inFileName, saveFile } from '../load-schedule/files.ts';
import { controls, icon } from '../look/index.ts';
import { buildShape } from '../pictures/build-shape.ts';
import { styles } from './schedule-drawings.styles.ts';

/** Widths of a sheet on the page [units, of which one is a pixel], and the steps by which it follows its room. */
const [LEAST, MOST, STEP] = [280, 1240, 20];
/** Height of a sheet on the page [units]. */
const HEIGHT = 1100;
/** A file has one sheet, as high as it has to be. */
const IN_A_FILE = { width: 1072, height: Infinity };

/**
 * The drawings of a schedule, one panel and one sheet at a time, as wide as there is room: only the sheet that is shown
 * is built. A drawing can be saved whole as an SVG file.
 */
export class ScheduleDrawings extends LitElement {
  static override styles = [controls, styles];
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false }, kind: { reflect: true }, only: { attribute: false }, revision: { attribute: false },
    words: { attribute: false }, active: { attribute: false }, chosen: { state: true }, index: { state: true },
    room: { state: true },
  };

  declare schedule: LoadSchedule;
  declare kind: DrawingKind;
  /** The panel that the page looks at; without one a person chooses here. */
  declare only: PanelChoice;
  /** Changes whenever the schedule did. */
  declare revision: number;
  declare words: Words;
  /** Whether it is looked at; otherwise it only keeps where it was. */
  declare active: boolean;
  /** The panel that a person chose; the first one before. */
  declare protected chosen: { readonly panel: PanelChoice } | undefined;
  /** Index of the sheet that is shown. */
  declare protected index: number;
  /** Width that there is [px]; 0 before it is measured. */
  declare protected room: number;
  #drawing: Drawing | undefined;
  #panels: readonly string[] = [];
  #frame = 0;
  /** What is drawn may change the room, by a scrollbar: that is looked at in the next frame. */
  readonly #observer = new ResizeObserver(() => {
    this.#frame ||= requestAnimationFrame(() => {
      this.#frame = 0;
      const room = Math.floor(this.clientWidth / STEP) * STEP;
      if (room > 0) this.room = Math.min(MOST, Math.max(LEAST, room));
    });
  });

  constructor() {
    super();
    this.kind = 'oneLine';
    this.words = ENGLISH;
    this.active = true;
    this.index = this.room = 0;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#observer.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#observer.disconnect();
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
  }

  override shouldUpdate(): boolean {
    return this.active;
  }

  override willUpdate(changed: PropertyValues): void {
    this.#panels = panelNames(this.schedule);
    if (changed.has('kind') || changed.has('only') || changed.has('chosen')) this.index = 0;
    this.#drawing = this.room === 0 ? undefined
      : drawing(this.schedule, this.kind, this.#panel, { width: this.room, height: HEIGHT });
    this.index = Math.min(this.index, Math.max(0, (this.#drawing?.sheets ?? 1) - 1));
  }

  override render(): TemplateResult | typeof nothing {
    const drawn = this.#drawing;
    if (drawn === undefined) return nothing;
    const { words, index } = this;
    if (drawn.sheets === 0) {
      return html`<div class="tools">${this.#panelChoice()}</div><p class="spoken">${this.kind === 'oneLine'
        ? words.say('There is nothing to draw yet: no feed, supply, way, run or output.') : words.say('There are no bus branches yet.')}</p>`;
    }
    return html`<div class="tools">${this.#panelChoice()}${this.#pager(drawn.sheets)}
        <button type="button" class="bordered save" @click=${this.save}>${icon('save')} ${words.say('Save as SVG')}</button></div>
      <div class="sheet" tabindex="0" role="group" aria-label=${words.say('Drawing')}>${this.#built(drawn.sheet(index))}</div>`;
  }

  /** Hands the drawing of the panel to the person as one SVG file. */
  readonly save = (): void => {
    const drawn = drawing(this.schedule, this.kind, this.#panel, IN_A_FILE);
    if (drawn.sheets === 0) return;
    const ending = this.kind === 'oneLine' ? '-one-line.svg' : '-branches.svg';
    const panel = inFileName(this.#panel ?? '');
    const name = panel === '' ? fileName(this.schedule, ending) : panel + ending;
    saveFile({ name, text: pictureText(drawn.sheet(0), { standalone: true }) }, 'image/svg+xml');
  };

  /** What is drawn: the panel of the page, else the one chosen here, else the first of several. */
  get #panel(): PanelChoice {
    if (this.only !== undefined) return this.only;
    if (this.#panels.length < 2) return undefined;
    return this.chosen === undefined ? this.#panels[0] : this.chosen.panel;
  }

  #panelChoice(): TemplateResult | typeof nothing {
    const { words } = this;
    if (this.only !== undefined || this.#panels.length < 2) return nothing;
    const choices: readonly PanelChoice[] = [...this.#panels, null];
    const choose = ({ currentTarget }: Event) => {
      this.chosen = { panel: choices[(currentTarget as HTMLSelectElement).selectedIndex] };
    };
    return html`<label>${words.say('Panel')} <select name="panel" @change=${choose}>${choices.map((panel) =>
      html`<option ?selected=${panel === this.#panel}>${panel ?? words.say('In no panel')}</option>`)}</select></label>`;
  }

  #pager(sheets: number): TemplateResult | typeof nothing {
    const { words, index } = this;
    if (sheets < 2) return nothing;
    const go = (by: number) => () => { this.index = index + by; };
    // The focus stays on a button that has come to its end.
    const button = (name: string, text: string, by: number) => {
      const isThere = index + by >= 0 && index + by < sheets;
      return html`<button type="button" class="bordered" name=${name} aria-disabled=${isThere ? 'false' : 'true'} @click=${isThere ? go(by) : nothing}>${text}</button>`;
    };
    return html`<span class="pager" role="group" aria-label=${words.say('Sheets of the drawing')}>${button('previous', words.say('Previous sheet'), -1)}
      <span role="status">${words.say('Sheet {sheet} of {sheets}', { sheet: index + 1, sheets })}</span>
      ${button('next', words.say('Next sheet'), 1)}</span>`;
  }

  #built(shape: Shape): SVGElement {
    const svg = buildShape(shape);
    // On the page a unit is a pixel; on paper four are a millimetre.
    const [, , width, height] = svg.getAttribute('viewBox')!.split(' ');
    svg.setAttribute('width', width!);
    svg.setAttribute('height', height!);
    return svg;
  }
}
