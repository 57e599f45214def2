import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packBins } from '../../src/allocation/index.ts';
import { classesOf, leastBins, runSteps } from '../../src/allocation/packing/index.ts';

const load = (items: readonly number[], sizes: readonly number[]) => items.reduce((sum, item) => sum + sizes[item]!, 0);

describe('packing whole items', () => {
  test.each<{ name: string; sizes: number[]; capacity: number; bins: number; note: string }>([
    { name: 'nothing', sizes: [], capacity: 10, bins: 0, note: 'no items need no bins' },
    { name: 'items without size', sizes: [0, 0], capacity: 10, bins: 1, note: 'they need a place all the same' },
    { name: 'three thirds', sizes: [1 / 3, 1 / 3, 1 / 3], capacity: 1, bins: 1, note: 'fills up to the rounding' },
    {
      name: 'six sixths', sizes: new Array<number>(6).fill(1 / 6), capacity: 1, bins: 1,
      note: 'fills up to the rounding',
    },
    {
      name: 'ten tenths', sizes: new Array<number>(10).fill(0.1), capacity: 1, bins: 1,
      note: '0.1 is no binary fraction',
    },
    { name: 'a hair too much', sizes: [0.5, 0.500001], capacity: 1, bins: 2, note: 'more than rounding' },
    {
      name: 'three that do not pair', sizes: [6, 6, 6], capacity: 10, bins: 3,
      note: '18 ÷ 10 asks for 2 only, L2 proves 3',
    },
    {
      name: 'where largest first is misled', sizes: [6, 5, 5, 4, 3, 3, 2, 2], capacity: 10, bins: 3,
      note: '30 ÷ 10; 6+4, 5+5 and 3+3+2+2 by hand',
    },
  ])('$name: $note', async ({ sizes, capacity, bins }) => {
    const packed = await packBins(sizes, capacity);
    expect(packed).toMatchObject({ lowerBound: bins, proven: true });
    expect(packed.bins).toHaveLength(bins);
    expect(packed.bins.flat().sort((a, b) => a - b)).toEqual([...sizes.keys()]);
  });

  test('proves by prices what areas do not', async () => {
    // By hand: no three of 34 go into 100, so ten take five bins; their sum, 340, asks for four, and so does L2.
    const { bins, proven } = await packBins(new Array<number>(10).fill(34), 100);
    expect([bins.length, proven]).toEqual([5, true]);
    // The same with sizes that are all different, 33.4 to 34.5.
    const unlike = await packBins(Array.from({ length: 12 }, (_, item) => 33.4 + item / 10), 100);
    expect([unlike.bins.length, unlike.proven]).toEqual([6, true]);
  });

  test('one simple way that finds a place is enough where no further bin can be had', async () => {
    // 5 + 3 + 2 and 4 + 4 + 2 by hand; largest first puts 5 + 4 together, and only pairs find it.
    const classes = classesOf([5, 4, 4, 3, 2, 2].map((size) => [size, 1]));
    const packed = await runSteps(leastBins(classes, { base: [], spare: [10, 10] }, () => false));
    expect(packed?.besides).toEqual([0, 1]);
  });

  test('an item larger than a bin is refused', async () => {
    await expect(packBins([3, 11], 10)).rejects.toThrow('Item 1 of size 11 is not between 0 and 10.');
    await expect(packBins([-1], 10)).rejects.toThrow(RangeError);
  });

  test('never fills a bin beyond its capacity, loses nothing, and needs no more bins when they are larger',
    async () => {
    await fc.assert(fc.asyncProperty(
      fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { maxLength: 30 }),
      fc.double({ min: 1, max: 2, noNaN: true }),
      async (sizes, factor) => {
        const [small, large] = [await packBins(sizes, 1), await packBins(sizes, factor)];
        for (const [packing, capacity] of [[small, 1], [large, factor]] as const) {
          expect(packing.bins.flat().sort((a, b) => a - b)).toEqual([...sizes.keys()]);
          for (const bin of packing.bins) expect(load(bin, sizes)).toBeLessThanOrEqual(capacity * (1 + 1e-9));
          expect(packing.lowerBound).toBeLessThanOrEqual(packing.bins.length);
          expect(packing.proven).toBe(packing.lowerBound === packing.bins.length);
        }
        expect(large.bins.length).toBeLessThanOrEqual(small.bins.length);
      },
    ), { numRuns: 100 });
  });

  test('triplets that fill bins of 1000 exactly are put together again', async () => {
    // As Falkenauer's class of triplets is made: three items to a bin, none over, so that the optimum is known.
    const parts = fc.tuple(fc.integer({ min: 380, max: 490 }), fc.double({ min: 0, max: 1, noNaN: true }));
    const sizes = fc.sample(parts, { numRuns: 20, seed: 4 })
      .flatMap(([first, part]) => {
        const second = 250 + Math.floor(part * ((1000 - first) / 2 - 250));
        return [first, second, 1000 - first - second];
      });
    const { bins, proven } = await packBins(sizes, 1000);
    expect([bins.length, proven]).toEqual([20, true]);
  });

  test('gives the best packing so far when it is stopped', async () => {
    const sizes = Array.from({ length: 400 }, (_, item) => 0.2 + ((item * 0.61803398875) % 1) * 0.8);
    const stopped = new AbortController();
    stopped.abort();
    const { bins, lowerBound, proven } = await packBins(sizes, 1.5, { signal: stopped.signal });
    expect(bins.flat()).toHaveLength(400);
    for (const bin of bins) expect(load(bin, sizes)).toBeLessThanOrEqual(1.5 * (1 + 1e-9));
    expect(lowerBound).toBe(Math.ceil(sizes.reduce((sum, size) => sum + size, 0) / 1.5));
    expect(proven).toBe(bins.length === lowerBound);
  });

  test('items without a size take no bin of their own, unless there is no other', async () => {
    expect(await packBins([0, 6, 0, 4], 10)).toEqual({ bins: [[0, 1, 2, 3]], lowerBound: 1, proven: true });
    expect(await packBins([0, 0], 10)).toEqual({ bins: [[0, 1]], lowerBound: 1, proven: true });
  });

  test('the same items give the same packing', async () => {
    const sizes = fc.sample(fc.integer({ min: 20, max: 100 }), { numRuns: 120, seed: 9 });
    expect(await packBins(sizes, 150)).toEqual(await packBins(sizes, 150));
  });
});
