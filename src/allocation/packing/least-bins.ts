import { tooLarge } from './area-bound.ts';
import { decide } from './decide.ts';
import { unlessStopped, type Steps, type Stop } from './decision.ts';
import { fitPairs } from './fit-pairs.ts';
import { fitDecreasing } from './fit-decreasing.ts';
import { totalCount, type Fill, type SizeClasses } from './size-classes.ts';

/** Bins to choose from. */
export interface BinChoice {
  /** Room of the bins that are in use anyway. */
  readonly base: readonly number[];
  /** Capacities of the bins that there are besides. */
  readonly spare: readonly number[];
  /** Capacity of each further bin that can be had; `undefined` when none can. */
  readonly more?: number;
}

/** A packing into the bins in use and some besides. */
export interface LeastBins {
  /** The bins besides that are used, by their place in `spare`; -1 for a further one. */
  readonly besides: readonly number[];
  /** What each bin holds: those in use, then those besides. */
  readonly fills: readonly Fill[];
  /** No packing does with fewer bins besides; the least number is proven where this is the number of `besides`. */
  readonly lowerBound: number;
}

/**
 * Packs items into the least number of bins besides those in use: with as few further bins as can be, and of those
 * that there are and those, as few as can be.
 *
 * As a larger bin is never worse, the bins besides are tried in descending order, and only their number is
 * searched.
 *
 * @returns the packing; `undefined` when no packing was found because further bins cannot be had. A search that is
 *   stopped gives the best packing so far.
 */
export function* leastBins(
  classes: SizeClasses, { base, spare, more }: BinChoice, stop: Stop,
): Steps<LeastBins | undefined> {
  const places = [...spare.keys()].sort((a, b) => spare[b]! - spare[a]!);
  const capacityOf = (place: number) => place < 0 ? more! : spare[place]!;
  const further = (count: number) => new Array<number>(more === undefined ? 0 : count).fill(-1);

  const first = yield* leastPrefix(classes, base, [...places, ...further(totalCount(classes))], capacityOf, stop);
  const added = (first?.besides.length ?? 0) - spare.length;
  if (first === undefined || added <= 0 || spare.every((capacity) => capacity >= more!)) return first;
  // The further bins are larger than some that there are, which may do without.
  const mixed = [...places, ...further(added)].sort((a, b) => capacityOf(b) - capacityOf(a));
  const second = (yield* leastPrefix(classes, base, mixed, capacityOf, stop)) ?? first;
  if (first.lowerBound === first.besides.length) return second;
  return { ...second, lowerBound: Math.min(second.besides.length, leastBesides(classes, { base, spare, more })) };
}

/**
 * Bins besides those in use that no packing does without, by the bounds on areas, even where further bins may be taken
 * although there are others.
 */
export function leastBesides(classes: SizeClasses, { base, spare, more = 0 }: BinChoice): number {
  const larger = spare.filter((capacity) => capacity > more).sort((a, b) => b - a);
  return lowestCount(classes, base, [...larger, ...new Array<number>(totalCount(classes)).fill(more)]);
}

function* leastPrefix(
  classes: SizeClasses, base: readonly number[], order: readonly number[], capacityOf: (place: number) => number,
  stop: Stop,
): Steps<LeastBins | undefined> {
  const capacities = order.map(capacityOf);
  const bins = (count: number) => [...base, ...capacities.slice(0, count)];
  let lowerBound = lowestCount(classes, base, capacities);
  const simple = simplest(classes, bins, lowerBound, order.length);
  if (simple === undefined) return undefined;
  let best = simple;
  const besides = () => best.length - base.length;
  for (const effort of ['quick', 'thorough'] as const) {
    for (let count = lowerBound; count < besides(); count += 1) {
      const decision = yield* unlessStopped(decide(classes, bins(count), effort), stop);
      if (decision === 'impossible') lowerBound = Math.max(lowerBound, count + 1);
      else if (decision !== 'unknown') best = decision.fits;
    }
  }
  return { besides: order.slice(0, besides()), fills: best, lowerBound: Math.min(lowerBound, besides()) };
}

/** Least number of bins that the bounds on areas do not refute. */
function lowestCount(classes: SizeClasses, base: readonly number[], capacities: readonly number[]): number {
  let refuted = -1;
  let open = capacities.length;
  while (open - refuted > 1) {
    const count = Math.floor((refuted + open) / 2);
    if (tooLarge(classes, [...base, ...capacities.slice(0, count)])) refuted = count;
    else open = count;
  }
  return refuted + 1;
}

/** A packing by the simple ways, into the fewest of the bins that they need. */
function simplest(
  classes: SizeClasses, bins: (count: number) => number[], least: number, most: number,
): readonly Fill[] | undefined {
  for (let count = least; ; count = Math.min(most, 2 * count + 1)) {
    const ways = [
      fitDecreasing(classes, bins(count), 'best'), fitDecreasing(classes, bins(count), 'first'),
      fitPairs(classes, bins(count)),
    ];
    const packings = ways.flatMap((fills) => {
      return fills === undefined ? [] : [withoutEmpty(fills, bins(0).length)];
    });
    if (packings.length > 0) return packings.reduce((a, b) => b.length < a.length ? b : a);
    if (count >= most) return undefined;
  }
}

/** Fills without the empty bins at the end, but with all those that are in use anyway. */
function withoutEmpty(fills: readonly Fill[], base: number): readonly Fill[] {
  const last = fills.findLastIndex((fill) => fill.some((count) => count > 0));
  return fills.slice(0, Math.max(base, last + 1));
}
