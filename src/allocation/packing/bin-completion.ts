import { completions, type Completions } from './completions.ts';
import type { Decision, Steps } from './decision.ts';
import { totalSize, type Fill, type SizeClasses } from './size-classes.ts';

/** Nodes whose failure is remembered, so that memory stays in bounds. */
const MOST_REMEMBERED = 50_000;
/** Steps of listing the fills of one bin for each node allowed, so that a short search is short in all. */
const LISTED_PER_NODE = 2;
/** Steps of listing the fills of one bin, beyond which the search is no longer exhaustive. */
const MOST_LISTED = 4_000;

interface Level {
  readonly fills: Completions['fills'];
  next: number;
  /** Waste that the bins from this one on may have together. */
  readonly waste: number;
  /** Whether every way below was tried in full so far. */
  complete: boolean;
  readonly key: string;
}

/**
 * Decides whether items fit into bins, one bin after the other: each is given every fill that no other dominates,
 * that with the least waste first, as long as the waste leaves room for the rest in the other bins.
 *
 * Bins alike are the same to each other, so that the next one may be taken to hold the largest item. Among unlike
 * bins the smallest, which has the fewest fills, comes first.
 *
 * @param mostNodes fills to try before giving up
 *
 * Source: R.E. Korf, A new algorithm for optimal bin packing, AAAI 2002; from memory.
 */
export function* binCompletion(
  classes: SizeClasses, capacities: readonly number[], mostNodes: number,
): Steps<Decision> {
  const { sizes } = classes;
  const order = [...capacities.keys()].sort((a, b) => capacities[a]! - capacities[b]!);
  const bins = order.map((bin) => capacities[bin]!);
  const largest = bins.at(-1) ?? 0;
  const left = [...classes.counts];
  const chosen: Fill[] = [];
  const failed = new Set<string>();
  let remaining = left.reduce((sum, count) => sum + count, 0);
  let nodes = 0;

  const open = (waste: number): Level => {
    const capacity = bins[chosen.length]!;
    const key = `${chosen.length} ${String.fromCharCode(...left)}`;
    if (failed.has(key)) return { fills: [], next: 0, waste, complete: true, key };
    const forced = capacity === largest ? left.findIndex((count) => count > 0) : -1;
    const { fills, complete } = completions({
      sizes, left, capacity, mostWaste: waste + largest * 1e-12, forced,
      mostSteps: Math.min(MOST_LISTED, LISTED_PER_NODE * mostNodes),
    });
    return { fills, next: 0, waste, complete, key };
  };
  const apply = (fill: Fill, sign: 1 | -1) => {
    for (const [item, count] of fill.entries()) {
      left[item]! -= sign * count;
      remaining -= sign * count;
    }
  };

  if (remaining === 0) return { fits: bins.map(() => sizes.map(() => 0)) };
  const spare = bins.reduce((sum, capacity) => sum + capacity, 0) - totalSize(classes);
  if (spare < -1e-12 * largest * bins.length) return 'impossible';
  const levels: Level[] = [open(spare)];
  for (;;) {
    const level = levels.at(-1)!;
    const candidate = level.fills[level.next];
    if (candidate !== undefined) {
      level.next += 1;
      nodes += 1;
      if (nodes > mostNodes) return 'unknown';
      yield;
      apply(candidate.fill, 1);
      chosen.push(candidate.fill);
      if (remaining === 0) return { fits: inOrder(chosen, order, sizes.length) };
      if (chosen.length < bins.length) {
        levels.push(open(level.waste - candidate.waste));
        continue;
      }
    } else {
      if (level.complete && failed.size < MOST_REMEMBERED) failed.add(level.key);
      levels.pop();
      const parent = levels.at(-1);
      if (parent === undefined) return level.complete ? 'impossible' : 'unknown';
      if (!level.complete) parent.complete = false;
    }
    apply(chosen.pop()!, -1);
  }
}

/** Fills of the bins in the order of their capacities as given. */
function inOrder(chosen: readonly Fill[], order: readonly number[], width: number): Fill[] {
  const fills = order.map((): Fill => new Array<number>(width).fill(0));
  chosen.forEach((fill, place) => { fills[order[place]!] = fill; });
  return fills;
}
