import { describe, expect, test } from 'vitest';
import { allowedDropError, expectedDrop, measuredState, startCurrent } from '../../src/electrical/index.ts';

describe('what a voltage and a current say together, common practice', () => {
  const at = (volts: number | null, amps: number | null, isSupply = true) =>
    measuredState({ volts, amps, nominalVolts: 24, limitAmps: 10, expectedAmps: 5, isSupply });
  test.each<[number | null, number | null, boolean, string | undefined]>([
    [null, 0, true, undefined], [24, 5, true, undefined], [24, null, true, undefined], [24, 0.11, true, undefined],
    [24, 0.1, true, 'open'], [21.6, 0, true, 'open'], [21.5, 0, true, undefined], [12, 0, true, undefined],
    [11.9, 0, true, 'short circuit'], [11.9, 0, false, undefined], [11.9, 9, false, 'short circuit'],
    [2.4, 0, true, 'dead'], [2.4, 9, true, 'short circuit'], [2.5, 8.9, false, undefined], [0, null, false, 'dead'],
    [-2.4, 0, true, 'dead'], [-2.5, 0, true, 'reversed'], [-24, 12, false, 'reversed'],
  ])('%d V and %d A, at a supply %o: %s', (volts, amps, isSupply, state) => {
    expect(at(volts, amps, isSupply)).toBe(state);
  });

  test('without a limit or without anything expected only the voltage speaks', () => {
    const bare = { nominalVolts: 24, limitAmps: null, expectedAmps: null, isSupply: false };
    expect(measuredState({ ...bare, volts: 1, amps: 20 })).toBe('dead');
    expect(measuredState({ ...bare, volts: 24, amps: 0 })).toBeUndefined();
    expect(measuredState({ ...bare, expectedAmps: 0, volts: 24, amps: 0 })).toBeUndefined();
  });
});

test('a drop goes with the current, and may be a fifth more besides what the readings are good for', () => {
  expect([expectedDrop(1, 2, 3), expectedDrop(1, 2, null), expectedDrop(1, 0, 3)]).toEqual([1.5, 1, 1]);
  expect([allowedDropError(1, null), allowedDropError(1, 0.48)]).toEqual([0.2 + 0.1, 0.2 + 0.48]);
});

test('what starts draws at least what it draws running; what is not known makes the sum unknown', () => {
  expect(startCurrent([])).toBe(0);
  const rows = [{ quantity: 3, drawAmps: 2, inrushAmps: 1 }, { quantity: 2, drawAmps: 1, inrushAmps: 4 }];
  expect(startCurrent(rows)).toBe(14);
  expect(startCurrent([{ quantity: 1, drawAmps: 1, inrushAmps: NaN }])).toBeNaN();
});
