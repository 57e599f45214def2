import { describe, expect, test } from 'vitest';
import { awgArea, copperResistance, loopResistancePerMetre, solveRun, type Tap } from '../../src/electrical/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';

/*
 * MEH13 V.K. Mehta, R. Mehta, Principles of Power System, ch. 13
 * ANA7 M.L. Anand, Electrical Power-I, ch. 7
 * THE40 B.L. Theraja, A.K. Theraja, A Textbook of Electrical Technology, vol. III, ch. 40
 * EDU university-exam notes, distribution systems
 * NEC-E2 training example on the NEC, 24 V circuit
 * LEC Lessons In Electric Circuits, vol. I ch. 12
 * LIN T. Linsley, Basic Electrical Installation Work, 9th ed., p. 207
 * BS 7671 tables of volt drop, as reprinted
 */

function solved(supplyVolts: number, loopOhmPerMetre: number, taps: readonly Tap[]) {
  const solution = solveRun({ supplyVolts, loopOhmPerMetre, taps });
  if (!solution.working) throw new Error('the example works in the book');
  return solution;
}

const tap = (amps: number, distanceMetres: number): Tap => ({ amps, distanceMetres });

/** A uniform load as taps in the middle of equal pieces, which leaves the drop at the ends of the pieces exact. */
function uniform(ampsPerMetre: number, lengthMetres: number): Tap[] {
  const piece = 1;
  return Array.from({ length: lengthMetres / piece }, (_, index) => tap(ampsPerMetre * piece, (index + 0.5) * piece));
}

/** A place where the voltage is read and nothing is drawn. */
const probe = (distanceMetres: number): Tap => tap(0, distanceMetres);

describe('tapped loads fed at one end: voltages at the taps', () => {
  test.each<{ source: string; supply: number; loop: number; taps: Tap[]; volts: string[] }>([
    {
      source: 'MEH13 13.1 p. 313', supply: 300, loop: 0.02e-3,
      taps: [tap(100, 500), tap(150, 1000), tap(200, 1600), tap(50, 2000)], volts: ['295', '291', '288', '287.6'],
    },
    {
      source: 'MEH13 13.3 p. 315', supply: 600, loop: 0.28e-3, taps: [tap(40, 2000), tap(20, 6000)],
      volts: ['566.4', '544.0'],
    },
    { source: 'EDU', supply: 500, loop: 2 * 0.02e-3, taps: [tap(100, 2000), tap(200, 4000)], volts: ['476', '460'] },
  ])('$source', ({ supply, loop, taps, volts }) => {
    const expected = volts.map((text) => closeTo(Number(text), { absolute: 1e-9, relative: 0 }));
    expect(solved(supply, loop, taps).tapVolts).toEqual(expected);
  });
});

describe('uniform loads fed at one end', () => {
  const exact = { absolute: 1e-9, relative: 0 };

  test('MEH13 13.5 p. 317: 2 A/m over 200 m at 0.3 Ω/km a wire drop 22.5 V at 150 m and 24 V at the end', () => {
    const { tapVolts, dropVolts } = solved(300, 0.6e-3, [...uniform(2, 200), probe(150)]);
    expect(300 - (tapVolts.at(-1) ?? NaN)).toEqual(closeTo(22.5, exact));
    expect(dropVolts).toEqual(closeTo(24, exact));
  });

  test('THE40 40.2 p. 1577: the same load on a single wire drops 12 V', () => {
    expect(solved(300, 0.3e-3, uniform(2, 200)).dropVolts).toEqual(closeTo(12, exact));
  });

  test('MEH13 13.6 p. 317: 0.4 A/m over 500 m within 10 V takes 1.7 cm² at 1.7e-6 Ω·cm', () => {
    const loop = loopResistancePerMetre(copperResistance(170, 1 / 0.017) ?? NaN, 20, 1) ?? NaN;
    expect(solved(240, loop, uniform(0.4, 500)).dropVolts).toEqual(closeTo(10, exact));
  });

  test('MEH13 13.7 p. 318: 1.6 A/m over 250 m, fed at 270 V for 250 V at the end, at 265 V for 250 V in the middle',
    () => {
    expect(solved(270, 0.4e-3, uniform(1.6, 250)).endVolts).toEqual(closeTo(250, exact));
    expect(solved(265, 0.4e-3, [...uniform(1.6, 250), probe(125)]).tapVolts.at(-1)).toEqual(closeTo(250, exact));
  });

  test('MEH13 13.9 p. 319 and ANA7 7.10 p. 185: 0.75 A/m over 300 m, 244.6 V at 200 m', () => {
    const { tapVolts } = solved(250, 0.18e-3, [...uniform(0.75, 300), probe(200)]);
    expect(tapVolts.at(-1)).toEqual(closeTo(244.6, exact));
  });

  test('MEH13 13.19 p. 330: point loads and a uniform load together, 370.25 V at 500 m and 361.75 V at the end', () => {
    const taps = [tap(50, 200), tap(100, 500), tap(150, 800), ...uniform(0.5, 900)];
    const { tapVolts, endVolts } = solved(400, 0.1e-3, taps);
    expect(tapVolts[1]).toEqual(closeTo(370.25, exact));
    expect(endVolts).toEqual(closeTo(361.75, exact));
  });

  test.each([1, 2, 5, 40])('%d equal loads at equal spacing drop I × R × (N + 1) ÷ 2N, by arithmetic', (count) => {
    const taps = Array.from({ length: count }, (_, index) => tap(3 / count, (100 * (index + 1)) / count));
    expect(solved(48, 0.01, taps).dropVolts).toEqual(closeTo((3 * (count + 1)) / (2 * count), EXACT));
  });
});

describe('single loads at the end of a cable', () => {
  test.each([
    {
      source: 'NEC-E2, 100 ft of AWG 16 at 4.99 Ω/kft, 4 A on 24 V', supply: 24, loop: (2 * 4.99) / 304.8,
      metres: 30.48, amps: 4, drop: '3.992',
    },
    {
      source: 'LIN, 10 mm² (prints 2.06, cut off)', supply: 230, loop: 4.4e-3, metres: 18, amps: 26.09, drop: '2.0663',
    },
    { source: 'BS 7671, 4 mm²', supply: 230, loop: 11e-3, metres: 20, amps: 30, drop: '6.6' },
    { source: 'BS 7671, 6 mm²', supply: 230, loop: 7.3e-3, metres: 40, amps: 45, drop: '13.14' },
    { source: 'BS 7671, 1.5 mm²', supply: 230, loop: 29e-3, metres: 10, amps: 16, drop: '4.64' },
    { source: 'BS 7671, 10 mm²', supply: 230, loop: 4.4e-3, metres: 40, amps: 45, drop: '7.92' },
  ])('$source: $drop V', ({ supply, loop, metres, amps, drop }) => {
    expect(solved(supply, loop, [tap(amps, metres)]).dropVolts).toEqual(closeTo(Number(drop), printed(drop)));
  });

  test('LEC: 10 V on 25 A over 2300 ft needs 0.2 Ω a wire; 2/0 gives it and 1/0 does not', () => {
    const drop = (gauge: number) => {
      const ohmPerKm = copperResistance(awgArea(gauge), 1 / (10.09 * 1.66243e-3)) ?? NaN;
      return solved(230, loopResistancePerMetre(ohmPerKm, 20, 1) ?? NaN, [tap(25, 2300 * 0.3048)]).dropVolts;
    };
    expect(drop(-1)).toBeLessThan(10);
    expect(drop(0)).toBeGreaterThan(10);
  });
});

describe('constant power', () => {
  test('24 W behind 1 Ω on 24 V: (U + √(U² − 4PR)) ÷ 2 = 22.954451 V, closed form', () => {
    const { endVolts, currentAmps } = solved(24, 0.01, [{ distanceMetres: 100, watts: 24 }]);
    expect(endVolts).toEqual(closeTo((24 + Math.sqrt(24 * 24 - 4 * 24)) / 2, EXACT));
    expect(endVolts).toEqual(closeTo(22.954451, printed('22.954451')));
    expect(currentAmps * endVolts).toEqual(closeTo(24, EXACT));
  });

  test('eight devices of 1.196 W at 10 m spacing on 1 mm wire of 0.017 Ω·mm²/m', () => {
    // Inputs and equation as in a published problem, which prints no answer; two independent solvers agree on these.
    const hop = (2 * 0.017 * 10) / (Math.PI / 4);
    expect(hop).toEqual(closeTo(0.432901, printed('0.432901')));
    const taps = Array.from({ length: 8 }, (_, index) => ({ distanceMetres: 10 * (index + 1), watts: 1.196 }));
    const { tapVolts, currentAmps } = solved(24, hop / 10, taps);
    const expected = ['23.82324', '23.66821', '23.53506', '23.42391', '23.33486', '23.26800', '23.22339', '23.20107'];
    expect(tapVolts).toEqual(expected.map((text) => closeTo(Number(text), printed(text))));
    expect(currentAmps).toEqual(closeTo(0.408316, printed('0.408316')));
  });

  test.each([
    { watts: 144 * (1 - 1e-9), working: true }, { watts: 144, working: true },
    { watts: 144 * (1 + 1e-9), working: false }, { watts: 1e6, working: false },
  ])('$watts W behind 1 Ω on 24 V works: $working; the limit is U² ÷ 4R = 144 W, closed form', ({ watts, working }) => {
    const run = { supplyVolts: 24, loopOhmPerMetre: 0.01, taps: [{ distanceMetres: 100, watts }] };
    expect(solveRun(run).working).toBe(working);
  });

  test.each([12, 24, 36, 48])('at %d V and any resistance the limit is met to fourteen digits, closed form',
    (supplyVolts) => {
    const works = (ohm: number, factor: number) => solveRun({
      supplyVolts, loopOhmPerMetre: ohm, taps: [{ distanceMetres: 1, watts: (factor * supplyVolts ** 2) / (4 * ohm) }],
    }).working;
    const resistances = Array.from({ length: 200 }, (_, index) => 0.01 * 1.04 ** index);
    expect(resistances.filter((ohm) => !works(ohm, 1 - 1e-14))).toEqual([]);
    expect(resistances.filter((ohm) => works(ohm, 1 + 1e-11))).toEqual([]);
  });

  test('at the limit the voltage is half that of the supply, closed form', () => {
    const { endVolts } = solved(24, 0.01, [{ distanceMetres: 100, watts: 144 }]);
    expect(endVolts).toEqual(closeTo(12, { absolute: 1e-5, relative: 0 }));
  });
});
