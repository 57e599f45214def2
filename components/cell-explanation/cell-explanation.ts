import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { Finding } from '../../src/findings/finding.ts';
import { findingName } from '../../src/findings/finding-name.ts';
import { mayHaveRemedies } from '../../src/rework/may-have-remedies.ts';
import { explainCell } from '../../src/explanations.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, SCHEMA, tagOf, titleWithUnit } from '../../src/schedule/index.ts';
import { acceptedLine } from '../acceptance-form/index.ts';
import { GoToEvent } from '../events/index.ts';
import { controls, markShape, numberAt, rowName, standingOut, statusMarkStyles, type Place } from '../look/index.ts';
import { styles } from './cell-explanation.styles.ts';
import { picturePane } from './picture-pane.ts';
import { roomWords } from './room-words.ts';
import { runOf, runWords } from './run-words.ts';

type Explanation = NonNullable<ReturnType<typeof explainCell>>;
type Part = Explanation['parts'][number];

/** Height for which there is room whatever is selected: four lines. */
const USUAL = '6em';

/** Parts of a total listed by name; the others are counted. */
const PARTS_SHOWN = 8;

/** Findings that say themselves how long the run may be. */
const SAYS_LENGTH = new Set(['run-under-voltage', 'run-no-working-voltage', 'run-over-drop']);

const isSame = (one: Place | undefined, other: Place | undefined): boolean =>
  one?.sheet === other?.sheet && one?.id === other?.id && one?.key === other?.key;

/** Why the figure in the selected cell is what it is, or what belongs in it. */
export class CellExplanation extends LitElement {
  static override styles = [controls, statusMarkStyles, styles];
  static override properties = {
    schedule: { attribute: false }, place: { attribute: false }, revision: { attribute: false },
    readonly: { type: Boolean }, pictured: { type: Boolean, reflect: true }, accepting: { state: true },
  };

  declare schedule: LoadSchedule;
  /** The selected cell. */
  declare place: Place | undefined;
  /** Changes whenever the schedule, or its language, did. */
  declare revision: number;
  declare readonly: boolean;
  /** Whether a picture stands beside the words. */
  declare pictured: boolean;
  /** The finding whose acceptance is being entered. */
  declare protected accepting: string;
  /** Type of the device row selected last, -1 for none. */
  #lastType = -1;

  constructor() {
    super();
    this.readonly = this.pictured = false;
    this.accepting = '';
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { schedule, place } = this;
    if (changed.has('schedule')) this.#lastType = -1;
    // The grid tells of the same cell again after every action.
    if (changed.has('place') && !isSame(place, changed.get('place'))) this.accepting = '';
    if (changed.has('pictured') && this.pictured) import('../pictures/schedule-picture.define.ts').catch(reportError);
    // The number of a row that has gone may be another's.
    if (place?.sheet === 'devices') this.#lastType = schedule.target('devices', place.id, 'type');
    else if (schedule.document.row('types', this.#lastType) === undefined) this.#lastType = -1;
  }

  /**
   * It grows with what it says, and stays as large until nothing or another sheet is selected: rows keep their
   * place.
   */
  protected override updated(changed: PropertyValues<this>): void {
    const { style, place } = this;
    const isOther = changed.has('place') && place?.sheet !== changed.get('place')?.sheet;
    if (isOther || this.pictured) style.minBlockSize = '';
    if (place !== undefined && !this.pictured && this.accepting === '') {
      style.minBlockSize = `min(max(${USUAL}, ${this.offsetHeight}px), 45%)`;
    }
  }

  override render(): TemplateResult {
    const { schedule, place } = this;
    return html`<div class="words">${this.#words()}</div>
      ${this.pictured ? picturePane(schedule, this.#isThere ? place : undefined) : nothing}`;
  }

  get #isThere(): boolean {
    return this.place !== undefined && this.schedule.document.row(this.place.sheet, this.place.id) !== undefined;
  }

  #words(): TemplateResult {
    const { schedule, place } = this;
    const { words } = schedule;
    if (place === undefined || !this.#isThere) {
      return html`<p class="quiet">${words.say('Select a figure to read how it is calculated.')}</p>`;
    }
    const { sheet, id, key } = place;
    const found = schedule.findingsOf(sheet, id).filter((each) => each.key === key || key === 'status');
    const explanation = explainCell(schedule, sheet, id, key);
    return html`<div class="text spoken">
      <p class="rule"><b>${explanation?.title ?? titleWithUnit(columnOf(sheet, key), words)}</b>
        <span class="quiet">${ofRow(schedule, place)}</span>
        ${explanation === undefined ? nothing : reckoning(explanation, key !== 'status')}
        ${explanation?.checks === undefined ? nothing : html`<span class="quiet checks">(${explanation.checks})</span>`}</p>
      ${explanation?.numbers === undefined ? this.#help(place) : html`<p class="origin">${this.#parts(place, explanation)}
        <span class="quiet source">${words.say('Source: {source}', { source: explanation.source })}</span></p>`}
      ${countedIn(schedule, place)}
      ${found.map((finding) => this.#finding(finding))}
      ${this.#more(schedule, place, found)}
    </div>`;
  }

  /** What belongs in the cell, the formula in it, and the way to the row that it names. */
  #help(place: Place): TemplateResult {
    const { sheet, id, key } = place;
    const column = columnOf(sheet, key);
    const { words } = this.schedule;
    const formula = this.schedule.formulaText(sheet, id, key, words);
    const names = column.role === 'input' && column.to !== undefined && this.schedule.target(sheet, id, key) >= 0;
    return html`<p>${formula === undefined ? nothing : html`${standingOut(words.say('Formula {formula}.', { formula }), formula)} `}<span class="quiet">${words.text(column.help)}</span>
      ${names ? html`<button type="button" class="link" @click=${() => { this.#followReference(place); }}>
        ${words.say('Go to this {row}', { row: words.text(SCHEMA[column.to].rowName) })}</button>` : nothing}</p>`;
  }

  #followReference({ sheet, id, key }: Place): void {
    const column = columnOf(sheet, key);
    if (column.role !== 'input' || column.to === undefined) return;
    const target = this.schedule.target(sheet, id, key);
    this.dispatchEvent(new GoToEvent({ sheet: column.to, id: target, key: SCHEMA[column.to].tag }));
  }

  /** The figures that the result follows from, each leading to its cell; those of a total by row, the largest first. */
  #parts({ sheet, key }: Place, { parts }: Explanation): TemplateResult {
    const column = columnOf(sheet, key);
    const isTotal = column.role === 'computed' && column.total !== undefined;
    const present = parts.filter(({ id }) => id >= 0);
    if (isTotal) {
      const amount = (part: Place) => numberAt(this.schedule, part) ?? Infinity;
      present.sort((one, other) => amount(other) - amount(one));
    }
    const nameOf = (part: Part) => isTotal ? rowName(this.schedule, part) : part.label;
    const go = (part: Part) => () => { this.dispatchEvent(new GoToEvent(part)); };
    return html`${present.slice(0, PARTS_SHOWN).map((part) => html`<button type="button" class="part spoken" @click=${go(part)}>
        ${nameOf(part)} <b>${part.text}</b></button>`)}
      ${present.length > PARTS_SHOWN ? html`<span class="quiet">${this.schedule.words.say('and {n} more', { n: present.length - PARTS_SHOWN })}</span>` : nothing}`;
  }

  #finding(finding: Finding): TemplateResult {
    const { schedule } = this;
    const { words } = schedule;
    const name = findingName(finding);
    const entering = this.accepting === name && finding.accepted === undefined;
    const button = finding.accepted === undefined
      ? html`<button type="button" class="link" aria-expanded=${entering} @click=${() => { this.accepting = entering ? '' : name; }}>${words.say('Accept …')}</button>`
      : html`<button type="button" class="link" @click=${() => { schedule.withdraw(finding); }}>${words.say('Withdraw')}</button>`;
    return html`<p class="found">${markShape(finding.severity)} <span class="spoken">${finding.message}${acceptedLine(finding, words)}
        ${this.readonly ? nothing : button}</span></p>
      ${this.readonly || finding.accepted !== undefined || !mayHaveRemedies(finding) ? nothing : this.#remedies(finding)}
      ${entering ? html`<elv-acceptance-form .schedule=${schedule} .finding=${finding} @close=${this.#closed}></elv-acceptance-form>` : nothing}`;
  }

  /** What would put it right is tried by a part that is fetched with the first finding. */
  #remedies(finding: Finding): TemplateResult {
    import('../remedy-list/remedy-list.define.ts').catch(reportError);
    return html`<elv-remedy-list .schedule=${this.schedule} .finding=${finding} .revision=${this.revision}></elv-remedy-list>`;
  }

  /** Gives the first remedy of what was found in the selected cell the focus. */
  focusRemedy(): void {
    this.renderRoot.querySelector('elv-remedy-list')?.focus();
  }

  readonly #closed = (): void => {
    this.accepting = '';
    void this.updateComplete.then(() => { this.renderRoot.querySelector<HTMLElement>('.found .link')?.focus(); });
  };

  /** What more fits, and what the run of the row could be. */
  #more(schedule: LoadSchedule, place: Place, found: readonly Finding[]): TemplateResult[] {
    const run = runOf(schedule, place);
    const said = run < 0 || found.some(({ rule }) => SAYS_LENGTH.has(rule));
    const words = [roomWords(schedule, place, this.#lastType), said ? '' : runWords(schedule, run)];
    return words.filter((each) => each !== '').map((each) => html`<p class="spoken more">${each}</p>`);
  }
}

/** The list in which the devices of a row were counted. */
function countedIn(schedule: LoadSchedule, { sheet, id, key }: Place): TemplateResult | typeof nothing {
  const source = sheet === 'devices' && key !== 'source' ? schedule.document.row(sheet, id)!.cells.source : null;
  return typeof source !== 'string' ? nothing
    : html`<p class="quiet spoken counted">${schedule.words.say('Counted in {source}.', { source })}</p>`;
}

/** The row of the selected cell, behind the title of its column. */
function ofRow(schedule: LoadSchedule, place: Place): string {
  const row = schedule.document.row(place.sheet, place.id)!;
  const tag = tagOf(place.sheet, row);
  return tag === '' ? schedule.words.say('of row {row}', { row: schedule.document.position(place.sheet, place.id) + 1 })
    : schedule.words.say('of {tag}', { tag });
}

/**
 * The rule in words, with numbers, and the result; of an input, the value and where it comes from.
 * @param withNumbers those of a status are its findings, which stand below.
 */
function reckoning({ words, numbers, result }: Explanation, withNumbers: boolean): TemplateResult {
  if (numbers === undefined) return html`<span class="sign">=</span> <b class="result">${result}</b>, ${words}`;
  return html`<span class="sign">=</span> <span>${words}</span>
    ${withNumbers ? html`<span class="sign">=</span> <span>${numbers}</span>` : nothing}
    <span class="sign">=</span> <b class="result">${result}</b>`;
}
