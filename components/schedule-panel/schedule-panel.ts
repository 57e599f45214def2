import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { SEVERITIES, STANDINGS, type Finding } from '../../src/findings/finding.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import {
  controls, loadingBarStyles, markCount, markShape, remember, remembered, standingOut, statusMarkStyles, type Mark,
} from '../look/index.ts';
import {
  findingGroup, findingListStyles, GROUP_TITLES, type FindingGroup, type FindingListHost,
} from './finding-list.ts';
import { gaugeLine, gaugeLineStyles } from './gauge-line.ts';
import { sectionGauge, sectionRows, SECTIONS, type GaugeSection } from './gauges.ts';
import type { WhatChanged } from '../what-changed/index.ts';
import { styles } from './schedule-panel.styles.ts';

/** Findings of one group listed at first, and with each press for more. */
const FINDINGS_AT_FIRST = 8;
const FINDINGS_MORE = 100;
const GROUPS: readonly FindingGroup[] = [...SEVERITIES, 'accepted'];
/** Groups that are closed until a person opens them: they ask for nothing. */
const CLOSED: readonly FindingGroup[] = ['note', 'accepted'];
/** Statuses whose number the heading of a section gives. */
const COUNTED = STANDINGS.filter((standing) => standing !== 'ok');

/** Says that what stands beside it narrows the findings. */
const FILTER = html`<svg class="icon filter" viewBox="0 0 16 16" aria-hidden="true"><path d="M2 3h12L9.6 8.4V13l-3.2-1.6v-3z"/></svg>`;

/** What the schedule comes to at a glance: how full everything is, and everything that was found. */
export class SchedulePanel extends LitElement implements FindingListHost {
  static override styles = [controls, statusMarkStyles, loadingBarStyles, gaugeLineStyles, findingListStyles, styles];
  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, readonly: { type: Boolean },
    folded: { type: Boolean, reflect: true }, shown: { state: true }, open: { state: true }, all: { state: true },
    only: { state: true }, accepting: { state: true }, mending: { state: true }, changes: { state: true },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule, or its language, did. */
  declare revision: number;
  declare readonly: boolean;
  /** Whether only a strip is shown: how many findings there are of each severity. */
  declare folded: boolean;
  declare accepting: string;
  declare mending: string;
  /** Findings listed, by group. */
  declare protected shown: Readonly<Partial<Record<FindingGroup, number>>>;
  /** Which sections and groups are open, as far as they have been asked for. */
  declare protected open: Readonly<Record<string, boolean>>;
  /** Sections of which every row is listed. */
  declare protected all: ReadonlySet<string>;
  /** The group to which the findings are narrowed. */
  declare protected only: FindingGroup | undefined;
  /** What the last action did; fetched when the overview is on the screen. */
  declare protected changes: WhatChanged | undefined;

  constructor() {
    super();
    this.readonly = this.folded = false;
    this.accepting = this.mending = '';
    this.shown = this.open = {};
    this.all = new Set();
  }

  protected override firstUpdated(): void {
    import('../acceptance-form/acceptance-form.define.ts').catch(reportError);
    import('../what-changed/index.ts').then(({ WhatChanged }) => { this.changes = new WhatChanged(this); }, reportError);
  }

  /** Opens the list of what the last action did. */
  async showChanges(): Promise<void> {
    await this.changes?.open();
  }

  /** Opens the form in which a finding is accepted; with an empty name closes it. */
  accept(name: string): void {
    const before = this.accepting;
    this.accepting = name;
    if (name === '') void this.updateComplete.then(() => { this.#focusAgain(before); });
  }

  /** Shows what would mend a finding; with an empty name nothing. What tries it is fetched then. */
  mend(name: string): void {
    import('../remedy-list/remedy-list.define.ts').catch(reportError);
    this.mending = name;
  }

  /** The focus goes back to where the form was opened, or on to where the accepted finding is. */
  #focusAgain(name: string): void {
    const buttons = [...this.renderRoot.querySelectorAll<HTMLElement>('.accept')];
    (buttons.find(({ dataset }) => dataset.finding === name)
      ?? this.renderRoot.querySelector<HTMLElement>('#findings-accepted summary'))
      ?.focus({ preventScroll: true });
  }

  override render(): TemplateResult {
    const { schedule } = this;
    const { words } = schedule;
    const findings = inGroups(schedule.findings);
    if (this.folded) return html`${this.#summary(findings)}${this.changes?.announce()}`;
    const groups = GROUPS.filter((group) => findings[group].length > 0 && (this.#only(findings) ?? group) === group);
    return html`${this.#summary(findings)}${this.changes?.render()}
      <div class="columns">
        <div class="column">
          <h3>${this.#only(findings) === undefined ? words.say('Findings')
            : html`${words.say('Findings: {group} only', { group: words.within(GROUP_TITLES[this.only!]) })}
            <button type="button" class="link" @click=${() => { this.only = undefined; }}>${words.say('Show all {n}', { n: schedule.findings.length })}</button>`}</h3>
          ${groups.map((group) => this.#group(group, findings[group]))}
          ${schedule.findings.length === 0 ? html`<p class="quiet">${words.say('Nothing was found.')}</p>` : nothing}
        </div>
        <div class="column">${SECTIONS.map((section) => this.#section(schedule, section))}</div>
      </div>`;
  }

  /** The group to which the findings are narrowed, while there are any of it. */
  #only(findings: Readonly<Record<FindingGroup, readonly Finding[]>>): FindingGroup | undefined {
    return this.only !== undefined && findings[this.only].length > 0 ? this.only : undefined;
  }

  #section(schedule: LoadSchedule, section: GaugeSection): TemplateResult {
    const { words } = schedule;
    const { sheet, most } = section;
    const all = this.all.has(sheet);
    const open = this.#isOpen(sheet, true);
    const { ids, counts } = sectionRows(schedule, section, all);
    const number = [...counts.values()].reduce((sum, each) => sum + each, 0);
    return html`<details class="section" .open=${open} @toggle=${this.#onToggle(sheet, true)}>
      <summary>${words.say(section.title)} <span class="count">${number}</span>
        <span class="counts">${COUNTED.map((mark) => this.#count(mark, counts.get(mark)!))}</span></summary>
      ${!open ? nothing : number === 0 ? html`<p class="quiet">${words.say(section.none)}</p>`
        : html`<ul>${ids.map((id) => gaugeLine(sectionGauge(schedule, section, id), words, this.changes?.note(sheet, id)))}</ul>
          ${number > most ? html`<button type="button" class="link more" aria-expanded=${all} @click=${() => { this.#listAll(sheet, !all); }}>
            ${all ? words.say('The worst {n} only', { n: most }) : words.say(section.all, { n: number })}</button>` : nothing}`}
    </details>`;
  }

  /**
   * How many rows of a section have a status, as shape and number; in words under the pointer and for a screen reader.
   */
  #count(mark: Mark, number: number): TemplateResult | typeof nothing {
    if (number === 0) return nothing;
    const said = markCount(mark, number, this.schedule.words);
    return html`<span class=${mark} title=${said}>${markShape(mark)}${number}<span class="unseen">${said.replace(String(number), '')}, </span></span>`;
  }

  #group(group: FindingGroup, findings: readonly Finding[]): TemplateResult {
    const shown = this.shown[group] ?? FINDINGS_AT_FIRST;
    const [name, otherwise] = [`findings-${group}`, !CLOSED.includes(group)];
    return findingGroup(this, group, findings, {
      open: this.#isOpen(name, otherwise), onToggle: this.#onToggle(name, otherwise),
      shown, more: () => { this.shown = { ...this.shown, [group]: shown + FINDINGS_MORE }; },
    });
  }

  #summary(findings: Readonly<Record<FindingGroup, readonly Finding[]>>): TemplateResult {
    const { words } = this.schedule;
    const groups = GROUPS.filter((group) => group !== 'accepted' || findings.accepted.length > 0);
    return html`<nav class="summary" aria-label=${words.say('Findings by severity')}>${FILTER}${groups.map((severity) => {
      const { length } = findings[severity];
      return html`<button type="button" class=${length === 0 ? 'none' : severity} ?disabled=${length === 0}
        title=${words.say('Show these findings only, or all again')}
        aria-pressed=${length > 0 && this.only === severity} data-severity=${severity}
        @click=${() => this.#choose(severity)}>${markShape(severity)}<span>${this.folded ? html`<b>${length}</b><span class="unseen">${markCount(severity, length, words)}</span>`
          : standingOut(markCount(severity, length, words), String(length))}</span></button>`;
    })}</nav>`;
  }

  #isOpen(name: string, otherwise: boolean): boolean {
    return this.open[name] ?? remembered(`open.${name}`, otherwise);
  }

  #onToggle(name: string, otherwise: boolean): (event: Event) => void {
    return (event) => {
      const { open } = event.currentTarget as HTMLDetailsElement;
      // It is told of too when it opens because it is known to be open.
      if (open === this.#isOpen(name, otherwise)) return;
      this.open = { ...this.open, [name]: open };
      remember(`open.${name}`, open);
    };
  }

  #listAll(sheet: string, all: boolean): void {
    const sheets = new Set(this.all);
    if (all) sheets.add(sheet);
    else sheets.delete(sheet);
    this.all = sheets;
  }

  /** Narrows the findings to a severity and brings them into view, or shows all again. */
  async #choose(severity: FindingGroup): Promise<void> {
    if (this.folded) this.dispatchEvent(new Event('unfold'));
    this.only = this.only === severity && !this.folded ? undefined : severity;
    if (this.only === undefined) return;
    this.open = { ...this.open, [`findings-${severity}`]: true };
    await this.updateComplete;
    const group = this.renderRoot.querySelector<HTMLDetailsElement>(`#findings-${severity}`);
    if (group === null) return;
    group.querySelector('summary')?.focus({ preventScroll: true });
    const heading = group.parentElement!.querySelector('h3')!;
    const bar = this.renderRoot.querySelector('.summary')!;
    // Narrow, it is not the panel that scrolls.
    if (getComputedStyle(this).overflowY === 'visible') heading.scrollIntoView();
    else this.scrollTop += heading.getBoundingClientRect().top - bar.getBoundingClientRect().bottom;
  }
}

function inGroups(findings: readonly Finding[]): Record<FindingGroup, Finding[]> {
  const groups: Record<FindingGroup, Finding[]> = { over: [], near: [], incomplete: [], note: [], accepted: [] };
  for (const finding of findings) groups[finding.accepted === undefined ? finding.severity : 'accepted'].push(finding);
  return groups;
}
