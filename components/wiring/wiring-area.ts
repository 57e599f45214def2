import { css, html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { panelView } from '../../src/report/panel-view.ts';
import { cablesSection, insideSection, spareSection, wiringSection } from '../../src/report/model/wiring-sections.ts';
import type { ReportSection } from '../../src/report/model/report.ts';
import { leftOutSentence, wiringCsv, wiringList, type WiringListName } from '../../src/report/wiring/index.ts';
import {
  isDisturbed, LAYOUT_PARTS, layOutTerminals, layoutChanges, type Layout, type LayoutPart, type TerminalEdit,
} from '../../src/terminals/index.ts';
import type { PanelChoice } from '../../src/engine/panel-of.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import {
  columnOf, formatCell, titleWithUnit, type Cells, type CellValue,
} from '../../src/schedule/index.ts';
import { message } from '../../src/words/index.ts';
import { GoToEvent } from '../events/index.ts';
import { fileName, saveFile } from '../load-schedule/files.ts';
import { controls } from '../look/index.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { railsStyles, RailsView } from './rails-view.ts';
import { reportTables } from './report-tables.ts';

/** What the area shows; lists are printed too. */
const VIEWS = {
  layOut: message('Lay out'), progress: message('Progress'), wiring: message('Wiring list'), inside: message('Conductors inside'),
  cables: message('Cable schedule'), spare: message('Spare ways'), rails: message('Mounting rails'),
} as const;
type View = keyof typeof VIEWS;
type ListView = Exclude<View, 'layOut' | 'progress' | 'rails'>;

const SECTIONS: Readonly<Record<ListView, (schedule: LoadSchedule) => ReportSection | undefined>> = {
  wiring: wiringSection, inside: insideSection, cables: cablesSection, spare: spareSection,
};

/** The parts of a layout that a person takes or leaves. */
const PARTS: Readonly<Record<Exclude<LayoutPart, 'reused'>, string>> = {
  came: message('New terminals'), changed: message('Terminals that change'), gone: message('Terminals that become spare'),
};

/** Columns by which a terminal is told in the preview. */
const TOLD = ['terminal', 'potential', 'inside', 'outside', 'core', 'size', 'bridge'] as const;
/** Rows of a part that are shown before a person asks for all. */
const LISTED = 100;

/** What a cell of the preview holds: a text, or what it was and becomes. */
type CellText = string | TemplateResult;

/** Lays the terminals of the schedule out, with a preview, and shows the lists that a panel is wired from. */
export class WiringArea extends WorkArea {
  static override styles = [controls, workAreaStyles, railsStyles, css`
    .scroll { overflow-x: auto; scrollbar-width: thin; }
    h3 label { display: inline-flex; align-items: center; gap: 0.4em; }
    td { overflow-wrap: normal; }
    .before { color: var(--elv-ink-default); text-decoration: line-through; }
    .state { font-weight: 600; }
  `];
  static override properties: PropertyDeclarations = {
    readonly: { type: Boolean }, only: { attribute: false }, view: { state: true }, useSpares: { state: true },
    left: { state: true }, all: { state: true }, done: { state: true },
  };

  declare readonly: boolean;
  /** The panel that the lists are of; laying out is for all panels. */
  declare only: PanelChoice;
  declare protected view: View;
  declare protected useSpares: boolean;
  /** Parts of the layout that are not taken. */
  declare protected left: ReadonlySet<LayoutPart>;
  /** Whether long lists are shown whole. */
  declare protected all: boolean;
  /** What was done last. */
  declare protected done: string;
  #layout: Layout | undefined;
  readonly #rails = new RailsView(this);

  constructor() {
    super();
    this.readonly = this.useSpares = this.all = false;
    this.view = 'layOut';
    this.left = new Set();
    this.done = '';
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!this.active) return;
    if (['schedule', 'revision', 'active', 'useSpares'].some((key) => changed.has(key))) {
      this.#layout = layOutTerminals(this.schedule.document, this.schedule.figures, { useSpares: this.useSpares });
    }
  }

  protected get heading(): string {
    return this.words.say('Wiring');
  }

  protected get about(): string {
    return this.words.say('Lays out terminals for every core of feeds, outputs, runs and branches, and lists what is wired to what.');
  }

  protected body(): TemplateResult {
    const { words } = this;
    return html`<div class="options"><div class="choice" role="group" aria-label=${words.say('Show')}>
        ${(Object.keys(VIEWS) as View[]).map((view) => html`<button type="button" data-view=${view} aria-pressed=${view === this.view}
          @click=${() => { this.view = view; }}>${words.say(VIEWS[view])}</button>`)}</div></div>
      ${this.#view()}`;
  }

  protected foot(): TemplateResult {
    const { words } = this;
    if (this.view === 'layOut') {
      return html`<span class="quiet spoken" role="status">${this.done === '' ? words.say('One action, which undo takes back. Numbers of terminals that stand never change.') : this.done}</span>
        <button type="button" class="primary" data-do="layOut" ?disabled=${this.readonly || this.#count() === 0} @click=${this.#layOut}>${words.say('Lay out terminals')}</button>`;
    }
    if (this.view === 'progress') {
      return html`<span class="quiet spoken">${words.say('Live parts: isolate and prove dead before wiring; mains work is for licensed electricians.')}</span>`;
    }
    if (this.view === 'rails') return this.#rails.foot();
    const save = (name: WiringListName, title: string) => html`<button type="button" class="bordered" data-list=${name} @click=${() => { this.#save(name); }}>${title}</button>`;
    return html`<span class="quiet spoken">${words.say('What is saved holds all panels. Live parts: isolate and prove dead before wiring; mains work is for licensed electricians.')}</span>
      ${this.view === 'spare' ? nothing : save(this.view, words.say('Save as CSV'))}${save('labels', words.say('Labels as CSV'))}`;
  }

  /** How many terminals what is taken concerns. */
  #count(): number {
    const layout = this.#layout;
    if (layout === undefined) return 0;
    return LAYOUT_PARTS.filter((part) => this.#takes(part))
      .reduce((sum, part) => sum + layout[part].length, 0);
  }

  /** Spare terminals that are used again are new ones for who takes or leaves them. */
  #takes(part: LayoutPart): boolean {
    return !this.left.has(part === 'reused' ? 'came' : part);
  }

  #preview(): TemplateResult {
    const { words } = this;
    const { came, changed, gone, reused, kept, leftOut } = this.#layout!;
    const spares = this.schedule.rows('terminals').length > 0;
    const ticked = [...changed, ...gone, ...reused].filter((edit) =>
      isDisturbed(this.#cells(edit.id), this.#after(edit))).length;
    const isWhole = came.length + changed.length + gone.length + reused.length === 0;
    return html`
      ${spares ? html`<div class="options"><label><input type="checkbox" name="spares" .checked=${this.useSpares} @change=${this.#onSpares}> ${words.say('Use spare terminals first')}</label></div>` : nothing}
      ${leftOut.map((each) => html`<p class="spoken">${leftOutSentence(this.schedule, each)}</p>`)}
      ${kept + came.length === 0 && isWhole ? html`<p class="spoken">${words.say('There is nothing to wire yet: no feed, output, run or branch.')}</p>`
        : html`<p class="sum spoken">${isWhole ? words.say('{kept, plural, one {# terminal stands} other {# terminals stand}} as asked for; nothing is to be laid out.', { kept })
          : kept === 0 ? nothing : words.say('{kept, plural, one {# terminal stands} other {# terminals stand}} as asked for.', { kept })}</p>`}
      ${ticked === 0 ? nothing : html`<p class="spoken" data-ticked>${words.say('{n, plural, one {# terminal that is ticked} other {# terminals that are ticked}} would join something else or nothing: the ticks stay, and are found as made for another connection.', { n: ticked })}</p>`}
      ${this.#part('came', [...came, ...reused.map((edit) => this.#after(edit))].map((cells) => TOLD.map((key) => this.#text(key, cells[key]))))}
      ${this.#part('changed', changed.map((edit) => this.#changes(edit)))}
      ${this.#part('gone', gone.map(({ id }) => TOLD.map((key) => this.#text(key, this.#cells(id)[key]))))}`;
  }

  #part(part: keyof typeof PARTS, rows: readonly (readonly CellText[])[]): TemplateResult | typeof nothing {
    const { words } = this;
    if (rows.length === 0) return nothing;
    const toggle = () => {
      const left = new Set(this.left);
      if (!left.delete(part)) left.add(part);
      this.left = left;
    };
    const shown = this.all ? rows : rows.slice(0, LISTED);
    return html`<h3><label><input type="checkbox" name=${part} .checked=${!this.left.has(part)} @change=${toggle}> ${words.say(PARTS[part])} (${rows.length})</label></h3>
      <div class="scroll"><table data-part=${part}><caption class="unseen">${words.say(PARTS[part])}</caption>
        <thead><tr>${TOLD.map((key) => html`<th scope="col">${titleWithUnit(columnOf('terminals', key), words)}</th>`)}</tr></thead>
        <tbody>${shown.map((texts) => html`<tr>${texts.map((text, place) => html`<td class=${place === 0 ? 'nowrap' : ''}>${text}</td>`)}</tr>`)}</tbody></table></div>
      ${shown.length === rows.length ? nothing : html`<button type="button" class="link" @click=${() => { this.all = true; }}>${words.say('Show all {all}', { all: rows.length })}</button>`}`;
  }

  #cells(id: number): Cells {
    return this.schedule.document.row('terminals', id)!.cells;
  }

  #after({ id, cells }: TerminalEdit): Cells {
    return { ...this.#cells(id), ...cells };
  }

  #changes({ id, cells }: TerminalEdit): CellText[] {
    const before = this.#cells(id);
    return TOLD.map((key) => key in cells
      ? html`<span class="before">${this.#text(key, before[key])}</span> ${this.#text(key, cells[key])}` : this.#text(key, before[key]));
  }

  #text(key: string, value: CellValue | undefined): string {
    return formatCell(columnOf('terminals', key), value ?? null, this.words, 'show');
  }

  #view(): TemplateResult {
    switch (this.view) {
      case 'layOut': return this.#preview();
      case 'progress': return this.#progress();
      case 'rails': return this.#rails.body();
      default: return this.#list(this.view);
    }
  }

  #list(view: ListView): TemplateResult {
    const section = SECTIONS[view](panelView(this.schedule, this.only));
    return section === undefined ? this.#noTerminals() : reportTables(section);
  }

  #progress(): TemplateResult {
    return this.schedule.rows('terminals').length === 0 ? this.#noTerminals()
      : html`<elv-wiring-progress .schedule=${this.schedule} .revision=${this.revision} .words=${this.words} .only=${this.only}
        ?readonly=${this.readonly}></elv-wiring-progress>`;
  }

  #noTerminals(): TemplateResult {
    const { words } = this;
    const go = () => { this.view = 'layOut'; };
    return html`<p class="spoken">${words.say('There are no terminals yet.')} <button type="button" class="link" @click=${go}>${words.say('Lay out terminals')}</button></p>`;
  }

  readonly #onSpares = ({ currentTarget }: Event): void => {
    this.useSpares = (currentTarget as HTMLInputElement).checked;
  };

  readonly #layOut = (): void => {
    const { schedule, words } = this;
    const layout = this.#layout!;
    const taken = new Set(LAYOUT_PARTS.filter((part) => this.#takes(part)));
    const n = this.#count();
    this.done = words.say('{n, plural, one {# terminal} other {# terminals}} laid out.', { n });
    schedule.act(words.say('Laying out terminals'), layoutChanges(schedule.document, layout, taken));
    this.dispatchEvent(new GoToEvent({ sheet: 'terminals', id: schedule.rows('terminals')[0]!.id, key: 'terminal' }));
  };

  #save(name: WiringListName): void {
    const text = wiringCsv(wiringList(this.schedule, name), name === 'labels');
    saveFile({ name: fileName(this.schedule, `-${name}.csv`), text }, 'text/csv;charset=utf-8');
  }
}
