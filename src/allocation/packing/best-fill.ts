import { howMany } from './fit-decreasing.ts';
import type { Fill, SizeClasses } from './size-classes.ts';

/** The dearest fill of a bin, as far as one was found, and what none can be worth more than. */
export interface BestFill {
  readonly fill: Fill | undefined;
  readonly most: number;
}

/** Cells of a table up to which a knapsack in whole numbers is solved by it. */
const MOST_CELLS = 1_000_000;
const MOST_NODES = 10_000;
/** Differences of worth that are left out of account; prices are about 1 for a whole bin. */
const ROUNDING = 1e-12;

/**
 * The fill of a bin that is worth most, if it is worth more than a price: a bounded knapsack.
 * @param prices worth of one item of each size, 0 or more
 * @param above the price; cheaper fills are of no interest
 * @returns the fill; `most` is its worth or the price, and more where the search was given up
 */
export function bestFill(
  classes: SizeClasses, prices: readonly number[], capacity: number, above: number,
): BestFill {
  const whole = Math.floor(capacity);
  return classes.sizes.every(Number.isInteger) && whole * classes.sizes.length <= MOST_CELLS
    ? byTable(classes, prices, whole)
    : byBranching(classes, prices, capacity, above);
}

/** Dynamic programming over whole sizes. */
function byTable({ sizes, counts }: SizeClasses, prices: readonly number[], capacity: number): BestFill {
  const worth = new Float64Array(capacity + 1);
  const taken = sizes.map((size, item) => {
    const most = Math.min(counts[item]!, Math.floor(capacity / size));
    const number = new Int32Array(capacity + 1);
    const price = prices[item]!;
    if (most === 0 || price <= 0) return number;
    for (let room = capacity; room >= size; room -= 1) {
      for (let count = Math.min(most, Math.floor(room / size)); count > 0; count -= 1) {
        const total = worth[room - count * size]! + count * price;
        if (total > worth[room]! + ROUNDING) {
          number[room] = count;
          worth[room] = total;
        }
      }
    }
    return number;
  });
  const fill = new Array<number>(sizes.length).fill(0);
  let room = capacity;
  for (let item = sizes.length - 1; item >= 0; item -= 1) {
    fill[item] = taken[item]![room]!;
    room -= fill[item]! * sizes[item]!;
  }
  const total = fill.reduce((sum, count, item) => sum + count * prices[item]!, 0);
  return { fill, most: total + ROUNDING * (sizes.length + 1) };
}

/** Depth first over the sizes in descending order of worth for their size, bounded by the fill with fractions. */
function byBranching(
  { sizes, counts }: SizeClasses, prices: readonly number[], capacity: number, above: number,
): BestFill {
  const order = [...sizes.keys()].filter((item) => prices[item]! > 0 && counts[item]! > 0)
    .sort((a, b) => prices[b]! / sizes[b]! - prices[a]! / sizes[a]!);
  const fill = new Array<number>(sizes.length).fill(0);
  let chosen: Fill | undefined;
  let worth = above;
  let nodes = 0;

  const bound = (from: number, start: number): number => {
    let room = start;
    let sum = 0;
    for (let place = from; place < order.length && room > 0; place += 1) {
      const item = order[place]!;
      const count = Math.min(counts[item]!, room / sizes[item]!);
      sum += count * prices[item]!;
      room -= count * sizes[item]!;
    }
    return sum;
  };
  const visit = (from: number, room: number, sum: number): void => {
    nodes += 1;
    if (sum > worth) {
      worth = sum;
      chosen = [...fill];
    }
    if (from === order.length || nodes > MOST_NODES || sum + bound(from, room) <= worth + ROUNDING) return;
    const item = order[from]!;
    for (let count = Math.min(counts[item]!, howMany(room, sizes[item]!)); count >= 0; count -= 1) {
      fill[item] = count;
      visit(from + 1, room - count * sizes[item]!, sum + count * prices[item]!);
    }
    fill[item] = 0;
  };

  const most = bound(0, capacity);
  visit(0, capacity, 0);
  return { fill: chosen, most: nodes > MOST_NODES ? Math.max(most, worth) : worth + ROUNDING * (sizes.length + 1) };
}
