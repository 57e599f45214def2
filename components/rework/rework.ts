import { html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { onTrial, triedOn, type TriedChanges } from '../../src/report/changes/index.ts';
import { GoToEvent } from '../events/index.ts';
import { controls, statusMarkStyles } from '../look/index.ts';
import type { JobCommand } from '../schedule-toolbar/commands.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import type { ChosenRows, Job, JobHost, JobPlan } from './job.ts';
import { JOB_WORDS, JOBS_OF } from './job-sheets.ts';
import { JOBS } from './jobs.ts';
import { styles } from './rework.styles.ts';
import { triedChanges } from './tried-changes.ts';

/** What the area was opened for. */
export interface AskedJob {
  readonly job: JobCommand;
  readonly rows: ChosenRows;
}

/**
 * Jobs on chosen rows that change many others with them. What a job comes to is tried on a copy and shown, findings
 * before and after among it; then it is carried out as one action.
 */
export class Rework extends WorkArea implements JobHost {
  static override styles = [controls, statusMarkStyles, workAreaStyles, styles];
  static override properties: PropertyDeclarations = {
    asked: { attribute: false }, chosen: { state: true }, all: { state: true },
  };

  declare asked: AskedJob;
  /** The job that is shown. */
  declare protected chosen: JobCommand;
  /** Whether everything that changes is listed. */
  declare protected all: boolean;
  #job: Job | undefined;
  #plan: JobPlan | undefined;
  /** Place of the field that had the focus before what is shown was worked out; -1 for none. */
  #focused = -1;
  #tried: { readonly changes: TriedChanges; readonly more: TemplateResult | undefined } | undefined;

  constructor() {
    super();
    this.all = false;
  }

  get rows(): ChosenRows {
    const { sheet, ids } = this.asked.rows;
    return { sheet, ids: ids.filter((id) => this.schedule.document.row(sheet, id) !== undefined) };
  }

  /** While it is not shown it stays as it was; whoever opens it asks anew. */
  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    return this.active || changed.has('active');
  }

  /** What may take the focus, from the first field on. */
  get #fields(): HTMLElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLElement>('.body :is(button, input, select, summary), footer button')];
  }

  protected override willUpdate(changed: PropertyValues): void {
    const { activeElement } = this.renderRoot as ShadowRoot;
    this.#focused = activeElement === null ? -1 : this.#fields.indexOf(activeElement as HTMLElement);
    if (changed.has('asked')) this.chosen = this.asked.job;
    if (!this.active) return;
    if (changed.has('asked') || changed.has('chosen') || changed.has('schedule')) this.#job = JOBS[this.chosen](this);
    const plan = this.#plan = this.#job!.plan();
    const { schedule } = this;
    this.#tried = plan.changes.length === 0 ? undefined : onTrial(schedule, plan.changes, (trial) =>
      ({ changes: triedOn(schedule, trial), more: plan.more?.(trial) }));
  }

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    if (changed.has('active') && this.active) this.renderRoot.querySelector<HTMLElement>('[data-first]')?.focus();
    // A field that had it may be gone by what was chosen: what stands in its place goes on.
    else if (this.active && this.#focused >= 0 && (this.renderRoot as ShadowRoot).activeElement === null) {
      this.#fields[Math.min(this.#focused, this.#fields.length - 1)]?.focus();
    }
  }

  protected get heading(): string {
    return this.words.say(JOB_WORDS[this.chosen].title);
  }

  protected get about(): string {
    return this.#job!.about;
  }

  protected body(): TemplateResult {
    const { words } = this;
    const { problems, sum, note = [], list } = this.#plan!;
    const offered = JOBS_OF[this.rows.sheet] ?? [];
    return html`${offered.length < 2 ? nothing : html`<div class="choice jobs" role="group" aria-label=${words.say('Jobs on the selected rows')}>${offered.map((name) =>
      html`<button type="button" data-job=${name} aria-pressed=${name === this.chosen} @click=${() => { this.chosen = name; }}>${words.say(JOB_WORDS[name].title)}</button>`)}</div>`}
      <div class="options">${this.#job!.choices()}</div>
      <div class="outcome" role="status">${problems.length > 0
        ? html`<ul class="problems">${problems.map((problem) => html`<li class="spoken">${problem}</li>`)}</ul>`
        : html`<p class="sum spoken">${this.#tried === undefined ? words.say('Nothing to change') : sum}</p>
          ${note.map((each) => html`<p class="quiet spoken">${each}</p>`)}`}</div>
      ${list}${this.#tried?.more}${this.#tried === undefined ? nothing : triedChanges(this.#tried.changes, words, { open: this.all, onToggle: this.#onAll })}`;
  }

  protected foot(): TemplateResult {
    return html`<span class="quiet spoken">${this.words.say('Nothing is changed before you say so; Undo takes it back in one step.')}</span>
      <button type="button" class="primary" data-do="rework" aria-disabled=${this.#tried === undefined} @click=${this.#carryOut}>${this.words.say('Carry it out')}</button>`;
  }

  readonly #onAll = (event: Event): void => { this.all = (event.currentTarget as HTMLDetailsElement).open; };

  readonly #carryOut = (): void => {
    // It takes the focus while there is nothing to carry out, so that Tab from the last field does not leave the job.
    if (this.#tried === undefined) return;
    const { label, changes, place } = this.#plan!;
    this.schedule.act(label, changes);
    if (place !== undefined) this.dispatchEvent(new GoToEvent(place));
  };
}
