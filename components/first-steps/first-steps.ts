import { html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { isBlank, SCHEMA, SHEET_NAMES } from '../../src/schedule/index.ts';
import { CommandEvent, GoToEvent } from '../events/index.ts';
import { controls, icon, placeBelow, type IconName } from '../look/index.ts';
import { message } from '../../src/words/index.ts';
import { styles } from './first-steps.styles.ts';
import { STEPS, type Step } from './steps.ts';
import type { TypeChoice } from './type-choice.ts';

/** How to begin, each way as good as the others. */
const WAYS = [
  { command: 'begin', icon: 'insertBelow', title: message('New'), about: message('Type the first line') },
  { command: 'open', icon: 'open', title: message('Open'), about: message('A schedule or a list') },
  { command: 'takeoff', icon: 'takeoff', title: message('Paste a list'), about: message('Counts of any shape') },
  { command: 'loadDemo', icon: 'loadTable', title: message('Demo'), about: message('An invented building') },
] as const satisfies readonly { command: string; icon: IconName; title: string; about: string }[];

const TICK = svg`<path d="M4 8.3 7 11.2 12 5"/>`;

/** Leads from counts to what is handed over; what the document holds is ticked. */
export class FirstSteps extends LitElement {
  static override styles = [controls, styles];
  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, demo: { type: Boolean },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule, or its language, did. */
  declare revision: number;
  /** Whether the page names a demo. */
  declare demo: boolean;
  /** Whether a step was open when it was looked at before. */
  #wasOpen = false;

  constructor() {
    super();
    this.demo = false;
  }

  override render(): TemplateResult {
    const { schedule } = this;
    const { words } = schedule;
    const empty = SHEET_NAMES.every((name) => schedule.rows(name).every(isBlank));
    const done = STEPS.map(({ isDone }) => isDone(schedule));
    const next = done.indexOf(false);
    return html`<section aria-label=${words.say('First steps')} class=${empty ? 'empty' : ''}>
      ${empty ? html`<div class="ways">${WAYS.filter(({ command }) => command !== 'loadDemo' || this.demo).map((way) => this.#way(way))}</div>` : nothing}
      <ol>${STEPS.map((step, index) => this.#step(step, index, done[index]!, index === next))}</ol>
      <p class="hint spoken">${next < 0 ? words.say('Every step is done.') : words.say(STEPS[next]!.hint)}</p>
      <button type="button" class="link" popovertarget="general">${words.say('General types')}</button>
      <div popover id="general" class="floating" role="dialog" aria-label=${words.say('General types')} @beforetoggle=${this.#onGeneral}>
        <elv-type-choice .schedule=${schedule} .revision=${this.revision} @close=${() => { this.#general.hidePopover(); }}></elv-type-choice></div>
      <button type="button" class="close" title=${words.say('Put the first steps away; Shift+F1 or Help brings them back')}
        @click=${() => { this.dispatchEvent(new CommandEvent('closeSteps')); }}>${icon('close')}<span class="unseen">${words.say('Close')}</span></button>
    </section>`;
  }

  /** Whoever did the last step needs no more leading; who asks for the steps afterwards may look at them. */
  protected override updated(): void {
    const open = STEPS.some(({ isDone }) => !isDone(this.schedule));
    if (this.#wasOpen && !open) this.dispatchEvent(new CommandEvent('stepsDone'));
    this.#wasOpen = open;
  }

  #way({ command, icon: drawing, title, about }: (typeof WAYS)[number]): TemplateResult {
    const { words } = this.schedule;
    return html`<button type="button" class="bordered" data-way=${command}
      @click=${() => { this.dispatchEvent(new CommandEvent(command)); }}>${icon(drawing)}<span><b>${words.say(title)}</b>
      <span class="quiet">${words.say(about)}</span></span></button>`;
  }

  #step(step: Step, index: number, done: boolean, isNext: boolean): TemplateResult {
    const { words } = this.schedule;
    return html`<li><button type="button" class=${done ? 'done' : ''} aria-current=${isNext ? 'step' : nothing} title=${words.say(step.hint)}
      data-step=${step.place} @click=${() => { this.#go(step); }}>
      <svg class="icon" viewBox="0 0 16 16" aria-hidden="true"><circle cx="8" cy="8" r="7"/>${done ? TICK
        : svg`<text x="8" y="8" dy="0.36em" text-anchor="middle">${index + 1}</text>`}</svg>${words.say(step.title)}
      ${done ? html`<span class="unseen">${words.say('(done)')}</span>` : nothing}</button></li>`;
  }

  #go({ place }: Step): void {
    if (place === 'loadTable') {
      this.dispatchEvent(new CommandEvent('loadTable'));
      return;
    }
    const worst = place === 'findings' ? this.schedule.findings.find(({ accepted }) => accepted === undefined) : undefined;
    const sheet = place === 'findings' ? 'devices' : place;
    this.dispatchEvent(new GoToEvent(worst ?? { sheet, id: -1, key: SCHEMA[sheet].tag }));
  }

  get #general(): HTMLElement {
    return this.renderRoot.querySelector<HTMLElement>('#general')!;
  }

  readonly #onGeneral = (event: ToggleEvent): void => {
    if (event.newState !== 'open') return;
    placeBelow(event);
    void this.#general.querySelector<TypeChoice>('elv-type-choice')!.begin();
  };
}
