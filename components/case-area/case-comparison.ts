import { css, html, LitElement, nothing, type PropertyDeclarations, type TemplateResult } from 'lit';
import {
  caseLoadings, contributionsTo, isInSight, LOADED_SHEETS, LOADING_OF, type CaseLoading, type GroupPart,
  type LoadedSheet, type PanelChoice, type RowLoading,
} from '../../src/engine/index.ts';
import { STATE_WORDS } from '../../src/findings/state-words.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA } from '../../src/schedule/index.ts';
import { amps, roundedDown, type Words } from '../../src/words/index.ts';
import { GoToEvent } from '../events/index.ts';
import {
  controls, loadingBar, loadingBarStyles, markShape, rowName, statusMark, statusMarkStyles,
} from '../look/index.ts';
import { workAreaStyles } from '../work-area/index.ts';
import { caseStyles } from './case-area.styles.ts';
import type { CasePlace } from './case-place.ts';
import { caseText, groupText, loadingText, quantityText, rowLoadingText, shareText } from './case-texts.ts';

/** Rows listed at first, and with each press for more. */
const LISTED = 60;
/** Beyond what is there a place stands at the edge. */
const clamp = (at: number, count: number) => Math.min(Math.max(at, 0), count - 1);

/** How everything is loaded in each case, the worst first; each cell explains itself. */
export class CaseComparison extends LitElement {
  static override styles = [controls, workAreaStyles, loadingBarStyles, statusMarkStyles, caseStyles, css`
    .loadings td { padding: 1px 2px; }
    .loadings thead th { max-inline-size: 12em; overflow-wrap: break-word; }
    .loadings thead th:not(.first) { padding-inline: 8px; }
    .loadings thead th { position: sticky; inset-block-start: 0; z-index: 2; background: var(--elv-surface-raised); }
    .loadings thead th.first { z-index: 3; }
    .tall { max-block-size: max(15rem, 100cqb - 22rem); overflow: auto; }
    .cell { display: grid; gap: 2px; inline-size: 100%; min-inline-size: 10.4em; min-block-size: 42px; padding: 3px 6px; text-align: start; white-space: nowrap; }
    .cell .figure { display: flex; gap: 0.4em; align-items: center; }
    .cell .figure b { font-weight: 400; color: var(--elv-ink); }
    .cell.worst { box-shadow: inset 0 0 0 1px var(--elv-line-strong); }
    .cell.worst .figure b { font-weight: 700; }
    .cell .word { margin-inline-start: auto; font-size: var(--elv-size-label); }
    .cell[aria-expanded='true'] { background: color-mix(in srgb, var(--elv-accent) 14%, transparent); color: inherit; }
    .first .quiet { display: block; font-size: var(--elv-size-small); }
    .why { margin-block-start: 10px; padding: 8px 12px; border: 1px solid var(--elv-line-strong); border-radius: var(--elv-radius); background: var(--elv-surface); }
    .why h3 { margin: 0 0 4px; display: flex; flex-wrap: wrap; gap: 0.2em 0.8em; }
    .why p { margin: 2px 0; }
    .why table { inline-size: auto; }
    .why td { padding: 1px 16px 1px 0; border: 0; overflow-wrap: anywhere; }
    .why .parts { max-block-size: 9em; overflow: auto; }
    @container (inline-size < 560px) {
      .cell { min-inline-size: 7.5em; }
      .cell .figure { flex-wrap: wrap; row-gap: 0; }
      .cell .word { flex-basis: 100%; }
    }
  `];
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false }, revision: { attribute: false }, words: { attribute: false },
    only: { attribute: false }, look: { attribute: false }, sheet: { state: true }, listed: { state: true },
    at: { state: true },
  };

  declare schedule: LoadSchedule;
  declare revision: number;
  declare words: Words;
  declare only: PanelChoice;
  /** Looks closely at what a cell says. */
  declare look: (place: CasePlace) => void;
  declare protected sheet: LoadedSheet | undefined;
  declare protected listed: number;
  /** The cell that explains itself. */
  declare protected at: CasePlace | undefined;

  constructor() {
    super();
    this.listed = LISTED;
  }

  override render(): TemplateResult {
    const { words, schedule } = this;
    const all = caseLoadings(schedule.document, schedule.figures)
      .filter(({ sheet, id }) => isInSight(schedule, sheet, id, this.only));
    const sheets = LOADED_SHEETS.filter((sheet) => all.some((row) => row.sheet === sheet));
    const rows = all.filter(({ sheet }) => this.sheet === undefined || sheet === this.sheet);
    const choose = (sheet: LoadedSheet | undefined, text: string) =>
      html`<button type="button" data-of=${sheet ?? 'all'} aria-pressed=${this.sheet === sheet} @click=${() => { this.sheet = sheet; }}>${text}</button>`;
    if (all.length === 0) {
      return html`<p class="spoken">${words.say('There is nothing to compare yet: no supply, way or feed, and no run that is calculated by its demand.')}</p>`;
    }
    return html`${sheets.length < 2 ? nothing : html`<div class="options"><div class="choice" role="group" aria-label=${words.say('Sheets')}>
        ${choose(undefined, words.say('All'))}${sheets.map((sheet) => choose(sheet, words.text(SCHEMA[sheet].title)))}</div></div>`}
      ${schedule.cases.cases.length > 0 ? nothing : html`<p class="spoken">${words.say('There are no cases yet: everything counts by its own diversity. “Factors” makes some.')}</p>`}
      ${this.#table(rows)}${this.#explanation(rows)}`;
  }

  #table(rows: readonly RowLoading[]): TemplateResult {
    const { words, schedule } = this;
    const shown = rows.slice(0, this.listed);
    const hasOwn = shown.some(({ own }) => own !== undefined);
    const places = [...schedule.cases.cases.map((_, place) => place), ...hasOwn ? [-1] : []];
    return html`<div class="scroll tall"><table class="loadings" role="grid"><caption class="unseen">${words.say('Loading in each case, the worst first')}</caption>
      <thead><tr><th scope="col" class="first"><span class="name">${words.say('Worst first')}</span></th>${places.map((place) => html`<th scope="col">${caseText(schedule, place, words)}</th>`)}</tr></thead>
      <tbody @keydown=${this.#onKey}>${shown.map((row, line) => html`<tr data-row=${rowName(schedule, row)}><th scope="row" class="first"><div class="name">${this.#head(row)}</div></th>
        ${places.map((place, at) => html`<td>${this.#cell(row, place, line === 0 && at === 0)}</td>`)}</tr>`)}</tbody></table></div>
      ${rows.length <= this.listed ? nothing : html`<button type="button" class="link" @click=${() => { this.listed += LISTED; }}>${words.say('Show {n} more of {all}', {
        n: Math.min(LISTED, rows.length - this.listed), all: rows.length,
      })}</button>`}`;
  }

  #head(row: RowLoading): TemplateResult {
    const { words, schedule } = this;
    const { sheet, worst } = row;
    return html`<button type="button" class="link" @click=${() => { this.#go(row); }}>${rowName(schedule, row)}</button>
      <span class="quiet">${words.text(SCHEMA[sheet].rowName)}</span>
      <span class="quiet">${worst.loading === null ? nothing : words.say('worst: {case}', { case: caseText(schedule, worst.place, words) })}</span>`;
  }

  #cell(row: RowLoading, place: number, isFirst: boolean): TemplateResult | typeof nothing {
    const { words, schedule } = this;
    const loading = place < 0 ? row.own : row.cases[place];
    if (loading === undefined) return html`<span class="quiet" title=${words.say('Every case has a factor for all that is on it: its own diversity does not count.')}>–</span>`;
    const isWorst = loading === row.worst && loading.loading !== null;
    const isOpen = this.at?.sheet === row.sheet && this.at.id === row.id && this.at.place === place;
    const text = rowLoadingText(row, loading, words);
    const name = words.say('{tag}, {case}: {loading} {state}', {
      tag: rowName(schedule, row), case: caseText(schedule, place, words), loading: text,
      state: words.say(STATE_WORDS[loading.state]),
    });
    const isStop = this.at === undefined ? isFirst : isOpen;
    const open = () => { this.at = { sheet: row.sheet, id: row.id, place }; };
    return html`<button type="button" class="cell ${loading.state} ${isWorst ? 'worst' : ''}" tabindex=${isStop ? 0 : -1} aria-expanded=${isOpen} aria-controls="why"
      aria-label=${isWorst ? words.say('{name}, worst', { name }) : name} @focus=${open} @click=${open}>
      <span class="figure">${markShape(loading.state)}<b>${text}</b> ${loading.state === 'ok' ? nothing : html`<span class="word">${words.say(STATE_WORDS[loading.state])}</span>`}</span>
      ${loadingBar(loading.loading, row.target, loading.state)}</button>`;
  }

  #explanation(rows: readonly RowLoading[]): TemplateResult {
    const { at, words, schedule } = this;
    const row = at && rows.find(({ sheet, id }) => sheet === at.sheet && id === at.id);
    const loading = row === undefined ? undefined : at!.place < 0 ? row.own : row.cases[at!.place];
    if (row === undefined || loading === undefined) {
      return html`<div class="why" id="why" aria-live="polite"><p class="quiet spoken">${words.say('Press a figure to see what it is made of.')}</p></div>`;
    }
    const { groups, extra, unknown } =
      contributionsTo(schedule.document, schedule.figures, row.sheet, row.id, loading.place);
    const line = (name: string, how: string, value: number) => html`<tr><td>${name}</td><td class="quiet">${how}</td><td class="number">${quantityText(amps(value), words)}</td></tr>`;
    return html`<div class="why" id="why" aria-live="polite">
      <h3>${words.say('{tag} in “{case}”', { tag: rowName(schedule, row), case: caseText(schedule, loading.place, words) })} ${statusMark(loading.state, words)}</h3>
      <p class="spoken">${sentenceOf(row, loading, words)}</p>
      <div class="parts"><table><caption class="unseen">${words.say('What asks for it')}</caption><tbody>${groups.map((part) => line(groupText(part.group, words), howText(part, words), part.amps))}
        ${extra > 1e-9 ? line(words.say('Extra of runs'), words.say('what devices of constant power draw more because the cable drops their voltage'), extra) : nothing}</tbody></table></div>
      ${unknown === 0 ? nothing : html`<p class="spoken">${words.say('{n, plural, one {The current of # row is not known.} other {The current of # rows is not known.}}', { n: unknown })}</p>`}
      <p><button type="button" class="link" data-do="matters" @click=${() => { this.look(at!); }}>${words.say('What matters')}</button>
        <button type="button" class="link" data-do="row" @click=${() => { this.#go(row); }}>${words.say('Go to the row')}</button></p></div>`;
  }

  #go({ sheet, id }: Pick<RowLoading, 'sheet' | 'id'>): void {
    this.dispatchEvent(new GoToEvent({ sheet, id, key: SCHEMA[sheet].tag }));
  }

  /** Arrows go through the cells, of which one is reached by Tab. */
  readonly #onKey = (event: KeyboardEvent): void => {
    const cell = (event.target as Element).closest<HTMLElement>('.cell');
    const step = ({ ArrowLeft: [0, -1], ArrowRight: [0, 1], ArrowUp: [-1, 0], ArrowDown: [1, 0] } as const)[event.key];
    if (cell === null || step === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const lines = [...this.renderRoot.querySelectorAll('.loadings tbody tr')]
      .map((row) => [...row.querySelectorAll('td')]);
    const line = lines.findIndex((cells) => cells.some((each) => each.contains(cell)));
    const column = lines[line]!.findIndex((each) => each.contains(cell));
    const next = lines[clamp(line + step[0], lines.length)]!;
    next[clamp(column + step[1], next.length)]!.querySelector<HTMLElement>('.cell')?.focus();
  };
}

/** Demand over what may be used, as a sentence. */
function sentenceOf(
  { sheet, limit, fuse, target, isPartial }: RowLoading, { demand, loading, state }: CaseLoading, words: Words,
): string {
  if (demand === null) return words.say('What is asked of it is not known.');
  if (limit === null) return words.say('Its demand is {demand}; the usable current is not known.', { demand: amps(demand) });
  const values = {
    demand: amps(demand, limit), limit: roundedDown(amps(limit, demand)), loading: loadingText(loading, words),
  };
  const first = LOADING_OF[sheet].limit === 'carries' ? words.say('{demand} ÷ {limit} that it carries = {loading}.', values)
    : LOADING_OF[sheet].limit === 'rated' ? words.say('{demand} ÷ {limit} rated = {loading}.', values)
    : words.say('{demand} ÷ {limit} usable = {loading}.', values);
  const second = fuse !== null && demand > fuse ? words.say('That is {over} more than its fuse of {fuse}.', { over: amps(demand - fuse, 0), fuse: amps(fuse) })
    : state === 'over' ? words.say('That is {over} too much.', { over: amps(demand - limit, 0) })
    : state === 'near' && target !== null ? words.say('That is {over} above the target of {target}.', {
      over: amps(demand - limit * target, 0), target: shareText(target, words),
    }) : '';
  const third = isPartial ? words.say('Some of it is not known, so that it may be more.') : '';
  return [first, second, third].filter((text) => text !== '').join(' ');
}

/** How a group comes to what it asks for. */
function howText({ factor, connected, own }: GroupPart, words: Words): string {
  if (factor === undefined) {
    return words.say('own diversity of its rows, of {connected} connected', { connected: amps(connected) });
  }
  const share = Number.isNaN(factor.share) ? words.say('unknown') : shareText(factor.share, words);
  return factor.ofDemand ? words.say('{own} by own diversity × {share}', { own: amps(own), share })
    : words.say('{connected} connected × {share}', { connected: amps(connected), share });
}
