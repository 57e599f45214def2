import { grouped } from '../../schedule/index.ts';
import type { LineSource } from './source.ts';

/** Between the name of a file and that of its sheet. */
const BEFORE_SHEET = ' › ';
/** How many places are named; a row that is the sum of more says `…` for the others. */
const MOST_NAMED = 12;
/** One list and its lines within the text of a source. */
const PART = /(.+?): \d[\d–/, ]*(?:…)?(?:; |$)/gy;

/**
 * The places that a device row was counted in as one text, the same in every language; a line with several counts is
 * named with the number of the column.
 * @example sourceText([{ file: 'hotel.csv', line: 4 }, { file: 'hotel.csv', line: 11 }]) // 'hotel.csv: 4, 11'
 */
export function sourceText(places: readonly LineSource[]): string {
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
  const parts = [...source.matchAll(PART)];
  const length = parts.reduce((sum, [part]) => sum + part.length, 0);
  return length === source.length ? parts.map(([, list]) => list!) : [source];
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
