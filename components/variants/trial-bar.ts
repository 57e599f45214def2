import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Words } from '../../src/words/index.ts';
import { CommandEvent, TryEvent } from '../events/index.ts';
import { controls, markCount, markShape, statusMarkStyles } from '../look/index.ts';
import type { Trial } from './trial.ts';

/** Says above the rows that what they show is tried out, what it does to the findings, and what can be done with it. */
export class TrialBar extends LitElement {
  static override styles = [controls, statusMarkStyles, css`
    .bar {
      display: flex;
      flex-wrap: wrap;
      align-items: center;
      gap: 4px 12px;
      min-block-size: 36px;
      padding: 3px 6px 3px 12px;
      border-block: 2px solid var(--elv-accent);
      background: color-mix(in srgb, var(--elv-accent) 9%, var(--elv-surface-raised));
    }
    label { display: inline-flex; align-items: center; gap: 0.5em; font-weight: 600; }
    input { inline-size: 12rem; max-inline-size: 60vi; min-block-size: 28px; padding: 2px 6px; border: 1px solid var(--elv-line-strong); border-radius: var(--elv-radius); background: var(--elv-surface-raised); color: var(--elv-ink); font-weight: 400; }
    .problem { color: var(--elv-over); }
    .counts { display: inline-flex; flex-wrap: wrap; gap: 2px 12px; margin: 0; padding: 0; list-style: none; }
    .counts li { display: inline-flex; align-items: center; gap: 0.35em; white-space: nowrap; }
    .offers { display: inline-flex; flex-wrap: wrap; gap: 2px 4px; margin-inline-start: auto; }
    .primary { background: var(--elv-accent); color: var(--elv-surface-raised); font-weight: 600; }
    .primary:hover:not(:disabled) { background: color-mix(in srgb, var(--elv-accent) 86%, var(--elv-ink)); }
    .primary:disabled { background: none; border-color: var(--elv-line); font-weight: 400; }
  `];
  static override properties = {
    trial: { attribute: false }, schedule: { attribute: false }, revision: { attribute: false },
    words: { attribute: false }, settle: { attribute: false }, isTaken: { state: true },
  };

  declare trial: Trial;
  /** The schedule beside which it is tried out. */
  declare schedule: LoadSchedule;
  /** Changes whenever one of both did. */
  declare revision: number;
  declare words: Words;
  /** Takes over what is being typed. */
  declare settle: () => void;
  /** Whether the name that stands in the field cannot be given. */
  declare protected isTaken: boolean;

  override render(): TemplateResult {
    const { trial, words } = this;
    const button = (name: string, title: string, press: () => void, disabled = false) => html`<button type="button" data-do=${name}
      class=${name === 'takeOver' ? 'primary' : 'bordered'} ?disabled=${disabled} @click=${() => { this.settle(); press(); }}>${title}</button>`;
    return html`<div class="bar" role="region" aria-label=${words.say('Trying out')}>
      <label>${words.say('Trying out')}<input .value=${trial.name} aria-invalid=${this.isTaken} @change=${this.#onName}></label>
      <span class="spoken ${this.isTaken ? 'problem' : 'quiet'}" role="status">${this.isTaken
        ? words.say('Another variant has this name, or there is none: write another one.')
        : words.say('Nothing of it counts before you take it over; it is kept as you go.')}</span>
      ${this.#counts()}
      <span class="offers">${button('compare', words.say('Before and after'), this.#compare, trial.isEmpty)}
        ${button('takeOver', words.say('Take over'), this.#takeOver, trial.isEmpty)}
        ${button('leave', words.say('Leave'), () => { this.dispatchEvent(new TryEvent()); })}
        ${button('drop', words.say('Drop'), this.#drop)}</span>
    </div>`;
  }

  /** Findings that nobody accepted, before and after. */
  #counts(): TemplateResult {
    const { trial, schedule, words } = this;
    const count = ({ findings }: LoadSchedule, severity: 'over' | 'near' | 'incomplete') =>
      findings.filter((each) => each.severity === severity && each.accepted === undefined).length;
    return html`<ul class="counts" aria-label=${words.say('Findings before and after')}>${(['over', 'near', 'incomplete'] as const).map((severity) => {
      const [before, after] = [count(schedule, severity), count(trial.schedule, severity)];
      return html`<li data-count=${severity}>${markShape(severity)} ${before === after ? nothing : html`${before} → `}${markCount(severity, after, words)}</li>`;
    })}</ul>`;
  }

  readonly #onName = (event: Event): void => {
    this.isTaken = !this.trial.call((event.currentTarget as HTMLInputElement).value);
    this.requestUpdate();
  };

  readonly #compare = (): void => { this.dispatchEvent(new CommandEvent('variants')); };

  readonly #takeOver = (): void => {
    // What has to be decided first is decided where both are compared.
    if (!this.trial.takeOver()) this.#compare();
  };

  readonly #drop = (): void => {
    this.trial.drop();
    this.dispatchEvent(new TryEvent());
  };
}
