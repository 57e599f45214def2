import { describe, expect, test } from 'vitest';
import {
  faultCurrent, longestClearing, loopResistancePerMetre, mayNotClear, tripMultiple, type WayKind,
} from '../../src/electrical/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';
import { IEC_60228 } from './iec-60228.ts';

/** On alternating current, on which the tables below hold: 1.5 times as much is asked for on direct current. */
const multipleOf = (name: WayKind) => name === 'gG' ? tripMultiple(name)! : tripMultiple(name)! / 1.5;

/** From a source that does not limit: what the cable lets through decides. */
const fault = (volts: number, loopOhm: number) => faultCurrent(volts, loopOhm, 1, 0, Infinity);

describe('short-circuit current', () => {
  test('Lessons In Electric Circuits, vol. I ch. 12: 230 V into 2 × 2300 ft of AWG 14, 11.301 Ω, is 20.352 A', () => {
    expect(fault(230, 11.301)).toEqual(closeTo(20.352, printed('20.352')));
  });

  test('a supply that limits its output gives no more than that, however short the cable', () => {
    // Common practice, no source: a 10 A supply with a peak of 1.2.
    expect(faultCurrent(24, 0.01, 1, 0, 12)).toBe(12);
    expect(faultCurrent(24, 0.01, 0, 0, 12)).toBe(12);
    expect(faultCurrent(24, 0.01, 1000, 0, 12)).toBe(2.4);
    expect(faultCurrent(24, 0.01, 970, 0.3, 12)).toEqual(closeTo(2.4, EXACT));
  });

  test('so a breaker of 4 A, characteristic B, on a 10 A supply may never clear, and one of 2 A does', () => {
    const current = faultCurrent(24, 0.01, 1, 0, 12);
    expect(mayNotClear(current, multipleOf('B'), 4)).toBe(true);
    expect(mayNotClear(current, multipleOf('B'), 2)).toBe(false);
  });
});

/*
 * Largest earth-fault loop impedance at which a breaker acts at once, 0.95 × 230 V: BS 7671:2018+A2:2022, Table 41.3,
 * as reprinted. It is published independently of the bands of IEC 60898-1, and follows from them.
 */
const TABLE_41_3 = [
  {
    name: 'B' as const,
    ratings: {
      6: '7.28', 10: '4.37', 16: '2.73', 20: '2.19', 25: '1.75', 32: '1.37', 40: '1.09', 50: '0.87', 63: '0.69',
    },
  },
  {
    name: 'C' as const,
    ratings: {
      6: '3.64', 10: '2.19', 16: '1.37', 20: '1.09', 25: '0.87', 32: '0.68', 40: '0.55', 50: '0.44', 63: '0.35',
    },
  },
  {
    name: 'D' as const,
    ratings: {
      6: '1.82', 10: '1.09', 16: '0.68', 20: '0.55', 25: '0.44', 32: '0.34', 40: '0.27', 50: '0.22', 63: '0.17',
    },
  },
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

/*
 * Total wire, both conductors [m], over which a breaker was seen to clear on 24 V DC, for 0.75, 1, 1.5 and 2.5 mm²:
 * manual of a power supply, «Output circuit breakers», p. 30. The supply in it gives 10 A for ever and about 50 A for
 * some milliseconds (from memory). The table holds for that one supply; for the software it is a bound.
 */
const CLEARED: [kind: 'B' | 'C', rated: number, wire: number[]][] = [
  ['C', 2, [23, 28, 43, 69]], ['C', 3, [18, 23, 34, 54]], ['C', 4, [6, 12, 18, 28]], ['C', 6, [3, 4, 6, 7]],
  ['C', 8, [2, 3, 4, 5]], ['C', 10, [1, 2, 3, 4]], ['B', 6, [9, 14, 19, 33]], ['B', 10, [4, 5, 6, 9]],
  ['B', 13, [3, 4, 5, 8]],
];
const SIZES = [0.75, 1, 1.5, 2.5];

describe('the longest run that clears is within what a power-supply manual saw clear', () => {
  const cells = CLEARED.flatMap(([kind, rated, wire]) =>
    wire.map((metres, at) => ({ kind, rated, size: SIZES[at]!, most: metres / 2 })));

  test.each(cells)('$kind $rated A, $size mm²: at most $most m one way', ({ kind, rated, size, most }) => {
    // Inner resistance of 0.3 Ω: common practice, no source. Conductors at 70 °C, the solid ones, which lead further.
    const loop = loopResistancePerMetre(IEC_60228.solidOrStranded[size]!, 70, 1)!;
    const longest = (availableAmps: number) =>
      longestClearing(24, loop, 0.3, tripMultiple(kind)! * rated, availableAmps)!;
    expect(longest(50)).toBeLessThanOrEqual(most);
    expect(longest(Infinity)).toBeLessThanOrEqual(most);
    expect(longest(50)).toBe(tripMultiple(kind)! * rated > 50 ? 0 : longest(Infinity));
  });

  test('is not far short of it where the supply trips the breaker for certain', () => {
    const sure = cells.filter(({ kind, rated }) => tripMultiple(kind)! * rated <= 45);
    expect(sure).toHaveLength(12);
    for (const { kind, rated, size, most } of sure) {
      const loop = loopResistancePerMetre(IEC_60228.solidOrStranded[size]!, 70, 1)!;
      expect(longestClearing(24, loop, 0.3, tripMultiple(kind)! * rated, 50)).toBeGreaterThan(most / 2.5);
    }
  });

  test('clears at its length and not beyond', () => {
    for (const [trip, inner] of [[7, 0], [30, 0.3], [45, 0.5]] as const) {
      const longest = longestClearing(24, 0.013, inner, trip, 45)!;
      expect(mayNotClear(faultCurrent(24, 0.013, longest, inner, 45), trip, 1)).toBe(false);
      expect(mayNotClear(faultCurrent(24, 0.013, longest * 1.000001, inner, 45), trip, 1)).toBe(true);
    }
    expect(longestClearing(24, 0.013, 0.3, 90, 100)).toBe(0);
    expect(longestClearing(24, 0, 0.3, 30, 50)).toBeNull();
    expect(longestClearing(24, 0.05, 0, 10, 10)).toEqual(closeTo(48, EXACT));
  });
});
