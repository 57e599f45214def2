import type { Fill, SizeClasses } from './size-classes.ts';

/**
 * Packs one bin after the other: the largest item that fits, then more of the largest, and at the end the two items, or
 * the one, that leave the least waste. Of the places at which the end may begin, that with the least waste is taken.
 *
 * @returns what each bin holds; `undefined` when not everything fits this way, which does not say that it cannot
 *
 * Source: after the minimum bin slack heuristic of J.N.D. Gupta, J.C. Ho, A new heuristic algorithm for the
 * one-dimensional bin-packing problem, Production Planning & Control 10 (1999); from memory.
 *
 * @example fitPairs({ sizes: [6, 4, 3], counts: [1, 1, 2] }, [10, 6]) // [[1, 1, 0], [0, 0, 2]]
 */
export function fitPairs({ sizes, counts }: SizeClasses, capacities: readonly number[]): Fill[] | undefined {
  const left = [...counts];
  const fills = capacities.map((capacity) => {
    const items = fullest(sizes, left, capacity);
    const fill = new Array<number>(sizes.length).fill(0);
    for (const item of items) {
      fill[item]! += 1;
      left[item]! -= 1;
    }
    return fill;
  });
  return left.some((count) => count > 0) ? undefined : fills;
}

/** Items that fill a bin best, each by its size class; `left` is as before afterwards. */
function fullest(sizes: readonly number[], left: number[], capacity: number): number[] {
  const start: number[] = [];
  let best: readonly number[] = [];
  let least = Infinity;
  let room = capacity;
  for (;;) {
    const pair = start.length === 0 ? undefined : bestPair(sizes, left, room);
    if (pair !== undefined && pair.waste < least) {
      least = pair.waste;
      best = [...start, ...pair.items];
    }
    const next = sizes.findIndex((size, item) => left[item]! > 0 && size <= room);
    if (next < 0) break;
    start.push(next);
    left[next]! -= 1;
    room -= sizes[next]!;
  }
  for (const item of start) left[item]! += 1;
  return [...best];
}

/** The two items, the one or none that leave the least of a room. */
function bestPair(
  sizes: readonly number[], left: readonly number[], room: number,
): { items: readonly number[]; waste: number } {
  let best: { items: readonly number[]; waste: number } = { items: [], waste: room };
  let small = sizes.length - 1;
  for (let large = 0; large < sizes.length; large += 1) {
    if (left[large] === 0 || sizes[large]! > room) continue;
    const alone = room - sizes[large]!;
    if (alone < best.waste) best = { items: [large], waste: alone };
    // The larger the first, the smaller the second has to be: both move one way.
    while (small >= large && sizes[small]! <= alone) {
      const isThere = left[small]! > (small === large ? 1 : 0);
      if (isThere && alone - sizes[small]! < best.waste) best = { items: [large, small], waste: alone - sizes[small]! };
      small -= 1;
    }
    if (small < large) break;
  }
  return best;
}
