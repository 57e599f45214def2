import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import {
  compareWithList, takeList, updateCounts, type CellUpdate, type ListUpdate, type ListWay, type RowUpdate,
} from '../../src/exchange/update/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { isBlank, SCHEMA, type SheetName } from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { controls } from '../look/index.ts';
import type { OfferedRows, TakenRows, TakeRows } from './offered-rows.ts';
import { styles } from './rows-offer.styles.ts';
import { updatePreview } from './update-preview.ts';

const WAYS: Readonly<Record<ListWay, string>> = {
  update: message('Update by tag'), append: message('Append'), replace: message('Replace'),
};

/** Asks what becomes of rows that come from a file, and shows what they would change; nothing happens by itself. */
export class RowsOffer extends LitElement {
  static override styles = [controls, styles];
  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, words: { attribute: false },
    offer: { attribute: false }, updateOnly: { type: Boolean }, way: { state: true }, adds: { state: true },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule did. */
  declare revision: number;
  declare words: Words;
  declare offer: OfferedRows;
  /** Whether the rows only update those that there are, as those of an office list do. */
  declare updateOnly: boolean;
  declare take: TakeRows;
  declare cancel: () => void;
  declare protected way: ListWay;
  /** Whether new rows of an update come behind the others. */
  declare protected adds: boolean;
  #updates: readonly ListUpdate[] = [];
  /** Cells about which a person says otherwise than is taken for granted: formulas stay, all else is taken. */
  #toggled = new Set<string>();
  #focused: HTMLElement | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#focused = focusedWithin(document);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { document } = this.schedule;
    this.#updates = this.offer.lists.map((list) => compareWithList(document, list, this.words));
    if (!changed.has('offer')) return;
    this.#toggled = new Set();
    // Of an office list only what is used is kept up; what else it holds is there to be asked for.
    this.adds = !this.updateOnly || this.#updates.every(({ sheet }) => this.#countIn(sheet) === 0);
    this.way = this.#isUpdate || this.#updates.some(({ changed: rows, same }) => rows.length + same > 0) ? 'update' : 'append';
  }

  override render(): TemplateResult {
    const { words, offer: { name, notes } } = this;
    return html`<section class="offer" aria-labelledby="title" @keydown=${this.#onKeydown}>
      <h3 id="title" tabindex="-1">${this.#isUpdate ? words.say('{file} says otherwise. Nothing changes until it is taken.', { file: name }) : this.#question}</h3>
      ${notes.map((note) => html`<p class="quiet spoken">${note}</p>`)}
      ${this.#isUpdate ? nothing : html`<div class="ways" role="radiogroup" aria-labelledby="title">${(Object.keys(WAYS) as ListWay[]).map((way) => this.#choice(way))}</div>`}
      ${this.way === 'update' ? this.#updates.map((update) => this.#preview(update)) : nothing}
      <div class="do"><button type="button" class="primary" data-do="take" @click=${this.#take}>${words.say('Take')}</button>
        <button type="button" data-do="cancel" title=${words.say('Leaves everything as it is (Esc)')} @click=${this.#cancel}>${words.say('Cancel')}</button></div>
    </section>`;
  }

  protected override firstUpdated(): void {
    const { renderRoot } = this;
    (renderRoot.querySelector<HTMLElement>('[type=radio]:checked') ?? renderRoot.querySelector('h3')!).focus();
  }

  /** Whether the rows only update those that there are. */
  get #isUpdate(): boolean {
    return this.updateOnly || this.offer.areEdits === true;
  }

  get #question(): string {
    const [{ sheet, rows }] = this.offer.lists as [OfferedRows['lists'][number]];
    return this.words.say('{file} has {n, plural, one {# row} other {# rows}} for {sheet}, where there are {before}. What becomes of them?', {
      file: this.offer.name, n: rows.length, sheet: this.words.text(SCHEMA[sheet].title), before: this.#countIn(sheet),
    });
  }

  #choice(way: ListWay): TemplateResult {
    const { words } = this;
    const [update] = this.#updates as [ListUpdate];
    const before = this.#countIn(update.sheet);
    const what = way === 'update' ? updateCounts(update, words)
      : way === 'append' ? words.say('behind the {before, plural, one {# row} other {# rows}} that are there', { before })
        : words.say('the {before, plural, one {# row} other {# rows}} that are there go', { before });
    return html`<label><input type="radio" name="way" value=${way} .checked=${way === this.way} @change=${() => { this.way = way; }}>
      <span>${words.say(WAYS[way])} <span class="quiet spoken">(${what})</span></span></label>`;
  }

  #preview(update: ListUpdate): TemplateResult {
    const { words } = this;
    const { sheet } = update;
    const again = () => { this.requestUpdate(); };
    return html`${this.#isUpdate ? html`<h4>${words.text(SCHEMA[sheet].title)}: ${updateCounts(update, words)}</h4>` : nothing}
      ${updatePreview(update, words, {
        takes: this.#takes, adds: this.adds, toggleAdds: () => { this.adds = !this.adds; },
        toggle: (...place) => {
          const name = nameOf(...place);
          if (!this.#toggled.delete(name)) this.#toggled.add(name);
          again();
        },
      })}`;
  }

  #countIn(sheet: SheetName): number {
    return this.schedule.rows(sheet).filter((row) => !isBlank(row)).length;
  }

  readonly #takes = (sheet: SheetName, row: RowUpdate, cell: CellUpdate): boolean =>
    this.#toggled.has(nameOf(sheet, row, cell)) === cell.isOwnFormula;

  readonly #take = (): void => {
    const { words, offer: { name, lists, notes }, way, adds } = this;
    this.take((schedule): TakenRows => {
      const taken = lists.map((list) => takeList(schedule, list, name, way,
        { adds, words, takes: (row, cell) => this.#takes(list.sheet, row, cell) }));
      const label = taken.map((each) => each.label).join('; ');
      const said = [...notes, ...taken.flatMap((each) => each.notes)];
      return {
        label, notes: said,
        ...('content' in taken[0]! ? { content: taken[0].content }
          : { changes: taken.flatMap((each) => 'changes' in each ? each.changes : []) }),
      };
    });
    this.#giveBack();
  };

  readonly #cancel = (): void => {
    this.cancel();
    this.#giveBack();
  };

  /** The focus goes back to where it was. */
  #giveBack(): void {
    this.#focused?.focus();
  }

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const isButton = event.composedPath()[0] instanceof HTMLButtonElement;
    if (event.key === 'Escape') this.#cancel();
    else if (event.key === 'Enter' && !isButton) this.#take();
    else return;
    event.preventDefault();
  };
}

function nameOf(sheet: SheetName, { tag }: RowUpdate, { key }: CellUpdate): string {
  return `${sheet}/${tag}/${key}`;
}

/** What has the focus, however deep in shadow roots it is. */
function focusedWithin(root: DocumentOrShadowRoot): HTMLElement | undefined {
  const { activeElement } = root;
  if (!(activeElement instanceof HTMLElement)) return undefined;
  return activeElement.shadowRoot === null ? activeElement : focusedWithin(activeElement.shadowRoot) ?? activeElement;
}
