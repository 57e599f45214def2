import fc from 'fast-check';
import { expect, it } from 'vitest';
import { neededArea, temperatureRise, topTemperature } from '../../src/electrical/index.ts';

it('is the surface with which the top gets just as warm as it may', () => {
  const some = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const given = [some(1, 900), some(1, 9), some(1, 3), some(-20, 50), some(1, 60)] as const;
  fc.assert(fc.property(...given, (loss, transfer, factor, ambient, kelvins) => {
    const area = neededArea(loss, transfer, factor, ambient, ambient + kelvins)!;
    expect(topTemperature(ambient, temperatureRise(loss, transfer, area)!, factor)).toBeCloseTo(ambient + kelvins, 6);
  }));
});

it('is that of a printed case, and none where it is as warm around as it may get inside', () => {
  // 240.9 W at 10 K on 4.38 m² with 5.5 W/(m²K): a drive manual, p. 289, from the notes of the project.
  expect(neededArea(240.9, 5.5, 1, 30, 40)).toBeCloseTo(4.38, 9);
  expect(neededArea(66, 5.5, 1.3, 40, 40)).toBeNull();
  expect(neededArea(66, 5.5, 1.3, 45, 40)).toBeNull();
  expect(neededArea(0, 5.5, 1.3, 30, 40)).toBe(0);
});
