import { nextTags } from '../../schedule/index.ts';
import { runSteps, stopAt, type Steps } from '../packing/index.ts';
import { leastTogether } from './least-together.ts';
import type {
  AddedBin, Filling, LeftOut, Placement, ShareGroup, Sharing, SharingProblem,
} from './sharing-problem.ts';
import type { Lot } from './lots.ts';
import { solveGroup, type SolvedGroup } from './solve-group.ts';

/** How far a sharing is. */
export interface SharingProgress {
  /** Groups that are shared out. */
  readonly done: number;
  readonly groups: number;
  /** Part of the time allowed that has passed, 0 to 1; most often it ends sooner. */
  readonly time: number;
}

/** How long the search for a sharing goes on, and who hears of it. */
export interface SharingOptions {
  /** Ends the search; the best sharing so far is given. */
  readonly signal?: AbortSignal;
  /** Called now and then with the best sharing so far. */
  readonly progress?: (progress: SharingProgress) => void;
  /** Time after which the best sharing so far is given [ms]; 1,500 by default. */
  readonly milliseconds?: number;
}

/** Time that a sharing may take where nothing else is said [ms]. */
const MOST_MILLISECONDS = 1_500;
/** Part of the time by which the search for the least number ends, and that for areas that stay together as a whole. */
const UNTIL_LEAST = 0.55;
const UNTIL_WHOLE = 0.8;

/**
 * Shares devices out over branches or supplies: never above what one may carry, over the least number, and so that
 * rows of one area stay together where that costs none more.
 *
 * @returns the sharing; the same for the same problem as long as time does not end the search
 *
 * Limits: areas are kept together by a search that does not prove that no other way keeps more of them together.
 */
export async function shareOut(problem: SharingProblem, options: SharingOptions = {}): Promise<Sharing> {
  const { milliseconds = MOST_MILLISECONDS, signal } = options;
  const groups = problem.groups.length;
  const start = performance.now();
  let done = 0;
  const steps = sharingSteps(problem, signal, milliseconds, (count) => { done = count; });
  const sharing = await runSteps(steps, () =>
    options.progress?.({ done, groups, time: Math.min(1, (performance.now() - start) / milliseconds) }));
  options.progress?.({ done: groups, groups, time: 1 });
  return sharing;
}

function* sharingSteps(
  problem: SharingProblem, signal: AbortSignal | undefined, milliseconds: number, report: (done: number) => void,
): Steps<Sharing> {
  const { over, groups, pools } = problem;
  const start = performance.now();
  const overall = stopAt(signal, milliseconds);
  const taken = new Set(problem.takenTags);
  const rest = new Map(Object.entries(pools));
  const placements: Placement[] = [...problem.pinned];
  const fillings: Filling[] = [];
  const leftOut: LeftOut[] = [...problem.leftOut];
  const added: AddedBin[] = [];
  const least = new Map<string, (readonly number[])[]>();

  // A bin of the pool helps those most whose own further bins are small.
  const order = [...groups].sort((a, b) => (a.further?.capacity ?? 0) - (b.further?.capacity ?? 0));
  for (const [index, group] of order.entries()) {
    const pool = rest.get(group.pool) ?? [];
    const isContended = groups.filter((other) => other.pool === group.pool).length > 1;
    const contended = isContended ? pools[group.pool] ?? [] : [];
    const left = (start + milliseconds - performance.now()) / (groups.length - index);
    const until = (part: number) => {
      const stop = stopAt(signal, part * left);
      return () => stop() || overall();
    };
    const stops = { least: until(UNTIL_LEAST), whole: until(UNTIL_WHOLE), all: until(1) };
    const solved = yield* solveGroup(group, pool, contended, stops);

    least.set(group.pool, [...least.get(group.pool) ?? [], solved.leastWith]);
    const made = newBins(group, solved, taken);
    added.push(...made);
    const names = made.map(({ tag }) => tag);
    for (const { bin, lots } of inRowOrder(solved)) {
      const tag = bin?.tag ?? names.shift()!;
      placements.push(...placementsOf(lots, tag));
      const placed = lots.reduce((sum, { piece, count }) => sum + piece.size * count, 0);
      const { capacity } = bin ?? group.further!;
      fillings.push({ tag, id: bin?.id ?? null, serves: group.serves, capacity, kept: bin?.kept ?? 0, placed });
    }
    for (const { lot, tooLarge } of solved.leftOut) leftOut.push(...leftOutOf(group, lot, tooLarge));
    const used = new Set(solved.bins.map(({ bin }) => bin));
    rest.set(group.pool, pool.filter((bin) => !used.has(bin)));
    report(index + 1);
    yield;
  }
  const lowerBound = [...least.values()].reduce((sum, groupsOfPool) => sum + leastTogether(groupsOfPool), 0);
  const complete = !leftOut.some(({ code }) => code === 'no-room');
  return {
    over, kept: problem.kept, added, fillings, lowerBound, notes: problem.notes,
    placements: placements.sort((a, b) => a.row - b.row),
    leftOut: leftOut.sort((a, b) => a.row - b.row),
    used: fillings.length, proven: complete && fillings.length === lowerBound,
  };
}

function newBins({ further }: ShareGroup, { bins }: SolvedGroup, taken: Set<string>): AddedBin[] {
  if (further === undefined) return [];
  const count = bins.filter(({ bin }) => bin === undefined).length;
  const tags = nextTags(further.tag, count, taken);
  for (const tag of tags) taken.add(tag);
  return tags.map((tag) => ({ tag, like: further.like, cells: further.cells }));
}

/** Bins in which what they hold stands in the order of the rows, as far as they are alike. */
function inRowOrder({ bins }: SolvedGroup): SolvedGroup['bins'] {
  const firstRow = (lots: readonly Lot[]) =>
    Math.min(Infinity, ...lots.flatMap(({ piece }) => piece.parts.map(({ row }) => row.row)));
  const free = (place: number) => bins[place]!.bin?.inUse !== true;
  const lots = [...bins.keys()].filter(free).map((place) => bins[place]!.lots)
    .sort((a, b) => firstRow(a) - firstRow(b));
  const capacity = (place: number) => bins[place]!.bin?.capacity ?? -1;
  const alike = new Set([...bins.keys()].filter(free).map(capacity)).size <= 1;
  return alike ? bins.map((each, place) => free(place) ? { bin: each.bin, lots: lots.shift()! } : each) : bins;
}

/** What lots put on one branch or supply: one placement for each row. */
function placementsOf(lots: readonly Lot[], tag: string): Placement[] {
  const byRow = new Map<number, Placement>();
  for (const { piece, count } of lots) {
    for (const { row: { row, id, ref }, qty } of piece.parts) {
      byRow.set(row, { row, id, ref, tag, qty: (byRow.get(row)?.qty ?? 0) + qty * count });
    }
  }
  return [...byRow.values()];
}

function leftOutOf(
  { bins, further }: ShareGroup, { piece: { size, parts }, count }: Lot, tooLarge: boolean,
): LeftOut[] {
  const [first] = parts;
  const of = first!.row.run !== null ? 'run' : first!.qty > 1 ? 'row' : 'device';
  const most = Math.max(
    further?.capacity ?? 0, ...bins.map(({ capacity, kept }) => Math.max(0, (capacity ?? 0) - kept))
  );
  return parts.map(({ row: { row, id, ref }, qty }) => ({
    row, id, ref, qty: qty * count, code: tooLarge ? 'too-large' : 'no-room', piece: { of, size, most },
  }));
}
