import type { Cells } from '../../schedule/index.ts';
import { grouped } from '../grouped.ts';
import type { TakeoffLine } from './line.ts';
import type { TakeoffName } from './names/name-list.ts';
import { plainKey } from './plain-words.ts';
import type { Takeoff, TakeoffPart } from './read-takeoff.ts';
import { listName, sourceText } from './source-text.ts';
import type { LineSource } from './source.ts';

/** A line on which nothing is decided yet: what a device row would have to be to be meant by it. */
export interface OpenLine {
  readonly line: number;
  readonly source?: string;
  readonly ref: string;
  readonly area: string;
  /** Types that its name may mean; absent where it names nothing. */
  readonly types?: readonly string[];
}

/** What a takeoff counts, each row with its source. */
export interface CountedList {
  /** Names of the lists that it was read from. */
  readonly names: readonly string[];
  readonly rows: readonly Cells[];
  readonly open: readonly OpenLine[];
}

/**
 * What is taken of a takeoff, each row with where it was counted.
 * @param name what lists without a file are called, as one that was pasted; without a name these have no source.
 */
export function countedList({ lines, rows, parts, names }: Takeoff, name?: string): CountedList {
  const placesOf = <Place extends TakeoffPart | LineSource>(places: readonly Place[]) => places.flatMap((place) => {
    const file = place.file ?? name;
    return file === undefined ? [] : { ...place, file };
  });
  const counted = grouped(lines.filter(({ row }) => row !== undefined), ({ row }) => row);
  return {
    names: [...new Set(placesOf(parts).map(listName))],
    rows: rows.map((cells, row) => {
      const source = sourceText(placesOf(counted.get(row)!.map((line) => line.source)));
      return source === '' ? cells : { ...cells, source };
    }),
    open: lines.filter(({ outcome }) => outcome === 'undecided').map((line) => {
      const name = names.find(({ key }) => key === line.nameKey);
      return {
        line: line.line, source: sourceText(placesOf([line.source])), ref: plainKey(refOf(line, parts)), area: plainKey(line.area),
        ...(name === undefined ? {} : { types: possibleTypes(name).map(plainKey) }),
      };
    }),
  };
}

/** The type that a name has, else those that are like it. */
function possibleTypes({ type, match }: TakeoffName): string[] {
  return type === null ? match.candidates.map((candidate) => candidate.type) : [type];
}

function refOf({ source: { file, sheet }, fields }: TakeoffLine, parts: readonly TakeoffPart[]): string {
  const { columns } = parts.find((part) => part.file === file && part.sheet === sheet)!;
  return columns.filter(({ field }) => field === 'ref').map(({ index }) => fields[index] ?? '')
    .filter((text) => text !== '').join(', ');
}
