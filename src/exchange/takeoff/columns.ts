import { looksLikeArea } from './area-words.ts';
import { chooseCounts, type CountColumn } from './count-columns.ts';
import { placeOf } from './count-headings.ts';
import { JOINED_FIELDS, TYPE_FACTS, type TakeoffField } from './field.ts';
import { DASH, headingFields } from './find-heading.ts';
import { namesOtherQuantity } from './other-quantity.ts';
import { isCount, readQuantity } from './quantity.ts';
import { countsUnits, perUnit } from './per-unit.ts';
import { plainKey } from './plain-words.ts';
import { rememberedField, type RememberedColumns } from './remembered-columns.ts';
import type { TakeoffRecord } from './records.ts';
import { isStatus } from './superseded-words.ts';
import { namesTotal } from './total-words.ts';

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
  /** It holds counts beside those of another column, and whether they count besides is asked for each. */
  readonly isAsked?: true;
  /** It holds the rooms of a table whose headings may be rooms as well, and what it holds the types. */
  readonly isGuess?: true;
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
  const isCounted = taken.has('qty');
  for (const exact of [true, false]) {
    for (const column of columns) {
      const free = column.said.find((each) => each.exact === exact
        && (!taken.has(each.field) || JOINED_FIELDS.has(each.field)));
      // Where a person has said which columns count, no other does.
      if (column.isOpen && free !== undefined && !(isCounted && free.field === 'qty')) take(column, free.field, 'heading');
    }
  }
  // «Device» beside «Code» says what the code means.
  for (const column of columns) {
    if (column.isOpen && column.said[0]?.field === 'type' && column.said[0].exact && taken.has('type')) take(column, 'description', 'heading');
  }
  // «Bauteil» is a component, and a part of a building beside «Gerät».
  const isType = ({ said, from }: Draft) => from === 'heading' && said[0]?.field === 'type' && said[0].exact;
  const isPart = ({ heading }: Draft) => plainKey(heading) === 'bauteil';
  const part = columns.find((column) => isType(column) && isPart(column));
  const device = columns.find((column) => isType(column) && !isPart(column));
  if (part !== undefined && device !== undefined) {
    take(part, 'area', 'heading');
    take(device, 'type', 'heading');
  }
  for (const column of columns) if (isAmount(column, columns)) column.ignore();
  if (!isCounted) takeTimes(columns);
  if (!isCounted) takeCounts(columns, headings.length > 0);
  nameDevices(columns, headings.length > 0, isKnown);
  return columns.map(({ index, heading, field, from, values, isAsked, isGuess }) =>
    ({ index, heading, field, from, values, ...(isAsked ? { isAsked } : {}), ...(isGuess ? { isGuess } : {}) }));
}

/** Whether a column has what the counts of another cost: «Amount» and «Total» beside a unit price are sums of money. */
function isAmount(column: Draft, columns: readonly Draft[]): boolean {
  const price = columns.find(({ field }) => field === 'price')?.numbers;
  const mayBe = column.isOpen || (column.from === 'heading' && (column.field === 'qty' || column.field === 'total'));
  if (price === undefined || !mayBe) return false;
  const amounts = column.numbers;
  return columns.some((other) => {
    if (other === column || other.field !== 'qty') return false;
    const known = other.numbers.map((qty, line) => [qty, price[line], amounts[line]] as const)
      .filter((each): each is readonly [number, number, number] =>
        each.every((value) => typeof value === 'number' && value > 0));
    const equal = known.filter(([qty, each, amount]) => Math.abs(qty * each - amount) < 0.01 * qty + 5e-3);
    return known.some(([, each]) => each !== 1) && equal.length > known.length / 2;
  });
}

/**
 * Finds the column that says how many there are of what is counted once, as flats. Where another column has the
 * products, these are the quantities, and nothing is to be multiplied.
 */
function takeTimes(columns: readonly Draft[]): void {
  const isPer = ({ heading, field }: Draft) => perUnit(heading) !== undefined && (field === 'qty' || field === undefined);
  const hasPer = columns.some((column) => isPer(column) || (column.field === 'unit' && column.share((text) => perUnit(text) !== undefined) > 0));
  const [times, ...others] = columns.filter((column) => column.from !== 'remembered' && column.share(isCount) >= 0.5 && countsUnits(column.heading, hasPer));
  if (times === undefined || others.length > 0) return;
  const counts = columns.filter((column) => column !== times && column.share(isCount) >= 0.5 && column.from !== 'remembered');
  for (const product of counts) {
    const base = counts.find((column) => column !== product && isProduct(product, column, times));
    if (base === undefined) continue;
    for (const factor of [base, times]) factor.ignore();
    product.assign('qty', 'heading');
    return;
  }
  times.assign('times', 'heading');
}

function isProduct(product: Draft, base: Draft, times: Draft): boolean {
  const known = product.counts.map((count, line) => [count, base.counts[line], times.counts[line]] as const)
    .filter((each): each is readonly [number, number, number] =>
      each.every((value) => value !== undefined && value > 0));
  return known.some(([, , factor]) => factor !== 1)
    && known.every(([count, each, factor]) => Math.abs(each * factor - count) < 5e-4);
}

/** Finds the columns of counts, one or several, and the column of their total. */
function takeCounts(columns: readonly Draft[], hasHeadings: boolean): void {
  const said = columns.filter(({ field }) => field === 'qty');
  const open = columns.filter((column) => (column.isOpen || COUNT_OR_NUMBER.test(column.heading)) && column.mayCount);
  if (said.length === 0) {
    const numbered = open.filter(({ heading }) => COUNT_OR_NUMBER.test(heading));
    // «No.» beside storeys numbers the lines.
    const isNumber = numbered.length === 1 && !open.some(({ heading }) => looksLikeArea(heading));
    const [count] = isNumber ? numbered : open.length > 1 ? [] : open;
    if (count !== undefined) {
      count.assign('qty', 'values');
      count.isAsked = isStatus(count.heading);
      return;
    }
  }
  if (!hasHeadings) return;
  const named = open.filter(({ isOpen, heading }) => isOpen && /[\p{L}\d]/u.test(heading));
  const { counts, asked, total } = chooseCounts(
    columns.filter((column) => said.includes(column) || named.includes(column)));
  for (const column of said) column.release();
  for (const column of counts) column.assign('qty', said.includes(column) ? 'heading' : 'values');
  for (const column of asked) {
    column.assign('qty', 'heading');
    column.isAsked = true;
  }
  total?.assign('total', said.includes(total) ? 'heading' : 'values');
}

/** Finds the column that names the devices; above several counts the headings may do so, and a column the rooms. */
function nameDevices(columns: readonly Draft[], hasHeadings: boolean, isKnown: (name: string) => boolean): void {
  if (columns.some(({ field }) => field === 'type' || field === 'description')) return;
  const counts = columns.filter(({ field }) => field === 'qty');
  const open = columns.filter((column) => column.isOpen && column.letterShare >= 0.5);
  const known = most(open, (column) => column.share(isKnown), 0.1);
  const text = known ?? most(open, (column) => column.letterShare, 0.5);
  if (counts.length > 1) {
    const places = counts.map(({ heading }) => placeOf(heading));
    // Rooms that have a number only stand in a column without a heading.
    const beside = text ?? columns.find(({ isOpen, heading, values }) => isOpen && heading === '' && values > 0);
    const hasAreas = columns.some((column) => column.field === 'area');
    const field = matrixField(places, hasAreas, beside, isKnown);
    if (beside !== undefined && (field !== undefined || !hasAreas)) {
      beside.assign(field ?? 'area', 'values');
      beside.isGuess = field === undefined;
    }
    return;
  }
  text?.assign('type', 'values');
  if (!hasHeadings && !columns.some(({ field }) => field === 'area')) {
    most(columns.filter(({ isOpen }) => isOpen), (column) => column.letterShare, 0.5)?.assign('area', 'values');
  }
}

/**
 * What the texts beside counts in several columns are: types, when the headings are rooms, or rooms, when the headings
 * are types; codes are rather types than rooms. `undefined` where both may be, which only a person knows, and where
 * rooms stand in a column already.
 */
function matrixField(
  headings: readonly string[], hasAreas: boolean, text: Draft | undefined, isKnown: (name: string) => boolean,
): 'type' | 'area' | undefined {
  const part = (isSo: (name: string) => boolean) => headings.filter(isSo).length / headings.length;
  const [above, beside] = [part(isKnown), text?.share(isKnown) ?? 0];
  if (hasAreas) return beside > above ? 'type' : undefined;
  if (above !== beside) return beside > above ? 'type' : 'area';
  const [areasAbove, areasBeside] = [part(looksLikeArea), text?.share(looksLikeArea) ?? 0];
  if (areasAbove !== areasBeside) return areasAbove > areasBeside ? 'type' : 'area';
  const [codesAbove, codesBeside] = [part(isCode), text?.share(isCode) ?? 0];
  return Math.abs(codesAbove - codesBeside) < 0.5 ? undefined : codesBeside > codesAbove ? 'type' : 'area';
}

/** A code as offices give them to types: «PD», «K2», «DL-7». */
function isCode(text: string): boolean {
  return /^(?=.*\p{Lu})[\p{Lu}\p{N}./-]{1,6}$/u.test(text);
}

/** The mapping as plain data, for the next takeoff of the same office. */
export function columnsToRemember(columns: readonly TakeoffColumn[]): RememberedColumns {
  return Object.fromEntries(columns.map(({ index, heading, field }) =>
    [heading === '' ? String(index + 1) : heading, field ?? 'ignore']));
}

class Draft implements CountColumn {
  readonly said: readonly { readonly field: TakeoffField; readonly exact: boolean }[];
  readonly values: number;
  field: TakeoffField | undefined;
  isAsked = false;
  isGuess = false;
  from: TakeoffColumn['from'];
  readonly index: number;
  readonly heading: string;
  readonly #sample: readonly string[];
  readonly #cells: readonly string[];

  constructor(index: number, heading: string, body: readonly TakeoffRecord[], remembered: RememberedColumns) {
    this.index = index;
    this.heading = heading;
    this.values = body.filter(({ fields }) => (fields[index] ?? '') !== '').length;
    this.#cells = body.slice(0, SAMPLE).map(({ fields }) => fields[index] ?? '');
    this.#sample = this.#cells.filter((text) => text !== '' && !DASH.test(text));
    const known = rememberedField(remembered, heading, index);
    if (known !== undefined) this.from = 'remembered';
    if (known !== 'ignore') this.field = known;
    this.said = headingFields(heading).flatMap(({ field, exact }) => {
      const borneOut = this.#borneOut(field, exact);
      return borneOut === undefined ? [] : { field: borneOut, exact };
    });
  }

  /** Its values as counts; what is none is `undefined`. */
  get counts(): (number | undefined)[] {
    return this.#cells.map((text) => isCount(text) ? readQuantity(text, '', '.').qty! : undefined);
  }

  /** Its heading says that it counts. */
  get isSaid(): boolean {
    return this.said.some(({ field }) => field === 'qty') || namesTotal(this.heading);
  }

  get isOpen(): boolean {
    return this.from === undefined;
  }

  /** Whether most values are counts, and not the numbers 1, 2, 3 … of lines, which stand in front or have no name. */
  get mayCount(): boolean {
    const first = Number(this.#sample[0]);
    const isInFront = this.index === 0 && !looksLikeArea(this.heading);
    const isNumbering = (isInFront || this.heading === '' || COUNT_OR_NUMBER.test(this.heading))
      && this.#sample.length > 2 && this.#sample.every((text, index) => Number(text) === first + index);
    return !isNumbering && this.share(isCount) >= 0.5 && !namesOtherQuantity(this.heading);
  }

  /** Its values as numbers, whatever they are of. */
  get numbers(): (number | null)[] {
    return this.#cells.map((text) => readQuantity(text.replace(/[€£$]|\b(?:EUR|CHF|GBP|USD)\b/gi, ''), '', '.').qty);
  }

  get letterShare(): number {
    return this.share((text) => /\p{L}/u.test(text));
  }

  /** Part of the values that are so; 0 when there are none. */
  share(isSo: (text: string) => boolean): number {
    return this.#sample.length === 0 ? 0 : this.#sample.filter(isSo).length / this.#sample.length;
  }

  release(): void {
    this.field = this.from = undefined;
  }

  /** It is known what it holds, and that it is not read. */
  ignore(): void {
    this.field = undefined;
    this.from = 'values';
  }

  assign(field: TakeoffField, from: 'heading' | 'values'): void {
    this.field = field;
    this.from = from;
  }

  /**
   * «Item» over 1, 2, 3 numbers the lines, «Nos» over words counts nothing, «First floor» over 4, 2, 6 is no area,
   * «Unit price» or «P.U.» over 35.50 no unit, and «Total draw» no count.
   */
  #borneOut(field: TakeoffField, exact: boolean): TakeoffField | undefined {
    if (this.#sample.length === 0) return field;
    if (field === 'unit' && this.share((text) => /^\p{L}/u.test(text)) < 0.5) return undefined;
    if (field === 'area' && !exact && this.share(isCount) >= 0.5) return undefined;
    if (isFact(field)) return namesTotal(this.heading) ? undefined : field;
    if ((field === 'qty' || field === 'total') && namesOtherQuantity(this.heading)) return undefined;
    // «Flat type A» over counts is a place, «Item» over 1, 2, 3 a number.
    if ((field === 'type' || field === 'description') && this.letterShare < 0.5) return exact ? 'ref' : undefined;
    return (field === 'qty' || field === 'total') && this.share(holdsQuantity) < 0.5 ? undefined : field;
  }
}

function isFact(field: TakeoffField): boolean {
  return TYPE_FACTS.some((fact) => fact === field);
}

/** Either decimal sign will do to see whether there is a number. */
function holdsQuantity(text: string): boolean {
  return readQuantity(text, '', '.').qty !== null;
}

function most(columns: readonly Draft[], share: (column: Draft) => number, least: number): Draft | undefined {
  const shares = columns.map(share);
  const best = Math.max(0, ...shares);
  return best < least ? undefined : columns[shares.indexOf(best)];
}
