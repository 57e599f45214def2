import { html, nothing, type ReactiveController, type TemplateResult } from 'lit';
import { STATE_WORDS } from '../../src/findings/state-words.ts';
import type { Standing } from '../../src/findings/finding.ts';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import { SCHEMA, type SheetName } from '../../src/schedule/index.ts';
import { GoToEvent } from '../events/index.ts';
import { markShape, rowName } from '../look/index.ts';
import { FigureTrace, type FigureMove } from './figure-trace.ts';
import { rowMoves, type RowMove } from './row-moves.ts';

/** So long gauges show what they were before [ms]. */
const SHOWN_MILLISECONDS = 6000;
/** Rows that one sentence names, and that the list names. */
const NAMED = 3;
const LISTED = 200;

/** What it needs of the overview. */
interface Host {
  readonly schedule: LoadSchedule;
  readonly updateComplete: Promise<boolean>;
  readonly renderRoot: ParentNode;
  addController(controller: ReactiveController): void;
  requestUpdate(): void;
}

/** What the last action did. */
interface Outcome {
  readonly sentence: string;
  readonly moves: readonly RowMove[];
  readonly figures: readonly FigureMove[];
}

/** What the last action did: before and after on the gauges for some seconds, and every row whose status moved. */
export class WhatChanged implements ReactiveController {
  readonly #host: Host;
  #followed: LoadSchedule | undefined;
  #trace!: FigureTrace;
  #end: (() => void) | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #outcome: Outcome | undefined;
  #isFresh = false;
  #isOpen = false;

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
    this.hostUpdate();
  }

  /** Moved in the page, it follows again from there. */
  hostConnected(): void {
    this.hostUpdate();
  }

  hostUpdate(): void {
    if (this.#followed !== this.#host.schedule) this.#follow();
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
    this.#end?.();
    this.#followed = this.#outcome = undefined;
  }

  /** Opens the list and takes the focus to it. */
  async open(): Promise<void> {
    this.#isOpen = true;
    this.#host.requestUpdate();
    await this.#host.updateComplete;
    this.#host.renderRoot.querySelector<HTMLElement>('#changes > summary')?.focus();
  }

  /** The sentence of what the last action did, for a screen reader. */
  announce(): TemplateResult {
    return html`<p class="unseen" role="status">${this.#outcome?.sentence}</p>`;
  }

  /** The sentence for all, and below it the list, while a person asks for it. */
  render(): TemplateResult {
    const { words } = this.#host.schedule;
    const outcome = this.#outcome;
    return html`${this.announce()}${outcome === undefined ? nothing : html`
      <details id="changes" .open=${this.#isOpen} @toggle=${this.#onToggle}>
        <summary><span class="what spoken">${words.say('What changed')} <span class="count">${outcome.sentence}</span></span></summary>
        ${this.#isOpen ? html`<ul>${outcome.moves.slice(0, LISTED).map((move) => this.#line(move))}</ul>
          ${outcome.moves.length > LISTED ? html`<p class="quiet">${words.say('and {more} more', { more: outcome.moves.length - LISTED })}</p>`
            : outcome.moves.length === 0 ? html`<p class="quiet">${words.say('Nothing changed its status.')}</p>` : nothing}` : nothing}
      </details>`}`;
  }

  /** What a gauge was before the last action, for some seconds after it. */
  note(sheet: SheetName, id: number): TemplateResult | typeof nothing {
    const figures = this.#isFresh ? this.#outcome?.figures : undefined;
    const move = figures?.find((each) => each.sheet === sheet && each.id === id);
    if (move === undefined) return nothing;
    const { before, after } = move;
    const direction = before.value === null || after.value === null || before.value === after.value ? '→' : after.value > before.value ? '▲' : '▼';
    return html`<span class="change"><span aria-hidden="true">${direction}</span> ${this.#figures(move)}</span>`;
  }

  #follow(): void {
    this.#end?.();
    const { schedule } = this.#host;
    this.#followed = schedule;
    this.#outcome = undefined;
    this.#trace = new FigureTrace(schedule);
    this.#end = schedule.subscribe((event) => { this.#told(event); });
  }

  #told(event: ScheduleEvent): void {
    clearTimeout(this.#timer);
    const { schedule } = this.#host;
    if (event.moved === undefined) {
      this.#trace = new FigureTrace(schedule);
      this.#outcome = undefined;
      return;
    }
    const { words } = schedule;
    const { label: action, cause } = event;
    const title = cause === 'undo' ? words.say('Undone: {action}', { action })
      : cause === 'redo' ? words.say('Redone: {action}', { action }) : action;
    const [moves, figures] = [rowMoves(schedule, event), this.#trace.follow(event)];
    this.#outcome = { sentence: this.#sentence(title, moves, figures), moves, figures };
    this.#isFresh = true;
    this.#timer = setTimeout(() => {
      this.#isFresh = false;
      this.#host.requestUpdate();
    }, SHOWN_MILLISECONDS);
    this.#host.requestUpdate();
  }

  /** «Undone: Paste of 3 rows: L1 116 % → 66 %, over limit → within limits» */
  #sentence(title: string, moves: readonly RowMove[], figures: readonly FigureMove[]): string {
    const { schedule } = this.#host;
    const { words } = schedule;
    const named = new Set(moves.map(({ sheet, id }) => `${sheet} ${id}`));
    const others = figures.filter(({ sheet, id }) => !named.has(`${sheet} ${id}`));
    const said = [
      ...moves.slice(0, NAMED).map((move) => {
        const figure = figures.find(({ sheet, id }) => sheet === move.sheet && id === move.id);
        return [move.tag, ...figure === undefined || move.from === null ? [] : [`${this.#figures(figure)},`], this.#standings(move)].join(' ');
      }),
      ...others.slice(0, Math.max(0, NAMED - moves.length)).map((figure) => `${rowName(schedule, figure)} ${this.#figures(figure)}`),
    ];
    const more = moves.length + others.length - said.length;
    const what = [...said, ...more > 0 ? [words.say('and {more} more', { more })] : []];
    const all = [...moves.length === 0 ? [words.say('nothing changed its status')] : [], ...what]
      .reduce((one, other) => words.say('{one}; {other}', { one, other }));
    return words.say('{action}: {changes}', { action: title, changes: all });
  }

  #figures({ before, after }: FigureMove): string {
    return this.#host.schedule.words.say('{before} → {after}', { before: before.text, after: after.text });
  }

  #standings({ from, to }: RowMove): string {
    const { words } = this.#host.schedule;
    const text = (standing: Standing) => words.say<string>(STATE_WORDS[standing]);
    return from === null ? words.say('new: {state}', { state: text(to!) })
      : to === null ? words.say('gone: was {state}', { state: text(from) })
      : words.say('{before} → {after}', { before: text(from), after: text(to) });
  }

  #line(move: RowMove): TemplateResult {
    const { schedule } = this.#host;
    const { words } = schedule;
    const { sheet, id, tag, from, to } = move;
    const isThere = to !== null && schedule.document.row(sheet, id) !== undefined;
    const found = isThere ? schedule.statusBasis(sheet, id).deciding[0] : undefined;
    // Why a row is within limits is no sentence of its own.
    const why = found !== undefined ? `. ${found.message}` : isThere ? `: ${words.say('no limit is passed and no entry is missing')}` : '';
    const go = (event: Event) => event.currentTarget!.dispatchEvent(new GoToEvent({ sheet, id, key: 'status' }));
    return html`<li><div class="line"><button type="button" class="finding" ?disabled=${!isThere} @click=${go}>
      <span class="marks" aria-hidden="true">${from === null ? nothing : markShape(from)} → ${to === null ? nothing : markShape(to)}</span>
      <span class="spoken"><b>${tag}</b> <span class="quiet">${words.text(SCHEMA[sheet].title)}</span> ${this.#standings(move)}${why}</span>
    </button></div></li>`;
  }

  readonly #onToggle = (event: Event): void => {
    const { open } = event.currentTarget as HTMLDetailsElement;
    if (open === this.#isOpen) return;
    this.#isOpen = open;
    this.#host.requestUpdate();
  };
}
