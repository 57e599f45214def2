import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestFill } from '../../src/allocation/packing/best-fill.ts';

interface Knapsack {
  readonly sizes: readonly number[];
  readonly counts: readonly number[];
  readonly prices: readonly number[];
  readonly capacity: number;
}

const times = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, each, place) => sum + each * other[place]!, 0);

/** What the dearest of all fills that there are is worth. */
function dearest({ sizes, counts, prices, capacity }: Knapsack, from = 0): number {
  if (from === sizes.length) return 0;
  let most = -Infinity;
  for (let count = 0; count <= counts[from]! && count * sizes[from]! <= capacity; count += 1) {
    const rest = dearest({ sizes, counts, prices, capacity: capacity - count * sizes[from]! }, from + 1);
    most = Math.max(most, count * prices[from]! + rest);
  }
  return most;
}

/** Sizes and a capacity in steps, so that every sum of them is exact. */
const knapsacks = (step: number): fc.Arbitrary<Knapsack> =>
  fc.record({
    items: fc.uniqueArray(fc.record({
      size: fc.integer({ min: 1, max: 12 }), count: fc.integer({ min: 0, max: 3 }),
      price: fc.integer({ min: 0, max: 40 }),
    }), { minLength: 1, maxLength: 4, selector: ({ size }) => size }),
    capacity: fc.integer({ min: 0, max: 40 }),
  }).map(({ items, capacity }) => {
    const sorted = items.toSorted((one, other) => other.size - one.size);
    return {
      sizes: sorted.map(({ size }) => size * step), counts: sorted.map(({ count }) => count),
      prices: sorted.map(({ price }) => price / 32), capacity: capacity * step,
    };
  });

// Whole sizes are solved by a table, others by branching.
test.each([1, 0.25])('sizes in steps of %d: the fill fits, and none is worth more', (step) => {
  fc.assert(fc.property(knapsacks(step), fc.integer({ min: 0, max: 80 }), (knapsack, price) => {
    const { sizes, counts, prices, capacity } = knapsack;
    const [above, most] = [price / 32, dearest(knapsack)];
    const found = bestFill({ sizes, counts }, prices, capacity, above);
    expect(found.most).toBeGreaterThanOrEqual(most);
    expect(found.most).toBeLessThan(Math.max(most, above) + 1e-9);
    if (most <= above) return;
    expect(times(found.fill!, prices)).toBe(most);
    expect(times(found.fill!, sizes)).toBeLessThanOrEqual(capacity);
    found.fill!.forEach((count, place) => { expect(count).toBeLessThanOrEqual(counts[place]!); });
  }), { numRuns: 500 });
});

test('a search that would not come to an end is given up, and says what no fill can be worth more than', () => {
  // Worth by size, and no sum of them is the capacity: the bound cuts nothing off.
  const sizes = Array.from({ length: 60 }, (_, place) => Math.sqrt(200 - place));
  const prices = sizes.map((size) => size / 333.3);
  const found = bestFill({ sizes, counts: sizes.map(() => 1) }, prices, 333.3, 0);
  expect(times(found.fill!, sizes)).toBeLessThanOrEqual(333.3);
  expect(found.most).toBeGreaterThanOrEqual(times(found.fill!, prices));
  expect(found.most).toBeCloseTo(1, 12);
});
