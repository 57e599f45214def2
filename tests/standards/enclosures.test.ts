import { describe, expect, test } from 'vitest';
import {
  deratingAt, effectiveArea, insideTemperature, supplyLoss, temperatureRise, usableCurrent, type Mounting,
} from '../../src/electrical/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';

/**
 * Effective surface by mounting, H, W and D in metres: the seven formulas as reprinted by several independent pages
 * that agree. The surface factors of IEC TR 60890 reproduce them exactly.
 */
const FORMULAS: Record<Mounting, (h: number, w: number, d: number) => number> = {
  'free': (h, w, d) => 1.8 * h * (w + d) + 1.4 * w * d,
  'wall': (h, w, d) => 1.4 * w * (h + d) + 1.8 * d * h,
  'row-end-free': (h, w, d) => 1.4 * d * (h + w) + 1.8 * w * h,
  'row-end-wall': (h, w, d) => 1.4 * h * (w + d) + 1.4 * w * d,
  'row-middle-free': (h, w, d) => 1.8 * w * h + 1.4 * w * d + d * h,
  'row-middle-wall': (h, w, d) => 1.4 * w * (h + d) + d * h,
  'row-middle-wall-covered': (h, w, d) => 1.4 * w * h + 0.7 * w * d + d * h,
  // Not of the standard: an allowance.
  'flush': (h, w) => 0.9 * w * h,
};

describe('effective surface of an enclosure', () => {
  test('H 2.0, W 0.8, D 0.6 m, free: 5.712 m², published example', () => {
    expect(effectiveArea(2000, 800, 600, 'free')).toEqual(closeTo(5.712, EXACT));
  });

  // H 0.8, W 0.6, D 0.25 m: worked out by hand from the formulas and from the factors.
  test.each<{ mounting: Mounting; area: string }>([
    { mounting: 'free', area: '1.434' },
    { mounting: 'wall', area: '1.242' },
    { mounting: 'row-end-free', area: '1.354' },
    { mounting: 'row-end-wall', area: '1.162' },
    { mounting: 'row-middle-free', area: '1.274' },
    { mounting: 'row-middle-wall', area: '1.082' },
    { mounting: 'row-middle-wall-covered', area: '0.977' },
    { mounting: 'flush', area: '0.432' },
  ])('$mounting: $area m² and the published formula', ({ mounting, area }) => {
    expect(effectiveArea(800, 600, 250, mounting)).toEqual(closeTo(Number(area), EXACT));
    expect(effectiveArea(2000, 800, 600, mounting)).toEqual(closeTo(FORMULAS[mounting](2, 0.8, 0.6), EXACT));
  });

  test('a mounting of another name has no area', () => {
    expect(effectiveArea(800, 600, 250, 'ceiling' as Mounting)).toBeNull();
    expect(effectiveArea(800, 600, 250, 'constructor' as Mounting)).toBeNull();
  });
});

describe('temperature inside', () => {
  test('a supply of 500 W at 80 % in the published enclosure, free, of painted sheet steel', () => {
    // Loss 125 W (article on supply efficiency, 2012), area 5.712 m² and 5.5 W/(m²K) as published; 3.979 K by hand.
    const loss = supplyLoss(24, 500 / 24, 0.8) ?? NaN;
    const rise = temperatureRise(loss, 5.5, effectiveArea(2000, 800, 600, 'free') ?? NaN) ?? NaN;
    expect(rise).toEqual(closeTo(3.979, printed('3.979')));
    expect(insideTemperature(35, rise)).toEqual(closeTo(38.979, printed('38.979')));
  });

  test('without surface or transfer there is no finite rise', () => {
    expect(temperatureRise(10, 0, 1)).toBeNull();
    expect(temperatureRise(10, 5.5, 0)).toBeNull();
    expect(temperatureRise(0, 5.5, 1)).toBe(0);
  });

  test.each([
    // Common practice, no source: full up to 50 °C, less 2.5 % for each kelvin above it.
    { temperature: 20, share: 1 }, { temperature: 50, share: 1 }, { temperature: 60, share: 0.75 },
    { temperature: 70, share: 0.5 }, { temperature: 90, share: 0 }, { temperature: 120, share: 0 },
  ])('derating at $temperature °C: $share', ({ temperature, share }) => {
    const derating = deratingAt({ fullUpTo: 50, percentPerKelvin: 2.5 }, temperature);
    expect(derating).toEqual(closeTo(share, EXACT));
    expect(usableCurrent(10, 1, false, derating)).toEqual(closeTo(10 * share, EXACT));
  });
});
