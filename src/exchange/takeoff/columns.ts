import { JOINED_FIELDS, type TakeoffField } from './field.ts';
import { headingFields } from './find-heading.ts';
import { readQuantity } from './quantity.ts';
import { rememberedField, type RememberedColumns } from './remembered-columns.ts';
import type { TakeoffRecord } from './records.ts';

/** A column of a takeoff, and what it is taken to hold. */
export interface TakeoffColumn {
  /** Place in the line, from 0. */
  readonly index: number;
  /** Empty where the takeoff has no headings. */
  readonly heading: string;
  /** What it holds; `undefined` for a column that is not read. */
  readonly field: TakeoffField | undefined;
  /** What that was concluded from. */
  readonly from: 'remembered' | 'heading' | 'values' | undefined;
  /** How many lines have something in it. */
  readonly values: number;
}

/** How many lines show what a column holds. */
const SAMPLE = 500;
/** Headings that may stand over a count as well as over a number of the line. */
const COUNT_OR_NUMBER = /^\W*(?:no|nr|n|n[°º]|№|number|numero|numéro|nummer|#)\W*$/i;

/**
 * Proposes what each column holds: what is remembered goes first, then what the headings say, as long as the values
 * bear it out, then what the values look like.
 * @param isKnown whether a text is the name of a known device type.
 */
export function proposeColumns(
  headings: readonly string[], body: readonly TakeoffRecord[], remembered: RememberedColumns,
  isKnown: (name: string) => boolean,
): TakeoffColumn[] {
  const width = body.reduce((most, { fields }) => Math.max(most, fields.length), headings.length);
  const columns =
    Array.from({ length: width }, (_, index) => new Draft(index, headings[index] ?? '', body, remembered));
  const taken = new Set(columns.flatMap(({ field }) => field ?? []));
  const take = (column: Draft | undefined, field: TakeoffField, from: 'heading' | 'values') => {
    if (column === undefined) return;
    column.assign(field, from);
    taken.add(field);
  };
  for (const exact of [true, false]) {
    for (const column of columns) {
      const free = column.said.find((each) => each.exact === exact
        && (!taken.has(each.field) || JOINED_FIELDS.has(each.field)));
      if (column.isOpen && free !== undefined) take(column, free.field, 'heading');
    }
  }
  if (!taken.has('qty')) {
    const counts =
      columns.filter((column) => (column.isOpen || COUNT_OR_NUMBER.test(column.heading)) && column.mayCount);
    const numbered = counts.filter(({ heading }) => COUNT_OR_NUMBER.test(heading));
    // Counts in a column for each storey: to take one of them would leave the others out.
    const isUnclear = headings.length > 0 && counts.length > 1 && numbered.length !== 1;
    const [count] = numbered.length === 1 ? numbered : counts;
    if (!isUnclear) take(count, 'qty', 'values');
  }
  if (!taken.has('type') && !taken.has('description')) {
    const open = columns.filter((column) => column.isOpen && column.letterShare >= 0.5);
    const known = most(open, (column) => column.share((text) => isKnown(text)), 0.1);
    take(known ?? most(open, (column) => column.letterShare, 0.5), 'type', 'values');
  }
  if (headings.length === 0 && !taken.has('area')) {
    take(most(columns.filter(({ isOpen }) => isOpen), (column) => column.letterShare, 0.5), 'area', 'values');
  }
  return columns.map(({ index, heading, field, from, values }) => ({ index, heading, field, from, values }));
}

/** The mapping as plain data, for the next takeoff of the same office. */
export function columnsToRemember(columns: readonly TakeoffColumn[]): RememberedColumns {
  return Object.fromEntries(columns.map(({ index, heading, field }) =>
    [heading === '' ? String(index + 1) : heading, field ?? 'ignore']));
}

class Draft {
  readonly said: readonly { readonly field: TakeoffField; readonly exact: boolean }[];
  readonly values: number;
  field: TakeoffField | undefined;
  from: TakeoffColumn['from'];
  readonly index: number;
  readonly heading: string;
  readonly #sample: readonly string[];

  constructor(index: number, heading: string, body: readonly TakeoffRecord[], remembered: RememberedColumns) {
    this.index = index;
    this.heading = heading;
    this.values = body.filter(({ fields }) => (fields[index] ?? '') !== '').length;
    this.#sample = body.slice(0, SAMPLE).map(({ fields }) => fields[index] ?? '').filter((text) => text !== '');
    const known = rememberedField(remembered, heading, index);
    if (known !== undefined) this.from = 'remembered';
    if (known !== 'ignore') this.field = known;
    this.said = headingFields(heading).flatMap(({ field, exact }) => {
      const borneOut = this.#borneOut(field, exact);
      return borneOut === undefined ? [] : { field: borneOut, exact };
    });
  }

  get isOpen(): boolean {
    return this.from === undefined;
  }

  /** Whether most values are plain counts, and not the numbers 1, 2, 3 … of the lines. */
  get mayCount(): boolean {
    const first = Number(this.#sample[0]);
    const isNumbering = this.#sample.length > 2 && this.#sample.every((text, index) => Number(text) === first + index);
    return !isNumbering && this.share(isPlainCount) >= 0.5;
  }

  get letterShare(): number {
    return this.share((text) => /\p{L}/u.test(text));
  }

  /** Part of the values that are so; 0 when there are none. */
  share(isSo: (text: string) => boolean): number {
    return this.#sample.length === 0 ? 0 : this.#sample.filter(isSo).length / this.#sample.length;
  }

  assign(field: TakeoffField, from: 'heading' | 'values'): void {
    this.field = field;
    this.from = from;
  }

  /**
   * «Item» over 1, 2, 3 numbers the lines, «Nos» over words counts nothing, «First floor» over 4, 2, 6 is no area, and
   * «Unit price» or «P.U.» over 35.50 no unit.
   */
  #borneOut(field: TakeoffField, exact: boolean): TakeoffField | undefined {
    if (this.#sample.length === 0) return field;
    if (field === 'unit' && this.share((text) => /^\p{L}/u.test(text)) < 0.5) return undefined;
    if (field === 'area' && !exact && this.share(isPlainCount) === 1) return undefined;
    if ((field === 'type' || field === 'description') && this.letterShare < 0.5) return 'ref';
    return field === 'qty' && this.share(holdsQuantity) < 0.5 ? undefined : field;
  }
}

/** Either decimal sign will do to see whether there is a number. */
function holdsQuantity(text: string): boolean {
  return readQuantity(text, '', '.').qty !== null;
}

/** «Room 101» holds a number but counts nothing. */
function isPlainCount(text: string): boolean {
  const { qty, doubt } = readQuantity(text, '', '.');
  return qty !== null && doubt === undefined;
}

function most(columns: readonly Draft[], share: (column: Draft) => number, least: number): Draft | undefined {
  const shares = columns.map(share);
  const best = Math.max(0, ...shares);
  return best < least ? undefined : columns[shares.indexOf(best)];
}
