import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { packBins } from '../../src/allocation/index.ts';

/*
 * E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2 (1996), uniform class
 * with 120 items; distributed in the OR-Library (J.E. Beasley, file binpack1). The optima were proven by an exact
 * method.
 */
interface Instance {
  readonly name: string;
  readonly capacity: number;
  readonly optimum: number;
  readonly sizes: readonly number[];
}

const lines = readFileSync(new URL('falkenauer-u120.txt', import.meta.url), 'utf8').split(/\r?\n/)
  .filter((line) => line !== '' && !line.startsWith('#'));
const instances = Array.from({ length: lines.length / 3 }, (_, index): Instance => {
  const [name, figures, sizes] = lines.slice(3 * index) as [string, string, string];
  const [capacity, count, optimum] = figures.split(' ').map(Number) as [number, number, number];
  const read = sizes.trim().split(/\s+/).map(Number);
  expect(read).toHaveLength(count);
  return { name, capacity, optimum, sizes: read };
});

describe('published instances of bin packing', () => {
  test('all of them are read', () => {
    expect(instances.map(({ name }) => name)).toEqual(
      ['00', '01', '02', '03', '04', '05', '06', '10', '17'].map((number) => `u120_${number}`));
  });

  // What is not found within this time is not proven, and fails.
  test.each(instances)('$name is packed into $optimum bins, proven, within 2 s', async ({
    sizes, capacity, optimum,
  }) => {
    const { bins, lowerBound, proven } = await packBins(sizes, capacity, { milliseconds: 2000 });
    expect({ count: bins.length, lowerBound, proven }).toEqual({ count: optimum, lowerBound: optimum, proven: true });
    expect(bins.flat().sort((a, b) => a - b)).toEqual([...sizes.keys()]);
    for (const bin of bins) {
      expect(bin.reduce((sum, item) => sum + sizes[item]!, 0)).toBeLessThanOrEqual(capacity);
    }
  });
});
