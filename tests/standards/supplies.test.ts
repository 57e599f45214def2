import { describe, expect, test } from 'vitest';
import {
  batteryNeeded, exceeds, highestVoltage, inputCurrent, lowestVoltage, outputLimit, usableCurrent,
} from '../../src/electrical/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';

describe('voltage of a supply', () => {
  test('IEC 61131-2: a mean of 24 V −15/+20 % is 20.4 to 28.8 V, and 19.2 to 30 V with 5 % on top, as reprinted',
    () => {
    expect(lowestVoltage(24, 0.15, 0, false)).toEqual(closeTo(20.4, EXACT));
    expect(highestVoltage(24, 0.2, false)).toEqual(closeTo(28.8, EXACT));
    expect(lowestVoltage(24, 0.2, 0, false)).toEqual(closeTo(19.2, EXACT));
    expect(highestVoltage(24, 0.25, false)).toEqual(closeTo(30, EXACT));
  });

  test.each([[0.5, 5], [0.62, 10], [0.09, 5]])('Design Note 363: decoupling drops %d V at %d A', (drop) => {
    expect(lowestVoltage(24, 0, drop, false)).toEqual(closeTo(24 - drop, EXACT));
    expect(lowestVoltage(24, 0, drop, true)).toEqual(closeTo(21 - drop, EXACT));
  });

  test('12 lead-acid cells: 1.75 V each when empty, 2.3 V when charging (from memory, sure); a wider tolerance counts',
    () => {
    expect(lowestVoltage(24, 0.02, 0, true)).toEqual(closeTo(12 * 1.75, EXACT));
    expect(highestVoltage(24, 0.02, true)).toEqual(closeTo(12 * 2.3, EXACT));
    expect(lowestVoltage(24, 0.2, 0, true)).toEqual(closeTo(19.2, EXACT));
    expect(highestVoltage(24, 0.2, true)).toEqual(closeTo(28.8, EXACT));
  });
});

describe('what a supply gives', () => {
  test('a fuse of 63 A on a supply of 5 A never acts; a redundant unit is none that makes it act (by hand)', () => {
    expect(exceeds(63, outputLimit(5, 1, 1.5))).toBe(true);
    expect(exceeds(16, outputLimit(10, 1, 1.5))).toBe(true);
    expect(exceeds(16, outputLimit(10, 2, 1.5))).toBe(false);
    expect(outputLimit(10, 1, 1)).toBe(usableCurrent(10, 2, true, 1));
  });
});

describe('current at the input', () => {
  test.each([
    { source: 'a maker, printed 27.9', watts: 1230, efficiency: 0.7, factor: 0.7, volts: 90, amps: '27.9' },
    { source: 'the same, exact', watts: 1230, efficiency: 0.7, factor: 0.7, volts: 90, amps: '27.891' },
    { source: 'page of a calculator', watts: 100, efficiency: 0.85, factor: 1, volts: 230, amps: '0.51' },
    { source: 'the same', watts: 100, efficiency: 0.9, factor: 1, volts: 230, amps: '0.48' },
    { source: 'drivers on a breaker, 75 W in', watts: 75, efficiency: 1, factor: 1, volts: 230, amps: '0.33' },
  ])('$source: $watts W at $efficiency and $factor on $volts V, $amps A', (
    { watts, efficiency, factor, volts, amps }
  ) => {
    expect(inputCurrent(24, watts / 24, efficiency, volts, factor)).toEqual(closeTo(Number(amps), printed(amps)));
  });

  test('100 W at 85 % take 117.65 W in, as printed', () => {
    expect(inputCurrent(24, 100 / 24, 0.85, 1, 1)).toEqual(closeTo(117.65, printed('117.65')));
  });

  test('is finite only where there is a voltage, an efficiency and a power factor', () => {
    expect([inputCurrent(24, 1, 0, 230, 1), inputCurrent(24, 1, 1, 0, 1), inputCurrent(24, 1, 1, 230, 0)])
      .toEqual([null, null, null]);
    expect(inputCurrent(24, 0, 0.9, 230, 0.9)).toBe(0);
  });
});

describe('standby battery, BS 5839-1: C = 1.25 × (T1 × I1 + D × I2 ÷ 2)', () => {
  test.each([
    // D worked out from the printed parts.
    { source: 'forum of fire engineers', standby: 0.25, hours: 24, load: 0.75, battery: null, needed: '8.3203' },
    { source: 'the same, 72 h', standby: 0.25, hours: 72, load: 0.75, battery: null, needed: '23.3203' },
    { source: 'published example, full formula', standby: 0.05, hours: 24, load: 0.3, battery: 2, needed: '1.828' },
    { source: 'the same, D = 1', standby: 0.05, hours: 24, load: 0.3, battery: 6, needed: '1.6875' },
  ])('$source: $standby A for $hours h, $load A for half an hour, $needed Ah', (row) => {
    const needed = batteryNeeded(row.standby, row.hours, row.load, 0.5, row.battery);
    expect(needed).toEqual(closeTo(Number(row.needed), printed(row.needed)));
  });

  test('the parts as printed: 6 Ah and 0.656 Ah, each × 1.25', () => {
    expect(batteryNeeded(0.25, 24, 0, 0, null) / 1.25).toEqual(closeTo(6, EXACT));
    expect(batteryNeeded(0, 0, 0.75, 0.5, null) / 1.25).toEqual(closeTo(0.656, printed('0.656')));
  });

  test('D is 1 up to a twentieth of the capacity: battery manual of a panel, 2.69025 Ah', () => {
    // 1.25 × (0.05 × 1 + 0.5 × 0.11 + 24 × 0.0853) as printed.
    // The third part of the print, 0.05 A for an hour, is a second quiet state.
    expect(batteryNeeded(0.0853, 24, 0.11, 0.5, 7) + 1.25 * 0.05).toEqual(closeTo(2.69025, EXACT));
    expect(batteryNeeded(0, 0, 0.35, 1, 7)).toEqual(closeTo(1.25 * 0.35, EXACT));
    expect(batteryNeeded(0, 0, 0.351, 1, 7)).toEqual(closeTo(1.25 * 1.75 * 0.351, EXACT));
  });
});
