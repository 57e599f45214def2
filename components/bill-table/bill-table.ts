import { css, html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import {
  ALLOWANCE, billCsv, billXlsx, compareBills, kindText, makeBill, unitText, type Bill, type BillChange, type BillItem,
} from '../../src/report/bill/index.ts';
import type { PanelChoice } from '../../src/engine/panel-of.ts';
import { fixed } from '../../src/words/index.ts';
import { fileName, saveBlob, saveFile } from '../load-schedule/files.ts';
import { readOlder, type OlderSchedule } from '../load-table/older-schedule.ts';
import { controls } from '../look/index.ts';
import { percentField, WorkArea, workAreaStyles } from '../work-area/index.ts';

const WORKBOOK = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** What the schedule lists, by panel and in all, ready to be priced; what is more and less than in an older one. */
export class BillTable extends WorkArea {
  static override styles = [controls, workAreaStyles, css`
    table { max-inline-size: 90rem; }
    td:nth-child(2), th:nth-child(2) { min-inline-size: 12rem; }
    .why { inline-size: 40%; }
    .unknown { color: var(--elv-incomplete); }
    .problems { color: var(--elv-over); }
    .sums { margin-block-start: 14px; }
    @container (inline-size < 560px) {
      td { overflow-wrap: break-word; }
      td:nth-child(2), th:nth-child(2) { min-inline-size: 0; }
      .why { min-inline-size: 14em; }
    }
  `];
  static override properties: PropertyDeclarations = {
    only: { attribute: false }, panel: { state: true }, allowance: { state: true }, older: { state: true },
    problems: { state: true },
    failed: { state: true },
  };

  /** The panel that the bill is of; each panel by default. */
  declare only: PanelChoice;
  /** What is shown of several panels: the empty name for all together, `undefined` for each by itself. */
  declare protected panel: string | undefined;
  declare protected allowance: number;
  declare protected older: OlderSchedule | undefined;
  declare protected problems: readonly string[];
  /** The workbook could not be made. */
  declare protected failed: boolean;
  #bill: Bill = { items: [], inAll: [], sums: [] };
  #older: Bill | undefined;

  constructor() {
    super();
    this.allowance = ALLOWANCE;
    this.problems = [];
    this.failed = false;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('only')) this.panel = undefined;
    const isOther = ['only', 'schedule', 'revision', 'words', 'allowance', 'older', 'active'].some((key) => changed.has(key));
    if (!this.active || !isOther) return;
    const { allowance, only: panel } = this;
    this.#bill = makeBill(this.schedule, { allowance, panel });
    this.#older = this.older && makeBill(this.older.schedule, { allowance, panel });
    this.failed = false;
  }

  protected get heading(): string {
    return this.words.say('Bill of quantities');
  }

  protected get about(): string {
    return this.words.say(
      'What the schedule lists, to be priced and ordered. Terminals, mains ways, wire within panels and fixings are not in it.'
    );
  }

  protected body(): TemplateResult {
    const { words, panel } = this;
    const { items, inAll } = this.#bill;
    const panels = [...new Set(items.map((item) => item.panel))];
    const choose = (value: string | undefined, title: string) =>
      html`<button type="button" data-panel=${value ?? 'each'} aria-pressed=${value === panel}
        @click=${() => { this.panel = value; }}>${title}</button>`;
    return html`<div class="options">
        ${panels.length < 2 ? nothing : html`<div class="choice" role="group" aria-label=${words.say('Show')}>
          ${choose(undefined, words.say('By panel'))}${choose('', words.say('All panels'))}</div>`}
        ${percentField('allowance', this.allowance, words.say('Cables longer by [%]'), words, (share) => { this.allowance = share; })}
        ${this.#olderFile()}
      </div>
      ${this.problems.length === 0 ? nothing : html`<div class="problems" role="alert">${this.problems.map((text) => html`<p class="spoken">${text}</p>`)}</div>`}
      ${this.#older === undefined ? nothing : this.#differences(compareBills(this.#older, this.#bill, panel === '' ? 'inAll' : 'items'))}
      ${items.length === 0 ? html`<p>${words.say('There is nothing to count yet. Enter devices, or read a takeoff.')}</p>`
        : panel === '' ? this.#table(inAll, null) : panels.map((name) => html`<h3>${name ?? words.say('In no panel')}</h3>
          ${this.#table(items.filter((item) => item.panel === name), name)}`)}`;
  }

  protected foot(): TemplateResult {
    const isEmpty = this.#bill.items.length === 0;
    return html`<span class="quiet spoken" role="status">${this.failed ? this.words.say('The workbook could not be made. Check the connection, then try again.')
        : this.words.say('Part numbers and prices stand on the sheets, among the columns that few schedules need.')}</span>
      <button type="button" class="bordered" data-do="csv" ?disabled=${isEmpty} @click=${this.#saveCsv}>${this.words.say('Save as CSV')}</button>
      <button type="button" class="primary" data-do="xlsx" ?disabled=${isEmpty} @click=${this.#saveXlsx}>${this.words.say('Save as XLSX')}</button>`;
  }

  /** Compares with the schedule, or the load table, that a file holds. */
  async compareWith(file: File): Promise<void> {
    const read = await readOlder(file, this.words);
    this.older?.schedule.dispose();
    this.older = 'schedule' in read ? read : undefined;
    this.problems = 'schedule' in read ? read.edits
      : [this.words.say('{name} cannot be compared with.', { name: file.name }), ...read];
  }

  #olderFile(): TemplateResult {
    const { words } = this;
    const choose = () => {
      const field = this.renderRoot.querySelector<HTMLInputElement>('input[type=file]')!;
      field.value = '';
      field.click();
    };
    const take = ({ currentTarget }: Event) => {
      const file = (currentTarget as HTMLInputElement).files?.[0];
      if (file !== undefined) void this.compareWith(file);
    };
    const drop = () => {
      this.older?.schedule.dispose();
      this.older = undefined;
    };
    return html`<span><button type="button" class="bordered" data-do="chooseOlder" @click=${choose}>${words.say('Compare with an older schedule')}</button>
      <input type="file" hidden aria-label=${words.say('Older schedule')} accept=".json,.html,.htm,.xlsx" @change=${take}>
      ${this.older === undefined ? nothing : html`<strong>${this.older.name}</strong> <button type="button" class="link" data-do="noOlder" @click=${drop}>${words.say('Compare with none')}</button>`}</span>`;
  }

  #differences(changes: readonly BillChange[]): TemplateResult {
    const { words } = this;
    const isPartial = [this.#older!, this.#bill].some(({ inAll }) => inAll.some(({ unknownRows }) => unknownRows > 0));
    if (changes.length === 0) {
      return html`<p class="sum spoken">${isPartial ? words.say('Of what is known, nothing is more or less than before.')
        : words.say('Nothing is more or less than before.')}</p>`;
    }
    const isOfPanels = this.panel !== '';
    const isPriced = changes.some(({ amount }) => amount !== null && amount !== 0);
    const signed = (value: number, decimals?: number) => `${value > 0 ? '+' : ''}${words.number(value, decimals)}`;
    const heading = isOfPanels ? words.say('More and less') : words.say('More and less in all');
    return html`<h3>${heading}</h3><table class="changes"><caption class="unseen">${heading}</caption>
      <thead><tr>${isOfPanels ? html`<th scope="col">${words.say('Panel')}</th>` : nothing}<th scope="col">${words.say('Item')}</th><th scope="col" class="number">${words.say('Before')}</th>
        <th scope="col" class="number">${words.say('After')}</th><th scope="col" class="number">${words.say('Difference')}</th><th scope="col">${words.say('Unit')}</th>
        ${isPriced ? html`<th scope="col" class="number">${words.say('Amount more by')}</th>` : nothing}</tr></thead>
      <tbody>${changes.map(({ panel, item, before, after, difference, unit, amount }) => html`<tr>${isOfPanels ? html`<td>${panel ?? '–'}</td>` : nothing}<td>${item}</td>
        <td class="number">${words.number(before)}</td><td class="number">${words.number(after)}</td>
        <td class="number">${signed(difference)}</td><td>${unitText(unit, words)}</td>
        ${isPriced ? html`<td class="number">${amount === null ? words.say('unknown') : signed(Number(fixed(amount, 2)), 2)}</td>` : nothing}</tr>`)}</tbody></table>`;
  }

  #table(items: readonly BillItem[], panel: string | null): TemplateResult {
    const { words } = this;
    const isPriced = items.some(({ price, partNumber }) => price !== null || partNumber !== null);
    const money = (value: number | null) => value === null ? '' : words.number(Number(fixed(value, 2)), 2);
    const sum = panel === null && this.panel === '' ? this.#bill.sums.at(-1)
      : this.#bill.sums.find((each) => each.panel === panel);
    return html`<table class="bill"><caption class="unseen">${words.say('Bill of quantities')}</caption>
      <thead><tr><th scope="col">${words.say('Item kind')}</th><th scope="col">${words.say('Item')}</th><th scope="col" class="number">${words.say('Quantity')}</th><th scope="col">${words.say('Unit')}</th>
        ${isPriced ? html`<th scope="col">${words.say('Part number')}</th><th scope="col" class="number">${words.say('Price')}</th><th scope="col" class="number">${words.say('Amount')}</th>` : nothing}
        <th scope="col" class="why">${words.say('Why')}</th></tr></thead>
      <tbody>${items.map((item) => html`<tr><td class="quiet nowrap">${kindText(item.kind, words)}</td><td>${item.item}</td>
        <td class="number">${item.quantity === null ? words.say('unknown') : words.number(item.quantity)}</td><td>${unitText(item.unit, words)}</td>
        ${isPriced ? html`<td>${item.partNumber ?? ''}</td><td class="number">${money(item.price)}</td><td class="number">${money(item.amount)}</td>` : nothing}
        <td class="spoken ${item.unknownRows > 0 ? 'unknown' : 'quiet'}">${item.why}</td></tr>`)}</tbody></table>
      ${!isPriced || sum === undefined ? nothing : html`<p class="sums"><b>${words.say('Sum {amount}', { amount: money(sum.amount) })}</b>
        ${sum.without === 0 ? nothing : html`<span class="quiet">${words.say('{without, plural, one {# item has} other {# items have}} no amount and {without, plural, one {is} other {are}} not in it.', { without: sum.without })}</span>`}</p>`}`;
  }

  #nameOf(form: 'csv' | 'xlsx'): string {
    return fileName(this.schedule, `-bill.${form}`);
  }

  readonly #saveCsv = (): void => {
    saveFile({ name: this.#nameOf('csv'), text: billCsv(this.#bill, this.#older, this.words) }, 'text/csv;charset=utf-8');
  };

  readonly #saveXlsx = async (): Promise<void> => {
    try {
      const bytes = await billXlsx(this.#bill, this.#older, this.words);
      saveBlob(this.#nameOf('xlsx'), new Blob([new Uint8Array(bytes)], { type: WORKBOOK }));
    } catch (error) {
      this.failed = true;
      reportError(error);
    }
  };
}
