import { describe, expect, test } from 'vitest';
import { alternatingCurrent, drawFromPower, exceeds, headroom, lampPowerFactor } from '../../src/electrical/index.ts';
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

describe('current of motors', () => {
  test('1230 W at an efficiency and a power factor of 0.7 on 90 V take 27.9 A, as a maker prints; exact 27.891 A',
    () => {
    expect(alternatingCurrent(1, 1230, 90, 0.7, 0.7)).toEqual(closeTo(27.9, printed('27.9')));
    expect(alternatingCurrent(1, 1230, 90, 0.7, 0.7)).toEqual(closeTo(27.891, printed('27.891')));
  });

  // NEC 430.248 (1999), full-load current of single-phase motors at 230 V and at 115 V, as reprinted; 746 W a
  // horsepower.
  test.each([
    ['1/6', 1 / 6, 2.2, 4.4], ['1/4', 1 / 4, 2.9, 5.8], ['1/3', 1 / 3, 3.6, 7.2], ['1/2', 1 / 2, 4.9, 9.8], [
      '3/4', 3 / 4, 6.9, 13.8,
    ],
    ['1', 1, 8, 16], ['1 1/2', 1.5, 10, 20], ['2', 2, 12, 24], ['3', 3, 17, 34], ['5', 5, 28, 56],
  ] as const)('NEC 430.248: %s hp takes far more than its shaft power alone says', (
    _name, horsepower, at230, at115
  ) => {
    const watts = 746 * horsepower;
    const shaftOnly = alternatingCurrent(1, watts, 230, 1)!;
    expect(shaftOnly).toBeLessThan(0.6 * at230);
    // Efficiency × power factor as the table has it, 0.25 at 1/6 hp to 0.58 at 5 hp; it is the same on 115 V.
    const both = shaftOnly / at230;
    expect(both).toBeGreaterThan(0.24);
    expect(alternatingCurrent(1, watts, 115, both / 0.8, 0.8)).toEqual(closeTo(at115, EXACT));
  });

  test('without efficiency or power factor there is none', () => {
    expect([alternatingCurrent(1, 100, 230, 0.8, 0), alternatingCurrent(1, 100, 230, 0, 0.8)]).toEqual([null, null]);
  });
});

test.each([[3, 0.5], [5.1, 0.5], [10, 0.5], [10.1, 0.7], [25, 0.7], [25.1, 0.9], [150, 0.9]])(
  'a lamp of %d W has a power factor of at least %d: EU 2019/2020, 0.5 to 10 W, 0.7 to 25 W, 0.9 above',
    (watts, factor) => {
    expect(lampPowerFactor(watts)).toBe(factor);
  });
