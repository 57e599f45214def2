import { describe, expect, test } from 'vitest';
import { faultCurrent, mayNotClear, TRIP_CHARACTERISTICS } from '../../src/electrical/index.ts';
import { closeTo, printed } from '../support/close-to.ts';

const multipleOf = (name: string) =>
  TRIP_CHARACTERISTICS.find((characteristic) => characteristic.name === name)?.multiple ?? NaN;

/** A source that does not limit: what the cable lets through decides. */
const STIFF = { ratedAmps: 1e9, units: 1, peak: 1 };

function fault(volts: number, loopOhm: number): number {
  return faultCurrent(volts, loopOhm, 1, STIFF.ratedAmps, STIFF.units, STIFF.peak);
}

describe('short-circuit current', () => {
  test('Lessons In Electric Circuits, vol. I ch. 12: 230 V into 2 × 2300 ft of AWG 14, 11.301 Ω, is 20.352 A', () => {
    expect(fault(230, 11.301)).toEqual(closeTo(20.352, printed('20.352')));
  });

  test('a supply that limits its output gives no more than that, however short the cable', () => {
    // Common practice, no source: a 10 A supply with a peak of 1.2.
    expect(faultCurrent(24, 0.01, 1, 10, 1, 1.2)).toBe(12);
    expect(faultCurrent(24, 0.01, 1, 10, 2, 1.2)).toBe(24);
    expect(faultCurrent(24, 0.01, 0, 10, 1, 1.2)).toBe(12);
    expect(faultCurrent(24, 0.01, 1000, 10, 1, 1.2)).toBe(2.4);
  });

  test('so a breaker of 4 A, characteristic B, on a 10 A supply may never clear, and one of 2 A does', () => {
    const current = faultCurrent(24, 0.01, 1, 10, 1, 1.2);
    expect(mayNotClear(current, multipleOf('B'), 4)).toBe(true);
    expect(mayNotClear(current, multipleOf('B'), 2)).toBe(false);
  });
});

/*
 * Largest earth-fault loop impedance at which a breaker acts at once, 0.95 × 230 V: BS 7671:2018+A2:2022, Table 41.3,
 * as reprinted. It is published independently of the bands of IEC 60898-1, and follows from them.
 */
const TABLE_41_3 = [
  { name: 'B', ratings: { 6: '7.28', 10: '4.37', 16: '2.73', 20: '2.19', 25: '1.75', 32: '1.37', 40: '1.09', 50: '0.87', 63: '0.69' } },
  { name: 'C', ratings: { 6: '3.64', 10: '2.19', 16: '1.37', 20: '1.09', 25: '0.87', 32: '0.68', 40: '0.55', 50: '0.44', 63: '0.35' } },
  { name: 'D', ratings: { 6: '1.82', 10: '1.09', 16: '0.68', 20: '0.55', 25: '0.44', 32: '0.34', 40: '0.27', 50: '0.22', 63: '0.17' } },
].flatMap(({ name, ratings }) =>
  Object.entries(ratings).map(([rating, ohm]) => ({ name, rating: Number(rating), ohm })));

describe('trip multiples of breakers, IEC 60898-1, against BS 7671 Table 41.3', () => {
  test.each(TABLE_41_3)('$name $rating A: $ohm Ω', ({ name, rating, ohm }) => {
    const exact = (0.95 * 230) / (multipleOf(name) * rating);
    // The table is rounded to two decimals, to nearest or down.
    expect(Number(ohm)).toEqual(closeTo(exact, { absolute: 0.01, relative: 0 }));
    expect(mayNotClear(fault(0.95 * 230, Number(ohm) - 0.01), multipleOf(name), rating)).toBe(false);
    expect(mayNotClear(fault(0.95 * 230, Number(ohm) + 0.01), multipleOf(name), rating)).toBe(true);
  });
});

describe('trip multiple of gG fuses against BS 7671 Table 41.2, 0.4 s, as reprinted', () => {
  test.each([
    { rating: 16, ohm: 2.42 }, { rating: 32, ohm: 1.04 }, { rating: 40, ohm: 0.87 }, { rating: 50, ohm: 0.68 },
    { rating: 63, ohm: 0.54 }, { rating: 100, ohm: 0.34 },
  ])('$rating A: the multiple is enough, and not by more than a quarter', ({ rating, ohm }) => {
    const published = (0.95 * 230) / ohm / rating;
    expect(multipleOf('gG')).toBeGreaterThanOrEqual(published);
    expect(multipleOf('gG')).toBeLessThan(1.25 * published);
  });
});

test('quick-acting fuses: 4 × within 300 ms and 10 × within 20 ms, IEC 60127-2 as reprinted', () => {
  const nodes = TRIP_CHARACTERISTICS.filter(({ name }) => name.startsWith('quick-acting'))
    .map(({ multiple, withinSeconds }) => [multiple, withinSeconds]);
  expect(nodes).toEqual([[4, 0.3], [10, 0.02]]);
});
