import {
  decide, leastBins, unlessStopped, type Fill, type SizeClasses, type Steps, type Stop,
} from '../packing/index.ts';

/** Bins chosen from a list of capacities. */
export interface LeastSet {
  /** Chosen capacities, the largest first, each by its place in the list. */
  readonly chosen: readonly number[];
  /** What each of them holds. */
  readonly fills: readonly Fill[];
  /** Whether no fewer would do. */
  readonly isLeast: boolean;
  /** Whether, with this number, no smaller capacity in all would do. */
  readonly isSmallest: boolean;
}

/** Sets that are tried, from the smallest capacity in all upwards. */
const MOST_SETS = 2_000;

/**
 * Chooses bins from a list of capacities so that items fit: the least number of them, then the smallest capacity in
 * all.
 *
 * The least number is that of the largest capacity alone. Then smaller ones take the place of some, as far as the
 * total size allows, from the greatest saving downwards, until the items fit.
 *
 * @param offered capacities, each above 0; no item is larger than the largest
 * @param alike all bins that are chosen have one capacity
 */
export function* leastSet(
  classes: SizeClasses, offered: readonly number[], alike: boolean, stop: Stop,
): Steps<LeastSet> {
  const order = [...offered.keys()].sort((a, b) => offered[b]! - offered[a]!);
  const capacities = order.map((place) => offered[place]!);
  const least = (yield* leastBins(classes, { base: [], spare: [], more: capacities[0]! }, stop))!;
  const count = least.fills.length;
  const asked = classes.sizes.reduce((sum, size, item) => sum + size * classes.counts[item]!, 0);
  const isLeast = count === least.lowerBound;

  const { sets, complete } = alike ? { sets: equalSets(capacities.length, count), complete: true } : smallerSets(capacities, count, count * capacities[0]! - asked);
  let isSmallest = isLeast && complete;
  for (const set of sets) {
    const bins = set.map((place) => capacities[place]!);
    const decision = yield* unlessStopped(decide(classes, bins, 'quick'), stop);
    if (decision === 'unknown') isSmallest = false;
    if (typeof decision !== 'string') return { chosen: set.map((place) => order[place]!), fills: decision.fits, isLeast, isSmallest };
  }
  return { chosen: new Array<number>(count).fill(order[0]!), fills: least.fills, isLeast, isSmallest };
}

/** Sets of so many bins of one capacity, the smallest first. */
function equalSets(capacities: number, count: number): number[][] {
  return Array.from({ length: capacities }, (_, place) => new Array<number>(count).fill(capacities - 1 - place));
}

/**
 * Sets of some bins with at most so much saved against the largest capacity in each place; the greatest saving
 * first.
 */
function smallerSets(
  capacities: readonly number[], count: number, most: number,
): { sets: number[][]; complete: boolean } {
  const found: { set: number[]; saved: number }[] = [];
  let complete = true;
  const visit = (place: number, set: readonly number[], saved: number) => {
    if (found.length >= MOST_SETS) {
      complete = false;
      return;
    }
    if (set.length === count || place === 0) {
      found.push({ set: [...new Array<number>(count - set.length).fill(0), ...[...set].reverse()], saved });
      return;
    }
    const saving = capacities[0]! - capacities[place]!;
    for (let times = 0; times <= count - set.length && saved + times * saving <= most; times += 1) {
      visit(place - 1, [...set, ...new Array<number>(times).fill(place)], saved + times * saving);
    }
  };
  visit(capacities.length - 1, [], 0);
  return { sets: found.sort((a, b) => b.saved - a.saved).map(({ set }) => set), complete };
}
