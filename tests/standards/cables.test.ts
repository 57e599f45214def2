import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ambientFactor, carriedCurrent, conductorTemperature, exceeds, groupingFactor, mostProtection, resistanceAt,
} from '../../src/electrical/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';

/*
 * EN 60204-1 as quoted in a drive manual, p. 95; BS 7671 and its guide of 2008, p. 37; T. Linsley, Basic Electrical
 * Installation Work, p. 301; J. Whitfield, The Electricians Guide, 5th ed., 4.3.8; an engineering community of the IET
 * for Appendix 4, 6.1.
 */

const inUnitRange = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const root = (ambient: number) => Math.sqrt((70 - ambient) / 40);

describe('temperature around a cable', () => {
  // IEC 60364-5-52, Table B.52.14, PVC, 70 °C in air of 30 °C: from memory, sure; 0.87 read in a wiring book.
  test.each([
    [10, '1.22'], [15, '1.17'], [20, '1.12'], [25, '1.06'], [30, '1'], [35, '0.94'], [40, '0.87'], [45, '0.79'],
    [50, '0.71'], [55, '0.61'], [60, '0.50'],
  ])('B.52.14 at %d °C: %s', (ambient, factor) => {
    expect(ambientFactor(ambient, 70, 30)).toBe(Number(factor));
    expect(root(ambient)).toEqual(closeTo(Number(factor), { absolute: 0.0051, relative: 0 }));
  });

  // EN 60204-1, PVC in air of 40 °C, read in the drive manual.
  test.each([[30, '1.15'], [35, '1.08'], [40, '1.00'], [45, '0.91'], [50, '0.82'], [55, '0.71'], [60, '0.58']])(
    'EN 60204-1 at %d °C: %s', (ambient, factor) => {
      expect(ambientFactor(ambient, 70, 40)).toEqual(closeTo(Number(factor), printed(factor)));
    });

  test('between entries it is never above the higher, nor above the law by more than their rounding', () => {
    fc.assert(fc.property(inUnitRange(10, 60), (ambient) => {
      const factor = ambientFactor(ambient, 70, 30)!;
      expect(factor).toBeLessThanOrEqual(ambientFactor(Math.floor(ambient / 5) * 5, 70, 30)!);
      expect(factor).toBeGreaterThanOrEqual(ambientFactor(Math.min(60, Math.ceil(ambient / 5) * 5), 70, 30)!);
      expect(factor).toBeLessThanOrEqual(root(ambient) + 0.005);
    }));
  });

  test('credits no more cold than the tables, and no current where it is as warm as the conductor', () => {
    expect([ambientFactor(-20, 70, 30), ambientFactor(-20, 90, 30)]).toEqual([1.22, ambientFactor(10, 90, 30)]);
    expect(ambientFactor(65, 70, 30)).toEqual(closeTo(Math.sqrt(5 / 40), EXACT));
    expect([ambientFactor(70, 70, 30), ambientFactor(90, 70, 30)]).toEqual([0, 0]);
    expect([ambientFactor(20, 30, 30), ambientFactor(20, 30, 40)]).toEqual([null, null]);
  });
});

describe('cables in a bunch, IEC 60364-5-52, Table B.52.17, item 1: from memory, sure; 0.80 at 2 read', () => {
  test.each([
    [1, 1], [2, 0.8], [3, 0.7], [4, 0.65], [5, 0.6], [6, 0.57], [7, 0.54], [8, 0.52], [9, 0.5], [12, 0.45], [16, 0.41],
    [20, 0.38],
  ])('%d circuits: %d', (circuits, factor) => expect(groupingFactor(circuits)).toBe(factor));

  test('a count between two entries takes that for more, and the rule for mixed sizes is never above the table', () => {
    expect([10, 13, 17, 2.5].map(groupingFactor)).toEqual([0.45, 0.41, 0.38, 0.7]);
    for (let circuits = 1; circuits <= 20; circuits += 1) {
      expect(groupingFactor(circuits)! * Math.sqrt(circuits)).toBeGreaterThanOrEqual(1);
    }
    expect(groupingFactor(36)).toEqual(closeTo(1 / 6, EXACT));
    expect(groupingFactor(0)).toBeNull();
  });
});

describe('what a cable carries', () => {
  test('Linsley p. 301: 32 A in 35 °C asks for 34.04 A alone, so for 10 mm² of 46 A and not for one of 34 A', () => {
    expect(32 / ambientFactor(35, 70, 30)!).toEqual(closeTo(34.04, printed('34.04')));
    expect(carriedCurrent(46, 1, 35, 1, 70, 30)).toBeGreaterThan(32);
    expect(carriedCurrent(34, 1, 35, 1, 70, 30)).toBeLessThan(32);
  });

  test('guide to BS 7671:2008 p. 37: 10 A among 4 circuits asks for 15.38 A alone', () => {
    expect(10 / groupingFactor(4)!).toEqual(closeTo(15.38, printed('15.38')));
    expect(carriedCurrent(10 / 0.65, 1, 30, 4, 70, 30)).toEqual(closeTo(10, EXACT));
  });

  test('pairs in parallel warm each other, and 4 carry 2.6 times what one does', () => {
    expect(carriedCurrent(2, 4, 30, 1, 70, 30)).toEqual(closeTo(5.2, EXACT));
    expect(carriedCurrent(2, 4, 30, 9, 70, 30)).toEqual(closeTo(4, EXACT));
    expect(carriedCurrent(2, 0, 30, 1, 70, 30)).toBeNull();
    expect(carriedCurrent(2, 1, 30, 1, 30, 30)).toBeNull();
  });

  // IEC 60364-5-52, three loaded conductors in air of 30 °C, against EN 60204-1, Table 6, in 40 °C: published apart.
  test.each([
    [1, 'B2', 11.5, 10.1], [1.5, 'B2', 15, 13.1], [2.5, 'B2', 20, 17.4], [4, 'B2', 27, 23],
    [6, 'B2', 34, 30], [10, 'B2', 46, 40],
    [1, 'C', 13.5, 11.7], [1.5, 'C', 17.5, 15.2], [2.5, 'C', 24, 21], [4, 'C', 32, 28], [6, 'C', 41, 36],
    [10, 'C', 57, 50],
    [1, 'E', 14.5, 12.4], [1.5, 'E', 18.5, 16.1], [2.5, 'E', 25, 22], [4, 'E', 34, 30], [6, 'E', 43, 37],
    [10, 'E', 60, 52],
  ])('%d mm², laid as %s: %d A in 30 °C are %d A in 40 °C', (_size, _method, at30, at40) => {
    expect(carriedCurrent(at30, 1, 40, 1, 70, 30)).toEqual(closeTo(at40, { absolute: 0, relative: 0.025 }));
  });
});

describe('temperature of the conductors, BS 7671, Appendix 4, 6.1', () => {
  // Ct = (230 + tc) ÷ (230 + tp); the formula read, the figures derived from it, PVC of 70 °C.
  test.each([
    [27, 16, 1, 1, '.91349', '44.05'], [27, 10, 1, 1, '.88496', '35.49'], [27, 10, 0.87, 0.8, '.95370', '56.11'],
    [27, 10, 1, 0.65, '.96196', '58.59'], [19.5, 6, 1, 1, '.87929', '33.79'], [19.5, 6, 0.87, 0.7, '.96317', '58.95'],
    [27, 27 * 0.87 * 0.65, 0.87, 0.65, '1', '70'],
  ])('It %d A, Ib %d A, Ca %d, Cg %d: Ct %s, %s °C', (alone, current, ambientShare, groupedShare, factor, celsius) => {
    const temperature = conductorTemperature(current, alone, 30, ambientShare, groupedShare, 70, 30);
    expect(temperature).toEqual(closeTo(Number(celsius), printed(celsius)));
    expect((230 + temperature) / 300).toEqual(closeTo(Number(factor), printed(factor)));
    // The law of the software is that of IEC 60228, 234.5 in place of 230 (from memory), and a little less steep.
    const ours = resistanceAt(1, temperature) / resistanceAt(1, 70);
    expect(ours).toEqual(closeTo(Number(factor), { absolute: 0, relative: 0.003 }));
  });

  test.each([
    // Derived: tc = ta + 45 × (16 ÷ 25)² × (234.5 + tc) ÷ 309.5, printed 46.8 and 38.5 (Newton, 2003).
    { ambient: 30, exact: 46.750 }, { ambient: 22.2, exact: 38.479 },
  ])('12 AWG of 25 A at 75 °C with 16 A in $ambient °C: at least the exact $exact °C', ({ ambient, exact }) => {
    const share = ambientFactor(ambient, 75, 30)!;
    const temperature = conductorTemperature(16, 25, ambient, share, 1, 75, 30);
    expect(temperature).toBeGreaterThanOrEqual(exact);
    expect(temperature).toBeLessThan(exact + 3);
  });

  test('lies between that around it and the highest', () => {
    expect(conductorTemperature(0, 27, 40, 0.87, 1, 70, 30)).toEqual(closeTo(40, { absolute: 0.3, relative: 0 }));
    expect(conductorTemperature(0, 27, 20, 1.12, 1, 70, 30)).toBe(20);
    expect(conductorTemperature(40, 27, 30, 1, 1, 70, 30)).toBe(70);
    expect(conductorTemperature(1, 0, 30, 1, 1, 70, 30)).toBe(70);
  });
});

describe('protection against overload, IEC 60364-4-43, 433.1', () => {
  test('a semi-enclosed fuse, which acts at twice its rating, is at most 0.725 × Iz: Whitfield 4.3.8', () => {
    expect(mostProtection(1, 2)).toEqual(closeTo(0.725, EXACT));
  });

  test('a breaker may be what the cable carries, and what acts sooner no more than that', () => {
    expect([mostProtection(16.5, 1.45), mostProtection(16.5, 1.13)]).toEqual([16.5, 16.5]);
    expect(mostProtection(10, 0)).toBeNull();
  });

  test('is the highest that keeps to both conditions', () => {
    fc.assert(fc.property(inUnitRange(0.1, 100), inUnitRange(1, 3), (carries, multiple) => {
      const keeps = (rated: number) => !exceeds(rated, carries) && !exceeds(rated * multiple, 1.45 * carries);
      const most = mostProtection(carries, multiple)!;
      expect([keeps(most), keeps(most * 1.000001)]).toEqual([true, false]);
    }));
  });
});
