import type { Fill, SizeClasses } from './size-classes.ts';

/** Which of the bins with room takes the next item: the `first`, or the one that it fills `best`. */
export type Choice = 'first' | 'best';

/**
 * Packs the largest items first, each into a bin that is in use already where one has room, else into the next one.
 *
 * @param capacities of the bins, in the order in which they are taken into use
 * @returns what each bin holds; `undefined` when not everything fits this way, which does not say that it cannot
 *
 * Source: D.S. Johnson, Near-optimal bin packing algorithms, MIT 1973; from memory.
 *
 * @example fitDecreasing({ sizes: [6, 4], counts: [1, 2] }, [10, 10], 'best') // [[1, 1], [0, 1]]
 */
export function fitDecreasing(
  { sizes, counts }: SizeClasses, capacities: readonly number[], choice: Choice,
): Fill[] | undefined {
  const free = [...capacities];
  const fills = capacities.map(() => new Array<number>(sizes.length).fill(0));
  let used = 0;
  for (let item = 0; item < sizes.length; item += 1) {
    const size = sizes[item]!;
    let left = counts[item]!;
    while (left > 0) {
      let bin = choose(free, used, size, choice);
      if (bin < 0) {
        while (used < free.length && free[used]! < size) used += 1;
        if (used === free.length) return undefined;
        bin = used;
        used += 1;
      }
      const placed = Math.min(left, howMany(free[bin]!, size));
      fills[bin]![item]! += placed;
      free[bin]! -= placed * size;
      left -= placed;
    }
  }
  return fills;
}

/** How many items of a size fit into a room, so that taking them away never leaves less than nothing. */
export function howMany(room: number, size: number): number {
  let count = Math.floor(room / size);
  while (count > 0 && room - count * size < 0) count -= 1;
  return count;
}

function choose(free: readonly number[], used: number, size: number, choice: Choice): number {
  let chosen = -1;
  for (let bin = 0; bin < used; bin += 1) {
    if (free[bin]! < size || (chosen >= 0 && free[bin]! >= free[chosen]!)) continue;
    chosen = bin;
    if (choice === 'first') break;
  }
  return chosen;
}
