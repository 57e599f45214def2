import type { Cells } from '../../schedule/index.ts';
import type { Takeoff, TakeoffLine } from '../takeoff/index.ts';
import { plainKey } from '../takeoff/plain-words.ts';
import { listName, sourceText } from './source-text.ts';

/** A line on which nothing is decided yet: what a device row would have to be to be meant by it. */
export interface OpenLine {
  readonly line: number;
  readonly ref: string;
  readonly area: string;
  /** Empty while it is not known. */
  readonly type: string;
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
 * @param name of the file, and of its sheet where it has several.
 */
export function countedList({ lines, rows, columns }: Takeoff, name: { file: string; sheet?: string }): CountedList {
  const counted = lines.filter(({ outcome }) => outcome === 'taken');
  const into = new Map(counted.map((line): [number, number[]] => [line.line, [line.line]]));
  for (const { line, mergedInto } of lines) if (mergedInto !== undefined) into.get(mergedInto)!.push(line);
  const refs = columns.filter(({ field }) => field === 'ref').map(({ index }) => index);
  const refOf = ({ fields }: TakeoffLine) => refs.map((index) => fields[index] ?? '').filter((text) => text !== '').join(', ');
  return {
    names: [listName(name)],
    rows: rows.map((cells, index) => ({
      ...cells, source: sourceText(into.get(counted[index]!.line)!.map((line) => ({ ...name, line }))),
    })),
    open: lines.filter(({ outcome }) => outcome === 'undecided').map((line) => ({
      line: line.line, ref: plainKey(refOf(line)), area: plainKey(line.area), type: plainKey(line.type),
    })),
  };
}
