import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import {
  findCells, replaceChanges, replacements, textsInDoubtSentence, type FoundCell, type Replacement, type Search,
} from '../../src/editing/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, SCHEMA, SHEET_NAMES } from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { CommandEvent, GoToEvent } from '../events/index.ts';
import { MessageEvent } from '../grid/events.ts';
import { controls, icon, type Place } from '../look/index.ts';
import { styles } from './find-bar.styles.ts';

const WHERE: Readonly<Record<Search['where'], string>> = {
  anywhere: message('anywhere in a cell'), beginning: message('at the beginning'), whole: message('the whole cell'),
};
/** Replacements that are listed; of more there are, only their number is told. */
const MOST_LISTED = 200;
/** Time [ms] after which what is typed is looked for: a large schedule is not gone through at every letter. */
const PAUSE = 120;

type Scope = 'all' | 'sheet' | 'column';

/** Finds a text in all sheets, goes from one cell that holds it to the next, and replaces it in what was entered. */
export class FindBar extends LitElement {
  static override styles = [controls, styles];
  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, words: { attribute: false },
    readonly: { type: Boolean }, replacing: { type: Boolean },
    text: { state: true }, where: { state: true }, exact: { state: true }, scope: { state: true }, by: { state: true },
    at: { state: true },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule did. */
  declare revision: number;
  declare words: Words;
  declare readonly: boolean;
  /** Whether the text is to be replaced as well. */
  declare replacing: boolean;
  /** The cell that a person is at; its sheet alone where no row is selected. */
  declare here: () => Place;
  declare protected text: string;
  declare protected where: Search['where'];
  declare protected exact: boolean;
  declare protected scope: Scope;
  declare protected by: string;
  /** Place of the cell that was gone to among those found; -1 before the first step. */
  declare protected at: number;
  #found: readonly FoundCell[] = [];
  #replaced: readonly Replacement[] = [];
  /** Where the person was when the scope was chosen. */
  #origin: Place | undefined;
  #pause: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.readonly = this.replacing = this.exact = false;
    this.text = this.by = '';
    this.where = 'anywhere';
    this.scope = 'all';
    this.at = -1;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#pause);
  }

  /** Gives the field the focus. @param typed what was typed before it was there: typing goes on behind it. */
  focusField(typed = ''): void {
    const field = this.renderRoot.querySelector<HTMLInputElement>('[name=text]');
    field?.focus();
    if (typed === '') field?.select();
    else {
      field?.setRangeText(typed, 0, field.value.length, 'end');
      field?.dispatchEvent(new Event('input'));
    }
  }

  /** Goes to the next cell found, or back to the one before. */
  step(by: 1 | -1): void {
    this.#heed();
    void this.updateComplete.then(() => {
      const { length } = this.#found;
      if (length === 0) return;
      this.at = this.at < 0 ? this.#nearest(by) : (this.at + by + length) % length;
      this.#show(this.#found[this.at]!);
    });
  }

  protected override willUpdate(changed: PropertyValues): void {
    const isAnother = ['text', 'where', 'exact', 'scope'].some((name) => changed.has(name));
    if (changed.has('scope')) this.#origin = this.here();
    if (!isAnother && !['schedule', 'revision', 'by', 'replacing'].some((name) => changed.has(name))) return;
    const search: Search = { text: this.text, where: this.where, exact: this.exact, within: this.#within };
    this.#found = findCells(this.schedule, search);
    this.#replaced = this.replacing && !this.readonly ? replacements(this.schedule, search, this.by) : [];
    if (isAnother) this.at = -1;
    else this.at = Math.min(this.at, this.#found.length - 1);
  }

  protected override firstUpdated(): void {
    this.focusField();
  }

  protected override updated(): void {
    // A button that has nothing more to do would swallow the keys that follow, such as Escape.
    if ((this.renderRoot as ShadowRoot).activeElement?.matches(':disabled') === true) this.focusField();
  }

  override render(): TemplateResult {
    const { words, readonly } = this;
    const replacing = this.replacing && !readonly;
    return html`<section class="bar" role="search" aria-label=${words.say('Find and replace')} @keydown=${this.#onKeydown}>
      <form @submit=${this.#onSubmit}>
        <label>${words.say('Find')} <input type="text" name="text" .value=${this.text} autocomplete="off" spellcheck="false" @input=${this.#onInput}></label>
        ${replacing ? html`<label>${words.say('Replace by')} <input type="text" name="by" .value=${this.by} autocomplete="off" spellcheck="false" @input=${this.#onInput}></label>` : nothing}
        <span class="steps">
          <button type="button" data-do="previous" title=${words.say('Previous (Shift+Enter)')} aria-label=${words.say('Previous')} @click=${() => { this.step(-1); }}>${icon('moveUp')}</button>
          <button type="button" data-do="next" title=${words.say('Next (Enter)')} aria-label=${words.say('Next')} @click=${() => { this.step(1); }}>${icon('moveDown')}</button></span>
        <span class="count" role="status">${this.#count}</span>
        ${this.#choice('where', words.say('Where in a cell'), Object.entries(WHERE).map(([value, title]) => [value, words.say(title)]), this.where, (value) => { this.where = value as Search['where']; })}
        ${this.#choice('scope', words.say('Where to look'), this.#scopes, this.scope, (value) => { this.scope = value as Scope; })}
        <label><input type="checkbox" name="exact" .checked=${this.exact} @change=${(event: Event) => { this.exact = (event.currentTarget as HTMLInputElement).checked; }}>${words.say('Match case')}</label>
        ${replacing ? this.#replaceButtons() : nothing}
        <button type="button" class="close" title=${words.say('Close (Esc)')} aria-label=${words.say('Close')} @click=${this.#close}>${icon('close')}</button>
      </form>
      ${replacing && this.text !== '' ? this.#preview() : nothing}
    </section>`;
  }

  get #within(): Search['within'] {
    const origin = this.#origin;
    if (this.scope === 'all' || origin === undefined) return undefined;
    return this.scope === 'sheet' ? { sheet: origin.sheet } : origin;
  }

  get #count(): string {
    const { words, at } = this;
    const n = this.#found.length;
    if (this.text === '') return '';
    return at < 0 ? words.say('{n, plural, =0 {nothing found} one {# cell} other {# cells}}', { n })
      : words.say('{at} of {n}', { at: at + 1, n });
  }

  get #scopes(): [Scope, string][] {
    const { words } = this;
    const { sheet, key } = this.#origin ?? this.here();
    return [
      ['all', words.say('all sheets')],
      ['sheet', words.say('sheet {sheet}', { sheet: words.text(SCHEMA[sheet].title) })],
      ['column', words.say('column {column}', { column: words.text(columnOf(sheet, key).title) })],
    ];
  }

  #choice(
    name: string, label: string, options: readonly (readonly [string, string])[], chosen: string,
    take: (value: string) => void,
  ): TemplateResult {
    return html`<select name=${name} aria-label=${label} @change=${(event: Event) => { take((event.currentTarget as HTMLSelectElement).value); }}>
      ${options.map(([value, title]) => html`<option value=${value} ?selected=${value === chosen}>${title}</option>`)}</select>`;
  }

  #replaceButtons(): TemplateResult {
    const { words } = this;
    const n = this.#taken.length;
    return html`<button type="button" class="bordered" data-do="replace" ?disabled=${n === 0} @click=${this.#replaceOne}>${words.say('Replace this one')}</button>
      <button type="button" class="bordered" data-do="replaceAll" title=${words.say('Replaces in all cells that are listed, as one action (Ctrl+Enter)')}
        ?disabled=${n === 0} @click=${this.#replaceAll}>${words.say('Replace all {n}', { n })}</button>`;
  }

  #preview(): TemplateResult {
    const { words } = this;
    const replaced = this.#replaced;
    if (replaced.length === 0) return html`<p class="spoken">${words.say('Nothing that was entered would change. Figures and defaults follow from other cells.')}</p>`;
    const more = replaced.length - MOST_LISTED;
    return html`<ul aria-label=${words.say('What would become of it')}>${replaced.slice(0, MOST_LISTED).map((each) => html`<li>
        <button type="button" @click=${() => { this.#show(each); }}><span class="place">${this.#placeName(each)}</span>
          <span class="text"><del>${each.before}</del> → <ins>${each.after}</ins>
            ${each.problem === undefined ? nothing : html` <span class="problem spoken">${words.say('Left as it is: {problem}', { problem: each.problem })}</span>`}</span></button></li>`)}
      ${more > 0 ? html`<li><p>${words.say('And {count} more, which are not shown.', { count: more })}</p></li>` : nothing}</ul>`;
  }

  #placeName({ sheet, id, key }: FoundCell): string {
    const { words } = this;
    return words.say('{sheet} {row}, {column}', {
      sheet: words.text(SCHEMA[sheet].title), row: String(this.schedule.document.position(sheet, id) + 1),
      column: words.text(columnOf(sheet, key).title),
    });
  }

  get #taken(): readonly Replacement[] {
    return this.#replaced.filter(({ problem }) => problem === undefined);
  }

  /** The first cell found from where the person is, that cell included. */
  #nearest(by: 1 | -1): number {
    const here = this.#rank(this.here());
    const from = this.#found.findIndex((cell) => compare(this.#rank(cell), here) >= 0);
    if (by > 0) return Math.max(0, from);
    return (from + this.#found.length - 1 + (from < 0 ? 1 : 0)) % this.#found.length;
  }

  #rank({ sheet, id, key }: Place): readonly number[] {
    const column = SCHEMA[sheet].columns.findIndex((each) => each.key === key);
    return [SHEET_NAMES.indexOf(sheet), this.schedule.document.position(sheet, id), column];
  }

  #show({ sheet, id, key }: Place): void {
    this.dispatchEvent(new GoToEvent({ sheet, id, key }, true));
  }

  /** Takes what stands in the fields, whether or not the pause is over. */
  #heed(): void {
    clearTimeout(this.#pause);
    const value = (name: string) => this.renderRoot.querySelector<HTMLInputElement>(`[name=${name}]`)?.value ?? '';
    this.text = value('text');
    this.by = value('by');
  }

  readonly #onInput = (): void => {
    clearTimeout(this.#pause);
    this.#pause = setTimeout(() => { this.#heed(); }, PAUSE);
  };

  readonly #onSubmit = (event: Event): void => { event.preventDefault(); };

  readonly #onKeydown = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') this.#close();
    else if (event.key === 'Enter' && event.target instanceof HTMLInputElement) {
      if (!event.ctrlKey && !event.metaKey) this.step(event.shiftKey ? -1 : 1);
      else if (this.replacing) {
        this.#heed();
        void this.updateComplete.then(this.#replaceAll);
      }
    } else return;
    event.preventDefault();
  };

  readonly #close = (): void => { this.dispatchEvent(new CommandEvent('closeFind')); };

  readonly #replaceOne = (): void => {
    const current = this.#found[this.at];
    const meant = this.#taken.find((each) =>
      each.sheet === current?.sheet && each.id === current.id && each.key === current.key);
    // The first press shows what would be replaced.
    if (meant === undefined) this.step(1);
    else {
      this.#replace([meant]);
      // The next one has come to its place.
      this.at -= 1;
      this.step(1);
    }
  };

  readonly #replaceAll = (): void => { this.#replace(this.#replaced); };

  #replace(replaced: readonly Replacement[]): void {
    const { schedule, words } = this;
    const changes = replaceChanges(schedule, replaced);
    const n = replaced.filter(({ problem }) => problem === undefined).length;
    if (changes.length === 0) return;
    const inDoubt = textsInDoubtSentence(schedule.document, changes, words);
    schedule.act(words.say('Replacement in {n, plural, one {# cell} other {# cells}}', { n }), changes);
    const [follow, left] = [changes.length - n, replaced.length - n];
    const said = [
      words.say('{n, plural, one {# cell} other {# cells}} replaced', { n }),
      ...(follow > 0 ? [words.say('{n, plural, one {# reference follows} other {# references follow}}', { n: follow })] : []),
      ...(left > 0 ? [words.say('{n, plural, one {# cell} other {# cells}} left as they are', { n: left })] : []),
    ].reduce((one, other) => words.say('{one}; {other}', { one, other }));
    this.dispatchEvent(new MessageEvent({ text: inDoubt === '' ? `${said}.` : `${said}. ${inDoubt}`, tone: 'info', undoable: true, details: [] }));
  }
}

function compare(one: readonly number[], other: readonly number[]): number {
  return one.map((each, place) => each - other[place]!).find((difference) => difference !== 0) ?? 0;
}
