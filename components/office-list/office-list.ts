import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { railVoltages } from '../../src/exchange/index.ts';
import { compareWithList, readList, type ListRows } from '../../src/exchange/update/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { isBlank } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import type { ElvProblem } from '../load-schedule/events.ts';
import { fetchText } from '../load-schedule/files.ts';
import { controls, icon } from '../look/index.ts';
import { whenIdle } from '../look/when-idle.ts';
import type { OfferedRows, TakeRows } from '../rows-offer/offered-rows.ts';

/** The list is fetched this much later [ms] on a page that is never idle. */
const LATEST_MILLISECONDS = 3000;

/**
 * The list that the office keeps, at an address: fetched while the page is idle, and held against the schedule
 * whenever that changes. One quiet line says how many rows differ; they are shown and taken when a person says so.
 */
export class OfficeList extends LitElement {
  static override styles = [controls, css`
    .line { display: flex; flex-wrap: wrap; align-items: center; gap: 0 8px; min-block-size: 30px; padding: 0 6px 0 12px; border-block-start: 1px solid var(--elv-line); background: var(--elv-surface); }
    .text { min-inline-size: 0; overflow-wrap: anywhere; }
    .away { margin-inline-start: auto; }
  `];
  static override properties = {
    address: { attribute: false }, schedule: { attribute: false }, revision: { attribute: false },
    words: { attribute: false }, read: { state: true }, problems: { state: true }, open: { state: true },
    away: { state: true },
  };

  /** The whole address. */
  declare address: string;
  declare schedule: LoadSchedule;
  /** Changes whenever the schedule did. */
  declare revision: number;
  declare words: Words;
  declare take: TakeRows;
  /** Told when the list cannot be had or read. */
  declare failed: (name: string, problems: readonly ElvProblem[]) => void;
  declare protected read: OfferedRows | undefined;
  /** Why there is no list. */
  declare protected problems: readonly ElvProblem[];
  /** What differs, while it is shown. */
  declare protected open: OfferedRows | undefined;
  /** A person put the notice away, until another list is named. */
  declare protected away: boolean;
  #abort: AbortController | undefined;
  #callOff: (() => void) | undefined;
  /** The lists that differ, and in how many rows. */
  #differing: { readonly lists: readonly ListRows[]; readonly rows: number } = { lists: [], rows: 0 };

  constructor() {
    super();
    this.problems = [];
    this.away = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated && this.read === undefined && this.problems.length === 0) this.#fetchWhenIdle();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('address')) {
      this.read = this.open = undefined;
      this.problems = [];
      this.away = false;
      this.#fetchWhenIdle();
    }
    this.#differing = this.#difference();
    if (this.#differing.rows === 0) this.open = undefined;
  }

  override render(): TemplateResult | typeof nothing {
    const { words, read, away } = this;
    if (away) return nothing;
    if (this.problems.length > 0) {
      return this.#line(words.say('The list of the office, {file}, could not be read: {problem}', {
        file: this.#name, problem: this.problems.map(({ message }) => message).slice(0, 3).join(' '),
      }), 'again', words.say('Try again'), () => { this.#fetchWhenIdle(); });
    }
    const { lists, rows } = this.#differing;
    if (read === undefined || rows === 0) return nothing;
    return html`${this.open !== undefined ? html`<elv-rows-offer updateOnly .offer=${this.open} .schedule=${this.schedule} .revision=${this.revision}
      .words=${words} .take=${this.#take} .cancel=${this.#close}></elv-rows-offer>` : this.#line(
      words.say('{file}, the list of the office, says otherwise in {rows, plural, one {# row} other {# rows}}.', { file: read.name, rows }),
      'show', words.say('Show what differs'), () => { this.open = { ...read, lists }; })}`;
  }

  #line(text: string, offer: string, title: string, act: () => void): TemplateResult {
    const away = this.words.say('Put this notice away');
    return html`<div class="line"><span class="text spoken" role="status">${text}</span>
      <button type="button" class="link" data-offer=${offer} @click=${act}>${title}</button>
      <button type="button" class="away" data-offer="dismiss" title=${away} aria-label=${away} @click=${() => { this.away = true; }}>${icon('close')}</button></div>`;
  }

  /**
   * What of the list is in use here and says otherwise, apart from formulas that somebody typed; where a sheet has no
   * rows yet, all of it is news.
   */
  #difference(): { readonly lists: readonly ListRows[]; readonly rows: number } {
    const counts = (this.read?.lists ?? []).map((list) => {
      const { changed, added } = compareWithList(this.schedule.document, list, this.words);
      const differing = changed.filter(({ cells }) => cells.some(({ isOwnFormula }) => !isOwnFormula)).length;
      return { list, rows: differing + (this.schedule.rows(list.sheet).every(isBlank) ? added.length : 0) };
    }).filter(({ rows }) => rows > 0);
    return { lists: counts.map(({ list }) => list), rows: counts.reduce((sum, { rows }) => sum + rows, 0) };
  }

  get #name(): string {
    return /([^/?#]+)(?:[?#].*)?$/.exec(this.address)?.[1] ?? this.address;
  }

  #stop(): void {
    this.#callOff?.();
    this.#abort?.abort();
  }

  #fetchWhenIdle(): void {
    this.#stop();
    const abort = this.#abort = new AbortController();
    this.#callOff = whenIdle(() => { void this.#fetch(abort.signal); }, LATEST_MILLISECONDS);
  }

  async #fetch(signal: AbortSignal): Promise<void> {
    const name = this.#name;
    const fetched = await fetchText(this.address, signal, this.words).catch((error: unknown) => {
      if (signal.aborted) return undefined;
      throw error;
    });
    if (fetched === undefined || signal.aborted) return;
    const voltageOf = railVoltages(this.schedule.content().sheets.supplies ?? []);
    const read = fetched.ok ? readList({ name, text: fetched.text }, undefined, voltageOf, this.words)
      : { ok: false as const, problems: [{ message: fetched.problem }] };
    this.problems = read.ok ? [] : read.problems;
    this.read = read.ok ? { name, lists: read.lists, notes: read.notes } : undefined;
    if (!read.ok) this.failed(this.address, read.problems);
  }

  readonly #take: TakeRows = (make) => {
    this.open = undefined;
    this.take(make);
  };

  readonly #close = (): void => {
    this.open = undefined;
    void this.updateComplete.then(() => { this.renderRoot.querySelector<HTMLElement>('[data-offer=show]')?.focus(); });
  };
}
