import { html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import {
  limitSentence, noteSentence, readSharing, shareChanges,
  type SharedSheet, type Sharing, type SharingProgress, type ShareRequest,
} from '../../src/allocation/index.ts';
import type { Change } from '../../src/schedule/index.ts';
import { BusyEvent, GroupingEvent, SheetChooseEvent } from '../events/index.ts';
import { controls, loadingBarStyles, statusMarkStyles } from '../look/index.ts';
import { percentField, WorkArea, workAreaStyles } from '../work-area/index.ts';
import { fillLines, KEY_OF, movesOf } from './fill-lines.ts';
import { fillTable, leftOutList, moveList, overNote, verdict } from './preview.ts';
import { styles } from './share-out.styles.ts';
import { SharingRun } from './sharing-run.ts';

/** A wait that is shorter is not mentioned [ms]. */
const SHORT_WAIT = 300;

/**
 * Shares devices out over branches or supplies: works it out beside the page, shows before and after, and carries it
 * out.
 */
export class ShareOut extends WorkArea {
  static override styles = [controls, statusMarkStyles, loadingBarStyles, workAreaStyles, styles];
  static override properties: PropertyDeclarations = {
    request: { state: true }, sharing: { state: true }, failure: { state: true }, progress: { state: true },
    waiting: { state: true },
  };

  declare protected request: Required<ShareRequest>;
  declare protected sharing: Sharing | undefined;
  declare protected failure: string;
  declare protected progress: SharingProgress | undefined;
  /** The search takes long enough to be mentioned. */
  declare protected waiting: boolean;
  #run: SharingRun | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.request = { over: 'branches', wholeRows: false, keepPlaced: true, acrossPanels: false, extension: 0 };
    this.failure = '';
    this.waiting = false;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#end();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!['active', 'request', 'revision', 'schedule'].some((key) => changed.has(key))) return;
    this.#end();
    this.sharing = undefined;
    if (this.active) this.#start();
  }

  protected get heading(): string {
    return this.words.say('Share out');
  }

  protected get about(): string {
    return this.request.over === 'branches'
      ? this.words.say(
        'Nodes of devices over bus branches, up to the limit of each less its reserve, on the least number of them.'
      )
      : this.words.say(
        'Demand of devices over supplies, up to the target of their usable current, each purpose on supplies of its own.'
      );
  }

  protected body(): TemplateResult {
    const { request: { over, wholeRows, keepPlaced, acrossPanels, extension }, sharing, words } = this;
    const choose = (value: SharedSheet, title: string) =>
      html`<button type="button" data-over=${value} aria-pressed=${value === over}
      @click=${() => { this.request = { ...this.request, over: value }; }}>${title}</button>`;
    const check = (key: 'wholeRows' | 'keepPlaced' | 'acrossPanels', checked: boolean, title: string) =>
      html`<label><input type="checkbox" data-option=${key}
      .checked=${checked} @change=${() => { this.request = { ...this.request, [key]: !checked }; }}>${title}</label>`;
    return html`<div class="options">
        <div class="choice" role="group" aria-label=${words.say('Share out over')}>${choose('branches', words.say('Bus branches'))}${choose('supplies', words.say('Supplies'))}</div>
        ${check('keepPlaced', keepPlaced, words.say('What is placed stays'))}${check('wholeRows', wholeRows, words.say('Rows stay whole'))}
        ${this.schedule.rows('enclosures').length < 2 ? nothing : check('acrossPanels', acrossPanels, words.say('Also between panels'))}
        ${percentField('extension', extension, words.say('For extension [%]'), words, (share) => { this.request = { ...this.request, extension: share }; })}
      </div>
      ${sharing === undefined ? nothing : this.#preview(sharing)}
      <div class="verdict" role="status">${this.#verdict()}</div>`;
  }

  protected foot(): TemplateResult {
    const { sharing } = this;
    const changes = sharing === undefined ? [] : this.#changes(sharing);
    const offer = sharing === undefined ? this.words.say('Calculating …')
      : changes.length === 0 ? this.words.say('Nothing to change') : this.#offer(sharing);
    return html`<span class="quiet spoken">${this.words.say('Nothing is changed before you say so; Undo takes it back in one step.')}</span>
      <button type="button" class="primary" data-do="share" ?disabled=${changes.length === 0} @click=${this.#carryOut}>${offer}</button>`;
  }

  #offer({ over, used }: Sharing): string {
    return over === 'branches' ? this.words.say(
      'Share out over {used, plural, one {# branch} other {# branches}}', { used }
    )
      : this.words.say('Share out over {used, plural, one {# supply} other {# supplies}}', { used });
  }

  #verdict(): TemplateResult | typeof nothing {
    const { words } = this;
    if (this.failure !== '') {
      return html`<p class="over spoken">${words.say('It could not be calculated: {failure}. Change what is shared, or reload the page.', { failure: this.failure })}</p>`;
    }
    if (this.sharing !== undefined) {
      return html`<p class="sum spoken">${verdict(this.sharing, words)}</p>
        ${this.sharing.limits.map((limit) => html`<p class="quiet spoken">${limitSentence(this.sharing!.over, limit, words)}</p>`)}
        ${this.sharing.notes.map((note) => html`<p class="quiet spoken">${noteSentence(note, words)}</p>`)}`;
    }
    if (!this.waiting) return nothing;
    const { done = 0, groups = 1 } = this.progress ?? {};
    return html`<p class="waiting"><progress aria-label=${words.say('Part that is calculated')} max=${groups} .value=${done}></progress>
      <button type="button" class="bordered" data-do="stop" @click=${() => { this.#run?.stop(); }}>${words.say('Stop and keep the best so far')}</button></p>`;
  }

  #preview(sharing: Sharing): TemplateResult {
    const moves = movesOf(this.schedule, sharing);
    const lines = fillLines(this.schedule, sharing, moves, this.request.extension);
    return html`<div role="status">${overNote(lines, this.request.extension > 0, this.words)}</div>${leftOutList(sharing, this.words)}
      ${lines.length === 0 ? nothing : fillTable(sharing.over, lines, this.words)}${moveList(moves, this.words)}`;
  }

  #changes(sharing: Sharing): Change[] {
    return shareChanges(this.schedule.document, sharing);
  }

  #start(): void {
    this.failure = '';
    this.progress = undefined;
    this.#timer = setTimeout(() => { this.waiting = true; }, SHORT_WAIT);
    this.dispatchEvent(new BusyEvent('sharing', true));
    this.#run = new SharingRun(readSharing(this.schedule, this.request), {
      progress: (progress) => { this.progress = progress; },
      shared: (sharing) => {
        this.#end();
        this.sharing = sharing;
      },
      failed: (message) => {
        this.#end();
        this.failure = message;
      },
    });
  }

  #end(): void {
    clearTimeout(this.#timer);
    if (this.#run !== undefined) this.dispatchEvent(new BusyEvent('sharing', false));
    this.#run?.drop();
    this.#run = undefined;
    this.waiting = false;
  }

  readonly #carryOut = (): void => {
    const sharing = this.sharing!;
    const { over, used } = sharing;
    const label = over === 'branches' ? this.words.say(
      'Sharing out over {used, plural, one {# branch} other {# branches}}', { used }
    )
      : this.words.say('Sharing out over {used, plural, one {# supply} other {# supplies}}', { used });
    this.schedule.act(label, this.#changes(sharing));
    this.dispatchEvent(new GroupingEvent(KEY_OF[over]));
    this.dispatchEvent(new SheetChooseEvent('devices'));
  };
}
