import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likeness } from '../../src/exchange/takeoff/index.ts';
import { deviceName, haveAgreeingNumbers } from '../../src/exchange/takeoff/names/device-name.ts';
import { TypeIndex } from '../../src/exchange/takeoff/names/type-index.ts';
import { plainWords } from '../../src/exchange/takeoff/plain-words.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { TYPES } from './support.ts';

const like = (one: string, other: string) => likeness(deviceName(one), deviceName(other));

describe('likeness', () => {
  // Dice's coefficient by hand: groups of three letters in « night » and « nacht » with a space on either side are
  // ni, nig, igh, ght, ht and na, nac, ach, cht, ht: 5 and 5, one in common: 2 × 1 ÷ 10.
  it.each([
    ['night', 'nacht', 0.2],
    ['night', 'night', 1],
    ['detector, presence', 'Presence detector', 1],
    ['abc', 'xyz', 0],
    ['', 'abc', 0],
    ['???', 'abc', 0],
    // 11 groups with « downlights » (10) and « 7 » (1) and « w » (1) = 12; « downlight » has 9 + 2 = 11; in common are
    // all of its groups but the last, « ht »: 10. 2 × 10 ÷ 23.
    ['Downlights 7 W', 'Downlight 7 W', 20 / 23],
    ['Downlight 7 W', 'Downlight 18 W', 0],
  ])('of %j and %j is %d', (one, other, expected) => {
    expect(like(one, other)).toEqual(closeTo(expected, EXACT));
  });

  it('is the same either way, from 0 to 1, and 1 of a name with itself', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme' }), fc.string({ unit: 'grapheme' }), (one, other) => {
      const score = like(one, other);
      expect(score).toBe(like(other, one));
      expect(score).toBeGreaterThanOrEqual(0);
      expect(score).toBeLessThanOrEqual(1);
      expect(like(one, one)).toBe(deviceName(one).trigramCount > 0 ? 1 : 0);
    }));
  });
});

it.each([
  ['Wandleuchte, 4,8Watt', ['wandleuchte', '4.8', 'w']],
  ['CO₂-Fühler', ['co2', 'fuhler']],
  ['1–10 V', ['1', '10', 'v']],
  ['…', []],
])('the plain words of %j are %j', (text, words) => {
  expect(plainWords(text)).toEqual(words);
});

describe('numbers in names', () => {
  it.each([
    ['Downlight 7 W', 'Downlight 7W', true],
    ['Downlight 7 W', 'Downlight 7,0 Watt', true],
    ['Downlight 7 W', 'Downlight 18 W', false],
    ['Downlight', 'Downlight 18 W', true],
    ['Downlight 7 W, 3000 K', 'Downlight 7 W', true],
    ['Downlight 7 W, 24 V', 'Downlight 12 W', false],
    ['Supply 24 V', 'Supply 24 W', false],
    ['Push-button 2-gang', 'Push-button station, 2 keys', true],
    ['Push-button 4-gang', 'Push-button station, 2 keys', false],
    ['CO2 sensor', 'CO2 sensor 24 V', true],
  ])('%j and %j agree: %s', (one, other, expected) => {
    expect(haveAgreeingNumbers(deviceName(one), deviceName(other))).toBe(expected);
  });
});

describe('words that an alias contains', () => {
  const index = new TypeIndex([
    { type: 'Presence detector', aliases: 'PIR sensor; Präsenzmelder' }, { type: 'Light sensor', aliases: 'S1, Light meter' },
    { type: 'Downlight 7 W' },
  ]);

  it.each([
    ['PIR', 'Presence detector'],
    ['PIR sensor 360°, corridor, white', 'Presence detector'],
    ['Downlight', 'Downlight 7 W'],
  ])('make %j like %s, which a person confirms', (name, type) => {
    expect(index.match([name])).toMatchObject({ by: 'likeness', type: null, candidates: [{ type }] });
  });

  // A symbol means another thing in another list, other numbers make another device, two letters say little.
  it.each(['S1', 'Downlight 18 W recessed', 'W', 'PI'])('make %j like nothing', (name) => {
    expect(index.match([name]).by).toBe('none');
  });
});

describe('the type of a name', () => {
  const index = new TypeIndex(TYPES);

  it.each([
    ['Downlight 7 W', 'exact', 'Downlight 7 W'],
    ['downlight 7W', 'exact', 'Downlight 7 W'],
    ['DOWNLIGHT, 7 WATT', 'exact', 'Downlight 7 W'],
    ['Push button station (2 keys)', 'exact', 'Push-button station, 2 keys'],
    ['PIR detector', 'alias', 'Presence detector'],
    ['präsenzmelder', 'alias', 'Presence detector'],
    ['Detecteur de presence', 'alias', 'Presence detector'],
    ['LED-Band 9,6 W/m', 'alias', 'LED strip 9.6 W/m'],
    ['Thermostat d\'ambiance', 'alias', 'Room thermostat'],
  ])('%j is found by %s: %s', (name, by, type) => {
    expect(index.match([name])).toEqual({ by, type, candidates: [] });
  });

  it.each([
    ['Downlights 7 W', ['Downlight 7 W']],
    ['Presence detectors', ['Presence detector']],
    // Two types fit a name without a number; a person knows which.
    ['Downlight', ['Downlight 7 W', 'Downlight 12 W']],
  ])('%j is like %j', (name, types) => {
    const { by, type, candidates } = index.match([name]);
    expect({ by, type }).toEqual({ by: 'likeness', type: null });
    expect(candidates.map((each) => each.type)).toEqual(expect.arrayContaining(types));
  });

  it.each(
    ['Downlight 18 W', 'Book return flap drive', '', '???', 'constructor', '__proto__']
  )('%j is no type', (name) => {
    expect(index.match([name])).toEqual({ by: 'none', type: null, candidates: [] });
  });

  it('is left to a person where a name stands for two', () => {
    const two = new TypeIndex([{ type: 'A', aliases: 'lamp; light' }, { type: 'B', aliases: 'Lamp' }]);
    expect(two.match(['lamp'])).toEqual({
      by: 'likeness', type: null, candidates: [{ type: 'A', score: 1 }, { type: 'B', score: 1 }],
    });
    expect(two.match(['A', 'B']).by).toBe('likeness');
    expect(two.match(['light'])).toMatchObject({ by: 'alias', type: 'A' });
  });

  it('finds every type of the data by its name and by each of its aliases', () => {
    for (const { type, aliases } of TYPES) {
      for (const name of [type, ...String(aliases).split(';')]) expect(index.match([String(name)]).type).toBe(type);
    }
  });
});
