import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runSteps } from '../../src/allocation/packing/index.ts';
import { exchangeLots } from '../../src/allocation/sharing/exchange-lots.ts';
import type { Lot } from '../../src/allocation/sharing/lots.ts';

const lot = (area: string | null, size: number): Lot => ({ piece: { size, count: 1, area, parts: [] }, count: 1 });

/** Size and area of what is in each bin, after the exchange. */
async function exchanged(bins: Lot[][], capacities: readonly number[]): Promise<string[][]> {
  await runSteps(exchangeLots(bins, capacities, () => false));
  return bins.map((lots) => lots.map(({ piece: { size, area } }) => `${area} ${size}`).sort());
}

test('a lot goes where its area is, if there is room', async () => {
  expect(await exchanged([[lot('A', 2), lot('B', 2)], [lot('A', 2)]], [4, 4])).toEqual([['B 2'], ['A 2', 'A 2']]);
});

test('a larger lot comes back for it where that fills the bin to the brim', async () => {
  // A goes from the full first bin, B of one more than A comes back: the room of 1 is used up.
  expect(await exchanged([[lot('A', 2), lot('B', 3)], [lot('A', 3), lot('B', 3)]], [6, 6]))
    .toEqual([['B 3', 'B 3'], ['A 2', 'A 3']]);
});

test('what went is counted once: no further lot goes without a gain', async () => {
  // B comes back for one A, since B then lies in one bin; to send another A after it would gain nothing.
  expect(await exchanged([[lot('A', 1), lot('A', 1), lot('A', 1), lot('B', 1)], [lot('A', 1), lot('B', 1)]], [4, 3]))
    .toEqual([['A 1', 'A 1', 'B 1', 'B 1'], ['A 1', 'A 1']]);
});

test('where nothing is gained, everything stays', async () => {
  // Either bin holds two of A: one of them elsewhere leaves A in both.
  const bins = () => [[lot('A', 1), lot('A', 1)], [lot('A', 1), lot('A', 1)]];
  const before = bins().map((lots) => lots.length);
  const after = bins();
  await exchanged(after, [4, 3]);
  expect(after.map((lots) => lots.length)).toEqual(before);
});

test('at random: no bin is overfilled, no lot is lost, and areas never lie in more bins', async () => {
  const lots = fc.array(fc.record({
    area: fc.constantFrom('A', 'B', 'C', null), size: fc.integer({ min: 1, max: 4 }),
  }), { maxLength: 6 });
  await fc.assert(fc.asyncProperty(
    fc.array(lots, { minLength: 2, maxLength: 4 }), fc.integer({ min: 0, max: 3 }), async (given, spare) => {
      const bins = given.map((each) => each.map(({ area, size }) => lot(area, size)));
      const load = (each: readonly Lot[]) => each.reduce((sum, { piece }) => sum + piece.size, 0);
      const spread = () => bins.reduce((sum, each) =>
        sum + new Set(each.flatMap(({ piece: { area } }) => area ?? [])).size, 0);
      const capacities = bins.map((each) => load(each) + spare);
      const [all, before] = [new Set(bins.flat()), spread()];
      await exchanged(bins, capacities);
      bins.forEach((each, bin) => { expect(load(each)).toBeLessThanOrEqual(capacities[bin]!); });
      expect(new Set(bins.flat())).toEqual(all);
      expect(bins.flat()).toHaveLength(all.size);
      expect(spread()).toBeLessThanOrEqual(before);
    }), { numRuns: 100 });
});
