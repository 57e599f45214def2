import { describe, expect, test } from 'vitest';
import { alternatingCurrent, drawFromPower, exceeds, headroom } from '../../src/electrical/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';

/*
 * BIR2 J.O. Bird, Electrical Circuit Theory and Technology, ch. 2
 * LIN T. Linsley, Basic Electrical Installation Work, 9th ed., p. 207
 */

describe('single-phase current of resistive loads', () => {
  test.each([
    { source: 'BIR2 ex 20 p. 20', watts: 1000, volts: 240, answer: '4.17' },
    { source: 'BIR2 ex 20 p. 20', watts: 3000, volts: 240, answer: '12.5' },
    { source: 'BIR2, 30 ohm', watts: 1920, volts: 240, answer: '8' },
    { source: 'BIR2', watts: 100, volts: 250, answer: '0.4' },
    { source: 'LIN', watts: 6000, volts: 230, answer: '26.09' },
  ])('$source: $watts W at $volts V, $answer A', ({ watts, volts, answer }) => {
    expect(alternatingCurrent(1, watts, volts, 1)).toEqual(closeTo(Number(answer), printed(answer)));
    const draw = drawFromPower(watts, volts);
    expect(draw === null ? null : draw / 1000).toEqual(closeTo(Number(answer), printed(answer)));
  });

  test('at a power factor the same power takes more current: I = P ÷ (U × cos φ), from memory, sure', () => {
    // 5 lamps of 46 W at 230 V are 1 A at cos φ = 1, so 2 A at 0.5.
    expect(alternatingCurrent(5, 46, 230, 1)).toEqual(closeTo(1, EXACT));
    expect(alternatingCurrent(5, 46, 230, 0.5)).toEqual(closeTo(2, EXACT));
  });
});

describe('choice of a fuse from 5, 10 and 13 A, BIR2 ex 20 p. 20, by Ib ≤ In of IEC 60364-4-43, 433.1', () => {
  test.each([
    { watts: 1000, fuse: 5 },
    { watts: 3000, fuse: 13 },
  ])('$watts W at 240 V takes the $fuse A fuse', ({ watts, fuse }) => {
    const current = alternatingCurrent(1, watts, 240, 1) ?? NaN;
    expect([5, 10, 13].find((rating) => !exceeds(current, rating))).toBe(fuse);
    expect(headroom(fuse, current)).toBeGreaterThanOrEqual(0);
  });
});
