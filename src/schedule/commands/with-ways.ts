import { WAY_KINDS, type WayKind } from '../../electrical/index.ts';
import type { Words } from '../../words/index.ts';
import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import { nextTags } from '../next-tags.ts';
import type { CellValue } from '../schema/index.ts';
import type { Cells } from '../snapshot.ts';
import { insertRows } from './insert-rows.ts';

/** The cells of a run that name a way. */
const NAMING: readonly string[] = ['way', 'secondWay'];

/** A kind with a rating in amperes behind it. */
const KIND_AND_RATING = /^(\p{L}+)\s*(\d+(?:[.,]\d+)?)\s*A?$/u;

function kindAndRating(text: string, words: Words): { kind: WayKind; rated: number } | undefined {
  const [, name = '', rating = ''] = KIND_AND_RATING.exec(text.trim()) ?? [];
  const isName = (each: string) => each.toLowerCase() === name.toLowerCase();
  const kind = WAY_KINDS.find((each) => isName(words.text(each)) || isName(each));
  const rated = Number(rating.replace(',', '.'));
  return kind === undefined || !(rated > 0) ? undefined : { kind, rated };
}

/** Tag of the next way on a rail, `L1-F1` for the first. @param ways the cells of all ways that are there. */
export function nextWayTag(ways: readonly Cells[], rail: CellValue): string {
  const taken = new Set(ways.map(({ way }) => String(way)));
  const last = ways.findLast((way) => way.way !== undefined && (way.rail ?? null) === rail)?.way;
  const first = rail === null ? 'F1' : `${String(rail)}-F1`;
  return last === undefined && !taken.has(first) ? first : nextTags(String(last ?? first), 1, taken)[0]!;
}

/**
 * Changes in which a way is made wherever a run is to name one by kind and rating, as `B 4` or `gG 10`, and no way has
 * that tag: on the rail of the run, with the next tag of its ways there, `L1-F1` for the first. Others stay as they
 * are.
 *
 * @param words the language in which a kind may be named beside English.
 */
export function withWays(document: ScheduleDocument, changes: readonly Change[], words: Words): Change[] {
  const made: Cells[] = [];
  const all = () => [...document.rows('ways').map(({ cells }) => cells), ...made];
  const tagFor = (text: CellValue | undefined, runOf: () => Cells): CellValue | undefined => {
    const read = typeof text === 'string' ? kindAndRating(text, words) : undefined;
    if (read === undefined) return text;
    if (all().some(({ way }) => String(way) === String(text))) return text;
    const run = runOf();
    const rail = run.rail ?? all().find(({ way }) => way === run.way)?.rail ?? null;
    const way = nextWayTag(all(), rail);
    made.push({ way, ...(rail === null ? {} : { rail }), ...read });
    return way;
  };
  const sets = changes.flatMap((change) => change.op === 'set' && change.sheet === 'runs' ? [change] : []);
  const named = new Map<Change, CellValue>();
  /** The cells of a run, with those that the same action fills in. */
  const runNow = (id: number): Cells => {
    const cells = { ...document.row('runs', id)?.cells };
    for (const change of sets) {
      if (change.id !== id || (NAMING.includes(change.key) && !named.has(change))) continue;
      cells[change.key] = named.get(change) ?? change.value;
    }
    return cells;
  };
  // The second finds its rail by the first, which may be made here too.
  for (const key of NAMING) {
    for (const change of sets.filter((each) => each.key === key)) {
      named.set(change, tagFor(change.value, () => runNow(change.id)) ?? null);
    }
  }
  const done = changes.map((change): Change => {
    if (change.op === 'set' && named.has(change)) return { ...change, value: named.get(change)! };
    if (change.op !== 'insert' || change.sheet !== 'runs') return change;
    const rows = change.rows.map((row) => {
      const cells = { ...row.cells };
      for (const key of NAMING) if (cells[key] !== undefined) cells[key] = tagFor(cells[key], () => cells)!;
      return { ...row, cells };
    });
    return { ...change, rows };
  });
  return [...done, ...insertRows(document, 'ways', document.rows('ways').length, made)];
}
