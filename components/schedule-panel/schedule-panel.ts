import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { SEVERITIES, type Finding, type Severity } from '../../src/findings/finding.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA } from '../../src/schedule/index.ts';
import {
  controls, loadingBarStyles, MARK_WORDS, markShape, remember, remembered, statusMarkStyles, type Mark,
} from '../look/index.ts';
import { findingGroup, findingListStyles, GROUP_TITLES, type FindingGroup, type FindingListHost } from './finding-list.ts';
import { gaugeLine, gaugeLineStyles } from './gauge-line.ts';
import { sectionGauge, sectionRows, SECTIONS, type GaugeSection } from './gauges.ts';
import { styles } from './schedule-panel.styles.ts';
import { ENGLISH, type Words } from '../../src/words/index.ts';

/** Findings of one group listed at first, and with each press for more. */
const FINDINGS_AT_FIRST = 40;
const FINDINGS_MORE = 100;
const GROUPS: readonly FindingGroup[] = [...SEVERITIES, 'accepted'];
/** Groups that are closed until a person opens them: they ask for nothing. */
const CLOSED: readonly FindingGroup[] = ['note', 'accepted'];
/** Statuses whose number the heading of a section gives. */
const COUNTED: readonly Mark[] = ['over', 'near', 'incomplete'];

/** What the schedule comes to at a glance: how full everything is, and everything that was found. */
export class SchedulePanel extends LitElement implements FindingListHost {
  static override styles = [controls, statusMarkStyles, loadingBarStyles, gaugeLineStyles, findingListStyles, styles];
  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, words: { attribute: false }, readonly: { type: Boolean },
    shown: { state: true }, open: { state: true }, all: { state: true }, only: { state: true }, accepting: { state: true },
  };

  declare schedule: LoadSchedule | undefined;
  /** Changes whenever the schedule did. */
  declare revision: number;
  /** Language tag by whose custom figures are written. */
  declare words: Words;
  declare readonly: boolean;
  declare accepting: string;
  /** Findings listed, by group. */
  declare protected shown: Readonly<Partial<Record<FindingGroup, number>>>;
  /** Which sections and groups are open, as far as they have been asked for. */
  declare protected open: Readonly<Record<string, boolean>>;
  /** Sections of which every row is listed. */
  declare protected all: ReadonlySet<string>;
  /** The group to which the findings are narrowed. */
  declare protected only: FindingGroup | undefined;

  constructor() {
    super();
    this.words = ENGLISH;
    this.readonly = false;
    this.accepting = '';
    this.shown = this.open = {};
    this.all = new Set();
  }

  /** Opens the form in which a finding is accepted; with an empty name closes it. */
  accept(name: string): void {
    const before = this.accepting;
    this.accepting = name;
    if (name === '') void this.updateComplete.then(() => { this.#focusAgain(before); });
  }

  /** The focus goes back to where the form was opened, or on to where the accepted finding is. */
  #focusAgain(name: string): void {
    const buttons = [...this.renderRoot.querySelectorAll<HTMLElement>('.accept')];
    (buttons.find(({ dataset }) => dataset.finding === name) ?? this.renderRoot.querySelector<HTMLElement>('#findings-accepted summary'))
      ?.focus({ preventScroll: true });
  }

  override render(): TemplateResult {
    const { schedule } = this;
    if (schedule === undefined) return html``;
    const findings = inGroups(schedule.findings);
    const groups = GROUPS.filter((group) => findings[group].length > 0 && (this.#only(findings) ?? group) === group);
    return html`${this.#summary(findings)}
      <div class="columns">
        <div class="column">${SECTIONS.map((section) => this.#section(schedule, section))}</div>
        <div class="column">
          <h3>Findings${this.#only(findings) === undefined ? nothing : html`: ${GROUP_TITLES[this.only!].toLowerCase()} only
            <button type="button" class="link" @click=${() => { this.only = undefined; }}>Show all ${schedule.findings.length}</button>`}</h3>
          ${groups.map((group) => this.#group(group, findings[group]))}
          ${schedule.findings.length === 0 ? html`<p class="quiet">Nothing was found.</p>` : nothing}
        </div>
      </div>`;
  }

  /** The group to which the findings are narrowed, while there are any of it. */
  #only(findings: Readonly<Record<FindingGroup, readonly Finding[]>>): FindingGroup | undefined {
    return this.only !== undefined && findings[this.only].length > 0 ? this.only : undefined;
  }

  #section(schedule: LoadSchedule, section: GaugeSection): TemplateResult {
    const { sheet, title, none, most } = section;
    const all = this.all.has(sheet);
    const open = this.#isOpen(sheet, true);
    const { ids, counts } = sectionRows(schedule, section, all);
    const number = [...counts.values()].reduce((sum, each) => sum + each, 0);
    return html`<details class="section" .open=${open} @toggle=${this.#onToggle(sheet, true)}>
      <summary>${title} <span class="count">${number}</span>
        <span class="counts">${COUNTED.map((mark) => counts.get(mark) === 0 ? nothing
          : html`<span class=${mark} title="${counts.get(mark)} ${MARK_WORDS[mark]}">${markShape(mark)}${counts.get(mark)}<span class="unseen"> ${MARK_WORDS[mark]}, </span></span>`)}</span></summary>
      ${!open ? nothing : number === 0 ? html`<p class="quiet">${none}</p>`
        : html`<ul>${ids.map((id) => gaugeLine(sectionGauge(schedule, section, id, this.words)))}</ul>
          ${number > most ? html`<button type="button" class="link more" aria-expanded=${all} @click=${() => { this.#listAll(sheet, !all); }}>
            ${all ? `The worst ${most} only` : `All ${number} ${SCHEMA[sheet].title.toLowerCase()}`}</button>` : nothing}`}
    </details>`;
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
    return html`<nav class="summary" aria-label="Findings by severity">${SEVERITIES.map((severity) => {
      const { length } = findings[severity];
      const word = severity === 'note' && length !== 1 ? 'notes' : MARK_WORDS[severity];
      return html`<button type="button" class=${length === 0 ? 'none' : severity} ?disabled=${length === 0} title="Show these findings only, or all again"
        aria-pressed=${length > 0 && this.only === severity} data-severity=${severity}
        @click=${() => this.#choose(severity)}>${markShape(severity)}<b>${length}</b> ${word}</button>`;
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
  async #choose(severity: Severity): Promise<void> {
    this.only = this.only === severity ? undefined : severity;
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
