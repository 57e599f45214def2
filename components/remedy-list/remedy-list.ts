import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { Finding } from '../../src/findings/finding.ts';
import { findingName } from '../../src/findings/finding-name.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { triedRemedies, type TriedRemedy } from '../../src/rework/remedies.ts';
import { GoToEvent } from '../events/index.ts';
import { controls } from '../look/index.ts';
import { whenIdle } from '../look/when-idle.ts';

/** What would help is tried after this much at the latest [ms]. */
const LATEST_MILLISECONDS = 500;

/** What was tried already, as long as nothing changes, in whichever list: by the name of the finding. */
const tried = new WeakMap<LoadSchedule, { readonly revision: number; readonly known: Known }>();
type Known = Map<string, readonly TriedRemedy[]>;

function knownOf(schedule: LoadSchedule, revision: number): Known {
  const before = tried.get(schedule);
  if (before?.revision === revision) return before.known;
  const known: Known = new Map();
  tried.set(schedule, { revision, known });
  return known;
}

/** What would put a finding right, each a press of a button and one action; it is tried while nothing else is done. */
export class RemedyList extends LitElement {
  static override styles = [controls, css`
    :host { display: flex; flex-wrap: wrap; gap: 4px 8px; align-items: baseline; }
    button { min-block-size: 28px; text-align: start; white-space: normal; }
  `];
  static override properties = {
    schedule: { attribute: false }, finding: { attribute: false }, revision: { attribute: false },
    asked: { type: Boolean }, remedies: { state: true },
  };

  declare schedule: LoadSchedule;
  declare finding: Finding;
  /** Changes whenever the schedule, or its language, did. */
  declare revision: number;
  /** A person asked for it, and is told when there is nothing, and takes the first with the focus. */
  declare asked: boolean;
  /** What holds, once it was tried. */
  declare protected remedies: readonly TriedRemedy[] | undefined;

  constructor() {
    super();
    this.asked = false;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('schedule') && !changed.has('finding') && !changed.has('revision')) return;
    const { schedule, finding, revision } = this;
    const known = knownOf(schedule, revision);
    const show = (remedies: readonly TriedRemedy[]) => {
      this.remedies = remedies;
      // Who has gone on to something else meanwhile stays there.
      if (this.asked && this.#isLookedAt) void this.updateComplete.then(() => { this.focus(); });
    };
    this.remedies = undefined;
    const before = known.get(findingName(finding));
    if (before !== undefined) show(before);
    else whenIdle(() => {
      // Meanwhile it may be about another, or gone.
      if (!this.isConnected || finding !== this.finding || revision !== this.revision) return;
      const found = triedRemedies(schedule, finding);
      known.set(findingName(finding), found);
      show(found);
    }, LATEST_MILLISECONDS);
  }

  get #isLookedAt(): boolean {
    return (this.getRootNode() as ShadowRoot).activeElement !== null;
  }

  /** Gives the first remedy the focus, if there is one. */
  override focus(): void {
    this.renderRoot.querySelector('button')?.focus();
  }

  override render(): TemplateResult | typeof nothing {
    const { remedies, schedule: { words } } = this;
    if (remedies === undefined) return nothing;
    if (remedies.length === 0) {
      return this.asked ? html`<span class="quiet">${words.say('Nothing that was tried puts it right by itself without something else coming.')}</span>` : nothing;
    }
    return html`<span class="quiet">${words.say('Mend it:')}</span>${remedies.map((remedy) =>
      html`<button type="button" class="bordered" data-remedy @click=${() => { this.#carryOut(remedy); }}>${remedy.label}</button>`)}`;
  }

  #carryOut({ label, changes }: TriedRemedy): void {
    const { schedule, finding: { sheet, id, key } } = this;
    schedule.act(label, changes);
    this.dispatchEvent(new GoToEvent({ sheet, id, key }));
  }
}
