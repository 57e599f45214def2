import { css, html, LitElement, nothing, type PropertyDeclarations, type TemplateResult } from 'lit';
import { readProfile, type ProfileUnit, type ReadProfile } from '../../src/exchange/profile/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { insertRows, setCells, setFactors, tagOf, type Change, type ScheduleDocument } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { readTable } from '../grid/clipboard/read-table.ts';
import { controls } from '../look/index.ts';
import { workAreaStyles } from '../work-area/index.ts';
import { caseStyles } from './case-area.styles.ts';
import { groupsOf } from './case-groups.ts';

/** Problems listed; the others are counted. */
const LISTED = 12;
const UNITS: readonly ProfileUnit[] = ['share', 'W', 'kW'];

/** A table of groups by hours of the day, from which cases are made, one for each column. */
export class ProfileForm extends LitElement {
  static override styles = [controls, workAreaStyles, caseStyles, css`
    textarea { display: block; inline-size: 100%; max-inline-size: 60rem; min-block-size: 7em; resize: vertical; }
    .lines { overflow-x: auto; white-space: pre; }
  `];
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false }, words: { attribute: false }, text: { attribute: false }, done: { attribute: false },
    unit: { state: true },
  };

  declare schedule: LoadSchedule;
  declare words: Words;
  /** The table as it was pasted. */
  declare text: string;
  /** Told when the cases were made, or that none are wanted. */
  declare done: () => void;
  declare protected unit: ProfileUnit;

  constructor() {
    super();
    this.text = '';
    this.unit = 'share';
  }

  /** Where a person goes on. */
  focusField(): void {
    this.renderRoot.querySelector<HTMLElement>('textarea')?.focus();
  }

  override render(): TemplateResult {
    const { words } = this;
    const read = this.text.trim() === '' ? undefined : readProfile(readTable(this.text), { unit: this.unit, words });
    const units: Readonly<Record<ProfileUnit, string>> = { share: words.say('Shares'), W: 'W', kW: 'kW' };
    return html`<h3 id="heading">${words.say('Profile of a day')}</h3>
      <label><span class="quiet spoken">${words.say('Paste a table: a row for each group, with its name and a figure for each hour. Hours may stand above it, such as 0–8, 8–14, 14–24.')}</span>
        <textarea class="lines" spellcheck="false" .value=${this.text} @input=${({ currentTarget }: Event) => { this.text = (currentTarget as HTMLTextAreaElement).value; }}></textarea></label>
      <div class="options"><label>${words.say('Its figures are')} <select data-option="unit" @change=${({ currentTarget }: Event) => { this.unit = (currentTarget as HTMLSelectElement).value as ProfileUnit; }}>
        ${UNITS.map((unit) => html`<option value=${unit} ?selected=${unit === this.unit}>${units[unit]}</option>`)}</select></label>
        <button type="button" class="primary" data-do="profile" ?disabled=${read?.ok !== true} @click=${() => { this.#take(read as ReadProfile); }}>${read?.ok === true
          ? words.say('Make {n, plural, one {# case} other {# cases}}', { n: read.cases.length }) : words.say('Make the cases')}</button>
        <button type="button" class="bordered" @click=${() => { this.done(); }}>${words.say('Cancel')}</button></div>
      <div role="status">${read?.ok !== true ? nothing : [...read.notes, ...this.#notes(read)].map((note) => html`<p class="quiet spoken">${note}</p>`)}</div>
      ${read === undefined || read.ok ? nothing : html`<ul class="problems" role="alert">${read.problems.slice(0, LISTED).map((problem) => html`<li class="spoken">${problem.message}</li>`)}
        ${read.total <= LISTED ? nothing : html`<li>${words.say('and {n} more', { n: read.total - LISTED })}</li>`}</ul>`}`;
  }

  /** What a person should know of a profile beside this schedule. */
  #notes({ factors }: ReadProfile): string[] {
    const { words, schedule } = this;
    const known = new Set(groupsOf(schedule).filter(({ rows }) => rows > 0).map(({ name }) => name));
    const unknown = [...new Set(factors.map(({ group }) => group))].filter((group) => !known.has(group));
    return [
      ...this.unit === 'share' ? [] : [words.say('Each power counts as a share of the greatest in its row, which is taken for all of the group.')],
      ...unknown.length === 0 ? [] : [words.say('No load belongs to these groups, so that their factors change nothing yet: {groups}. Correct their spelling, or give them to types, device rows or outputs.', {
        groups: unknown.map((text) => words.say('“{text}”', { text })).join(', '),
      })],
    ];
  }

  #take(read: ReadProfile): void {
    const { schedule, words } = this;
    schedule.act(words.say('Profile of {n, plural, one {# case} other {# cases}}', { n: read.cases.length }), profileChanges(schedule.document, read));
    this.text = '';
    this.done();
  }
}

/** Changes that make the cases of a profile; those that are there already by their names take its hours and factors. */
export function profileChanges(document: ScheduleDocument, { cases, factors }: ReadProfile): Change[] {
  const rows = document.rows('cases');
  const known = new Map(rows.map((row) => [tagOf('cases', row), row.id]));
  return [
    ...setCells(document, cases.flatMap(({ case: name, hours }) => {
      const id = known.get(name);
      return id === undefined ? [] : [{ sheet: 'cases' as const, id, key: 'hours', value: hours }];
    })),
    ...insertRows(document, 'cases', rows.length, cases.filter(({ case: name }) => !known.has(name)).map((each) => ({ ...each }))),
    ...setFactors(document, factors.map(({ case: name, group, factor }) => ({ case: name, group, value: factor }))),
  ];
}
