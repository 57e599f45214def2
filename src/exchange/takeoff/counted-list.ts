import { grouped, type Cells } from '../../schedule/index.ts';
import type { TakeoffLine } from './line.ts';
import type { TakeoffName } from './names/name-list.ts';
import { partOf, type TakeoffPart } from './part.ts';
import { plainKey } from './plain-words.ts';
import type { Takeoff } from './read-takeoff.ts';
import { listName, sourceText } from './source-text.ts';
import type { LineSource } from './source.ts';

/** A line on which nothing is decided yet: what a device row would have to be to be meant by it. */
export interface OpenLine {
  readonly line: number;
  readonly source: string;
  readonly ref: string;
  readonly area: string;
  /** Types that its name may mean; absent where it names nothing. */
  readonly types?: readonly string[];
}

/** What a takeoff counts, each row with its source. */
export interface CountedList {
  /** Names of the files, and of their sheets, that it was read from; none of what was pasted. */
  readonly names: readonly string[];
  readonly rows: readonly Cells[];
  readonly open: readonly OpenLine[];
}

/**
 * What is taken of a takeoff, each row with where it was counted.
 * @param called what lists without a file are called, as one that was pasted; without a name these have no source.
 * @param others files of which it is none, though it may be called the same: `list.csv (2)`.
 */
export function countedList(
  { lines, rows, parts, names }: Takeoff, called?: string, others: ReadonlySet<string> = new Set(),
): CountedList {
  const named = new Map<string, string>();
  const sourceOf = (places: readonly LineSource[], row?: Cells) => sourceText(places.flatMap((place) => {
    const file = place.file ?? called;
    if (file === undefined) return [];
    if (!named.has(file)) named.set(file, freshName(file, others));
    return { ...place, file: named.get(file)! };
  }), row);
  const counted = grouped(lines.filter(({ row }) => row !== undefined), ({ row }) => row);
  return {
    names: [...new Set(parts.filter(({ file, kind }) => file !== undefined && kind === 'list').map(listName))],
    rows: rows.map((cells, row) => {
      const source = sourceOf(counted.get(row)!.map((line) => line.source), cells);
      return source === '' ? cells : { ...cells, source };
    }),
    open: lines.filter(({ outcome }) => outcome === 'undecided').map((line) => {
      const name = names.find(({ key }) => key === line.nameKey);
      return {
        line: line.line, source: sourceOf([line.source]), ref: plainKey(refOf(line, parts)), area: plainKey(line.area),
        ...(name === undefined ? {} : { types: possibleTypes(name).map(plainKey) }),
      };
    }),
  };
}

function freshName(name: string, others: ReadonlySet<string>): string {
  let number = 2;
  while (others.has(number === 2 ? name : `${name} (${number - 1})`)) number += 1;
  return number === 2 ? name : `${name} (${number - 1})`;
}

/** The type that a name has, else those that are like it. */
function possibleTypes({ type, match }: TakeoffName): string[] {
  return type === null ? match.candidates.map((candidate) => candidate.type) : [type];
}

function refOf(line: TakeoffLine, parts: readonly TakeoffPart[]): string {
  return partOf(line, parts).columns.filter(({ field }) => field === 'ref').map(({ index }) => line.fields[index] ?? '')
    .filter((text) => text !== '').join(', ');
}
