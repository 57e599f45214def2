import { grouped, type Cells } from '../../schedule/index.ts';
import type { LineSource } from './source.ts';

/** Between the name of a file and that of its sheet. */
const BEFORE_SHEET = ' › ';
/** How many places are named; a row that is the sum of more says `…` for the others. */
const MOST_NAMED = 12;
/** One list and its lines within the text of a source. */
const PART = /(.+?): \d[\d–/, ]*(?:…)?(?:; |$)/gy;
/** Places, and behind them what the list calls the row. */
const CALLED = /^(.*?: \d[\d–/, …]*) \(([^]*)\)$/;
/** What a list tells a row by, in the order in which a source says it. */
const TOLD_BY = ['type', 'area', 'ref'] as const;

/**
 * The places that a device row was counted in as one text, the same in every language; a line with several counts is
 * named with the number of the column. Behind them stands what the list calls it, so that it is found again in the list
 * whatever a person calls it by then; nothing of places alone.
 * @example sourceText([{ file: 'hotel.csv', line: 4 }, { file: 'hotel.csv', line: 11 }], { type: 'PIR', area: 'Bar' })
 * // 'hotel.csv: 4, 11 (PIR › Bar)'
 */
export function sourceText(places: readonly LineSource[], row: Cells = {}): string {
  const called = TOLD_BY.map((key) => row[key] ?? '').join(BEFORE_SHEET).replace(/[› ]+$/, '');
  const text = placesText(places);
  return text === '' || called === '' ? text : `${text} (${called})`;
}

/** The places that a source names, without what the list calls the row. */
export function placesOf(source: string): string {
  return CALLED.exec(source)?.[1] ?? source;
}

/** A source with other places: the list calls the row what it called it. */
export function movedTo(places: string, source: string): string {
  return places + source.slice(placesOf(source).length);
}

/** What the list calls a row, by its source; `undefined` where that does not say it. */
export function calledIn(source: string): Cells | undefined {
  const called = partsOf(source) && CALLED.exec(source)?.[2]!.split(BEFORE_SHEET);
  return called && Object.fromEntries(TOLD_BY.map((key, place) => [key, called[place] ?? null]));
}

function placesText(places: readonly LineSource[]): string {
  return [...grouped(places, listName)].map(([list, of]) => {
    const whole = of.filter(({ column }) => column === undefined).map(({ line }) => line);
    const cells = of.filter(({ column }) => column !== undefined).map(({ line, column }) => `${line}/${column}`);
    const named = [...stretches(whole), ...cells];
    return `${list}: ${[...named.slice(0, MOST_NAMED), ...named.length > MOST_NAMED ? ['…'] : []].join(', ')}`;
  }).join('; ');
}

/** Name of the list that a place stands in: its file, and its sheet where it has several. */
export function listName({ file, sheet }: Pick<LineSource, 'file' | 'sheet'>): string {
  return [file, sheet].filter((part) => part !== undefined).join(BEFORE_SHEET);
}

/** The file, or whatever it was pasted as, of a list. */
export function fileOf(list: string): string {
  return list.split(BEFORE_SHEET, 1)[0]!;
}

/** The sheet of a list; empty where its file has but one. */
export function sheetOf(list: string): string {
  return list.split(BEFORE_SHEET).slice(1).join(BEFORE_SHEET);
}

/** Names of the lists that a source names; a source of another form is a list of its own. */
export function listsOf(source: string): string[] {
  return partsOf(source) ?? [source];
}

/** Names of lists, one for each part of a source that has the form of one. */
function partsOf(source: string): string[] | undefined {
  const places = placesOf(source);
  const parts = [...places.matchAll(PART)];
  const isWhole = parts.reduce((sum, [part]) => sum + part.length, 0) === places.length;
  return isWhole ? parts.map(([, list]) => list!) : undefined;
}

/** Lines in order, those that follow one another as a stretch: `3–5`, `9`. */
function stretches(lines: readonly number[]): string[] {
  const found: [from: number, to: number][] = [];
  for (const line of [...new Set(lines)].sort((one, other) => one - other)) {
    const last = found.at(-1);
    if (last?.[1] === line - 1) last[1] = line;
    else found.push([line, line]);
  }
  return found.map(([from, to]) => from === to ? `${from}` : `${from}–${to}`);
}
