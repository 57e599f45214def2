import type { Words } from '../../words/index.ts';
import type { ProblemCode, ProblemList } from '../problem.ts';
import { DAY, readHours, spanName, type DaySpan, type SaidHours } from './day-span.ts';

/** What the columns of a profile mean; `note` says what was assumed. */
export interface ReadHeadings {
  /** The hours of each column. */
  readonly spans: readonly DaySpan[];
  readonly note?: string;
}

/** The hours of 24 columns without headings. */
export const EACH_HOUR: ReadHeadings = {
  spans: Array.from({ length: 24 }, (_none, hour) => ({ from: hour * 60, to: (hour + 1) * 60 })),
};

/** The hours of a heading, with its column. */
interface Heading {
  readonly text: string;
  /** Column of the table, from 1. */
  readonly column: number;
  readonly said: SaidHours;
}
interface Moment extends Heading { readonly said: { readonly at: number } }
interface Stretch extends Heading { readonly said: DaySpan }

/**
 * Whether a row above the groups says hours, or means to: it has what only hours look like (`0–8`, `07:00`, `7 h`),
 * whole numbers up to 24 as hours follow each other, or no figures at all.
 * @param cells its cells behind the first column.
 */
export function isHeadingRow(cells: readonly string[]): boolean {
  const filled = cells.filter((text) => text !== '');
  if (filled.some((text) => !/^\d+$/.test(text) && readHours(text) !== undefined)) return true;
  if (filled.every((text) => !/^[+\-−.,]*\d/.test(text))) return true;
  const hours = filled.map(Number);
  // Two columns of 0 and 1 are factors; so are figures that come again, but in a row that goes up, and what is drawn
  // all day.
  const different = new Set(hours).size;
  return filled.every((text) => readHours(text) !== undefined) && hours.some((hour) => hour > 1)
    && (different === hours.length || different > 1 && hours.every((hour, index) => hour >= (hours[index - 1] ?? 0)));
}

/** Reads the headings of a profile, the first of which stands in column 2. */
export class HeadingReader {
  readonly #row: number;
  readonly #list: ProblemList;
  readonly #words: Words;

  constructor(row: number, list: ProblemList, words: Words) {
    this.#row = row;
    this.#list = list;
    this.#words = words;
  }

  /** @returns `undefined` when there is something wrong, which then is in the list. */
  read(texts: readonly string[]): ReadHeadings | undefined {
    const headings = texts.flatMap((text, index): Heading[] => {
      const [column, said] = [index + 2, readHours(text)];
      if (said !== undefined) return [{ text, column, said }];
      this.#refuse('hours-unreadable', column, text, this.#words.say(
        'Row {row}, column {column}: “{found}” does not say hours. Write from when to when, such as 0–8 or 08:00–14:00.',
        { row: this.#row, column, found: text }));
      return [];
    });
    if (headings.length < texts.length) return undefined;
    const moments = headings.filter((each): each is Moment => 'at' in each.said);
    const stretches = headings.filter((each): each is Stretch => 'from' in each.said);
    if (stretches.length === 0) return this.#betweenMoments(moments);
    for (const { column, text } of moments) {
      this.#refuse('hours-unreadable', column, text, this.#words.say(
        'Row {row}, column {column}: “{found}” says one moment, where others say from when to when. Write from when to when in all of them, such as 8–14.',
        { row: this.#row, column, found: text }));
    }
    return moments.length > 0 || !this.#fillsDay(stretches) ? undefined
      : { spans: stretches.map(({ said }) => said) };
  }

  /** Each column lasts from its moment to the next one, or from the one before where 24 h is among them. */
  #betweenMoments(moments: readonly Moment[]): ReadHeadings | undefined {
    const [first, last] = [0, DAY].map((minutes) => moments.find(({ said }) => said.at === minutes));
    if (first !== undefined && last !== undefined) {
      this.#refuse('hours-incomplete', last.column, last.text, this.#words.say(
        'Row {row}: columns {first} and {second}, “{begin}” and “{end}”, are the same moment of a day. Delete the one that does not count in it.',
        {
          row: this.#row, first: first.column, second: last.column, begin: first.text, end: last.text,
        }));
      return undefined;
    }
    const known = first ?? last;
    if (known === undefined) {
      this.#refuse('hours-unreadable', moments[0]!.column, moments[0]!.text, this.#words.say(
        'Row {row}: neither 0 nor 24 h is among the headings, from “{first}” on, so that it is not clear whether hours begin or end there. Write from when to when, such as 7–8.',
        { row: this.#row, first: moments[0]!.text }));
      return undefined;
    }
    const sorted = [...moments].sort((one, other) => one.said.at - other.said.at);
    const twice = sorted.findIndex(({ said }, index) => said.at === sorted[index + 1]?.said.at);
    if (twice >= 0) {
      this.#overlap(sorted[twice]!, sorted[twice + 1]!, sorted[twice]!.text);
      return undefined;
    }
    const spanOf = (moment: Moment): DaySpan => {
      const place = sorted.indexOf(moment);
      return first === undefined ? { from: sorted[place - 1]?.said.at ?? 0, to: moment.said.at }
        : { from: moment.said.at, to: sorted[place + 1]?.said.at ?? DAY };
    };
    const spans = moments.map(spanOf);
    const values = { heading: known.text, hours: namesOf(spans)[moments.indexOf(known)]! };
    return {
      spans,
      note: first === undefined
        ? this.#words.say('Each heading is taken for the end of its hours: “{heading}” is {hours}.', values)
        : this.#words.say('Each heading is taken for the beginning of its hours: “{heading}” is {hours}.', values),
    };
  }

  /** Whether the hours of a day stand once each; what is wrong goes to the list. */
  #fillsDay(stretches: readonly Stretch[]): boolean {
    const [first, ...others] = [...stretches].sort((one, other) => one.said.from - other.said.from);
    const withMinutes = stretches.some(({ said }) => hasMinutes(said));
    const tomorrow = { ...first!, said: { from: first!.said.from + DAY, to: first!.said.to + DAY } };
    let fills = true;
    /** The one that lasts longest so far. */
    let reached = first!;
    for (const next of [...others, tomorrow]) {
      const [{ to }, { from }] = [reached.said, next.said];
      if (to > from) this.#overlap(reached, next, namesOf([{ from, to: Math.min(to, next.said.to) }], withMinutes)[0]!);
      if (to < from) this.#gap(namesOf([{ from: to, to: from }], withMinutes)[0]!, stretches);
      fills &&= to === from;
      if (next.said.to > to) reached = next;
    }
    return fills;
  }

  #overlap(one: Heading, other: Heading, hours: string): void {
    const [first, second] = one.column < other.column ? [one, other] : [other, one];
    this.#refuse('hours-incomplete', second.column, second.text, this.#words.say(
      'Row {row}: columns {first} and {second}, “{one}” and “{other}”, both hold {hours}; each hour may stand once. Correct one of the headings.',
      {
        row: this.#row, first: first.column, second: second.column, one: first.text, other: second.text, hours,
      }));
  }

  #gap(hours: string, stretches: readonly Stretch[]): void {
    const total = stretches.reduce((sum, { said }) => sum + said.to - said.from, 0) / 60;
    this.#refuse('hours-incomplete', undefined, `${total} h`, this.#words.say(
      'Row {row}: no column holds {hours}; the headings come to {total} h, a day has 24 h. Add a column for these hours, or correct the headings.',
      { row: this.#row, hours, total }));
  }

  #refuse(code: ProblemCode, column: number | undefined, received: string, sentence: string): void {
    this.#list.add(code, `/${this.#row}${column === undefined ? '' : `/${column}`}`, sentence,
      { line: this.#row, ...(column === undefined ? {} : { column }), received });
  }
}

function hasMinutes({ from, to }: DaySpan): boolean {
  return from % 60 !== 0 || to % 60 !== 0;
}

/** The names of the cases of a profile: with minutes where one of them has any. */
export function namesOf(spans: readonly DaySpan[], withMinutes = spans.some(hasMinutes)): string[] {
  return spans.map((span) => spanName(span, withMinutes));
}
