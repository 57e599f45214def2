import { describe, expect, test } from 'vitest';
import { closeTo } from '../support/close-to.ts';
import type { InputRow } from '../support/independent.ts';
import { readData, rowsOf } from './read-data.ts';

const FILES = [
  ['device-types.json', 'types', 'note'],
  ['contacts.json', 'contacts', 'source'],
  ['conductors.json', 'conductors', 'source'],
] as const;
const SAYS_WHERE_FROM = /common practice, no source|from memory|derived|IEC \d+|BS \d+|ASTM [A-Z]\d+/;

test.each(FILES)('%s is a schedule that holds only %s', (file, sheet) => {
  const data = readData(file);
  expect(data).toMatchObject({ format: 'elv-load-schedule', version: 2, details: {} });
  expect(Object.keys(data.sheets)).toEqual([sheet]);
});

describe('every row says where its figures come from', () => {
  const alsoInDemo = FILES.map(([, sheet, key]) => ['demo.schedule.json', sheet, key] as const);
  test.each([...FILES, ...alsoInDemo])('%s, %s', (file, sheet, key) => {
    const silent = rowsOf(readData(file), sheet).filter((row) => !SAYS_WHERE_FROM.test(String(row[key])));
    expect(silent).toEqual([]);
  });
});

describe('device types', () => {
  const types = rowsOf(readData('device-types.json'), 'types');

  test('are many, each named once and described', () => {
    expect(types.length).toBeGreaterThanOrEqual(40);
    expect(new Set(types.map((row) => row.type)).size).toBe(types.length);
    expect(types.filter((row) => typeof row.description !== 'string')).toEqual([]);
    expect(new Set(types.map((row) => row.purpose))).toEqual(new Set(['lighting', 'field', 'control']));
  });

  test.each(types.map((row) => [row.type, row] as const))('%s is plausible', (_name, row) => {
    // One of the two, so that the draw has one origin; constant power can only be said of a power.
    expect(Number(row.draw !== undefined) + Number(row.power !== undefined)).toBe(1);
    if (row.load === 'power') expect(row.power).toEqual(expect.any(Number));
    const watts = row.power ?? Number(row.draw) * 24 / 1000;
    // A dimming input is fed by its driver or by the supply of its bus.
    if (row.type === 'Driver, dimming input') expect(watts).toBe(0);
    else expect(watts).toBeGreaterThan(0);
    expect(watts).toBeLessThanOrEqual(40);
    expect([0, 1]).toContain(row.nodes);
    // How many work at once is a fact of a building and its controller, never of a type.
    expect(row).not.toHaveProperty('diversity');
    // IEC 61131-2: 24 V less 15 % in the mean; 19.2 V holds for moments only. 24 V less 10 % where a maker asks for it.
    if (row.minVoltage !== undefined) expect([20.4, 21.6]).toContain(row.minVoltage);
  });

  test.each([
    // A thermal actuator starts with about 0.3 A for minutes, from memory; a pulsed sensor asks for its peak.
    ['Valve actuator, thermal', 300, /cold/], ['CO2 sensor', 105, /peak/],
  ])('%s draws the most that it asks for, %i mA', (name, draw, said) => {
    const row = types.find(({ type }) => type === name)!;
    expect(row.draw).toBe(draw);
    expect(row.description).toMatch(said);
  });
});

test('a contact is rated lower for every kind of load than for resistive ones', () => {
  const contacts = rowsOf(readData('contacts.json'), 'contacts');
  expect(contacts.map((row) => row.resistive)).toEqual(expect.arrayContaining([6, 10, 16, 20]));
  for (const row of contacts) {
    for (const key of ['lamp', 'motor', 'coil']) expect(row[key]).toBeLessThan(row.resistive as number);
    expect(row.inrush).toBeGreaterThanOrEqual(row.resistive as number);
    expect(row.source).toMatch(/at most 0\.2 ms/);
  }
});

describe('conductors', () => {
  const conductors = rowsOf(readData('conductors.json'), 'conductors');
  const matching = (pattern: RegExp): InputRow[] => conductors.filter((row) => pattern.test(String(row.conductor)));
  const resistance = (name: string) => conductors.find((row) => row.conductor === name)!.resistance as number;

  test('say what they carry, and from where that is known', () => {
    const silent = conductors.filter(({ maxCurrent, source }) =>
      !(Number(maxCurrent) > 0 && /IEC 60364-5-52|EN 60204-1|BS 7671|NFPA 79|VDE 0816/.test(String(source))));
    expect(silent).toEqual([]);
  });

  test('of one kind carry more the thicker they are, and flexible ones never more than solid ones', () => {
    for (const kind of [/solid$/, /flexible$/, /^AWG \d+$/, /^AWG \d+ stranded$/, /mm² stranded$/, /telephone pair$/]) {
      const rows = matching(kind).sort((one, other) => Number(one.size) - Number(other.size));
      const amps = rows.map((row) => Number(row.maxCurrent));
      expect(amps).toEqual([...amps].sort((one, other) => one - other));
    }
    const flexible = new Map(matching(/flexible$/).map((row) => [row.size, Number(row.maxCurrent)]));
    for (const { size, maxCurrent } of matching(/solid$/)) expect(flexible.get(size))
      .toBeLessThanOrEqual(Number(maxCurrent));
  });

  // Resistance of a perfect copper rod of the nominal size, 1000 ÷ (58 × S) by IEC 60028; the ratio of the table to
  // it has these bounds for IEC 60228 (derived). An entry outside is a typo.
  test.each([
    [/solid$/, 1.044, 1.074], [/flexible$/, 1.108, 1.157],
  ])('%s lie within the bounds of their class', (pattern, least, most) => {
    const rows = matching(pattern);
    expect(rows.map((row) => row.size)).toEqual([0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16]);
    for (const { resistance, size } of rows) {
      const ratio = Number(resistance) / (1000 / (58 * Number(size)));
      expect(ratio).toBeGreaterThan(least - 0.0005);
      expect(ratio).toBeLessThan(most + 0.0005);
    }
  });

  // Published volt drops of BS 7671 for two-core cable, mV/A/m at the temperature of the loaded conductor, as
  // reprinted by several pages that agree: 2 × R × (1 + 0.00393 × (θ − 20)). They were rounded on their own, hence the
  // tolerances.
  test.each([
    ['solid', 70, 0.02, { 1: 44, 1.5: 29, 2.5: 18, 4: 11, 6: 7.3, 10: 4.4 }],
    ['flexible', 60, 0.05, { 0.5: 93, 0.75: 62, 1: 46, 1.5: 32, 2.5: 19, 4: 12 }],
  ])('%s agree with the volt drops of BS 7671', (kind, celsius, relative, drops) => {
    for (const [size, drop] of Object.entries(drops)) {
      const ours = 2 * resistance(`${size} mm² ${kind}`) * (1 + 0.00393 * (celsius - 20));
      expect(ours).toEqual(closeTo(drop, { absolute: 0, relative }));
    }
  });

  // Published resistances at 20 °C; they lie within 0.08 % of the geometry of ASTM B258 at 58 MS/m.
  test.each([[24, 84.20], [23, 66.78], [22, 52.94], [20, 33.29], [18, 20.94], [16, 13.17], [14, 8.28], [12, 5.21]])(
    'AWG %i follows its geometry and the published figure', (gauge, published) => {
      const diameter = 0.127 * 92 ** ((36 - gauge) / 39);
      const area = Math.PI / 4 * diameter ** 2;
      const row = conductors.find(({ conductor }) => conductor === `AWG ${gauge}`)!;
      expect(row.size).toEqual(closeTo(area, { absolute: 5e-5, relative: 0 }));
      expect(row.resistance).toEqual(closeTo(1000 / (58 * area), { absolute: 6e-4, relative: 0 }));
      expect(row.resistance).toEqual(closeTo(published, { absolute: 0, relative: 0.0009 }));
    });

  // NEC, chapter 9, Table 8, uncoated copper at 75 °C, Ω per 1000 ft, stranded and solid, AWG 18 to 12; its 3 digits
  // say 2.0 to 2.6 % more for the lay of the strands.
  test.each([[18, 7.95, 7.77], [16, 4.99, 4.89], [14, 3.14, 3.07], [12, 1.98, 1.93]])(
    'AWG %i stranded lies as far above solid as published', (gauge, stranded, solid) => {
      const ratio = resistance(`AWG ${gauge} stranded`) / resistance(`AWG ${gauge}`);
      expect(ratio).toEqual(closeTo(stranded / solid, { absolute: 0.006, relative: 0 }));
    });

  test('AWG stranded is 2 % above solid and carries the same', () => {
    const rows = matching(/^AWG \d+ stranded$/);
    expect(rows.map(({ conductor }) => parseInt(String(conductor).slice(4), 10))).toEqual([24, 22, 20, 18, 16, 14, 12]);
    for (const { conductor, resistance: own, ...same } of rows) {
      const solid = conductors.find((row) => row.conductor === String(conductor).replace(' stranded', ''))!;
      expect(own).toEqual(closeTo(Number(solid.resistance) * 1.02, { absolute: 6e-4, relative: 0 }));
      expect([same.size, same.maxCurrent]).toEqual([solid.size, solid.maxCurrent]);
    }
  });

  // In proportion of 0.5 mm² of class 5, 40.1 Ω/km metal-coated and 39 plain: × 0.5 ÷ 0.22, × 0.5 ÷ 0.34. Seven strands
  // of 0.203 and 0.254 mm, as VDE 0295 was read to build these sizes, have 0.2266 and 0.3547 mm²: 76.1 and 48.6 Ω/km of
  // pure copper, which no conductor may fall below.
  test.each([['0.22 mm² stranded', 91.1, 0.203], ['0.34 mm² stranded', 57.4, 0.254]])(
    '%s has %d ohm/km', (name, ohms, strand) => {
      expect(resistance(name)).toBe(ohms);
      expect(ohms).toBeGreaterThan(1000 / (58 * 7 * Math.PI / 4 * strand ** 2));
    });

  test('category cable is 28.6 ohm for 1000 ft', () => {
    expect(resistance('category cable')).toEqual(closeTo(28.6 / 0.3048, { absolute: 0.005, relative: 0 }));
  });
});
