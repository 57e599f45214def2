import { css, html, LitElement, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { editedText, readCell } from '../../src/editing/index.ts';
import { exceeds } from '../../src/electrical/index.ts';
import {
  caseLoadings, HOURS_OF_DAY, isInSight, worseFirst, type PanelChoice,
} from '../../src/engine/index.ts';
import { STATE_WORDS } from '../../src/findings/state-words.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import {
  columnOf, insertRows, isBlank, isFormula, parseCell, removeCase, setCells, setFactors, tagOf, titleWithUnit,
  type CellValue, type FactorEdit, type InputColumn, type Row,
} from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { GoToEvent } from '../events/index.ts';
import { readTable } from '../grid/clipboard/read-table.ts';
import { controls, icon, markShape, rowName, statusMarkStyles } from '../look/index.ts';
import { workAreaStyles } from '../work-area/index.ts';
import { caseStyles } from './case-area.styles.ts';
import { groupsOf, typesWithoutGroup, type CaseGroup } from './case-groups.ts';
import type { CasePlace } from './case-place.ts';
import { caseText, rowLoadingText, shareText } from './case-texts.ts';
import type { ProfileForm } from './profile-form.ts';

const FACTOR = columnOf('factors', 'factor') as InputColumn;
const HOURS = columnOf('cases', 'hours') as InputColumn;
const NAME = columnOf('cases', 'case') as InputColumn;
/** Problems of a paste listed; the others are counted. */
const LISTED = 12;

/** A case as a column of the matrix. */
interface CaseColumn {
  readonly row: Row;
  readonly place: number;
  readonly name: string;
  /** Its factors are found by its name: no other case before it bears it. */
  readonly isNamed: boolean;
}

/** The cell that a field of the matrix is for. */
interface FieldPlace {
  readonly sheet: 'cases' | 'factors';
  readonly id: number;
  readonly key: 'hours' | 'factor';
}

/** The share of each group that is on in each case, as a matrix in which a person types. */
export class FactorMatrix extends LitElement {
  static override styles = [controls, workAreaStyles, statusMarkStyles, caseStyles, css`
    .new { display: flex; flex-wrap: wrap; gap: 6px; align-items: center; }
    .new input { inline-size: 14em; }
    .matrix thead th:not(.first) { min-inline-size: 7.4em; max-inline-size: 14em; overflow-wrap: break-word; }
    .matrix thead .link { display: block; min-inline-size: 0; overflow-wrap: break-word; }
    .matrix thead .head { display: flex; align-items: start; justify-content: space-between; gap: 2px; }
    .matrix input:not([type='checkbox']) { inline-size: 6.2em; min-block-size: 30px; text-align: end; }
    .matrix input::placeholder { color: var(--elv-ink-default); opacity: 1; font-style: italic; }
    .matrix td { text-align: center; padding: 2px 4px; }
    .matrix td label { display: inline-grid; place-items: center; min-inline-size: 28px; min-block-size: 28px; }
    .marks th, .marks td { background: var(--elv-surface); }
    tfoot td, tfoot th { border-block: 1px solid var(--elv-line-strong); }
    tfoot button { display: inline-grid; justify-items: start; gap: 0; min-block-size: 38px; padding-inline: 4px; text-align: start; line-height: 1.25; }
    tfoot .figure { display: flex; gap: 0.35em; align-items: center; font-weight: 600; }
    tfoot .quiet { font-size: var(--elv-size-small); max-inline-size: 8em; overflow: hidden; text-overflow: ellipsis; }
    .of { display: block; font-size: var(--elv-size-label); }
    .unsure { color: var(--elv-incomplete); }
    .small { padding: 0; justify-content: center; flex: none; }
  `];
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false }, revision: { attribute: false }, words: { attribute: false },
    readonly: { type: Boolean }, only: { attribute: false }, look: { attribute: false }, wrong: { state: true },
    problems: { state: true }, profile: { state: true },
  };

  declare schedule: LoadSchedule;
  declare revision: number;
  declare words: Words;
  declare readonly: boolean;
  declare only: PanelChoice;
  /** Looks closely at what is worst in a case. */
  declare look: (place: CasePlace) => void;
  /** What could not be taken, by cell, and why. */
  declare protected wrong: ReadonlyMap<string, { readonly text: string; readonly problem: string }>;
  /** Why a block or a new case was not taken. */
  declare protected problems: readonly string[];
  /** The table of a profile, while one is asked for. */
  declare protected profile: string | undefined;

  constructor() {
    super();
    this.readonly = false;
    this.wrong = new Map();
    this.problems = [];
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('schedule')) [this.wrong, this.problems] = [new Map(), []];
  }

  /** What is in a field is typed over, also after it changed while the focus was in it. */
  protected override updated(): void {
    const { activeElement: field } = this.renderRoot as ShadowRoot;
    if (field instanceof HTMLInputElement && this.#isUntouched(field)) field.select();
  }

  override render(): TemplateResult {
    const { words, schedule, readonly } = this;
    const groups = groupsOf(schedule);
    const columns = this.#columns();
    const problems = [...this.problems, ...this.#refused(groups, columns)];
    return html`<div @paste=${this.#onPaste}>
      ${readonly ? nothing : html`<div class="options"><form class="new" @submit=${this.#add}>
          <input name="case" autocomplete="off" aria-label=${words.say('Name of a case')} placeholder=${words.say('evening, wind alarm …')}>
          <button type="submit" class="bordered" data-do="add">${words.say('Add case')}</button></form>
        <button type="button" class="bordered" data-do="takeProfile" aria-expanded=${this.profile !== undefined} @click=${() => { void this.#openProfile(this.profile === undefined ? '' : undefined); }}>${words.say('Take a profile')}</button></div>`}
      ${this.profile === undefined || readonly ? nothing : html`<elv-profile-form .schedule=${schedule} .words=${words} .text=${this.profile} .done=${this.#closeProfile}></elv-profile-form>`}
      <div role="alert">${problems.length === 0 ? nothing : html`<ul class="problems">${problems.map((text) => html`<li class="spoken">${text}</li>`)}</ul>`}</div>
      ${columns.length === 0 ? html`<p class="spoken">${words.say('There are no cases yet. A case is a situation of the building, such as evening, cleaning, wind alarm or power return: give it a name, then say which share of each group is on in it.')}</p>` : nothing}
      ${groups.length === 0 ? html`<p class="spoken">${typesWithoutGroup(schedule).length === 0
        ? words.say('No load belongs to a group yet. Groups are given on the sheets Types, Devices and Outputs.')
        : words.say('No load belongs to a group yet. Give the types below one.')}</p>` : nothing}
      ${columns.length === 0 && groups.length === 0 ? nothing : this.#table(groups, columns)}
      <elv-group-list .schedule=${schedule} .revision=${this.revision} .words=${words} ?readonly=${readonly}></elv-group-list></div>`;
  }

  #columns(): CaseColumn[] {
    const rows = this.schedule.rows('cases').filter((row) => !isBlank(row)).slice(0, this.schedule.cases.cases.length);
    const names = rows.map((row) => tagOf('cases', row));
    return rows.map((row, place) => ({
      row, place, name: names[place]!, isNamed: names[place] !== '' && names.indexOf(names[place]!) === place,
    }));
  }

  #table(groups: readonly CaseGroup[], columns: readonly CaseColumn[]): TemplateResult {
    const { words, schedule, readonly } = this;
    const factors = new Map<string, Row>();
    for (const row of schedule.rows('factors')) {
      const key = pairOf(row.cells.case, row.cells.group);
      if (!factors.has(key)) factors.set(key, row);
    }
    const twice = new Set(schedule.findings.filter(({ rule }) => rule === 'factor-twice').map(({ id }) => {
      const { cells } = schedule.document.row('factors', id)!;
      return pairOf(cells.case, cells.group);
    }));
    const mark = (key: 'together' | 'standby') => {
      const { title, help } = columnOf('cases', key);
      return html`<tr class="marks"><th scope="row" class="first" title=${words.text(help)}>${words.text(title)}</th><td></td>${columns.map(({ row, place }) => html`<td><label>
        <input type="checkbox" data-mark=${key} aria-label=${words.say('{title}: {case}', { title: words.text(title), case: caseText(schedule, place, words) })} ?disabled=${readonly}
          .checked=${live(row.cells[key] === true)} @change=${() => { this.#set(row.id, key, row.cells[key] !== true); }}></label></td>`)}</tr>`;
    };
    return html`<div class="scroll"><table class="matrix"><caption class="unseen">${words.say('Share of each group that is on in each case')}</caption>
      <thead><tr><th scope="col" class="first"><span class="name">${words.say('Load group')}</span></th><th scope="col">${words.say('own diversity')}</th>${columns.map((column) => this.#heading(column))}</tr></thead>
      <tbody @keydown=${this.#onKey}>${groups.map((group) => html`<tr data-group=${group.name}><th scope="row" class="first"><span class="name">${group.name}</span>
          <span class="of quiet">${words.say('{n, plural, =0 {no rows} one {# row} other {# rows}}', { n: group.rows })}</span></th>
        <td class="quiet nowrap">${ownText(group, words)}</td>${columns.map((column) => html`<td>${this.#field(group, column, factors.get(pairOf(column.name, group.name)), twice)}</td>`)}</tr>`)}
        ${columns.length === 0 ? nothing : html`${mark('together')}${mark('standby')}<tr class="marks"><th scope="row" class="first" title=${words.text(HOURS.help)}>${titleWithUnit(HOURS, words)}</th><td>${this.#allHours(columns)}</td>
          ${columns.map((column) => html`<td>${this.#hours(column)}</td>`)}</tr>`}</tbody>
      ${columns.length === 0 ? nothing : this.#worst(columns)}</table></div>`;
  }

  #heading({ row, place }: CaseColumn): TemplateResult {
    const { words } = this;
    const text = caseText(this.schedule, place, words);
    const title = words.say('Delete the case {case} with its factors', { case: text });
    return html`<th scope="col"><div class="head"><button type="button" class="link" @click=${() => { this.dispatchEvent(new GoToEvent({ sheet: 'cases', id: row.id, key: 'case' })); }}>${text}</button>
      ${this.readonly ? nothing : html`<button type="button" class="small" data-do="remove" title=${title} @click=${() => { this.#remove(title, row.id); }}>${icon('close')}<span class="unseen">${title}</span></button>`}</div></th>`;
  }

  #field(group: CaseGroup, column: CaseColumn, found: Row | undefined, twice: ReadonlySet<string>): TemplateResult {
    const { words, schedule } = this;
    const key = pairOf(column.name, group.name);
    // Factors are those of the first case of a name.
    const factor = column.isNamed ? found : undefined;
    const wrong = column.isNamed ? this.wrong.get(key) : undefined;
    const name = words.say('{group} in “{case}”', { group: group.name, case: caseText(schedule, column.place, words) });
    const text = factor === undefined ? '' : editedText({ schedule, sheet: 'factors', words }, factor.id, FACTOR);
    return html`<input inputmode="decimal" autocomplete="off" data-group=${group.name} data-case=${column.name} aria-label=${name} placeholder=${factor === undefined ? words.say('own') : ''}
      ?readonly=${this.readonly} ?disabled=${!column.isNamed} title=${column.isNamed ? wrong?.problem ?? '' : words.say('Give the case a name of its own first.')}
      aria-invalid=${wrong === undefined ? nothing : 'true'} .value=${live(wrong?.text ?? text)} @focus=${select}
      @change=${({ currentTarget }: Event) => { this.#take(key, column, group.name, factor, (currentTarget as HTMLInputElement).value); }}>
      ${factor === undefined ? nothing : this.#about(factor, column.isNamed && twice.has(key))}
      ${wrong === undefined ? nothing : html`<span class="unseen" role="alert">${wrong.problem}</span>`}`;
  }

  /** What its field does not say of a factor. */
  #about({ id, cells }: Row, isTwice: boolean): readonly TemplateResult[] {
    const { words, schedule } = this;
    const share = schedule.value('factors', id, 'factor');
    const isKnown = typeof share === 'number' && !isTwice;
    return [
      ...cells.of === 'demand' ? [html`<span class="of quiet">${words.say('of demand')}</span>`] : [],
      ...isFormula(cells.factor) && isKnown ? [html`<span class="of quiet">= ${shareText(share, words)}</span>`] : [],
      ...isTwice ? [html`<span class="of unsure">${words.say('given twice')}</span>`] : isKnown ? []
        : [html`<span class="of unsure">${words.say('unknown')}</span>`],
    ];
  }

  /** What of what was refused still has its field, with its place. */
  #refused(groups: readonly CaseGroup[], columns: readonly CaseColumn[]): string[] {
    const { words, schedule } = this;
    const say = (key: string, group: string, place: number) => {
      const wrong = this.wrong.get(key);
      const where = words.say('{group} in “{case}”', { group, case: caseText(schedule, place, words) });
      return wrong === undefined ? [] : [words.say('{where}: {problem}', { where, problem: wrong.problem })];
    };
    return columns.flatMap(({ row, place, name, isNamed }) => [
      ...isNamed ? groups.flatMap((group) => say(pairOf(name, group.name), group.name, place)) : [],
      ...say(hoursOf(row.id), words.text(HOURS.title), place),
    ]);
  }

  /** The hours of all cases, where they are known. */
  #allHours(columns: readonly CaseColumn[]): TemplateResult | typeof nothing {
    const { words, schedule } = this;
    const hours = columns.map(({ row }) => schedule.value('cases', row.id, 'hours')).filter((each) => typeof each === 'number');
    if (hours.length === 0) return nothing;
    const all = hours.reduce((sum, each) => sum + each, 0);
    return html`<span class=${exceeds(all, HOURS_OF_DAY) ? 'unsure nowrap' : 'quiet nowrap'} data-hours="all">${words.say('{hours} in all', { hours: { value: all, decimals: 1, unit: 'h' } })}</span>`;
  }

  #hours({ row, place }: CaseColumn): TemplateResult {
    const { words, schedule } = this;
    const key = hoursOf(row.id);
    const wrong = this.wrong.get(key);
    return html`<input inputmode="decimal" autocomplete="off" data-hours=${place} aria-label=${words.say('{title}: {case}', { title: titleWithUnit(HOURS, words), case: caseText(schedule, place, words) })}
      ?readonly=${this.readonly} title=${wrong?.problem ?? ''} aria-invalid=${wrong === undefined ? nothing : 'true'} @focus=${select}
      .value=${live(wrong?.text ?? editedText({ schedule, sheet: 'cases', words }, row.id, HOURS))} @change=${({ currentTarget }: Event) => { this.#takeHours(key, row.id, (currentTarget as HTMLInputElement).value); }}>
      ${wrong === undefined ? nothing : html`<span class="unseen" role="alert">${wrong.problem}</span>`}`;
  }

  /** What is worst in each case, so that a person sees what a factor does. */
  #worst(columns: readonly CaseColumn[]): TemplateResult {
    const { words, schedule } = this;
    const rows = caseLoadings(schedule.document, schedule.figures)
      .filter(({ sheet, id }) => isInSight(schedule, sheet, id, this.only));
    const cell = (place: number) => {
      const all = rows.flatMap((row) => {
        const found = place < 0 ? row.own : row.cases[place];
        return found === undefined ? [] : [{ row, found }];
      });
      const [worst] = all.toSorted((one, other) => worseFirst(one.found, other.found));
      if (worst === undefined) return html`<td></td>`;
      const { row, found: { loading, state: own } } = worst;
      const unknown = all.filter(({ found }) => found.loading === null && found.state !== 'over').length;
      // What is not known may be worse than what is.
      const state = own === 'ok' && unknown > 0 ? 'incomplete' : own;
      const others = loading === null ? unknown - 1 : unknown;
      return html`<td><button type="button" data-worst=${place} title=${words.say('What matters for {tag} in “{case}”', { tag: rowName(schedule, row), case: caseText(schedule, place, words) })}
        @click=${() => { this.look({ sheet: row.sheet, id: row.id, place }); }}><span class="figure ${state}">${markShape(state)}${rowLoadingText(row, { loading }, words)} <span class="unseen">${words.say(STATE_WORDS[state])}</span></span>
        <span class="quiet">${rowName(schedule, row)}</span>${others <= 0 ? nothing : html`<span class="quiet">${words.say('{n, plural, one {# not known} other {# not known}}', { n: others })}</span>`}</button></td>`;
    };
    return html`<tfoot><tr><th scope="row" class="first">${words.say('Worst loading')}</th>${cell(-1)}${columns.map(({ place }) => cell(place))}</tr></tfoot>`;
  }

  #set(id: number, key: string, value: boolean | number | string | null): void {
    const { schedule, words } = this;
    schedule.act(words.say('Edit of {column}', { column: words.text(columnOf('cases', key).title) }), setCells(schedule.document, [{ sheet: 'cases', id, key, value }]));
  }

  #take(key: string, { name }: CaseColumn, group: string, factor: Row | undefined, text: string): void {
    const { schedule, words } = this;
    const read = readCell({ schedule, sheet: 'factors', words }, factor?.id ?? -1, FACTOR, text);
    this.#note(key, read.ok ? undefined : { text, problem: read.problem });
    if (!read.ok) return;
    schedule.act(words.say('Factor of {group} in “{case}”', { group, case: name }), setFactors(schedule.document, [{ case: name, group, value: read.value }]));
  }

  #takeHours(key: string, id: number, text: string): void {
    const { schedule, words } = this;
    const read = readCell({ schedule, sheet: 'cases', words }, id, HOURS, text);
    this.#note(key, read.ok ? undefined : { text, problem: read.problem });
    if (read.ok) this.#set(id, 'hours', read.value);
  }

  #note(key: string, problem: { readonly text: string; readonly problem: string } | undefined): void {
    const wrong = new Map(this.wrong);
    if (problem === undefined) wrong.delete(key);
    else wrong.set(key, problem);
    this.wrong = wrong;
    this.problems = [];
  }

  #remove(label: string, id: number): void {
    this.schedule.act(label, removeCase(this.schedule.document, id));
    // The button goes with its case.
    this.renderRoot.querySelector<HTMLElement>('[name=case]')!.focus();
  }

  readonly #add = (event: SubmitEvent): void => {
    event.preventDefault();
    const { schedule, words } = this;
    const field = (event.currentTarget as HTMLFormElement).elements.namedItem('case') as HTMLInputElement;
    const read = parseCell(NAME, field.value, { words });
    const isTaken = read.ok && schedule.rows('cases').some((row) => tagOf('cases', row) === read.value);
    if (!read.ok || read.value === null || isTaken) {
      this.problems = [!read.ok ? read.problem : isTaken ? words.say('There is a case “{case}” already. Give the new one another name.', { case: field.value.trim() })
        : words.say('The case has no name yet. Type one, such as wind alarm.')];
      field.focus();
      return;
    }
    this.problems = [];
    field.value = '';
    schedule.act(words.say('Case {case}', { case: String(read.value) }), insertRows(schedule.document, 'cases', schedule.rows('cases').length, [{ case: read.value }]));
  };

  async #openProfile(text: string | undefined): Promise<void> {
    this.profile = text;
    this.problems = [];
    if (text === undefined) return;
    await this.updateComplete;
    const form = this.renderRoot.querySelector<ProfileForm>('elv-profile-form')!;
    await form.updateComplete;
    form.focusField();
  }

  readonly #closeProfile = (): void => {
    this.profile = undefined;
    this.renderRoot.querySelector<HTMLElement>('[data-do=takeProfile]')?.focus();
  };

  /**
   * A block that is pasted in a cell fills cells from there on, or where its headings say; one that is pasted elsewhere
   * is meant as a profile.
   */
  readonly #onPaste = (event: ClipboardEvent): void => {
    const text = (event.clipboardData?.getData('text/plain') ?? '').replace(/\r?\n$/, '');
    const [from] = event.composedPath() as [Element];
    if (this.readonly || from instanceof HTMLTextAreaElement) return;
    if (!/[\t\n]/.test(text)) {
      if (from instanceof HTMLInputElement && this.#isUntouched(from)) from.select();
      return;
    }
    event.preventDefault();
    if (from instanceof HTMLInputElement && from.dataset.case !== undefined) {
      this.#takeBlock(from.dataset.group!, from.dataset.case, readTable(text));
    } else void this.#openProfile(text);
  };

  #takeBlock(group: string, name: string, block: readonly (readonly string[])[]): void {
    const { schedule, words } = this;
    const [groups, columns] = [groupsOf(schedule).map((each) => each.name), this.#columns()];
    const named = namedBlock(block, groups, columns);
    if (named !== undefined) {
      this.#takeCells(named.cells, named.groups, named.columns);
      return;
    }
    const [line, column] = [groups.indexOf(group), columns.findIndex((each) => each.name === name)];
    const [height, width] = [block.length, Math.max(...block.map((cells) => cells.length))];
    if (line + height > groups.length || column + width > columns.length) {
      this.problems = [words.say('Nothing was pasted: the block has {height} × {width} cells, and from here there are {groups, plural, one {# group} other {# groups}} and {cases, plural, one {# case} other {# cases}}. Paste it further up and left, or take it as a profile.', {
        height, width, groups: groups.length - line, cases: columns.length - column,
      })];
      return;
    }
    this.#takeCells(block, groups.slice(line), columns.slice(column));
  }

  /** Gives factors as a block has them, its lines to these groups and its columns to these cases. */
  #takeCells(
    block: readonly (readonly string[])[], groups: readonly string[], columns: readonly CaseColumn[],
  ): void {
    const { schedule, words } = this;
    const [edits, problems]: [FactorEdit[], string[]] = [[], []];
    block.forEach((cells, down) => cells.forEach((text, right) => {
      const [into, at] = [groups[down]!, columns[right]!];
      const read = readCell({ schedule, sheet: 'factors', words }, -1, FACTOR, text);
      const where = words.say('{group} in “{case}”', { group: into, case: caseText(schedule, at.place, words) });
      if (!read.ok) problems.push(words.say('{where}: {problem}', { where, problem: read.problem }));
      else if (!at.isNamed) problems.push(words.say('{where}: {problem}', { where, problem: words.say('Give the case a name of its own first.') }));
      else edits.push({ case: at.name, group: into, value: read.value });
    }));
    this.problems = problems.length === 0 ? [] : [words.say('Nothing was pasted.'), ...problems.slice(0, LISTED),
      ...problems.length > LISTED ? [words.say('and {n} more', { n: problems.length - LISTED })] : []];
    if (problems.length > 0) return;
    this.wrong = new Map();
    schedule.act(words.say('Paste of {n, plural, one {# factor} other {# factors}}', { n: edits.length }), setFactors(schedule.document, edits));
  }

  /** Enter and the arrows go from field to field; arrows to the side only where they would leave the text. */
  readonly #onKey = (event: KeyboardEvent): void => {
    const field = event.target;
    if (!(field instanceof HTMLInputElement) || event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.key === 'Escape' && field.type !== 'checkbox') {
      this.#escape(event, field);
      return;
    }
    const isText = field.type !== 'checkbox';
    const isAll = !isText || (field.selectionStart === 0 && field.selectionEnd === field.value.length);
    const step = event.key === 'Enter' ? [event.shiftKey ? -1 : 1, 0] : event.shiftKey ? undefined
      : event.key === 'ArrowDown' ? [1, 0] : event.key === 'ArrowUp' ? [-1, 0]
      : event.key === 'ArrowLeft' && (isAll || (field.selectionStart === 0 && field.selectionEnd === 0)) ? [0, -1]
      : event.key === 'ArrowRight' && (isAll || (field.selectionStart === field.value.length)) ? [0, 1] : undefined;
    if (step === undefined) return;
    event.preventDefault();
    const lines = [...this.renderRoot.querySelectorAll('.matrix tbody tr')]
      .map((row) => [...row.querySelectorAll('input')]);
    const line = lines.findIndex((fields) => fields.includes(field));
    const column = lines[line]!.indexOf(field);
    const next = lines[line + step[0]!]?.[column + step[1]!];
    // What was typed is taken by the change that leaving makes; at the edge nothing is left.
    if (next === undefined && event.key === 'Enter') {
      field.blur();
      field.focus();
    } else next?.focus();
  };

  /** Gives up what was typed, and what was refused; a field in which nothing was is left to the area. */
  #escape(event: KeyboardEvent, field: HTMLInputElement): void {
    if (this.#isUntouched(field)) return;
    const { id, key } = this.#placeOf(field);
    event.preventDefault();
    event.stopPropagation();
    field.value = this.#kept(field);
    this.#note(key === 'hours' ? hoursOf(id) : pairOf(field.dataset.case, field.dataset.group), undefined);
    field.select();
  }

  /** Whether a field of the matrix shows what is entered. */
  #isUntouched(field: HTMLInputElement): boolean {
    const { hours, group } = field.dataset;
    return (hours ?? group) !== undefined && field.value === this.#kept(field);
  }

  /** What is entered where a field stands, as it is edited. */
  #kept(field: HTMLInputElement): string {
    const { sheet, id, key } = this.#placeOf(field);
    const { schedule, words } = this;
    return id < 0 ? '' : editedText({ schedule, sheet, words }, id, key === 'hours' ? HOURS : FACTOR);
  }

  /** The cell of a field; the id is -1 where a pair has no factor. */
  #placeOf({ dataset: { hours, group, case: name } }: HTMLInputElement): FieldPlace {
    if (hours !== undefined) return { sheet: 'cases', id: this.#columns()[Number(hours)]?.row.id ?? -1, key: 'hours' };
    const row = this.schedule.rows('factors').find(({ cells }) => cells.case === name && cells.group === group);
    return { sheet: 'factors', id: row?.id ?? -1, key: 'factor' };
  }
}

/** A block with names of cases above it and of groups before it, as a whole matrix has them. */
function namedBlock(
  block: readonly (readonly string[])[], groups: readonly string[], columns: readonly CaseColumn[],
): { readonly cells: string[][]; readonly groups: string[]; readonly columns: CaseColumn[] } | undefined {
  const [[, ...above] = [], ...lines] = block;
  const found = above.map((text) => columns.find(({ name, isNamed }) => isNamed && name === text.trim()));
  const before = lines.map(([text = '']) => text.trim());
  const isNamed = found.length > 0 && lines.length > 0 && found.every((each) => each !== undefined)
    && before.every((each) => groups.includes(each)) && lines.every((line) => line.length <= above.length + 1);
  return isNamed ? { cells: lines.map((line) => line.slice(1)), groups: before, columns: found } : undefined;
}

/** What tells a factor from others. */
const pairOf = (name: CellValue | undefined, group: CellValue | undefined): string =>
  JSON.stringify([name ?? null, group ?? null]);
const hoursOf = (id: number) => `hours ${id}`;

/** What is in a field is typed over. */
const select = ({ currentTarget }: Event): void => { (currentTarget as HTMLInputElement).select(); };

/** The shares by which rows of a group count where a case gives no factor. */
function ownText({ own }: CaseGroup, words: Words): string {
  if (own === null) return '';
  const [least, greatest] = own;
  return least === greatest ? shareText(least, words) : words.say('{least} to {greatest}', { least: shareText(least, words), greatest: shareText(greatest, words) });
}
