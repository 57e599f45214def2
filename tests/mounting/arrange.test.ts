import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange, PARTITION, widthOnRail, type Band, type Item } from '../../src/mounting/index.ts';

const items = (...widths: number[]): Item[] => widths.map((width) => ({ width, band: undefined }));

/**
 * Whether items can be put on rails, by trying every rail for every item: nothing of the product is asked. A rail with
 * mains and extra-low voltage holds a partition besides.
 */
function canBeArranged(all: readonly Item[], count: number, length: number): boolean {
  const ways = count ** all.length;
  for (let way = 0; way < ways; way += 1) {
    const rails = all.map(({ mountedOn }, index) => mountedOn ?? 1 + Math.floor(way / count ** index) % count);
    if (Array.from({ length: count }, (_rail, at) => at + 1).every((rail) => {
      const those = all.filter((_item, index) => rails[index] === rail);
      // What stands by hand stands there however full the rail is.
      if (those.every(({ mountedOn }) => mountedOn !== undefined)) return true;
      const bands = new Set(those.map(({ band }) => band).filter((band) => band !== undefined));
      return those.reduce((sum, { width }) => sum + width, 0) + (bands.size > 1 ? 3 : 0) <= length + 1e-9;
    })) return true;
  }
  return false;
}

/**
 * Items of a published set with proven optima: E. Falkenauer, Journal of Heuristics 2 (1996), from the OR-Library; the
 * source stands in the file.
 */
const INSTANCES = readFileSync(new URL('../allocation/falkenauer-u120.txt', import.meta.url), 'utf8').split('\n')
  .filter((line) => line !== '' && !line.startsWith('#')).reduce<string[][]>((all, line) => {
    if (line.startsWith('u120')) all.push([]);
    all.at(-1)!.push(line);
    return all;
  }, []).map(([name, head, sizes]) => {
    const [capacity, , optimum] = head!.trim().split(' ').map(Number);
    return { name: name!, capacity: capacity!, optimum: optimum!, sizes: sizes!.trim().split(' ').map(Number) };
  });

const someItem = fc.record({
  width: fc.integer({ min: 1, max: 24 }), band: fc.constantFrom<Band | undefined>('mains', 'elv', undefined),
  mountedOn: fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined, freq: 6 }),
});
const someRails = fc.record({
  all: fc.array(someItem, { maxLength: 7 }), count: fc.integer({ min: 1, max: 3 }),
  length: fc.integer({ min: 10, max: 40 }),
}).map(({ all, count, length }) => ({
  count, length,
  all: all.map(({ mountedOn, ...item }) =>
    ({ ...item, mountedOn: mountedOn === undefined ? undefined : Math.min(count, mountedOn) })),
}));

describe('parts put whole on mounting rails', () => {
  // 960 mm of parts on 3 × 400 mm less a reserve of 20 %: two of 250 mm never share a rail, and beside one are 150 mm.
  it('finds that 250, 250, 250 and 210 mm do not stand on three rails of 400 mm, though their sum fits', () => {
    const { outcome, rails } = arrange(items(250, 250, 250, 210), 3, 400);
    expect(outcome).toBe('none');
    expect(rails).toEqual([1, 2, 3, 0]);
    expect(arrange(items(250, 250, 250, 150), 3, 400)).toEqual({ outcome: 'fits', rails: [1, 2, 3, 1] });
    expect(arrange(items(250, 250, 250, 210), 4, 400).outcome).toBe('fits');
  });

  it('searches where the order of purpose leaves one over', () => {
    // In order, 60 and 30 fill the first rail and 50 the second, which leaves 40 over; 60 + 40 and 50 + 30 + 20 fit.
    const all = items(60, 30, 50, 40, 20);
    const { outcome, rails } = arrange(all, 2, 100);
    expect(outcome).toBe('fits');
    for (const rail of [1, 2]) expect(widthOnRail(all.filter((_item, at) => rails[at] === rail))).toBe(100);
    expect(rails[0]).toBe(1);
  });

  it('keeps mains and extra-low voltage on rails of their own where that goes, else counts the partition', () => {
    const both: Item[] = [{ width: 40, band: 'mains' }, { width: 40, band: 'elv' }];
    expect(arrange(both, 2, 100).rails).toEqual([1, 2]);
    expect(arrange(both, 1, 80 + PARTITION)).toEqual({ outcome: 'fits', rails: [1, 1] });
    expect(arrange(both, 1, 80 + PARTITION - 0.1).outcome).toBe('none');
    expect(widthOnRail(both)).toBe(80 + PARTITION);
    expect(widthOnRail(both.slice(1))).toBe(40);
  });

  it('leaves what stands where it stands, and puts the rest beside it', () => {
    const [first, ...more] = items(250, 250, 140);
    expect(arrange([{ ...first!, mountedOn: 2 }, ...more], 2, 400)).toEqual({ outcome: 'fits', rails: [2, 1, 1] });
    // A rail that is not there holds nothing, and one that is given too much no more.
    expect(arrange([{ ...first!, mountedOn: 3 }, ...more], 2, 400)).toEqual({ outcome: 'fits', rails: [0, 1, 1] });
    expect(arrange([{ width: 500, band: undefined, mountedOn: 1 }, ...more], 1, 400)).toEqual({ outcome: 'none', rails: [1, 0, 0] });
  });

  it('takes decimals as they are meant: 0.1 mm ten times is 1 mm', () => {
    expect(arrange(items(...new Array<number>(10).fill(0.1)), 1, 1).outcome).toBe('fits');
  });

  it.each(INSTANCES)('is never at odds with the proven optimum of $name: $optimum rails', ({ capacity, optimum, sizes }) => {
    const outcome = (more: number) => arrange(items(...sizes), optimum + more, capacity).outcome;
    expect(outcome(-1)).toBe('none');
    expect(['fits', 'unknown']).toContain(outcome(0));
    expect(outcome(1)).toBe('fits');
  });

  it('says that it does not know where a search of many parts is cut short', () => {
    const { sizes, capacity, optimum } = INSTANCES.find(({ name }) => name === 'u120_00')!;
    const { outcome, rails } = arrange(items(...sizes), optimum, capacity);
    expect(outcome).toBe('unknown');
    expect(rails).toContain(0);
  });

  it('decides as trying every way does, and never puts too much on a rail; the same again gives the same', () => {
    fc.assert(fc.property(someRails, ({ all, count, length }) => {
      const { outcome, rails } = arrange(all, count, length);
      expect(outcome).toBe(canBeArranged(all, count, length) ? 'fits' : 'none');
      expect(rails.includes(0)).toBe(outcome === 'none');
      expect(all.map(({ mountedOn }, index) => mountedOn ?? rails[index])).toEqual(rails);
      for (let rail = 1; rail <= count; rail += 1) {
        const those = all.filter((_item, index) => rails[index] === rail);
        const isByHand = those.every(({ mountedOn }) => mountedOn !== undefined);
        expect(isByHand || widthOnRail(those) <= length).toBe(true);
      }
      expect(arrange(all, count, length)).toEqual({ outcome, rails });
      // What was found stands: given to each as its rail, nothing moves.
      const placed = all.map((item, index) => ({ ...item, mountedOn: rails[index] === 0 ? undefined : rails[index] }));
      expect(arrange(placed, count, length).rails).toEqual(rails);
    }), { numRuns: 400 });
  });

  it('mixes mains and extra-low voltage only where every arrangement without that leaves something over', () => {
    const isMixed = (all: readonly Item[]) => new Set(all.flatMap(({ band }) => band ?? [])).size > 1;
    fc.assert(fc.property(someRails, ({ all, count, length }) => {
      const free = all.map(({ width, band }) => ({ width, band }));
      const { outcome, rails } = arrange(free, count, length);
      const on = (rail: number, places: readonly number[]) => free.filter((_item, index) => places[index] === rail);
      const each = Array.from({ length: count }, (_rail, at) => at);
      const mixes = each.some((rail) => isMixed(on(rail + 1, rails)));
      if (outcome !== 'fits' || !mixes) return;
      // Every way to keep some rails to mains and the others to extra-low voltage.
      for (let kept = 0; kept < 2 ** count; kept += 1) {
        const apart = (way: number[]) => free.every(({ band }, index) => band === undefined || (band === 'mains') === ((kept >> way[index]!) % 2 === 1));
        for (let way = 0; way < count ** free.length; way += 1) {
          const places = free.map((_item, index) => Math.floor(way / count ** index) % count);
          if (!apart(places)) continue;
          const fits = each.every((rail) => on(rail, places).reduce((sum, { width }) => sum + width, 0) <= length);
          expect(fits).toBe(false);
        }
      }
    }), { numRuns: 400 });
  });
});
