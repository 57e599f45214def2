import { html, nothing, type TemplateResult } from 'lit';
import { panelNames, panelOf } from '../../src/engine/panel-of.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { ownOfType, rowsToSwap, sumDevices, swapType, type TypeSwap } from '../../src/rework/index.ts';
import { columnOf, tagOf, withUnit, type Column, type Row } from '../../src/schedule/index.ts';
import { onChoice, type Job, type JobHost, type JobPlan } from './job.ts';

/** Where a type is swapped: in the selected rows, everywhere, or in a panel by its tag. */
type Where = 'selected' | 'all' | { readonly panel: string };
type Fate = 'stay' | 'go' | undefined;

/** Gives device rows another type. */
export class SwapJob implements Job {
  readonly #host: JobHost;
  #from: string;
  #to = '';
  #where: Where;
  /** What becomes of own values, by key; a person decides. */
  readonly #fates = new Map<string, Fate>();

  constructor(host: JobHost) {
    this.#host = host;
    const { schedule: { document }, rows: { sheet, ids } } = host;
    const first = ids.map((id) => document.row(sheet, id)!.cells.type).find((type) => typeof type === 'string');
    this.#from = first ?? '';
    this.#where = sheet === 'devices' && ids.length > 1 ? 'selected' : 'all';
  }

  get about(): string {
    return this.#host.words.say('Gives device rows another type. What rows have of their own stays or goes, as you choose.');
  }

  choices(): TemplateResult {
    const { words, schedule, rows } = this.#host;
    const types = schedule.rows('types').map((row) => tagOf('types', row)).filter((tag) => tag !== '');
    const used = new Set(schedule.rows('devices').map(({ cells }) => cells.type));
    const panels = panelNames(schedule);
    const where = typeof this.#where === 'string' ? this.#where : `panel ${this.#where.panel}`;
    const onWhere = (value: string) => {
      this.#where = value === 'selected' || value === 'all' ? value : { panel: value.slice('panel '.length) };
    };
    const option = (value: string, text: string, chosen: string) => html`<option value=${value} ?selected=${value === chosen}>${text}</option>`;
    return html`<label>${words.say('Present type')} <select data-option="from" @change=${onChoice(this.#host, (value) => { this.#from = value; })}>
        ${[...new Set([this.#from, ...types.filter((tag) => used.has(tag))])].map((tag) => option(tag, tag || '–', this.#from))}</select></label>
      <label>${words.say('New type')} <select data-option="to" data-first @change=${onChoice(this.#host, (value) => { this.#to = value; })}>
        ${option('', '–', this.#to)}${types.filter((tag) => tag !== this.#from).map((tag) => option(tag, tag, this.#to))}</select></label>
      <label>${words.say('Where')} <select data-option="where" @change=${onChoice(this.#host, onWhere)}>
        ${rows.sheet === 'devices' ? option('selected', words.say('{n, plural, one {the selected row} other {the # selected rows}}', { n: rows.ids.length }), where) : nothing}
        ${option('all', words.say('All rows'), where)}${panels.length < 2 ? nothing : panels.map((tag) => option(`panel ${tag}`, tag, where))}</select></label>
      ${[...ownOfType(this.#rows)].map(([key, n]) => this.#fate(key, n))}`;
  }

  #fate(key: string, n: number): TemplateResult {
    const { words } = this.#host;
    const title = words.text(columnOf('devices', key).title);
    const fate = this.#fates.get(key);
    return html`<label>${words.say('{title} of its own in {n, plural, one {# row} other {# rows}}', { title, n })}
      <select data-option="own-${key}" @change=${onChoice(this.#host, (value) => { this.#fates.set(key, value === '' ? undefined : value as Fate); })}>
        <option value="" ?selected=${fate === undefined}>–</option>
        <option value="stay" ?selected=${fate === 'stay'}>${words.say('It stays')}</option>
        <option value="go" ?selected=${fate === 'go'}>${words.say('It goes: that of the type counts')}</option></select></label>`;
  }

  get #rows(): Row[] {
    return rowsToSwap(this.#host.schedule.document, { from: this.#from, among: this.#among });
  }

  get #among(): readonly number[] | undefined {
    const { schedule, rows } = this.#host;
    if (this.#where === 'all') return undefined;
    if (this.#where === 'selected') return rows.ids;
    const { panel } = this.#where;
    return schedule.rows('devices').map(({ id }) => id).filter((id) => panelOf(schedule, 'devices', id) === panel);
  }

  plan(): JobPlan {
    const { words, schedule } = this.#host;
    const rows = this.#rows;
    const swap: TypeSwap = {
      from: this.#from, to: this.#to, among: this.#among,
      drop: [...this.#fates].filter(([, fate]) => fate === 'go').map(([key]) => key),
    };
    const open = [...ownOfType(rows).keys()].filter((key) => this.#fates.get(key) === undefined);
    const problems = [
      ...this.#to === '' ? [words.say('Choose the type that the rows are to have.')] : [],
      ...rows.length === 0 ? [words.say('No row there has the type {type}. Choose another type, or other rows.', { type: this.#from || '–' })] : [],
      ...open.map((key) => words.say('Some rows have their own value in {title}. Choose whether it stays or goes.', { title: words.text(columnOf('devices', key).title) })),
    ];
    const values = { n: rows.length, from: this.#from, to: this.#to };
    return {
      label: words.say('Swap of {from} for {to} in {n, plural, one {# row} other {# rows}}', values),
      sum: words.say('{n, plural, one {# device row of {from} becomes} other {# device rows of {from} become}} {to}.', values),
      problems, changes: problems.length > 0 ? [] : swapType(schedule.document, swap),
      place: rows[0] && { sheet: 'devices', id: rows[0].id, key: 'type' },
      more: (trial) => this.#difference(rows.map(({ id }) => id), trial),
    };
  }

  /** What the rows, and one of the type, come to before and after. */
  #difference(ids: readonly number[], trial: LoadSchedule): TemplateResult {
    const { words, schedule } = this.#host;
    const text = (column: Column, value: number | null) => withUnit(column, value, words);
    const [before, after] = [sumDevices(schedule, ids), sumDevices(trial, ids)];
    const sums = (['connected', 'demand', 'nodes'] as const).map((key) => {
      const column = columnOf('devices', key);
      return [words.text(column.title), text(column, before[key]), text(column, after[key])];
    });
    // A type that is named may have no row.
    const [old, present] = [this.#from, this.#to].map((tag) => schedule.rows('types').find((row) => tagOf('types', row) === tag)?.id);
    const types = (['draw', 'power', 'voltage', 'minVoltage', 'maxVoltage'] as const).flatMap((key) => {
      const column = columnOf('types', key);
      const [was, is] = [old, present].map((id) => id === undefined ? null : schedule.value('types', id, key) as number | null);
      // What neither of them says is no difference.
      return was === null && is === null ? [] : [[words.text(column.title), text(column, was!), text(column, is!)]];
    });
    const price = columnOf('types', 'price');
    const lines = [...sums, [words.text(price.title), text(price, before.price), text(price, after.price)], ...types];
    return html`<h3>${words.say('These rows')}</h3><table class="difference">
      <thead><tr><th scope="col">${words.say('Figure')}</th><th scope="col" class="number">${words.say('Before')}</th><th scope="col" class="number">${words.say('After')}</th></tr></thead>
      <tbody>${lines.map(([title, was, is]) => html`<tr><th scope="row">${title}</th><td class="number">${was}</td><td class="number">${is}</td></tr>`)}</tbody></table>`;
  }
}
