import { css, html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import {
  createSized, OFFICE_LISTS, sizeJob, sizingCsv, type OfficeLists, type Sized, type SizingOptions, type SizingRow,
} from '../../src/allocation/index.ts';
import { panelNames } from '../../src/engine/panel-of.ts';
import { isBlank } from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { SheetChooseEvent } from '../events/index.ts';
import { controls } from '../look/index.ts';
import { fileName, saveFile } from '../load-schedule/files.ts';
import { percentField, WorkArea, workAreaStyles } from '../work-area/index.ts';
import { numberListText, readNumberList, type NumberListProblem } from './number-list.ts';

const STORE = 'elv-load-schedule sizing lists';
const LISTS = {
  ratings: message('Ratings of supplies [A]'), ways: message('Ways of relay modules'),
  wayRating: message('Rating of a way [A], where no other says one'),
} as const;
type ListName = keyof typeof LISTS;
type Choices = Required<Pick<SizingOptions, 'extension' | 'equalUnits' | 'unplaced'>> & Pick<SizingOptions, 'panel'>;

/** What the job needs, ready to be priced: item, quantity, why; from lists that the office keeps. */
export class SizingTable extends WorkArea {
  static override styles = [controls, workAreaStyles, css`
    .lists { align-items: start; }
    .lists label { display: grid; justify-items: start; gap: 3px; }
    .lists input { inline-size: 18rem; }
    .lists [aria-invalid='true'] { border-color: var(--elv-over); }
    .problem { max-inline-size: 18rem; color: var(--elv-over); font-size: var(--elv-size-small); }
    .sizing { max-inline-size: 76rem; }
    .sizing .number { inline-size: 6rem; }
    .sizing td { vertical-align: baseline; }
    .sizing td.number { font-size: var(--elv-size-large); font-weight: 600; }
    .sizing td:nth-last-child(3) { inline-size: 30%; }
  `];
  static override properties: PropertyDeclarations = {
    readonly: { type: Boolean }, lists: { state: true }, choices: { state: true }, problems: { state: true },
    sized: { state: true }, failure: { state: true },
  };

  /** Rows are not created. */
  declare readonly: boolean;

  declare protected lists: OfficeLists;
  declare protected choices: Choices;
  /** What is wrong with what is typed in a list; the list of before holds meanwhile. */
  declare protected problems: Partial<Record<ListName, NumberListProblem>>;
  declare protected sized: Sized | undefined;
  declare protected failure: string;
  #search: AbortController | undefined;

  constructor() {
    super();
    this.readonly = false;
    this.lists = storedLists();
    this.choices = { extension: 0, equalUnits: false, unplaced: false };
    this.problems = {};
    this.failure = '';
  }

  protected get heading(): string {
    return this.words.say('Sizing');
  }

  protected get about(): string {
    return this.words.say(
      'The least number of supplies, ways, mains feeds, bus branches (by their nodes, not by the current of the bus) and relay modules in each panel. A count for pricing, not a design.'
    );
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#search?.abort();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!['active', 'lists', 'choices', 'revision', 'schedule', 'words'].some((key) => changed.has(key))) return;
    this.#search?.abort();
    if (this.active) void this.#work(this.#search = new AbortController());
  }

  protected body(): TemplateResult {
    return html`<div class="options lists">${this.#list('ratings', false)}${this.#list('ways', true)}${this.#list('wayRating', false)}</div>
      ${this.#choices()}
      ${this.failure === '' ? nothing : html`<p class="problem" role="alert">${this.words.say('It could not be calculated: {failure}', { failure: this.failure })}</p>`}
      ${this.sized === undefined ? nothing : sizingLines(this.sized.rows, this.words)}`;
  }

  protected foot(): TemplateResult {
    return html`<span class="quiet spoken">${this.words.say('The lists are kept in this browser.')} <button type="button" class="link" data-do="defaults"
        @click=${() => { this.#keep(OFFICE_LISTS); this.problems = {}; }}>${this.words.say('Go back to the general lists')}</button></span>
      <button type="button" class="bordered" data-do="csv" ?disabled=${(this.sized?.rows ?? []).length === 0} @click=${this.#save}>${this.words.say('Save as CSV')}</button>
      <button type="button" class="primary" data-do="create" ?disabled=${this.readonly || !this.#makesRows || !this.#isUnplaced} @click=${() => { void this.#create(); }}>${this.words.say('Create these')}</button>`;
  }

  #choices(): TemplateResult {
    const { words, choices: { extension, equalUnits, unplaced, panel } } = this;
    const choose = (more: Partial<Choices>) => { this.choices = { ...this.choices, ...more }; };
    const check = (key: 'equalUnits' | 'unplaced', checked: boolean, title: string) =>
      html`<label><input type="checkbox" data-option=${key} .checked=${checked} @change=${() => { choose({ [key]: !checked }); }}>${title}</label>`;
    const panels = panelNames(this.schedule);
    const onPanel = ({ currentTarget }: Event) => {
      choose({ panel: (currentTarget as HTMLSelectElement).value || undefined });
    };
    return html`<div class="options">${percentField('extension', extension, words.say('For extension [%]'), words, (share) => { choose({ extension: share }); })}
      ${check('equalUnits', equalUnits, words.say('Equal supplies'))}${check('unplaced', unplaced, words.say('Only what has no place yet'))}
      ${panels.length < 2 ? nothing : html`<label>${words.say('What is in no panel goes to')} <select data-option="panel" @change=${onPanel}>
        <option value="">–</option>${panels.map((tag) => html`<option value=${tag} ?selected=${tag === panel}>${tag}</option>`)}</select></label>`}</div>
      ${this.readonly || this.#isUnplaced || !this.#makesRows ? nothing : html`<p class="quiet spoken">${words.say('What is placed keeps its place. To create rows, choose “Only what has no place yet”.')}</p>`}`;
  }

  /** What is listed can become rows of supplies, branches and modules; where nothing is known of it, it cannot. */
  get #makesRows(): boolean {
    return this.sized !== undefined && this.sized.bins.length + this.sized.modules.length > 0;
  }

  /** All that is listed has no place yet. */
  get #isUnplaced(): boolean {
    const { schedule } = this;
    return this.choices.unplaced || !schedule.rows('devices').some((row) => !isBlank(row)
      && (schedule.target('devices', row.id, 'rail') >= 0 || schedule.target('devices', row.id, 'branch') >= 0));
  }

  async #create(): Promise<void> {
    try {
      const { changes } = await createSized(this.schedule, { lists: this.lists, ...this.choices });
      this.schedule.act(this.words.say('Creating what the sizing counts'), changes);
      this.dispatchEvent(new SheetChooseEvent('devices'));
    } catch (error) {
      this.failure = error instanceof Error ? error.message : String(error);
    }
  }

  #list(name: ListName, whole: boolean): TemplateResult {
    const problem = this.problems[name];
    const change = (event: Event) => {
      const read = readNumberList((event.currentTarget as HTMLInputElement).value, whole);
      this.problems = { ...this.problems, [name]: read.ok ? undefined : read.problem };
      if (read.ok) this.#keep({ ...this.lists, [name]: name === 'wayRating' ? read.numbers[0]! : read.numbers });
    };
    const kept = this.lists[name] ?? OFFICE_LISTS[name]!;
    return html`<label>${this.words.say(LISTS[name])}<input data-list=${name} inputmode="decimal" .value=${numberListText(typeof kept === 'number' ? [kept] : kept, this.words)}
      aria-invalid=${problem !== undefined} aria-describedby="problem-${name}" @change=${change}>
      <span class="problem spoken" id="problem-${name}" role="status">${problem?.(this.words)}</span></label>`;
  }

  async #work(search: AbortController): Promise<void> {
    try {
      const sized = await sizeJob(this.schedule, { lists: this.lists, ...this.choices, signal: search.signal });
      if (search.signal.aborted) return;
      this.sized = sized;
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
    const name = fileName(this.schedule, '-sizing.csv');
    saveFile({ name, text: sizingCsv(this.sized!.rows, this.words) }, 'text/csv;charset=utf-8');
  };
}

function sizingLines(rows: readonly SizingRow[], words: Words): TemplateResult {
  if (rows.length === 0) {
    return html`<p>${words.say('There is nothing to size yet. Enter devices, or read a takeoff.')}</p>`;
  }
  const hasPanels = rows.some(({ panel }) => panel !== null);
  return html`<table class="sizing"><caption class="unseen">${words.say('What the job needs')}</caption>
    <thead><tr>${hasPanels ? html`<th scope="col">${words.say('Panel')}</th>` : nothing}<th scope="col">${words.say('Item')}</th><th scope="col" class="number">${words.say('Quantity')}</th><th scope="col">${words.say('Why')}</th></tr></thead>
    <tbody>${rows.map(({ panel, item, quantity, why }) => html`<tr>${hasPanels ? html`<td class="nowrap">${panel ?? '–'}</td>` : nothing}<td>${item}</td><td class="number">${words.number(quantity)}</td><td class="quiet spoken">${why}</td></tr>`)}</tbody></table>`;
}

/** The lists that this browser keeps; those of the software where it keeps none, or something else. */
function storedLists(): OfficeLists {
  try {
    const stored = JSON.parse(localStorage.getItem(STORE) ?? '{}') as Partial<Record<ListName, unknown>> | null;
    const listOf = (name: 'ratings' | 'ways') => {
      const read = Array.isArray(stored?.[name]) ? readNumberList(stored[name].join(';'), name === 'ways') : undefined;
      return read?.ok === true ? read.numbers : OFFICE_LISTS[name];
    };
    const { wayRating } = stored ?? {};
    return {
      ratings: listOf('ratings'), ways: listOf('ways'),
      wayRating: typeof wayRating === 'number' && wayRating > 0 ? wayRating : OFFICE_LISTS.wayRating!,
    };
  } catch {
    // Storage may be forbidden, or hold what something else wrote there.
    return OFFICE_LISTS;
  }
}
