import { css, html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { OFFICE_LISTS, sizePanel, sizingCsv, type OfficeLists, type SizingRow } from '../../src/allocation/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { controls } from '../look/index.ts';
import { fileName, saveFile } from '../load-schedule/files.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { numberListText, readNumberList, type NumberListProblem } from './number-list.ts';

const STORE = 'elv-load-schedule sizing lists';
const LISTS = { ratings: message('Ratings of supplies [A]'), ways: message('Ways of relay modules') } as const;
type ListName = keyof typeof LISTS;

/** What the job needs, ready to be priced: item, quantity, why; from lists that the office keeps. */
export class SizingTable extends WorkArea {
  static override styles = [controls, workAreaStyles, css`
    .lists { align-items: start; }
    .lists label { display: grid; justify-items: start; gap: 3px; }
    .lists input { inline-size: 18rem; }
    .lists [aria-invalid='true'] { border-color: var(--elv-over); }
    .problem { max-inline-size: 18rem; color: var(--elv-over); font-size: 0.92em; }
    .sizing { max-inline-size: 76rem; }
    .sizing .number { inline-size: 6rem; font-size: 1.1em; font-weight: 600; }
    .sizing td:first-child { inline-size: 30%; }
  `];
  static override properties: PropertyDeclarations = {
    lists: { state: true }, problems: { state: true }, rows: { state: true }, failure: { state: true },
  };

  declare protected lists: OfficeLists;
  /** What is wrong with what is typed in a list; the list of before holds meanwhile. */
  declare protected problems: Partial<Record<ListName, NumberListProblem>>;
  declare protected rows: readonly SizingRow[] | undefined;
  declare protected failure: string;
  #search: AbortController | undefined;

  constructor() {
    super();
    this.lists = storedLists();
    this.problems = {};
    this.failure = '';
  }

  protected get heading(): string {
    return this.words.say('Sizing');
  }

  protected get about(): string {
    return this.words.say(
      'The least number of supplies, bus branches and relay modules. A count for pricing, not a design.'
    );
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#search?.abort();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!['active', 'lists', 'revision', 'schedule', 'words'].some((key) => changed.has(key))) return;
    this.#search?.abort();
    if (this.active) void this.#work(this.#search = new AbortController());
  }

  protected body(): TemplateResult {
    return html`<div class="options lists">${this.#list('ratings', false)}${this.#list('ways', true)}</div>
      ${this.failure === '' ? nothing : html`<p class="problem" role="alert">${this.words.say('It could not be worked out: {failure}', { failure: this.failure })}</p>`}
      ${this.rows === undefined ? nothing : sizingLines(this.rows, this.words)}`;
  }

  protected foot(): TemplateResult {
    return html`<span class="quiet spoken">${this.words.say('The lists are kept in this browser.')} <button type="button" class="link" data-do="defaults"
        @click=${() => { this.#keep(OFFICE_LISTS); this.problems = {}; }}>${this.words.say('Go back to the general lists')}</button></span>
      <button type="button" class="primary" data-do="csv" ?disabled=${(this.rows ?? []).length === 0} @click=${this.#save}>${this.words.say('Save as CSV')}</button>`;
  }

  #list(name: ListName, whole: boolean): TemplateResult {
    const problem = this.problems[name];
    const change = (event: Event) => {
      const read = readNumberList((event.currentTarget as HTMLInputElement).value, whole);
      this.problems = { ...this.problems, [name]: read.ok ? undefined : read.problem };
      if (read.ok) this.#keep({ ...this.lists, [name]: read.numbers });
    };
    return html`<label>${this.words.say(LISTS[name])}<input data-list=${name} inputmode="decimal" .value=${numberListText(this.lists[name], this.words)}
      aria-invalid=${problem !== undefined} aria-describedby="problem-${name}" @change=${change}>
      <span class="problem spoken" id="problem-${name}" role="status">${problem?.(this.words)}</span></label>`;
  }

  async #work(search: AbortController): Promise<void> {
    try {
      const rows = await sizePanel(this.schedule, { lists: this.lists, signal: search.signal });
      if (search.signal.aborted) return;
      this.rows = rows;
      this.failure = '';
    } catch (error) {
      this.failure = error instanceof Error ? error.message : String(error);
    }
  }

  #keep(lists: OfficeLists): void {
    this.lists = lists;
    try {
      localStorage.setItem(STORE, JSON.stringify(lists));
    } catch { /* A page without storage keeps them until it is closed. */ }
  }

  readonly #save = (): void => {
    const name = fileName(this.schedule).replace(/\.schedule\.json$/, '-sizing.csv');
    saveFile({ name, text: sizingCsv(this.rows!, this.words) }, 'text/csv;charset=utf-8');
  };
}

function sizingLines(rows: readonly SizingRow[], words: Words): TemplateResult {
  if (rows.length === 0) {
    return html`<p>${words.say('There is nothing to size yet. Enter devices, or read a takeoff.')}</p>`;
  }
  return html`<table class="sizing"><caption class="unseen">${words.say('What the job needs')}</caption>
    <thead><tr><th scope="col">${words.say('Item')}</th><th scope="col" class="number">${words.say('Quantity')}</th><th scope="col">${words.say('Why')}</th></tr></thead>
    <tbody>${rows.map(({ item, quantity, why }) => html`<tr><td>${item}</td><td class="number">${words.number(quantity)}</td><td class="quiet spoken">${why}</td></tr>`)}</tbody></table>`;
}

/** The lists that this browser keeps; those of the software where it keeps none, or something else. */
function storedLists(): OfficeLists {
  try {
    const stored = JSON.parse(localStorage.getItem(STORE) ?? '{}') as Partial<Record<ListName, unknown>> | null;
    const listOf = (name: ListName) => {
      const read = Array.isArray(stored?.[name]) ? readNumberList(stored[name].join(';'), name === 'ways') : undefined;
      return read?.ok === true ? read.numbers : OFFICE_LISTS[name];
    };
    return { ratings: listOf('ratings'), ways: listOf('ways') };
  } catch {
    // Storage may be forbidden, or hold what something else wrote there.
    return OFFICE_LISTS;
  }
}
