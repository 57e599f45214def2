import { nextTags } from '../../schedule/index.ts';
import { runSteps, stopAt, type Steps } from '../packing/index.ts';
import { leastTogether } from './least-together.ts';
import type {
  AddedBin, Filling, LeftOut, Placement, Served, ShareBin, ShareGroup, Sharing, SharingLimit, SharingProblem,
} from './sharing-problem.ts';
import type { Lot } from './lots.ts';
import { solveGroup, type GroupStops, type SolvedGroup } from './solve-group.ts';

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
 * Devices that may go to any panel are shared out last, beside those that are bound to theirs; that this does with the
 * least number is proven where no sharing that knows no panels, or only the devices bound to them, does with fewer.
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
  const fillings = new Map<string, Filling>();
  const limits: SharingLimit[] = [];
  const leftOut: LeftOut[] = [...problem.leftOut];
  const added: AddedBin[] = [];
  /** Least numbers of groups by pool: of those that are shared out by themselves, and as if there were no panels. */
  const least = new Map<string, LeastOf>();
  /** Groups of which something has no place, so that what all of it would need bounds nothing. */
  const short = new Set<ShareGroup>();

  // What may go anywhere comes last. A bin of the pool helps those most whose own further bins are small.
  const order = [...groups].sort((a, b) => Number(a.panel === null) - Number(b.panel === null)
    || (a.further?.capacity ?? 0) - (b.further?.capacity ?? 0));
  for (const [index, group] of order.entries()) {
    const family = groups.filter((other) => isSame(other.serves, group.serves));
    const joins = family.length > 1 && family.some(({ panel }) => panel === null);
    const pool = (rest.get(group.pool) ?? []).filter(({ panel }) => group.panel === null || panel === group.panel);
    const isContended = groups.filter((other) => other.pool === group.pool).length > 1;
    const contended = isContended ? pools[group.pool] ?? null : null;
    const left = (start + milliseconds - performance.now()) / (groups.length - index);
    const until = (part: number) => {
      const stop = stopAt(signal, part * left);
      return () => stop() || overall();
    };
    const stops = { least: until(UNTIL_LEAST), whole: until(UNTIL_WHOLE), all: until(1) };
    const now = { ...group, bins: group.panel === null ? withFillings(group, [...fillings.values()]) : group.bins };
    const solved = yield* solveGroup(now, pool, contended, stops);

    const leastOf = least.get(group.pool) ?? { bound: [], free: [] };
    least.set(group.pool, leastOf);
    if (!joins || group.panel !== null) leastOf.bound.push(solved.leastWith);
    if (!joins) leastOf.free.push(solved.leastWith);
    else if (group.panel === null && !family.some((member) => short.has(member)) && solved.leftOut.length === 0) {
      leastOf.free.push(yield* leastWithoutPanels(family, pools, contended, stops));
    }
    const made = newBins(group, solved, taken);
    added.push(...made);
    const names = made.map(({ tag }) => tag);
    for (const { bin, lots } of inRowOrder(solved)) {
      const tag = bin?.tag ?? names.shift()!;
      placements.push(...placementsOf(lots, tag));
      const placed = lots.reduce((sum, { piece, count }) => sum + piece.size * count, 0);
      const { capacity, limitedBy } = bin ?? group.further!;
      const before = fillings.get(tag);
      fillings.set(tag, before === undefined ? {
        tag, id: bin?.id ?? null, serves: group.serves, panel: bin === undefined ? panelOfNew(group) : bin.panel,
        capacity, limitedBy, kept: bin?.kept ?? 0, placed,
      } : { ...before, placed: before.placed + placed });
    }
    limits.push({
      serves: group.serves, panel: group.panel, size: solved.size, used: solved.bins.length, byTotal: solved.byTotal,
      lowerBound: solved.leastWith.at(-1)!,
      limitedBy: [...new Set(solved.bins.map(({ bin }) => (bin ?? group.further!).limitedBy))],
    });
    if (solved.leftOut.length > 0) short.add(group);
    for (const { lot, tooLarge } of solved.leftOut) leftOut.push(...leftOutOf(group, lot, tooLarge));
    const used = new Set(solved.bins.map(({ bin }) => bin));
    rest.set(group.pool, pool.filter((bin) => !used.has(bin)));
    report(index + 1);
    yield;
  }
  const lowerBound = [...least.values()].reduce((sum, { bound, free }) =>
    sum + Math.max(leastTogether(bound), leastTogether(free)), 0);
  // What devices without a place would need, nobody knows; what is too large for any goes on none.
  const complete = leftOut.every(({ code }) => code === 'takes-none' || code === 'too-large')
    && !problem.notes.some(({ code }) => code === 'nodes-unknown' || code === 'demand-unknown');
  const used = fillings.size;
  return {
    over, kept: problem.kept, added, fillings: [...fillings.values()], lowerBound, notes: problem.notes,
    limits: limits.filter((limit) => limit.size > 0),
    placements: placements.sort((a, b) => a.row - b.row),
    leftOut: leftOut.sort((a, b) => a.row - b.row),
    used, proven: complete && used === lowerBound,
  };
}

/** Least numbers of groups that share a pool, see `leastTogether`: with panels, and as if there were none. */
interface LeastOf {
  readonly bound: (readonly number[])[];
  readonly free: (readonly number[])[];
}

function isSame(a: Served | null, b: Served | null): boolean {
  return a?.purpose === b?.purpose && a?.voltage === b?.voltage;
}

/** The bins of a group that may go anywhere, with what is on them by now, and those that came with it. */
function withFillings({ serves, bins }: ShareGroup, fillings: readonly Filling[]): ShareBin[] {
  const filled = fillings.filter((filling) => isSame(filling.serves, serves));
  const tags = new Set(filled.map(({ tag }) => tag));
  return [
    ...filled.map(({ tag, id, panel, capacity, limitedBy, kept, placed }) =>
      ({ tag, id, panel, capacity, limitedBy, kept: kept + placed, inUse: true })),
    ...bins.filter(({ tag }) => !tags.has(tag)),
  ];
}

/** The least numbers of groups that ask for the same, if they were bound to no panel. */
function* leastWithoutPanels(
  family: readonly ShareGroup[], pools: SharingProblem['pools'], contended: readonly ShareBin[] | null,
  stops: GroupStops,
): Steps<readonly number[]> {
  const last = family.at(-1)!;
  const further = family.map((group) => group.further).sort((a, b) => (b?.capacity ?? 0) - (a?.capacity ?? 0))[0];
  const bins = [...new Map(family.flatMap((group) => group.bins).map((bin) => [bin.tag, bin])).values()];
  const pool = [...new Set(family.map((group) => group.pool))].flatMap((name) => pools[name] ?? []);
  const all = { ...last, rows: family.flatMap(({ rows }) => rows), bins, further };
  // A panel may have had to be given a further one, which now does for several smaller ones that there are.
  const isMixed = [...bins, ...pool].some((bin) => !bin.inUse && (bin.capacity ?? 0) < (further?.capacity ?? 0));
  const shared = isMixed ? contended ?? pool : contended;
  return (yield* solveGroup(all, pool, shared, { ...stops, whole: () => true, all: () => true })).leastWith;
}

/** The panel of a branch or supply that is to be made. */
function panelOfNew({ panel, further, bins }: ShareGroup): string | null {
  return panel ?? bins.find(({ id }) => id === further!.like)?.panel ?? null;
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
export function placementsOf(lots: readonly Lot[], tag: string): Placement[] {
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
