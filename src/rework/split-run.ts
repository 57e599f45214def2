import { numberOf } from '../engine/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { insertRows, nextTags, nextWayTag, setCells, tagOf, type Cells, type Change } from '../schedule/index.ts';
import { cellsLike, NOTE } from './rows-like.ts';

/** The way of the run that is made: that of the other, a new one like it, or one by its tag. */
export type SplitWay = 'same' | 'new' | { readonly way: string };

/** How a run is parted in two. */
export interface RunSplit {
  /** Id of the run. */
  readonly run: number;
  /** Id of the device row from which on they go, with what stands at the same place or beyond. */
  readonly from: number;
  /** Tag, way and length [m] of the run that is made; what is left out is proposed. */
  readonly tag?: string;
  readonly way?: SplitWay;
  readonly length?: number | null;
  /** Length of the run that is parted [m], which ends sooner then. */
  readonly rest?: number | null;
}

/** Why a run is not parted so. */
export type SplitProblem = 'two-ways' | 'none-goes' | 'none-stays' | 'no-tag' | 'tag-taken' | 'no-length' | 'too-short';

/** What parting a run comes to. */
export interface SplitPlan {
  /** None while there is a problem. */
  readonly changes: readonly Change[];
  readonly problem: SplitProblem | undefined;
  /** Ids of the device rows that go on the run that is made. */
  readonly going: readonly number[];
  readonly staying: readonly number[];
  readonly tag: string;
  /** Tag of its way; `null` where it has none. */
  readonly way: string | null;
  readonly length: number | null;
  readonly rest: number | null;
  /** Id of the run that is made. */
  readonly made: number;
}

/** Cells of a run that are its own: what was measured on it, and where it ends. */
const OWN = new Set(['run', 'way', 'length', 'note', 'measuredCurrent', 'measuredVoltage', 'secondWay', 'secondLength']);

/** The device rows of a run, nearest first; those without a distance are at its end. */
export function alongRun(schedule: LoadSchedule, run: number): number[] {
  const at = (id: number) => distanceOf(schedule, id) ?? Infinity;
  return [...schedule.members('devices', 'run', run)].sort((one, other) => at(one) - at(other) || one - other);
}

const distanceOf = (schedule: LoadSchedule, id: number) => numberOf(schedule, 'devices', id, 'distance');

/**
 * Parts a run in two: the device rows from one place on go on a run of their own, which begins where the other does.
 *
 * Their distances stay, as both cables are laid the same way. The run that is made is as long as the other was; the
 * other ends at the last of the device rows that stay, unless other lengths are given.
 */
export function splitRun(schedule: LoadSchedule, split: RunSplit): SplitPlan {
  const { document } = schedule;
  const { run, from } = split;
  const { cells } = document.row('runs', run)!;
  const all = alongRun(schedule, run);
  const place = distanceOf(schedule, from) ?? Infinity;
  const isGoing = (id: number) => (distanceOf(schedule, id) ?? Infinity) >= place;
  const [going, staying] = [all.filter(isGoing), all.filter((id) => !isGoing(id))];
  const taken = new Set(schedule.rows('runs').map((row) => tagOf('runs', row)));
  const { tag = nextTags(tagOf('runs', document.row('runs', run)!), 1, taken)[0]! } = split;
  const whole = schedule.value('runs', run, 'length') as number | null;
  const last = (ids: readonly number[]) => Math.max(0, ...ids.map((id) => distanceOf(schedule, id) ?? 0));
  const { length = whole, rest = staying.length === 0 ? whole : last(staying) } = split;
  const { way, changes: ways } = wayOf(schedule, run, split.way ?? 'same');
  const problem: SplitProblem | undefined = (cells.secondWay ?? null) !== null ? 'two-ways'
    : !all.includes(from) ? 'none-goes'
    : staying.length === 0 ? 'none-stays'
    : tag === '' ? 'no-tag'
    : taken.has(tag) ? 'tag-taken'
    : length === null || rest === null || length <= 0 || rest <= 0 ? 'no-length'
    : length < last(going) || rest < last(staying) ? 'too-short' : undefined;
  const made: Cells = { ...cellsLike(schedule, 'runs', run, OWN), run: tag, length, ...way === null ? {} : { way } };
  const inserted = insertRows(document, 'runs', document.position('runs', run) + 1, [made]);
  return {
    going, staying, tag, way, length, rest, problem, made: document.freeIds('runs', 1)[0]!,
    changes: problem !== undefined ? [] : [
      ...ways, ...inserted, ...setCells(document, [
        { sheet: 'runs', id: run, key: 'length', value: rest },
        ...going.map((id) => ({ sheet: 'devices' as const, id, key: 'run', value: tag })),
      ]),
    ],
  };
}

function wayOf(
  schedule: LoadSchedule, run: number, fate: SplitWay,
): { way: string | null; changes: readonly Change[] } {
  const { document } = schedule;
  const own = document.row('runs', run)!.cells.way ?? null;
  if (typeof fate === 'object') return { way: fate.way, changes: [] };
  const like = schedule.target('runs', run, 'way');
  if (fate === 'same' || like < 0) return { way: own === null ? null : String(own), changes: [] };
  const [rows, { cells }] = [document.rows('ways'), document.row('ways', like)!];
  const way = nextWayTag(rows.map((row) => row.cells), cells.rail ?? null);
  const made = { ...cellsLike(schedule, 'ways', like, NOTE), way };
  return { way, changes: insertRows(document, 'ways', rows.length, [made]) };
}
