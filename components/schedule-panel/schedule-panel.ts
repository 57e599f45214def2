import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { SEVERITIES, type Finding, type Severity } from '../../src/findings/finding.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { controls, loadingBarStyles, MARK_WORDS, markShape, statusMarkStyles } from '../look/index.ts';
import { findingGroup, findingListStyles } from './finding-list.ts';
import { gaugeLine, gaugeLineStyles } from './gauge-line.ts';
import { gauges, tightestOutputs, type Gauge } from './gauges.ts';
import { styles } from './schedule-panel.styles.ts';

/** Outputs listed under «least headroom». */
const TIGHTEST = 8;
/** Findings of one severity listed at first, and with each press for more. */
const FINDINGS_AT_FIRST = 40;
const FINDINGS_MORE = 100;

/** What the schedule comes to at a glance: how full everything is, and everything that was found. */
export class SchedulePanel extends LitElement {
  static override styles = [controls, statusMarkStyles, loadingBarStyles, gaugeLineStyles, findingListStyles, styles];
  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, locale: { attribute: false },
    shown: { state: true },
  };

  declare schedule: LoadSchedule | undefined;
  /** Changes whenever the schedule did. */
  declare revision: number;
  /** Language tag by whose custom figures are written. */
  declare locale: string;
  /** Findings listed, by severity. */
  declare protected shown: Readonly<Partial<Record<Severity, number>>>;

  constructor() {
    super();
    this.locale = 'en';
    this.shown = {};
  }

  override render(): TemplateResult {
    const { schedule, locale } = this;
    if (schedule === undefined) return html``;
    const findings = bySeverity(schedule.findings);
    return html`${this.#summary(findings)}
      <div class="columns">
        <div class="column">
          ${section('Supplies', gauges(schedule, 'supplies', locale), 'No supplies yet.')}
          ${section('Bus branches', gauges(schedule, 'branches', locale), 'No bus branches yet.')}
          ${section('Outputs with the least headroom', tightestOutputs(schedule, TIGHTEST, locale), 'No outputs with a rating yet.')}
          ${section('Feeds', gauges(schedule, 'feeds', locale), 'No feeds yet.')}
        </div>
        <div class="column">
          <h3>Findings</h3>
          ${SEVERITIES.map((severity) => this.#group(severity, findings[severity]))}
          ${schedule.findings.length === 0 ? html`<p class="quiet">Nothing was found.</p>` : nothing}
        </div>
      </div>`;
  }

  #group(severity: Severity, findings: readonly Finding[]): TemplateResult | typeof nothing {
    if (findings.length === 0) return nothing;
    const shown = this.shown[severity] ?? FINDINGS_AT_FIRST;
    return findingGroup(severity, findings, shown, () => {
      this.shown = { ...this.shown, [severity]: shown + FINDINGS_MORE };
    });
  }

  #summary(findings: Readonly<Record<Severity, readonly Finding[]>>): TemplateResult {
    return html`<nav class="summary" aria-label="Number of findings">${SEVERITIES.map((severity) => {
      const { length } = findings[severity];
      const word = severity === 'note' && length !== 1 ? 'notes' : MARK_WORDS[severity];
      return html`<button type="button" class=${length === 0 ? 'none' : severity} ?disabled=${length === 0}
        data-severity=${severity} @click=${() => this.#jump(severity)}>${markShape(severity)}<b>${length}</b> ${word}</button>`;
    })}</nav>`;
  }

  #jump(severity: Severity): void {
    const group = this.renderRoot.querySelector<HTMLDetailsElement>(`#findings-${severity}`);
    if (group === null) return;
    group.open = true;
    group.querySelector('summary')?.focus({ preventScroll: true });
    const bar = this.renderRoot.querySelector('.summary')!.getBoundingClientRect();
    this.scrollTop += group.getBoundingClientRect().top - bar.bottom;
  }
}

function bySeverity(findings: readonly Finding[]): Record<Severity, Finding[]> {
  const groups: Record<Severity, Finding[]> = { over: [], near: [], incomplete: [], note: [] };
  for (const finding of findings) groups[finding.severity].push(finding);
  return groups;
}

function section(title: string, lines: readonly Gauge[], empty: string): TemplateResult {
  return html`<section><h3>${title}</h3>${lines.length === 0 ? html`<p class="quiet">${empty}</p>`
    : html`<ul>${lines.map(gaugeLine)}</ul>`}</section>`;
}
