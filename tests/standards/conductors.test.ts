import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  awgArea, awgDiameter, copperResistance, loopResistancePerMetre, resistanceAt,
} from '../../src/electrical/index.ts';
import { closeTo, printed } from '../support/close-to.ts';
import { CURRENT_CAPACITY } from './current-capacity.ts';
import { IEC_60228 } from './iec-60228.ts';

/** One circular mil in mm²: the square of 0.0254 mm times π ÷ 4. */
const CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2;
const INCH = 25.4;
const KILOFOOT_PER_KILOMETRE = 0.3048;
/** Ohm times circular mil per foot in ohm times metre: Lessons In Electric Circuits, vol. I ch. 12. */
const OHM_CMIL_PER_FOOT = 1.66243e-9;

test('the resistance of copper by hand: 1 MS/m and 1 mm² make 1 MS × mm² ÷ m, hence 1000 Ω on a kilometre', () => {
  expect(copperResistance(1, 1)).toBe(1000);
  expect(copperResistance(0)).toBeNull();
});

describe('IEC 60228 resistances lie the usual few percent above the geometric copper resistance', () => {
  test.each(Object.entries(IEC_60228.solidOrStranded))('class 1 and 2, %s mm²', (area, ohmPerKm) => {
    const ratio = ohmPerKm / (copperResistance(Number(area)) ?? NaN);
    // 1.044 to 1.074, derived from the table itself; an entry outside is a typing error.
    expect(ratio).toBeGreaterThan(1.043);
    expect(ratio).toBeLessThan(1.075);
  });

  test.each(Object.entries(IEC_60228.flexible))('class 5, %s mm²', (area, ohmPerKm) => {
    const ratio = ohmPerKm / (copperResistance(Number(area)) ?? NaN);
    expect(ratio).toBeGreaterThan(1.107);
    expect(ratio).toBeLessThan(1.158);
  });
});

describe('BS 7671 volt drop of two-core cable (as reprinted) from IEC 60228 resistances', () => {
  test.each([
    { area: 1, millivolts: 44 }, { area: 1.5, millivolts: 29 }, { area: 2.5, millivolts: 18 },
    { area: 4, millivolts: 11 }, { area: 6, millivolts: 7.3 }, { area: 10, millivolts: 4.4 },
  ])('PVC, fixed, at 70 °C: $area mm², $millivolts mV/A/m', ({ area, millivolts }) => {
    const loop = loopResistancePerMetre(IEC_60228.solidOrStranded[area] ?? NaN, 70, 1) ?? NaN;
    // The table is rounded to two digits.
    expect(loop * 1000).toEqual(closeTo(millivolts, { absolute: 0, relative: 0.02 }));
  });

  test.each([
    { area: 0.5, millivolts: 93 }, { area: 0.75, millivolts: 62 }, { area: 1, millivolts: 46 },
    { area: 1.5, millivolts: 32 }, { area: 2.5, millivolts: 19 }, { area: 4, millivolts: 12 },
  ])('Table 4F3B, flexible, at 60 °C: $area mm², $millivolts mV/A/m', ({ area, millivolts }) => {
    const loop = loopResistancePerMetre(IEC_60228.flexible[area] ?? NaN, 60, 1) ?? NaN;
    expect(loop * 1000).toEqual(closeTo(millivolts, { absolute: 0, relative: 0.05 }));
  });
});

describe('American wire gauge, ASTM B258', () => {
  test.each([
    { gauge: 24, inch: '0.02010', cmil: 404.0, ohmPerKm: 84.20 },
    { gauge: 23, inch: '0.02257', cmil: 509.5, ohmPerKm: 66.78 },
    { gauge: 22, inch: '0.02535', cmil: 642.5, ohmPerKm: 52.94 },
    { gauge: 20, inch: '0.03196', cmil: 1022, ohmPerKm: 33.29 },
    { gauge: 18, inch: '0.04030', cmil: 1624, ohmPerKm: 20.94 },
    { gauge: 16, inch: '0.05082', cmil: 2583, ohmPerKm: 13.17 },
    { gauge: 14, inch: '0.06408', cmil: 4107, ohmPerKm: 8.28 },
    { gauge: 12, inch: '0.08081', cmil: 6530, ohmPerKm: 5.21 },
  ])('AWG $gauge: $inch in and $cmil cmil of Lessons In Electric Circuits, $ohmPerKm Ω/km of wire tables', (row) => {
    expect(awgDiameter(row.gauge) / INCH).toEqual(closeTo(Number(row.inch), printed(row.inch)));
    // Printed to four digits, the last of them not always rounded to nearest.
    expect(awgArea(row.gauge) / CIRCULAR_MIL).toEqual(closeTo(row.cmil, { absolute: 0, relative: 5e-4 }));
    const ohmPerKm = copperResistance(awgArea(row.gauge));
    expect(ohmPerKm).toEqual(closeTo(row.ohmPerKm, { absolute: 0, relative: 8e-4 }));
  });

  test.each([
    { gauge: 0, cmil: 105_500 }, { gauge: -1, cmil: 133_100 },
  ])('gauge $gauge is $cmil cmil, Lessons In Electric Circuits, vol. I ch. 12', ({ gauge, cmil }) => {
    expect(awgArea(gauge) / CIRCULAR_MIL).toEqual(closeTo(cmil, { absolute: 0, relative: 5e-4 }));
  });

  test('three gauges up halve the area and six the diameter, nearly (the same)', () => {
    expect(awgArea(24) / awgArea(21)).toEqual(closeTo(0.5, { absolute: 0.003, relative: 0 }));
    expect(awgDiameter(24) / awgDiameter(18)).toEqual(closeTo(0.5, { absolute: 0.002, relative: 0 }));
  });

  test.each([
    { gauge: 18, ohmPerKilofoot: 7.77 }, { gauge: 16, ohmPerKilofoot: 4.89 }, { gauge: 14, ohmPerKilofoot: 3.07 },
    { gauge: 12, ohmPerKilofoot: 1.93 },
  ])('NEC chapter 9, Table 8 (as reprinted): AWG $gauge solid at 75 °C, $ohmPerKilofoot Ω/kft', (row) => {
    const ohmPerKm = resistanceAt(copperResistance(awgArea(row.gauge)) ?? NaN, 75);
    expect(ohmPerKm * KILOFOOT_PER_KILOMETRE).toEqual(closeTo(row.ohmPerKilofoot, { absolute: 0, relative: 2e-3 }));
  });

  test('category cable, 28.6 Ω per 1000 ft, is more than the bare AWG 24 by its tolerance only', () => {
    const ohmPerKm = 28.6 / KILOFOOT_PER_KILOMETRE;
    const bare = copperResistance(awgArea(24)) ?? NaN;
    expect(ohmPerKm).toEqual(closeTo(93.83, printed('93.83')));
    expect(ohmPerKm / bare).toBeGreaterThan(1);
    expect(ohmPerKm / bare).toBeLessThan(1.13);
  });
});

describe('resistance of conductors in textbooks', () => {
  const circle = (diameterMm: number) => (Math.PI / 4) * diameterMm ** 2;
  const feet = (count: number) => count * 0.3048;
  const cmilRho = 10.4 * OHM_CMIL_PER_FOOT * 1e6;

  test.each([
    // Resistivity in ohm mm²/m is the reciprocal of the conductivity in MS/m.
    {
      source: 'A. Beiser, Basic Mathematics for Electricity and Electronics, 5.15', metres: 80, area: 2.5, rho: 0.0175,
      answer: '0.56',
    },
    { source: 'the same, 5.17 (4.375 mm², printed 4.4)', metres: 50, area: 4.375, rho: 0.0175, answer: '0.2' },
    {
      source: 'the same, 5.6, 80 mil, 1500 ft', metres: feet(1500), area: 6400 * CIRCULAR_MIL, rho: cmilRho,
      answer: '2.44',
    },
    {
      source: 'the same, 5.8, 52.7 mil, 400 ft', metres: feet(400), area: 52.7 ** 2 * CIRCULAR_MIL, rho: cmilRho,
      answer: '1.50',
    },
    {
      source: 'C.R. Robertson, Fundamental Electrical and Electronic Principles, 1.16', metres: 200, area: 0.8,
      rho: 0.02, answer: '5',
    },
    { source: 'the same, 1.17, 0.5 mm', metres: 250, area: circle(0.5), rho: 0.018, answer: '22.92' },
    {
      source: 'J.O. Bird, Electrical Circuit Theory and Technology, ch. 3 ex 5', metres: 40, area: 3.2, rho: 0.02,
      answer: '0.25',
    },
    {
      source: 'M.E. Schultz, Grob’s Basic Electronics, 11-3, AWG 20', metres: feet(100), area: awgArea(20),
      rho: cmilRho, answer: '1.02',
    },
    { source: 'the same, 11-4, AWG 23', metres: feet(100), area: awgArea(23), rho: cmilRho, answer: '2.04' },
  ])('$source: $answer Ω', ({ metres, area, rho, answer }) => {
    const ohmPerKm = copperResistance(area, 1 / rho) ?? NaN;
    expect((ohmPerKm * metres) / 1000).toEqual(closeTo(Number(answer), printed(answer)));
  });

  test('Grob’s Basic Electronics, 11-2: 16 strands of AWG 27 are 3224 cmil', () => {
    expect((16 * awgArea(27)) / CIRCULAR_MIL).toEqual(closeTo(3224, { absolute: 0, relative: 5e-4 }));
  });

  test('J.O. Bird, ch. 3 ex 11: 10 Ω at 20 °C and α = 0.004 is 13.2 Ω at 100 °C', () => {
    expect(resistanceAt(10, 100, 0.004)).toEqual(closeTo(13.2, { absolute: 1e-12, relative: 1e-12 }));
  });

  test.each([
    -20, 20, 60, 70, 75, 90,
  ])('α = 0.00393 agrees with (234.5 + θ) ÷ 254.5 at %d °C (IEC 60228, from memory)', (temperature) => {
    const inferred = (234.5 + temperature) / 254.5;
    expect(resistanceAt(1, temperature)).toEqual(closeTo(inferred, { absolute: 0, relative: 2e-4 }));
  });
});

interface Conductor {
  readonly conductor: string;
  readonly size: number;
  readonly resistance: number;
  readonly maxCurrent: number;
  readonly maxTemperature?: number;
  readonly baseTemperature?: number;
  readonly source: string;
}

describe('the conductors that come with the software', () => {
  const file = new URL('../../data/conductors.json', import.meta.url);
  const { sheets } = JSON.parse(readFileSync(file, 'utf8')) as {
    sheets: { conductors: Conductor[] };
  };
  const rows = sheets.conductors;
  const temperatures = ({ maxTemperature = 70, baseTemperature = 30 }: Conductor) => [maxTemperature, baseTemperature];
  const metric = rows.filter(({ source }) => source.startsWith('IEC 60228'));
  const gauges = rows.filter(({ conductor }) => /^AWG \d+/.test(conductor));

  test('are there', () => {
    expect(metric.length).toBeGreaterThanOrEqual(18);
    expect(gauges.length).toBeGreaterThanOrEqual(8);
  });

  test.each(metric)('$conductor has a resistance of IEC 60228', ({ size, resistance }) => {
    expect([IEC_60228.solidOrStranded[size], IEC_60228.flexible[size]]).toContain(resistance);
  });

  test.each([
    // Thinner than the table begins; metal-coated 0.5 mm² of class 5: 40.1 Ω/km, read in the same reprints.
    { name: '0.22 mm² stranded', of: 40.1, ohmPerKm: '91.1' },
    { name: '0.34 mm² stranded', of: IEC_60228.flexible[0.5]!, ohmPerKm: '57.4' },
  ])('$name: $of Ω/km of 0.5 mm² in proportion, $ohmPerKm Ω/km', ({ name, of, ohmPerKm }) => {
    const { size, resistance } = rows.find(({ conductor }) => conductor === name)!;
    expect((of * 0.5) / size).toEqual(closeTo(Number(ohmPerKm), printed(ohmPerKm)));
    expect(resistance).toBe(Number(ohmPerKm));
  });

  test.each(gauges)('$conductor has the resistance of its gauge', ({ conductor, size, resistance }) => {
    const area = awgArea(Number(/\d+/.exec(conductor)?.[0]));
    expect(size).toEqual(closeTo(area, { absolute: 0.005, relative: 1e-3 }));
    // The strands are 2 % longer than the cable for their lay: ASTM B8, from memory.
    const lay = conductor.endsWith('stranded') ? 1.02 : 1;
    expect(resistance).toEqual(closeTo(lay * copperResistance(area)!, { absolute: 0.005, relative: 1e-3 }));
  });

  test.each(metric.filter(({ size }) => size > 0.5))('$conductor carries what a table says, at its temperatures',
    (row) => {
    const { twoLoadedAt30: { B1, B2, C, E }, threeLoadedAt40 } = CURRENT_CAPACITY;
    const isFixed = row.conductor.endsWith('solid') && row.size in B2;
    expect([row.maxCurrent, ...temperatures(row)])
      .toEqual(isFixed ? [B2[row.size], 70, 30] : [threeLoadedAt40[row.size], 70, 40]);
    // Whichever way it is laid in air, it carries at least that.
    for (const laid of [B1, C, E]) expect(laid[row.size] ?? Infinity).toBeGreaterThanOrEqual(row.maxCurrent);
  });

  test.each(metric.filter(({ size }) => size === 0.5))(
    '$conductor: 3 A, BS 7671, Table 4F3A, at 60 °C (from memory, sure)', (row) => {
    expect([row.maxCurrent, ...temperatures(row)]).toEqual([3, 60, 30]);
  });

  test.each(gauges)('$conductor carries what NFPA 79 says, within what may protect it', (row) => {
    const gauge = Number(/\d+/.exec(row.conductor)?.[0]);
    const carried = CURRENT_CAPACITY.gauges[gauge] ?? CURRENT_CAPACITY.gauges[gauge + 1]!;
    expect(row.maxCurrent).toBe(Math.min(carried, CURRENT_CAPACITY.gaugeProtection[gauge] ?? Infinity));
    expect(temperatures(row)).toEqual([60, 30]);
  });

  test.each([
    // Loop at 20 °C and current of a conductor, as read; the geometric loop derived, 122.0 and 68.6 Ω/km.
    { name: '0.6 mm telephone pair', millimetres: 0.6, loop: 130, amps: 2.5 },
    { name: '0.8 mm telephone pair', millimetres: 0.8, loop: 73.2, amps: 5.1 },
  ])('$name: a loop of $loop Ω/km, $amps A', ({ name, millimetres, loop, amps }) => {
    const row = rows.find(({ conductor }) => conductor === name)!;
    const area = (Math.PI / 4) * millimetres ** 2;
    expect([2 * row.resistance, row.maxCurrent]).toEqual([loop, amps]);
    expect(row.size).toEqual(closeTo(area, { absolute: 5e-5, relative: 0 }));
    expect(row.resistance / copperResistance(area)!).toEqual(closeTo(1.0665, { absolute: 0.001, relative: 0 }));
  });
});
