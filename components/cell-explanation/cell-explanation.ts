import { html, LitElement, nothing, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, SCHEMA, titleWithUnit } from '../../src/schedule/index.ts';
import { GoToEvent } from '../events/index.ts';
import { controls, markShape, numberAt, rowName, statusMarkStyles, type Place } from '../look/index.ts';
import { styles } from './cell-explanation.styles.ts';

type Explanation = NonNullable<ReturnType<LoadSchedule['explain']>>;
type Part = Explanation['parts'][number];

/** Parts of a total listed by name; the others are counted. */
const PARTS_SHOWN = 8;

/** Why the figure in the selected cell is what it is, or what belongs in it. */
export class CellExplanation extends LitElement {
  static override styles = [controls, statusMarkStyles, styles];
  static override properties = {
    schedule: { attribute: false }, place: { attribute: false }, revision: { attribute: false },
    locale: { attribute: false },
  };

  declare schedule: LoadSchedule | undefined;
  /** The selected cell. */
  declare place: Place | undefined;
  /** Changes whenever the schedule did. */
  declare revision: number;
  /** Language tag by whose custom figures are written. */
  declare locale: string;

  constructor() {
    super();
    this.locale = 'en';
  }

  override render(): TemplateResult {
    const { schedule, place } = this;
    if (schedule === undefined || place === undefined || schedule.document.row(place.sheet, place.id) === undefined) {
      return html`<p class="quiet">Select a figure to read how it comes about.</p>`;
    }
    const { sheet, id, key } = place;
    const explanation = schedule.explain(sheet, id, key, this.locale);
    return html`<div class="text">
      <p class="rule"><b>${explanation?.title ?? titleWithUnit(columnOf(sheet, key))}</b>
        <span class="quiet">of ${rowName(schedule, place)}</span>
        ${explanation === undefined ? nothing : reckoning(explanation)}</p>
      ${explanation?.numbers === undefined ? this.#help(place) : html`<p class="origin">${this.#parts(place, explanation)}
        <span class="quiet source">Source: ${explanation.source}</span></p>`}
      ${this.#findings(place)}
    </div>`;
  }

  /** What belongs in the cell, the formula in it, and the way to the row that it names. */
  #help(place: Place): TemplateResult {
    const { sheet, id, key } = place;
    const column = columnOf(sheet, key);
    const formula = this.schedule!.formulaText(sheet, id, key);
    const names = column.role === 'input' && column.to !== undefined && this.schedule!.target(sheet, id, key) >= 0;
    return html`<p>${formula === undefined ? nothing : html`Formula <b>${formula}</b>. `}<span class="quiet">${column.help}</span>
      ${names ? html`<button type="button" class="link" @click=${() => { this.#followReference(place); }}>
        Go to this ${SCHEMA[column.to].rowName}</button>` : nothing}</p>`;
  }

  #followReference({ sheet, id, key }: Place): void {
    const column = columnOf(sheet, key);
    if (column.role !== 'input' || column.to === undefined) return;
    const target = this.schedule!.target(sheet, id, key);
    this.dispatchEvent(new GoToEvent({ sheet: column.to, id: target, key: SCHEMA[column.to].tag }));
  }

  /** The figures that the result follows from, each leading to its cell; those of a total by row, the largest first. */
  #parts({ sheet, key }: Place, { parts }: Explanation): TemplateResult {
    const column = columnOf(sheet, key);
    const isTotal = column.role === 'computed' && column.total !== undefined;
    const present = parts.filter(({ id }) => id >= 0);
    if (isTotal) {
      const amount = (part: Place) => numberAt(this.schedule!, part) ?? Infinity;
      present.sort((one, other) => amount(other) - amount(one));
    }
    const nameOf = (part: Part) => isTotal ? rowName(this.schedule!, part) : part.label;
    const go = (part: Part) => () => { this.dispatchEvent(new GoToEvent(part)); };
    return html`${present.slice(0, PARTS_SHOWN).map((part) => html`<button type="button" class="part english" @click=${go(part)}>
        ${nameOf(part)} <b>${part.text}</b></button>`)}
      ${present.length > PARTS_SHOWN ? html`<span class="quiet">and ${present.length - PARTS_SHOWN} more</span>` : nothing}`;
  }

  #findings({ sheet, id, key }: Place): TemplateResult | typeof nothing {
    const found = this.schedule!.findingsOf(sheet, id).filter((each) => each.key === key || key === 'status');
    if (found.length === 0) return nothing;
    return html`${found.map(({ severity, message }) => html`<p class="found">${markShape(severity)} <span class="english">${message}</span></p>`)}`;
  }
}

/** The rule in words, with numbers, and the result; of an input, the value and where it comes from. */
function reckoning({ words, numbers, result }: Explanation): TemplateResult {
  if (numbers === undefined) return html`<span class="sign">=</span> <b class="result">${result}</b>, ${words}`;
  return html`<span class="sign">=</span> <span>${words}</span>
    <span class="sign">=</span> <span>${numbers}</span>
    <span class="sign">=</span> <b class="result">${result}</b>`;
}
