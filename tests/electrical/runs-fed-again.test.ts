import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  faultCurrent, longestRun, sharedFault, smallestConductor, solveRun, type Run, type RunLimits, type Tap,
} from '../../src/electrical/index.ts';
import { closeTo } from '../support/close-to.ts';
import { nodalVoltages } from '../support/nodal-solver.ts';

const AGREED = { absolute: 1e-9, relative: 1e-9 };
const NEAR = { absolute: 1e-6, relative: 1e-9 };
const typed = (min: number, max: number) =>
  fc.integer({ min: min * 1000, max: max * 1000 }).map((count) => count / 1000);
const anyDistance = fc.integer({ min: 0, max: 1200 }).map((decimetres) => decimetres / 10);
const anyTap: fc.Arbitrary<Tap> = fc.oneof(
  fc.record({ distanceMetres: anyDistance, amps: typed(0, 1.2) }),
  fc.record({ distanceMetres: anyDistance, watts: typed(0, 30) }),
  fc.record({
    distanceMetres: fc.integer({ min: 0, max: 12 }).map((hop) => hop * 10), amps: typed(0, 0.6), watts: typed(0, 12),
  }),
);
const anyRun = fc.record({
  supplyVolts: fc.constantFrom(12, 24, 48), loopOhmPerMetre: typed(0.002, 0.12),
  taps: fc.array(anyTap, { minLength: 1, maxLength: 20 }),
  fedAgainMetres: fc.integer({ min: 1201, max: 3000 }).map((each) => each / 10),
});

describe('a run that is fed at both ends', () => {
  // A fixed seed, so that the count of runs of each kind below holds.
  const all = fc.sample(anyRun, { numRuns: 600, seed: 20_260_301 }).map((run) => ({
    run, solution: solveRun(run),
    nodal: nodalVoltages(run.supplyVolts, run.loopOhmPerMetre, run.taps, run.fedAgainMetres),
  }));

  test('works where a nodal solver finds that it does, with the same voltages to 1e-9', () => {
    const counts = { working: 0, collapsed: 0 };
    for (const { solution, nodal } of all) {
      counts[solution.working ? 'working' : 'collapsed'] += 1;
      expect(solution).toMatchObject(nodal === null ? { working: false }
        : { working: true, tapVolts: nodal.map((volts) => closeTo(volts, AGREED)) });
    }
    expect(counts.working).toBeGreaterThan(200);
    expect(counts.collapsed).toBeGreaterThan(50);
  });

  test('gets from both feeds together what its taps draw, from the second by the moments of their currents', () => {
    for (const { run, solution } of all) {
      if (!solution.working) continue;
      const drawn = run.taps.map(({ amps = 0, watts = 0 }, place) => amps + watts / solution.tapVolts[place]!);
      const sum = (each: readonly number[]) => each.reduce((total, one) => total + one, 0);
      const moments = sum(drawn.map((amps, place) => amps * run.taps[place]!.distanceMetres));
      expect(solution.secondAmps).toEqual(closeTo(moments / run.fedAgainMetres, AGREED));
      expect(solution.currentAmps).toEqual(closeTo(sum(drawn) - moments / run.fedAgainMetres, AGREED));
      expect(solution.endVolts).toEqual(closeTo(Math.min(run.supplyVolts, ...solution.tapVolts), AGREED));
      expect(solution.dropVolts).toEqual(closeTo(run.supplyVolts - solution.endVolts, AGREED));
    }
  });

  test('is the same when it is looked at from its other end', () => {
    for (const { run, solution } of all) {
      const turned = solveRun({
        ...run, taps: run.taps.map((tap) => ({ ...tap, distanceMetres: run.fedAgainMetres - tap.distanceMetres })),
      });
      expect(turned.working).toBe(solution.working);
      if (!turned.working || !solution.working) continue;
      expect(turned.secondAmps).toEqual(closeTo(solution.currentAmps, AGREED));
      expect(turned.endVolts).toEqual(closeTo(solution.endVolts, AGREED));
    }
  });

  test('never drops more than with its second feed open', () => {
    for (const { run, solution } of all) {
      const { supplyVolts, loopOhmPerMetre, taps } = run;
      const open = solveRun({ supplyVolts, loopOhmPerMetre, taps });
      if (!open.working) continue;
      expect(solution.working && solution.dropVolts < open.dropVolts + 1e-9).toBe(true);
    }
  });

  test('closed form of one load in the middle: the loop of each half, side by side', () => {
    // 24 W behind 0.5 Ω: U = (24 + √(24² − 4 × 24 × 0.5)) ÷ 2, half of the current from each side.
    const run = {
      supplyVolts: 24, loopOhmPerMetre: 0.02, taps: [{ distanceMetres: 50, watts: 24 }], fedAgainMetres: 100,
    };
    const volts = (24 + Math.sqrt(24 ** 2 - 48)) / 2;
    expect(solveRun(run)).toEqual({
      working: true, tapVolts: [closeTo(volts, AGREED)], endVolts: closeTo(volts, AGREED),
      dropVolts: closeTo(24 - volts, AGREED), currentAmps: closeTo(12 / volts, AGREED),
      secondAmps: closeTo(12 / volts, AGREED),
    });
    // U² ÷ 4R = 288 W is the most.
    const works = (watts: number) => solveRun({ ...run, taps: [{ distanceMetres: 50, watts }] }).working;
    expect([287.999, 288.001].map(works)).toEqual([true, false]);
  });

  test('without devices it has no drop and no current', () => {
    expect(solveRun({ supplyVolts: 24, loopOhmPerMetre: 0.05, taps: [], fedAgainMetres: 40 }))
      .toEqual({ working: true, tapVolts: [], endVolts: 24, dropVolts: 0, currentAmps: 0, secondAmps: 0 });
  });
});

describe('a short circuit between two protections', () => {
  test('is at the place where neither gets a larger share of what it needs', () => {
    fc.assert(fc.property(
      typed(0.005, 0.1), typed(10, 200), typed(0, 1), typed(5, 100), typed(2, 60), typed(2, 60),
      (ohmPerMetre, total, inner, available, first, second) => {
        const given = sharedFault(24, ohmPerMetre, total, inner, available, first, second);
        // The larger of the two shares at each place, found by trying places; the least of them is what is given.
        const shares = Array.from({ length: 1999 }, (_each, place) => {
          const x = total * (place + 1) / 2000;
          const loops = ohmPerMetre * x * (total - x) / total;
          const all = Math.min(available, 24 / (loops + inner));
          return Math.max(all * (total - x) / total / first, all * x / total / second);
        });
        const least = Math.min(...shares);
        expect(given / (first + second)).toBeLessThanOrEqual(least * (1 + 1e-9));
        expect(given / (first + second)).toBeGreaterThan(least * 0.97);
      }
    ), { numRuns: 100 });
  });
});

describe('limits of a run that is fed at both ends', () => {
  const fed = (metres: number, behind: number): Run => ({
    supplyVolts: 24, loopOhmPerMetre: 0.05, fedAgainMetres: metres + behind,
    taps: [
      { distanceMetres: metres / 2, amps: 1, leastVolts: 20 }, { distanceMetres: metres, watts: 20, leastVolts: 21 },
    ],
  });
  const protection = { protectionAmps: 2, trip: 4, availableAmps: 30, innerOhm: 0.3 };
  const limits: RunLimits = {
    lowestVolts: 23, maxDrop: 0.08, protection, secondProtection: protection, carriesAmps: 6,
  };

  /** Whether a run of a length keeps to them, found from the solution of that very run. */
  function keeps(
    metres: number, behind: number, { protection: one, secondProtection: other, carriesAmps }: RunLimits,
  ): boolean {
    const [nominal, lowest] = [solveRun(fed(metres, behind)), solveRun({ ...fed(metres, behind), supplyVolts: 23 })];
    if (!nominal.working || !lowest.working) return false;
    const needed = (way: typeof one) => way!.trip! * way!.protectionAmps;
    const alone = faultCurrent(23, 0.05, metres + behind, 0.3, 30);
    const shared = sharedFault(23, 0.05, metres + behind, 0.3, 30, needed(one), needed(other));
    return nominal.dropVolts <= 0.08 * 24 && lowest.tapVolts[0]! >= 20 && lowest.tapVolts[1]! >= 21
      && nominal.currentAmps <= one!.protectionAmps && nominal.secondAmps <= other!.protectionAmps
      && Math.max(one!.protectionAmps, other!.protectionAmps) <= carriesAmps!
      && alone >= Math.max(needed(one), needed(other)) && shared >= needed(one) + needed(other);
  }

  test.each<{ by: string; behind: number; limits: RunLimits }>([
    { by: 'drop', behind: 5, limits },
    { by: 'drop, with a long cable behind', behind: 30, limits },
    { by: 'the short circuit that one feed has to clear', behind: 12, limits: {
      ...limits, secondProtection: { ...protection, protectionAmps: 3 } } },
    { by: 'the short circuit that both share', behind: 1, limits: {
      ...limits, protection: { ...protection, trip: 7.6 }, secondProtection: { ...protection, trip: 7.3 } } },
    { by: 'what its second way bears', behind: 10, limits: {
      ...limits, secondProtection: { ...protection, protectionAmps: 1.1 } } },
  ])('the longest that it may be, by $by: a little less works, a little more does not', ({ behind, limits: kept }) => {
    const longest = longestRun(fed(20, behind), 20, kept) ?? NaN;
    expect(longest).toBeGreaterThan(1);
    expect([keeps(longest * 0.999_999, behind, kept), keeps(longest * 1.000_001, behind, kept)]).toEqual([true, false]);
  });

  test('no length works where either protection is too large for the cable', () => {
    const large = { ...protection, protectionAmps: 7 };
    expect(longestRun(fed(20, 5), 20, { ...limits, protection: large })).toBe(0);
    expect(longestRun(fed(20, 5), 20, { ...limits, secondProtection: large })).toBe(0);
  });

  test('the smallest conductor: half of 2 A over half of 80 m drop 0.08 V × Ω/km, of 2.4 V at most 30 Ω/km', () => {
    // At one end alone 2 A over 40 m of the same drop 0.16 V × Ω/km, of 2.4 V at most 15 Ω/km.
    const candidates = [12.1, 29.9, 30.1].map((ohmPerKm) => ({ ohmPerKm, carriesAmps: 9, temperature: 20 }));
    const run = { supplyVolts: 24, lengthMetres: 40, pairs: 1, taps: [{ distanceMetres: 40, amps: 2 }] };
    expect(smallestConductor({ ...run, fedAgainMetres: 80 }, { maxDrop: 0.1 }, candidates)).toBe(1);
    expect(smallestConductor(run, { maxDrop: 0.1 }, candidates)).toBe(0);
  });

  test('it does not depend on how the length is written: half of all with all of what is behind', () => {
    const whole = longestRun(fed(20, 5), 20, limits)!;
    expect(longestRun(fed(10, 5), 10, limits)).toEqual(closeTo(whole, NEAR));
  });
});
