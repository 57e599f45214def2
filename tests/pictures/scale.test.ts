import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scaleFor } from '../../src/report/pictures/scale.ts';
import { spread } from '../../src/report/pictures/spread.ts';
import { shortened } from '../../src/report/pictures/words.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('a scale holds its range, uses at least half of the room, and has round ticks that stay apart', () => {
  fc.assert(fc.property(between(0, 100), between(1e-3, 1e4), between(100, 600), between(20, 50), (
    from, range, room, apart,
  ) => {
    const scale = scaleFor(from, from + range, room, apart);
    expect(scale.at(from)).toBe(0);
    expect(scale.at(from + range)).toBeLessThanOrEqual(room * (1 + 1e-6));
    expect(scale.at(from + range)).toBeGreaterThan(room / 2);
    // Rulers: 10 mm stand for a number of at most three digits.
    expect(String(scale.perCentimetre).replace('.', '').replace(/^0+|0+$/g, '').length).toBeLessThanOrEqual(3);
    const places = scale.ticks.map((tick) => scale.at(tick));
    for (const place of places) expect(place >= -1e-6 && place <= room * (1 + 1e-6)).toBe(true);
    for (let index = 1; index < places.length; index += 1) {
      expect(places[index]! - places[index - 1]!).toBeGreaterThan(apart * (1 - 1e-6));
    }
    for (const tick of scale.ticks) expect(Number(tick.toFixed(scale.decimals))).toBeCloseTo(tick, 9);
  }));
});

test('labels that are spread stay apart, in order, within the ends, and do not move without need', () => {
  const cases = fc.tuple(fc.array(between(0, 500), { maxLength: 25 }), between(1, 20));
  fc.assert(fc.property(cases, ([places, apart]) => {
    const wanted = [...places].sort((one, other) => one - other);
    const spots = spread(wanted, apart, 0, 500);
    expect(spots).toHaveLength(wanted.length);
    for (let index = 1; index < spots.length; index += 1) {
      expect(spots[index]! - spots[index - 1]!).toBeGreaterThan(apart - 1e-6);
    }
    for (const spot of spots) expect(spot >= -1e-6 && spot <= 500 + 1e-6).toBe(true);
    if (wanted.every((place, index) => index === 0 || place - wanted[index - 1]! >= apart)) {
      spots.forEach((spot, index) => expect(spot).toBeCloseTo(wanted[index]!, 6));
    }
  }));
});

test('two labels that meet move by the same, and at the end by what is left', () => {
  expect(spread([100, 104], 10, 0, 500)).toEqual([97, 107]);
  expect(spread([498, 500], 10, 0, 500)).toEqual([490, 500]);
});

test.each([
  ['L1-W3', 13, 'L1-W3'], [
    'Corridor lights', 13, 'Corrid…lights',
  ], ['abc', 3, 'abc'], ['abcd', 3, 'a…d'], ['💡💡💡💡', 3, '💡…💡'],
])('%s in %d signs is %s', (text, most, short) => expect(shortened(text, most)).toBe(short));
