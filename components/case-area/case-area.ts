import { css, html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import type { PanelChoice } from '../../src/engine/index.ts';
import { message } from '../../src/words/index.ts';
import { controls, UNFETCHED } from '../look/index.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import type { CasePlace } from './case-place.ts';

const VIEWS = {
  compare: message('Comparison'), factors: message('Factors'), matters: message('What matters'),
} as const;
export type CaseView = keyof typeof VIEWS;

/** The cases: which factors they give groups, how everything is loaded in each of them, and what matters for that. */
export class CaseArea extends WorkArea {
  static override styles = [controls, workAreaStyles, css`
    .views { margin-block: 12px 4px; }
    .problems { color: var(--elv-over); }
  `];
  static override properties: PropertyDeclarations = {
    readonly: { type: Boolean }, only: { attribute: false }, view: { state: true }, chosen: { state: true },
    failed: { state: true },
  };

  declare readonly: boolean;
  /** The panel that is looked at. */
  declare only: PanelChoice;
  declare protected view: CaseView | undefined;
  /** What is looked at closely; the worst of all until a person chooses. */
  declare protected chosen: CasePlace | undefined;
  /** What matters could not be fetched. */
  declare protected failed: boolean;

  constructor() {
    super();
    this.readonly = false;
    this.failed = false;
  }

  /** While it is not shown it stays as it was; whoever opens it sees what is by then. */
  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    return this.active || changed.has('active');
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('schedule')) [this.view, this.chosen] = [undefined, undefined];
    // Whoever has no cases yet begins with them.
    this.view ??= this.schedule.cases.cases.length === 0 ? 'factors' : 'compare';
  }

  protected get heading(): string {
    return this.words.say('Cases');
  }

  protected get about(): string {
    return this.words.say(
      'What happens when it all comes together: the share of each group of loads that is on in each situation, and what that asks of supplies, ways, feeds and runs.'
    );
  }

  protected body(): TemplateResult {
    const { words, schedule, revision, readonly, only } = this;
    const choose = (view: CaseView) => html`<button type="button" data-view=${view} aria-pressed=${view === this.view}
      @click=${() => { this.#show(view); }}>${words.say(VIEWS[view])}</button>`;
    return html`<div class="choice views" role="group" aria-label=${words.say('Show')}>${choose('compare')}${choose('factors')}${choose('matters')}</div>
      ${this.failed ? html`<p class="problems" role="alert">${words.say(UNFETCHED)}</p>` : nothing}
      ${this.view === 'factors' ? html`<elv-factor-matrix .schedule=${schedule} .revision=${revision} .words=${words} ?readonly=${readonly} .only=${only}
          .look=${this.#look}></elv-factor-matrix>`
        : this.view === 'compare' ? html`<elv-case-comparison .schedule=${schedule} .revision=${revision} .words=${words} .only=${only}
          .look=${this.#look}></elv-case-comparison>`
        : html`<elv-what-matters .schedule=${schedule} .revision=${revision} .words=${words} ?readonly=${readonly} .only=${only}
          .chosen=${this.chosen} .look=${this.#look}></elv-what-matters>`}`;
  }

  protected foot(): TemplateResult {
    const { words } = this;
    return html`<span class="quiet spoken">${words.say(
      'By the demand of each case alone: voltages, short circuits and everything else stand with the findings. Bus branches carry the same nodes in every case.'
    )}</span>`;
  }

  /** Looks closely at something in one case. */
  readonly #look = (chosen: CasePlace): void => {
    this.chosen = chosen;
    this.#show('matters');
  };

  #show(view: CaseView): void {
    this.view = view;
    if (view !== 'matters') return;
    import('./what-matters.define.ts').then(() => { this.failed = false; }, (error: unknown) => {
      this.failed = true;
      reportError(error);
    });
  }
}
