import type { CellValue } from '../../schedule/index.ts';

/** A line that a document shows: a row of a table, or a sentence. */
export interface ShownLine {
  /** What it is part of: only lines of one part are compared. */
  readonly part: string;
  /** What its cells show by their column; the first one names the line. */
  readonly texts: ReadonlyMap<number, CellValue>;
}

/** Lines of two documents, side by side; one side is missing where a line is in one of them only. */
export interface LinePair<Line> {
  readonly shown: Line | undefined;
  readonly due: Line | undefined;
}

/**
 * Finds for each line the one of the other document: those that agree wholly first, then those that begin alike, in
 * order. So a line that is taken out, put in or moved does not make all behind it differ.
 * @returns pairs that do not agree, in the order of what is due.
 */
export function linesThatDiffer<Line extends ShownLine>(
  shown: readonly Line[], due: readonly Line[],
): LinePair<Line>[] {
  const same = paired(shown, due, (line) => JSON.stringify([line.part, ...line.texts]));
  const named = paired(same.shown, same.due, ({ part, texts }) => JSON.stringify([part, texts.values().next().value]));
  const places = new Map(due.map((line, place) => [line, place]));
  const inOrder = [...named.pairs, ...named.due.map((line) => ({ shown: undefined, due: line }))]
    .sort((one, other) => places.get(one.due)! - places.get(other.due)!);
  return [...inOrder, ...named.shown.map((line) => ({ shown: line, due: undefined }))];
}

/** Pairs lines of one key, in order, and gives those that are left. */
function paired<Line>(shown: readonly Line[], due: readonly Line[], keyOf: (line: Line) => string) {
  const waiting = new Map<string, Line[]>();
  for (const line of shown) {
    const key = keyOf(line);
    const those = waiting.get(key);
    if (those === undefined) waiting.set(key, [line]);
    else those.push(line);
  }
  const found = due.map((line) => ({ due: line, shown: waiting.get(keyOf(line))?.shift() }));
  const left = new Set([...waiting.values()].flat());
  return {
    pairs: found.flatMap((pair) => pair.shown === undefined ? [] : [{ due: pair.due, shown: pair.shown }]),
    due: found.filter((pair) => pair.shown === undefined).map((pair) => pair.due),
    shown: shown.filter((line) => left.has(line)),
  };
}
