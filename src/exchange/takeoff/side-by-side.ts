import { headingFields, headingScore, MOST_HEADINGS, MOST_LINES_ABOVE } from './find-heading.ts';
import { TYPE_FACTS, type TakeoffField } from './field.ts';
import { plainWords } from './plain-words.ts';
import type { TakeoffRecord } from './records.ts';
import type { RememberedColumns } from './remembered-columns.ts';

/** The columns of one of several lists that stand side by side, places from 0. */
export interface Band {
  /** Those of its own, and those that it shares with the others, as a room in front of all of them. */
  readonly columns: readonly number[];
  readonly own: readonly number[];
}

/** More stretches of columns than lists on any sheet. */
const MOST_BANDS = 50;
const NAMING: readonly TakeoffField[] = ['type', 'description'];

/**
 * Lists side by side with blank columns between them, each of which names and counts devices, or explains their codes,
 * under headings of its own. @returns none where there is but one.
 */
export function bandsBetweenBlanks(records: readonly TakeoffRecord[], remembered: RememberedColumns): Band[] {
  const bands: number[][] = [];
  let naming: readonly TakeoffField[] = [];
  for (const stretch of stretchesOf(records)) {
    const { kind, names } = kindOf(fieldsWithin(records, stretch, remembered));
    const begins = kind !== undefined && names.some((field) => naming.includes(field));
    if (bands.length === 0 || begins) bands.push([...stretch]);
    else bands.at(-1)!.push(...stretch);
    const { kind: joined, names: own } = kindOf(fieldsWithin(records, bands.at(-1)!, remembered));
    naming = joined === undefined ? [] : own;
  }
  return bands.length < 2 ? [] : bands.map((columns) => ({ columns, own: columns }));
}

/**
 * Lists under one line of headings in which the same headings come again, as «Room, Device, Qty, Device, Qty».
 * @param width how many columns there are, also without headings.
 * @returns none where they do not.
 */
export function bandsOfHeadings(fields: readonly string[], width: number): Band[] {
  const headings = fields.slice(0, MOST_HEADINGS);
  const keys = headings.map((text) => plainWords(text).join(' '));
  const filled = keys.flatMap((key, index) => key === '' ? [] : [index]);
  for (const start of filled) {
    const again = filled.find((index) => index > start && keys[index] === keys[start]);
    if (again === undefined) continue;
    const block = filled.filter((index) => index >= start && index < again);
    const comesAt = (at: number) => block.every((index) => keys[at + index - start] === keys[index]);
    if (block.length < 2 || !comesAt(again)) continue;
    if (!isOneList(block.map((index) => headings[index]!), start === filled[0])) continue;
    const starts = filled.filter((index) => index >= start && keys[index] === keys[start] && comesAt(index));
    const end = starts.at(-1)! + block.at(-1)! - start;
    const shared = Array.from({ length: width }, (_, index) => index).filter((index) => index < start || index > end);
    return starts.map((from, place) => {
      const own = headings.flatMap((_, index) =>
        index >= from && index <= end && index < (starts[place + 1] ?? Infinity) ? [index] : []);
      return { own, columns: [...own, ...shared] };
    });
  }
  return [];
}

/**
 * The lines of one of the lists. A title above all of them is that of each; a line that has something of another list
 * alone is not one of it.
 */
export function withinBand(
  records: readonly TakeoffRecord[], { columns, own }: Band, isFirst: boolean, headingLine: number,
): TakeoffRecord[] {
  const within = new Set(columns);
  return records.flatMap((record) => {
    const texts = record.fields.filter((text) => text !== '');
    const fields = Array.from({ length: Math.max(record.fields.length, own[0]! + 1) }, (_, index) =>
      within.has(index) ? record.fields[index] ?? '' : '');
    if (record.line < headingLine && texts.length === 1) fields[own[0]!] = texts[0]!;
    const isBlank = own.every((index) => (fields[index] ?? '') === '');
    return isBlank && !(isFirst && (texts.length === 0 || fields.some((text) => text !== ''))) ? [] : [{ ...record, fields }];
  });
}

/** Stretches of columns between blank ones. */
function stretchesOf(records: readonly TakeoffRecord[]): number[][] {
  const filled = new Set<number>();
  for (const { fields } of records) for (const [index, text] of fields.entries()) if (text !== '') filled.add(index);
  const stretches: number[][] = [];
  for (const index of [...filled].sort((one, other) => one - other)) {
    if (stretches.at(-1)?.at(-1) === index - 1) stretches.at(-1)!.push(index);
    else stretches.push([index]);
  }
  return stretches.length > MOST_BANDS ? [] : stretches;
}

/** What the headings within some columns say, in the line that looks most like headings. */
function fieldsWithin(
  records: readonly TakeoffRecord[], columns: readonly number[], remembered: RememberedColumns,
): ReadonlySet<TakeoffField> {
  const lines = records.slice(0, MOST_LINES_ABOVE).map(({ fields }) => columns.map((index) => fields[index] ?? ''));
  const scores = lines.map((texts) => headingScore(texts, remembered));
  const best = Math.max(0, ...scores);
  return best === 0 ? new Set() : fieldsOf(lines[scores.indexOf(best)]!);
}

function fieldsOf(headings: readonly string[]): ReadonlySet<TakeoffField> {
  return new Set(headings.flatMap((heading) => headingFields(heading)[0]?.field ?? []));
}

function kindOf(fields: ReadonlySet<TakeoffField>): { readonly kind: 'list' | 'legend' | undefined; readonly names: readonly TakeoffField[] } {
  const names = NAMING.filter((field) => fields.has(field));
  const explains = fields.has('type') && (fields.has('description') || TYPE_FACTS.some((fact) => fields.has(fact)));
  return { names, kind: names.length === 0 ? undefined : fields.has('qty') ? 'list' : explains ? 'legend' : undefined };
}

/** Whether headings that come again are those of a list, or of a matrix where there are no others in front of them. */
function isOneList(headings: readonly string[], isFirst: boolean): boolean {
  const fields = fieldsOf(headings);
  const [first] = headingFields(headings[0]!);
  return kindOf(fields).kind === 'list' || (isFirst && first !== undefined && first.field !== 'qty');
}
