import { describe, expect, test } from 'vitest';
import {
  BREAKER_CURVES, breakerShare, inrushLimit, topTemperature, type BreakerCurve,
} from '../../src/electrical/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';

describe('drivers on a breaker, from those on a B 16', () => {
  /** How many of those of which `onB16` go on a B 16 start on another breaker. */
  const most = (onB16: number, rated: number, curve: BreakerCurve) =>
    Math.floor(1 / breakerShare(1, onB16, rated, curve)! + 1e-9);

  // Manual of a grow light, p. 12, with 100 on a C 16; a B 16 has 60 of them, read.
  test.each([['B', 10, 37], ['B', 16, 60], ['B', 20, 75], ['C', 10, 62], ['C', 16, 100], ['C', 20, 125]] as const)(
    '%s %d A: %d, as a manual prints', (curve, rated, printedMost) => expect(most(60, rated, curve)).toBe(printedMost));

  // Lists as remembered, with 100 on a B 16; C 16 170 is rounded up there.
  test.each([['B', 10, 62], ['B', 13, 81], ['C', 10, 104], ['C', 16, 166]] as const)(
    '%s %d A: %d, as lists print to within one (from memory)',
    (curve, rated, whole) => expect(most(100, rated, curve)).toBe(whole));

  test('trade association, 2021: on a C 10 more go than the rule says, of 10 W, and on a B 10 too', () => {
    expect(most(22, 10, 'B')).toBeLessThanOrEqual(15);
    expect(most(22, 10, 'C')).toBeLessThanOrEqual(30);
  });

  test('shares of different drivers add up; none allowed is no share', () => {
    expect(breakerShare(5, 10, 16, 'B')! + breakerShare(10, 20, 16, 'B')!).toEqual(closeTo(1, EXACT));
    expect([breakerShare(1, 0, 16, 'B'), breakerShare(1, 10, 0, 'B')]).toEqual([null, null]);
  });
});

describe('peak that a breaker stands, IEC 60898-1: bands from 3 (B), 5 (C) and 10 (D) times the rating', () => {
  test.each(
    [['B', 3], ['C', 5], ['D', 10]] as const
  )('%s: the peak of a sine at the lower end, %d ×', (curve, band) => {
    const crest = inrushLimit(16, curve, 1) / (16 * band);
    expect(crest).toBeLessThanOrEqual(Math.SQRT2);
    expect(crest).toEqual(closeTo(Math.SQRT2, { absolute: 0, relative: 0.004 }));
    expect(inrushLimit(16, curve, 2)).toEqual(closeTo(2 * inrushLimit(16, curve, 1), EXACT));
  });

  test('a C stands 5 ÷ 3 of a B, which is what the shares take', () => {
    const shares = breakerShare(1, 9, 10, 'B')! / breakerShare(1, 9, 10, 'C')!;
    expect(inrushLimit(10, 'C', 1) / inrushLimit(10, 'B', 1)).toEqual(closeTo(shares, EXACT));
    expect(BREAKER_CURVES.map((curve) => inrushLimit(10, curve, 1)))
      .toEqual([42.3, 70.5, 141].map((amps) => closeTo(amps, EXACT)));
  });
});

test('it is warmer at the top of an enclosure than in the mean, and never cooler (by hand)', () => {
  expect(topTemperature(35, 10, 1.3)).toEqual(closeTo(48, EXACT));
  expect(topTemperature(35, 10, 1)).toEqual(closeTo(45, EXACT));
  expect(topTemperature(35, 0, 1.3)).toBe(35);
});
