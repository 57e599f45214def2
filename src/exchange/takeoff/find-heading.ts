import { looksLikeArea } from './area-words.ts';
import { TAKEOFF_FIELDS, type TakeoffField } from './field.ts';
import { HEADING_WORDS } from './heading-words.ts';
import { isCount } from './quantity.ts';
import { plainWords } from './plain-words.ts';
import { rememberedField, type RememberedColumns } from './remembered-columns.ts';
import { isStatus } from './superseded-words.ts';

/** What stands for none in a table of counts. */
export const DASH = /^[-–—.]+$/;
/** How many columns are looked at for headings. */
export const MOST_HEADINGS = 200;
/** Longest heading in which a single word is looked for; longer texts are sentences. */
const MOST_WORDS = 5;

/**
 * What a heading says that its column holds, the likeliest first: a heading that is one of the known words, without
 * what stands in brackets, then one that holds such a word.
 */
export function headingFields(text: string): { readonly field: TakeoffField; readonly exact: boolean }[] {
  const whole = ` ${plainWords(text).join(' ')} `;
  const name = ` ${plainWords(text.replace(/[([].*$/, '')).join(' ')} `;
  if (whole.trim() === '') return [];
  const isShort = whole.trim().split(' ').length <= MOST_WORDS;
  const found = TAKEOFF_FIELDS_BY_RANK.map((field) => {
    const exact = HEADING_WORDS[field].some((word) => ` ${word} ` === whole || ` ${word} ` === name);
    return {
      field, exact, held: exact || (isShort && HEADING_WORDS[field].some((word) => whole.includes(` ${word} `))),
    };
  }).filter(({ held }) => held);
  return found.sort((a, b) => Number(b.exact) - Number(a.exact)).map(({ field, exact }) => ({ field, exact }));
}

const TAKEOFF_FIELDS_BY_RANK = Object.keys(HEADING_WORDS) as typeof TAKEOFF_FIELDS[number][];

/**
 * How much a line looks like the headings of a takeoff: the number of different fields that it names, a little more for
 * exact words. 0 for a line with numbers, and for one that does not at least name the devices, or count them, and
 * something else.
 */
export function headingScore(fields: readonly string[], remembered: RememberedColumns): number {
  if (fields.some((text) => /^[\d\s.,]+$/.test(text))) return 0;
  const named = new Set<TakeoffField>();
  let exactly = 0;
  for (const [index, text] of fields.entries()) {
    if (text === '' || index > MOST_HEADINGS) continue;
    const known = rememberedField(remembered, text, -1);
    const best = known === undefined ? headingFields(text)[0] : { field: known, exact: true };
    if (best === undefined || best.field === 'ignore') continue;
    named.add(best.field);
    if (best.exact) exactly += 1;
  }
  const isTakeoff = named.has('qty') || named.has('type') || named.has('description');
  return isTakeoff && named.size >= 2 && exactly > 0 ? named.size + exactly / 1000 : 0;
}

/** How far down the headings are looked for. */
export const MOST_LINES_ABOVE = 100;

/** How many lines below a line show that it heads columns of counts. */
const LINES_BELOW = 50;

/**
 * Place of the line that heads a table of counts, rooms above and types beside or the other way round, and names no
 * field: texts above at least two columns of counts, beside a column of texts; -1 when there is none.
 */
function findMatrixHeading(records: readonly { readonly fields: readonly string[] }[]): number {
  const countIn = (text: string) => text === '' || DASH.test(text) ? undefined : isCount(text);
  const counts = records.slice(0, MOST_LINES_ABOVE + LINES_BELOW)
    .map(({ fields }) => fields.slice(0, MOST_HEADINGS).map(countIn));
  const scores = records.slice(0, MOST_LINES_ABOVE).map(({ fields }, place) => {
    const below = counts.slice(place + 1, place + 1 + LINES_BELOW);
    const [corner = '', ...headings] = fields.slice(0, MOST_HEADINGS);
    const isHeading = (text: string) => /\p{L}/u.test(text) || (/^\d+$/.test(text) && headingFields(corner).length > 0);
    return headings.filter((heading, index) => {
      const values = below.map((each) => each[index + 1]).filter((value) => value !== undefined);
      return isHeading(heading) && values.length > 0 && values.filter((value) => value).length / values.length >= 0.75;
    }).length;
  });
  const best = Math.max(0, ...scores);
  return best < 2 ? -1 : scores.indexOf(best);
}

/** The headings of a list, and the places of the lines that hold them, which may be two; -1 when none does. */
export interface Headings {
  readonly first: number;
  readonly last: number;
  readonly texts: readonly string[];
}

type Lines = readonly { readonly fields: readonly string[] }[];

/** Finds the headings of a list, in one line or in two. */
export function findHeadings(records: Lines, remembered: RememberedColumns): Headings {
  const place = findHeading(records, remembered);
  for (const first of place < 0 ? [] : [place, place - 1]) {
    const texts = first < 0 ? undefined : headingsBelow(records, first, first === place);
    if (texts !== undefined) return { first, last: first + 1, texts };
  }
  return { first: place, last: place, texts: records[place]?.fields ?? [] };
}

/**
 * Headings of two lines, as storeys below «Quantity», or counts below buildings, each behind what stands above it, also
 * where that is merged over several; `undefined` where the line below holds no headings. What is merged downwards may
 * stand in both.
 * @param isHeading the upper line is known to hold headings, and not perhaps a title.
 */
function headingsBelow(records: Lines, first: number, isHeading: boolean): string[] | undefined {
  const above = records[first]!.fields;
  const below = (records[first + 1]?.fields ?? []).map((text, index) => text === above[index] ? '' : text);
  const body = records.slice(first + 2, first + 2 + LINES_BELOW);
  const groups: string[] = [];
  for (let index = 0; index < Math.max(above.length, below.length); index += 1) {
    const own = above[index] ?? '';
    groups.push(own === '' ? groups[index - 1] ?? '' : own);
  }
  const isFree = (index: number) => groups[index] === '' || (isHeading && headingFields(groups[index]!)[0]?.field === 'qty');
  const reachesOver = (index: number) => (above[index] ?? '') === '' && groups[index] !== '';
  const counts = (index: number) => {
    // The headings may come again on the next page.
    const values = body.map(({ fields }) => fields[index] ?? '')
      .filter((text) => ![above[index], below[index], ''].includes(text) && !DASH.test(text));
    // Below a heading of its own a text is a heading only where counts show it.
    return values.length === 0 ? reachesOver(index) : values.filter(isCount).length >= values.length * 0.75;
  };
  const filled = below.flatMap((text, index) => text === '' ? [] : [index]);
  const isText = (index: number) => /\p{L}/u.test(below[index]!) && !/^\d+\s/.test(below[index]!);
  if (
    filled.length < 2 || !filled.every(isText) || !filled.some(reachesOver)
    || !filled.every((index) => isFree(index) || counts(index))
  ) {
    return undefined;
  }
  return groups.map((group, index) => (below[index] ?? '') === '' ? above[index] ?? '' : `${group} ${below[index]}`.trim());
}

/** Place of the line that holds the headings; -1 when none does. */
export function findHeading(
  records: readonly { readonly fields: readonly string[] }[], remembered: RememberedColumns,
): number {
  let [best, place] = [0, -1];
  for (const [index, { fields }] of records.slice(0, MOST_LINES_ABOVE).entries()) {
    const score = headingScore(fields, remembered);
    if (score > best) [best, place] = [score, index];
  }
  if (place >= 0) return place;
  const matrix = findMatrixHeading(records);
  return matrix >= 0 ? matrix : findLoneHeading(records);
}

/**
 * Place of the first line that is more than a title, where it names the devices by an exact word and has places, years
 * or a status beside it, as «Device, EG» and «Device, 2025»: a count would be no heading; -1 else.
 */
function findLoneHeading(records: readonly { readonly fields: readonly string[] }[]): number {
  const place = records.findIndex(({ fields }) => fields.filter((text) => text !== '').length > 1);
  const said = records[place]?.fields.slice(0, MOST_HEADINGS).filter((text) => text !== '').map((text) => ({ text, best: headingFields(text)[0] })) ?? [];
  const isNaming = said.some(({ best }) => best?.exact === true && (best.field === 'type' || best.field === 'description'));
  return isNaming && said.every(({ text, best }) => best?.exact === true || looksLikeArea(text) || isStatus(text) || /^\d{4}$/.test(text)) ? place : -1;
}
