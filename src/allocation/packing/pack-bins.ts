import { leastBins } from './least-bins.ts';
import { runSteps, stopAt } from './run-steps.ts';
import { classesOf } from './size-classes.ts';
import { withRounding } from './with-rounding.ts';

export interface PackOptions {
  readonly signal?: AbortSignal;
  /** Time after which the best packing so far is given [ms]; 10,000 by default. */
  readonly milliseconds?: number;
}

/** Items by bin, and how good the packing is. */
export interface Packing {
  /** The items of each bin, by their place in the list given, in ascending order. */
  readonly bins: readonly (readonly number[])[];
  /** No packing does with fewer bins. */
  readonly lowerBound: number;
  /** Whether this number of bins is the least: it equals the lower bound. */
  readonly proven: boolean;
}

/**
 * Packs whole items into the least number of bins of one capacity.
 *
 * @param sizes of the items, 0 or more, whole or not
 * @param capacity of each bin in the same unit, above 0
 * @returns the packing, the best so far when it was stopped; no items need no bins. The same input gives the same
 *   packing as long as it is not stopped.
 * @throws RangeError for a size that is negative, not finite or larger than the capacity
 *
 * Limits: sums up to 2e-10 of the capacity above it count as rounding.
 *
 * Source: the bin-packing problem; the methods name theirs.
 *
 * @example (await packBins([6, 5, 4, 5], 10)).bins // [[0, 2], [1, 3]]
 */
export async function packBins(
  sizes: readonly number[], capacity: number, options: PackOptions = {},
): Promise<Packing> {
  const room = withRounding(capacity);
  for (const [item, size] of sizes.entries()) {
    if (!(size >= 0 && size <= room)) {
      throw new RangeError(`Item ${item} of size ${size} is not between 0 and ${capacity}.`);
    }
  }
  const classes = classesOf(sizes.filter((size) => size > 0).map((size) => [size, 1]));
  const stop = stopAt(options.signal, options.milliseconds ?? 10_000);
  const packed = (await runSteps(leastBins(classes, { base: [], spare: [], more: room }, stop)))!;

  const waiting = classes.sizes.map((size) => [...sizes.keys()].filter((item) => sizes[item] === size).reverse());
  const bins = packed.fills.map((fill) =>
    fill.flatMap((count, place) => Array.from({ length: count }, () => waiting[place]!.pop()!)));
  const sizeless = [...sizes.keys()].filter((item) => sizes[item] === 0);
  if (sizeless.length > 0) {
    if (bins.length === 0) bins.push([]);
    bins[0]!.push(...sizeless);
  }
  const lowerBound = Math.max(packed.lowerBound, Math.min(1, sizes.length));
  return { bins: bins.map((items) => items.sort((a, b) => a - b)), lowerBound, proven: bins.length === lowerBound };
}
