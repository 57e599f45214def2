import { describe, expect, test } from 'vitest';
import {
  availableCurrent, discriminates, operatingMultiple, tripMultiple, usableCurrent, WAY_KINDS,
  type WayKind,
} from '../../src/electrical/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';

const of = (kind: WayKind, ratedAmps: number) => ({ kind, ratedAmps });

describe('what makes a way act at once on direct current', () => {
  // IEC 60898-1, upper end of the band (5, 10, 20); times 1.5 on direct current, from memory, sure as practice.
  test.each([['B', 5], ['C', 10], ['D', 20]] as const)('breaker %s: 1.5 × %d', (kind, onAlternating) => {
    expect(tripMultiple(kind)).toBe(1.5 * onAlternating);
  });

  // Guide to BS 7671:2008: Table 41.2, 0.4 s, Uo 230 V: Ia = 230 ÷ Zs.
  test.each([[6, 8.52], [10, 5.11], [16, 2.70], [20, 1.77], [25, 1.44], [32, 1.04]])(
    'a gG fuse of %d A, %d Ω: its multiple is enough', (rated, ohm) => {
      expect(tripMultiple('gG')! * rated).toBeGreaterThanOrEqual(230 / ohm);
      expect(tripMultiple('gG')! * rated).toBeLessThan(1.6 * 230 / ohm);
    });

  test('a fast fuse, IEC 60127-2, 4 × within 0.3 s as reprinted; an electronic channel above the 1.7 × of a maker',
    () => {
    expect(tripMultiple('fast')).toBe(4);
    expect(tripMultiple('slow')).toBe(10);
    for (const limit of [1.25, 1.5, 1.7]) expect(tripMultiple('electronic')).toBeGreaterThan(limit);
  });

  test('is known for every kind, and for no other', () => {
    for (const kind of WAY_KINDS) {
      expect(tripMultiple(kind)).toBeGreaterThan(operatingMultiple(kind, 16)!);
    }
    expect([tripMultiple(null), operatingMultiple(null, 16)]).toEqual([null, null]);
  });
});

describe('what makes a way act on overload', () => {
  test.each([
    // IEC 60898-1 as reprinted; gG 1.6 as reprinted, under 16 A from memory, sure; IEC 60127-2 as reprinted.
    ['B', 6, 1.45], ['C', 16, 1.45], ['D', 63, 1.45], ['gG', 2, 2.1], ['gG', 4, 2.1], ['gG', 6, 1.9], ['gG', 10, 1.9],
    ['gG', 16, 1.6], ['gG', 63, 1.6], ['fast', 3.15, 2.1], ['slow', 6.3, 2.1], ['electronic', 4, 1.45],
  ] as const)('%s %d A: %d', (kind, rated, multiple) => expect(operatingMultiple(kind, rated)).toBe(multiple));
});

test('what is left for a fault: 10 A × 1.2 with 7 A on other devices is 5 A, and a redundant unit gives nothing',
  () => {
  // Worked by hand.
  expect(availableCurrent(usableCurrent(10, 1, false, 1), 1.2, 7)).toEqual(closeTo(5, EXACT));
  expect(availableCurrent(usableCurrent(10, 2, true, 1), 1.2, 7)).toEqual(closeTo(5, EXACT));
  expect(availableCurrent(usableCurrent(10, 2, false, 0.9), 1, 7)).toEqual(closeTo(11, EXACT));
  expect(availableCurrent(10, 1, 12)).toBe(0);
});

/* Pre-arcing I²t of gG fuses [10³ A²s], least and most: GOST R IEC 60269-1:2010, Table 7, as reprinted. */
const GATES = [
  [16, 0.3, 1.0], [20, 0.5, 1.8], [25, 1.0, 3.0], [32, 1.8, 5.0], [40, 3, 9], [50, 5, 16], [63, 9, 27], [80, 16, 46],
  [100, 27, 86], [125, 46, 140],
] as const;

/** Each fuse, and the one so many steps up the series of ratings. */
const pairsOfGates = (steps: number) => GATES.slice(0, -steps).map(([rated, , most], at) =>
  ({ rated, most, upstream: GATES[at + steps]![0], least: GATES[at + steps]![1] }));

describe('gG behind gG discriminates as the gates of IEC 60269-1, Table 7, say', () => {
  test.each(pairsOfGates(2))(
    '$rated A behind $upstream A, two steps up', ({ rated, most, upstream, least }) => {
      // 100 A behind 160 A is left out: the table that was read ends at 125 A.
      expect(most).toBeLessThanOrEqual(least);
      expect(discriminates(of('gG', upstream), of('gG', rated), null)).toBe(true);
    });

  test.each(pairsOfGates(1))(
    '$rated A not behind $upstream A, one step up', ({ rated, most, upstream, least }) => {
      expect(most).toBeGreaterThan(least);
      expect(discriminates(of('gG', upstream), of('gG', rated), null)).toBe(false);
    });
});

describe('other discrimination: twice the rating is common practice, no source', () => {
  test.each([
    { upstream: of('fast', 8), way: of('fast', 4), available: null, shown: true },
    { upstream: of('slow', 6.3), way: of('slow', 4), available: null, shown: false },
    { upstream: of('B', 16), way: of('B', 8), available: 63, shown: true },
    { upstream: of('B', 16), way: of('B', 8), available: 64, shown: false },
    { upstream: of('C', 16), way: of('B', 6), available: 111, shown: true },
    { upstream: of('C', 16), way: of('B', 6), available: 112, shown: false },
    { upstream: of('D', 16), way: of('C', 6), available: 159, shown: true },
    { upstream: of('C', 10), way: of('B', 6), available: 20, shown: false },
    { upstream: of('C', 16), way: of('B', 6), available: null, shown: null },
    { upstream: of('gG', 16), way: of('B', 4), available: 20, shown: null },
    { upstream: of('B', 16), way: of('fast', 2), available: 20, shown: null },
    { upstream: of('electronic', 10), way: of('fast', 2), available: 20, shown: null },
    { upstream: of('C', 16), way: of('electronic', 16), available: 20, shown: true },
    { upstream: of('electronic', 4), way: of('electronic', 6), available: 20, shown: false },
  ])('$way.kind $way.ratedAmps A behind $upstream.kind $upstream.ratedAmps A, $available A: $shown', (row) => {
    expect(discriminates(row.upstream, row.way, row.available)).toBe(row.shown);
  });
});
