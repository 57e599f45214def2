import { html, nothing, type TemplateResult } from 'lit';
import {
  DUPLICATED, duplicateRows, proposeRenamings, type CopiedRow, type DuplicatedSheet, type DuplicateOf,
  type DuplicatePlan, type Renaming,
} from '../../src/rework/index.ts';
import { SCHEMA } from '../../src/schedule/index.ts';
import { rowName } from '../look/index.ts';
import { onChoice, type Job, type JobHost, type JobPlan } from './job.ts';

/** As many copies are listed, and as many reasons told at once. */
const LISTED = 80;
const TOLD = 5;

/** Duplicates rows, or an area, with all that belongs to them, under tags that a person sees and may change. */
export class DuplicateJob implements Job {
  readonly #host: JobHost;
  #of: DuplicateOf;
  #tags: readonly Renaming[] = [];
  #area: Renaming = { from: '', to: '' };
  readonly #chosen = new Map<string, string>();

  constructor(host: JobHost) {
    this.#host = host;
    const { sheet, ids } = host.rows;
    const area = this.#firstArea();
    this.#of = area !== '' && ids.length === 1 ? { area } : { sheet: sheet as DuplicatedSheet, ids };
    this.#propose();
  }

  get about(): string {
    return this.#host.words.say('Copies a supply, an area or a floor with all that belongs to it alone: ways, runs, branches, devices, modules, outputs.');
  }

  choices(): TemplateResult {
    const { words, rows: { sheet, ids } } = this.#host;
    const isArea = 'area' in this.#of;
    const onWhat = (value: string) => {
      this.#of = value === 'area' ? { area: this.#firstArea() } : { sheet: sheet as DuplicatedSheet, ids };
      this.#propose();
    };
    return html`${sheet !== 'devices' && sheet !== 'outputs' ? nothing : html`<label>${words.say('What')} <select data-option="what" data-first @change=${onChoice(this.#host, onWhat)}>
        <option value="rows" ?selected=${!isArea}>${words.say('{n, plural, one {the selected row} other {the # selected rows}}', { n: ids.length })}</option>
        <option value="area" ?selected=${isArea}>${words.say('all of an area')}</option></select></label>`}
      ${this.#pair('area', words.say('Areas that begin with'), words.say('begin then with'), this.#area, this.#setArea)}
      ${[...this.#tags, { from: '', to: '' }].map((tag, place) => this.#pair(`tag-${place}`, words.say('In tags'), words.say('becomes'), tag, (changed) => {
        this.#tags = this.#tags.toSpliced(place, 1, ...changed.from === '' ? [] : [changed]);
      }))}`;
  }

  readonly #setArea = (changed: Renaming): void => {
    const isOther = 'area' in this.#of && changed.from !== this.#area.from;
    this.#area = changed;
    if (!isOther) return;
    this.#of = { area: changed.from };
    this.#propose();
  };

  /** Two fields: what a text is, and what it becomes. */
  #pair(
    name: string, title: string, becomes: string, { from, to }: Renaming, set: (changed: Renaming) => void,
  ): TemplateResult {
    return html`<span class="pair"><label>${title} <input data-option="${name}-from" .value=${from} @change=${onChoice(this.#host, (text) => { set({ from: text, to }); })}></label>
      <label>${becomes} <input data-option="${name}-to" ?data-first=${name === 'tag-0'} .value=${to} @change=${onChoice(this.#host, (text) => { set({ from, to: text }); })}></label></span>`;
  }

  /** How the area of the first selected row begins, up to its first number. */
  #firstArea(): string {
    const { schedule, rows: { sheet, ids } } = this.#host;
    const area = schedule.document.row(sheet, ids[0] ?? -1)?.cells.area;
    return typeof area === 'string' ? /^\D*\d+/.exec(area)?.[0] ?? area : '';
  }

  #propose(): void {
    const { tags, area } = proposeRenamings(this.#host.schedule, this.#of);
    [this.#tags, this.#area] = [tags, area ?? { from: '', to: '' }];
    this.#chosen.clear();
  }

  plan(): JobPlan {
    const { words, schedule, rows: { sheet } } = this.#host;
    const plan = duplicateRows(schedule, { of: this.#of, tags: this.#tags, area: this.#area, chosen: this.#chosen });
    const refused = plan.rows.filter(({ problem }) => problem !== undefined);
    const n = plan.rows.length;
    const kinds = DUPLICATED.map((each) => ({ each, count: plan.rows.filter((row) => row.sheet === each).length }))
      .filter(({ count }) => count > 0)
      .map(({ each, count }) => words.say('{sheet} {n}', { sheet: words.text(SCHEMA[each].title), n: String(count) })).join(', ');
    const made = plan.changes.filter((change) => change.op === 'insert');
    const first = made.find((change) => change.sheet === sheet) ?? made[0];
    const what = 'area' in this.#of ? this.#of.area
      : this.#of.ids.slice(0, TOLD).map((id) => rowName(schedule, { sheet, id })).join(', ');
    return {
      label: words.say('Duplication of {what}: {n, plural, one {# row} other {# rows}}', { what, n }),
      sum: words.say('{n, plural, one {# row is} other {# rows are}} copied: {kinds}.', { n, kinds }),
      note: [words.say('What was measured, where it was counted and what was accepted stays with the originals.')],
      problems: n === 0 ? [words.say('There is nothing to duplicate. Enter how the areas begin, or select rows.')]
        : refused.slice(0, TOLD).map((row) => this.#problem(row)),
      changes: plan.changes,
      place: first && { sheet: first.sheet, id: first.rows[0]!.id, key: SCHEMA[first.sheet].tag },
      list: n === 0 ? undefined : this.#list(plan),
    };
  }

  #problem({ sheet, id, from, to, problem, takenBy = 0 }: CopiedRow): string {
    const { words, schedule } = this.#host;
    const title = words.text(SCHEMA[sheet].title);
    const values = { from: from || rowName(schedule, { sheet, id }), to, row: takenBy, sheet: title };
    switch (problem!) {
      case 'taken': return words.say('{sheet}: row {row} has the tag {to} already. Give the copy of {from} another one.', values);
      case 'named': return words.say('{sheet}: rows name {to} although no row has that tag, and the copy of {from} would take them on. Give it another one.', values);
      case 'twice': return words.say('{sheet}: two copies would have the tag {to}. Give the copy of {from} another one.', values);
      case 'missing': return words.say('{sheet}: the copy of {from} has no tag. Enter one.', values);
    }
  }

  /** The tags that come, each of which may be changed; what is refused stands first. */
  #list({ rows }: DuplicatePlan): TemplateResult {
    const { words } = this.#host;
    const tagged = rows.filter(({ from, problem }) => from !== '' || problem !== undefined);
    const isRefused = ({ problem }: CopiedRow) => Number(problem !== undefined);
    const shown = [...tagged].sort((a, b) => isRefused(b) - isRefused(a)).slice(0, LISTED);
    return html`<details class="tags" open><summary>${words.say('{n, plural, one {# new tag} other {# new tags}}', { n: tagged.length })}</summary>
      <div><table><thead><tr><th scope="col">${words.say('Sheet')}</th><th scope="col">${words.say('Tag')}</th><th scope="col">${words.say('New tag')}</th></tr></thead>
      <tbody>${shown.map((row) => this.#tagLine(row))}</tbody></table></div>
      ${tagged.length <= LISTED ? nothing : html`<p class="quiet">${words.say('and {more} more', { more: tagged.length - LISTED })}</p>`}</details>`;
  }

  #tagLine(row: CopiedRow): TemplateResult {
    const { words } = this.#host;
    const { sheet, id, from, to, problem } = row;
    const choose = (text: string) => { this.#chosen.set(`${sheet} ${id}`, text); };
    return html`<tr><td>${words.text(SCHEMA[sheet].title)}</td><td class="nowrap">${from || '–'}</td>
      <td><input data-tag="${sheet}-${from}" aria-label=${words.say('New tag of {from}', { from })} aria-invalid=${problem === undefined ? nothing : 'true'}
        .value=${to} @change=${onChoice(this.#host, choose)}>${problem === undefined ? nothing : html` <span class="over">${this.#problem(row)}</span>`}</td></tr>`;
  }
}
