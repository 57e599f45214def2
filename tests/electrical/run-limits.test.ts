import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  exceeds, faultCurrent, longestRun, loopResistancePerMetre, mayNotClear, smallestConductor, solveRun,
  type Run, type RunLimits, type Tap,
} from '../../src/electrical/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';

const NEAR = { absolute: 0, relative: 1e-8 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const lamp: Run = { supplyVolts: 24, loopOhmPerMetre: 0.05, taps: [{ distanceMetres: 20, amps: 1 }] };

/** Whether a run of a length keeps to its limits, from their definitions rather than by the software's own check. */
function keeps(run: Run, lengthMetres: number, { lowestVolts, maxDrop, protection }: RunLimits): boolean {
  const solution = solveRun(run);
  const lowest = solveRun({ ...run, supplyVolts: lowestVolts ?? run.supplyVolts });
  if (!solution.working || !lowest.working) return false;
  if (run.taps.some(({ leastVolts = 0 }, tap) => lowest.tapVolts[tap]! < leastVolts * (1 - 2e-9))) return false;
  if (solution.currentAmps > (protection?.protectionAmps ?? Infinity) * (1 + 2e-9)) return false;
  if (maxDrop !== undefined && solution.dropVolts > maxDrop * run.supplyVolts * (1 + 2e-9)) return false;
  if (protection === undefined) return true;
  const { availableAmps = Infinity, innerOhm = 0, trip = 0 } = protection;
  const through = (lowestVolts ?? run.supplyVolts) / (run.loopOhmPerMetre * lengthMetres + innerOhm);
  return Math.min(availableAmps, through) >= trip * protection.protectionAmps * (1 - 2e-9);
}

describe('the longest run', () => {
  // 1 A at the end of r = 0.05 Ω/m on 24 V: 1.2 V are lost on 24 m, 4.8 V on 96 m; 24 ÷ 0.05 ÷ 10 = 48 m; all by hand.
  const protection = { protectionAmps: 2, trip: 5, availableAmps: 24 };
  test.each<{ by: string; limits: RunLimits; needs?: number; metres: number | null }>([
    { by: 'the drop', limits: { maxDrop: 0.05 }, metres: 24 },
    { by: 'the voltage that devices need', limits: {}, needs: 19.2, metres: 96 },
    // From 21.6 V 2.4 V are left, on 48 m; a short circuit at 10 A takes 2.16 Ω, 43.2 m.
    { by: 'what they need when the supply gives least', limits: { lowestVolts: 21.6 }, needs: 19.2, metres: 48 },
    { by: 'the drop, whatever the supply gives at least', limits: { lowestVolts: 21.6, maxDrop: 0.05 }, metres: 24 },
    { by: 'the short circuit when it gives least', limits: { lowestVolts: 21.6, protection }, metres: 43.2 },
    { by: 'the short circuit', limits: { protection }, metres: 48 },
    { by: 'the short circuit, behind 0.4 Ω', limits: { protection: { ...protection, innerOhm: 0.4 } }, metres: 40 },
    { by: 'the first of all', limits: { maxDrop: 0.05, protection }, needs: 19.2, metres: 24 },
    { by: 'the first of all, the short circuit', limits: { maxDrop: 0.2, protection }, needs: 19.2, metres: 48 },
    { by: 'the last voltage above 0', limits: {}, metres: 480 },
    { by: 'a supply that never clears it', limits: { protection: { ...protection, availableAmps: 6 } }, metres: 0 },
    { by: 'devices that need more than the supply has', limits: {}, needs: 25, metres: 0 },
    { by: 'a conductor that carries less than it draws', limits: { carriesAmps: 0.9 }, metres: 0 },
    { by: 'a protection below what it draws', limits: { protection: { protectionAmps: 0.9 } }, metres: 0 },
    { by: 'a conductor that carries less than its protection', limits: { carriesAmps: 1.9, protection }, metres: 0 },
    // gG of 2 A acts on overload at 2.1 × 2 = 4.2 A; 1.45 × 2.89 = 4.19 A, 1.45 × 2.9 = 4.205 A
    {
      by: 'a conductor that its protection saves too late',
      limits: { carriesAmps: 2.89, protection: { ...protection, operatingMultiple: 2.1 } }, metres: 0,
    },
    {
      by: 'the short circuit, with a conductor that it just saves',
      limits: { carriesAmps: 2.9, protection: { ...protection, operatingMultiple: 2.1 } }, metres: 48,
    },
    {
      by: 'the drop, with a conductor that just carries its protection',
      limits: { maxDrop: 0.05, carriesAmps: 2, protection }, metres: 24,
    },
    {
      by: 'the cable, where the supply is not known', limits: {
        protection: { protectionAmps: 2, trip: 5 },
      }, metres: 48,
    },
    {
      by: 'the last voltage above 0, where the multiple is not known', limits: { protection: { protectionAmps: 2 } },
      metres: 480,
    },
  ])('is limited by $by: $metres m', ({ limits, needs = 0, metres }) => {
    const run = { ...lamp, taps: lamp.taps.map((tap) => ({ ...tap, leastVolts: needs })) };
    expect(longestRun(run, 20, limits)).toEqual(metres === null ? null : closeTo(metres, NEAR));
  });

  test('is unlimited where nothing is drawn and nothing has to clear', () => {
    expect(longestRun({ ...lamp, taps: [] }, 20, { maxDrop: 0.05 })).toBeNull();
    expect(longestRun({ ...lamp, taps: [{ distanceMetres: 20, amps: 0 }] }, 20, { maxDrop: 0.05 })).toBeNull();
  });

  test('of constant power ends where the run collapses: U² ÷ 4P ÷ r, closed form', () => {
    const run: Run = { supplyVolts: 24, loopOhmPerMetre: 0.01, taps: [{ distanceMetres: 100, watts: 24 }] };
    expect(longestRun(run, 100, {})).toEqual(closeTo(600, NEAR));
  });

  test('does not depend on the length from which it is scaled', () => {
    const taps = (factor: number): Tap[] => [
      { distanceMetres: 10 * factor, watts: 5, leastVolts: 20.4 }, { distanceMetres: 35 * factor, amps: 0.4 },
    ];
    const limits = { lowestVolts: 22, maxDrop: 0.1 };
    const one = longestRun({ ...lamp, taps: taps(1) }, 40, limits) ?? NaN;
    const other = longestRun({ ...lamp, taps: taps(37) }, 40 * 37, limits) ?? NaN;
    expect(other).toEqual(closeTo(one, NEAR));
  });

  test('holds, and a little longer fails', () => {
    const anyTap = fc.record({
      share: between(0.05, 1), amps: between(0.01, 0.5), watts: between(0, 8), leastVolts: between(0, 20),
    });
    const absent = { nil: undefined };
    const small = { protectionAmps: 10, trip: 1, availableAmps: 12, innerOhm: 0.3 };
    const anyLimits = fc.record({
      lowestVolts: fc.option(between(21, 24), absent), maxDrop: fc.option(between(0.01, 0.5), absent),
      protection: fc.option(fc.constant(small), absent),
    });
    fc.assert(fc.property(fc.array(anyTap, { minLength: 1, maxLength: 8 }), anyLimits, (shares, limits) => {
      const runOf = (metres: number): Run => ({
        ...lamp, taps: shares.map(({ share, ...tap }) => ({ distanceMetres: share * metres, ...tap })),
      });
      const longest = longestRun(runOf(30), 30, limits) ?? NaN;
      expect(longest).toBeGreaterThan(0);
      expect(keeps(runOf(longest), longest, limits)).toBe(true);
      expect(keeps(runOf(longest * 1.000001), longest * 1.000001, limits)).toBe(false);
    }));
  });
});

describe('the smallest conductor', () => {
  // IEC 60228, class 1 and 2, in an order of no meaning; currents invented.
  const candidates = [
    { ohmPerKm: 12.1, carriesAmps: 10 }, { ohmPerKm: 4.61, carriesAmps: 20 }, { ohmPerKm: 36, carriesAmps: 3 },
    { ohmPerKm: 7.41, carriesAmps: 16 }, { ohmPerKm: 18.1, carriesAmps: 30 },
  ].map((each) => ({ ...each, temperature: 20 }));
  const run = { supplyVolts: 24, lengthMetres: 40, pairs: 1, taps: [{ distanceMetres: 40, amps: 1 }] };
  const protection = { protectionAmps: 4, trip: 5, availableAmps: 48 };

  // 1 A on 40 m drops 0.08 V × Ω/km: 1.2 V allow 15 Ω/km, 2.4 V allow 30 Ω/km; 20 A of fault current take 15 Ω/km,
  // 32 A 9.4 Ω/km, of conductors at 70 °C: 12.5 and 7.8 Ω/km at 20 °C.
  test.each<{ by: string; limits: RunLimits; pairs?: number; place: number | null }>([
    { by: '5 % drop', limits: { maxDrop: 0.05 }, place: 0 },
    { by: '10 % drop', limits: { maxDrop: 0.1 }, place: 4 },
    { by: '5 % drop, on two pairs', limits: { maxDrop: 0.05 }, pairs: 2, place: 4 },
    { by: 'no limit but its current', limits: {}, place: 2 },
    { by: 'the short circuit', limits: { protection }, place: 0 },
    {
      by: 'protection of 12 A with a multiple of 1',
      limits: { protection: { ...protection, protectionAmps: 12, trip: 1 } }, place: 4,
    },
    {
      by: 'protection of 16 A with a multiple of 2',
      limits: { protection: { ...protection, protectionAmps: 16, trip: 2 } }, place: 3,
    },
    {
      by: 'protection of 24 A, on two pairs', limits: { protection: { ...protection, protectionAmps: 24, trip: 1 } },
      pairs: 2, place: 4,
    },
    {
      by: 'protection of 12 A where multiple and supply are not known', limits: { protection: { protectionAmps: 12 } },
      place: 4,
    },
    { by: 'a drop that none keeps to', limits: { maxDrop: 0.01 }, place: null },
  ])('by $by', ({ limits, pairs, place }) => {
    expect(smallestConductor({ ...run, pairs: pairs ?? 1 }, limits, candidates)).toBe(place);
  });

  test('is as warm as each would be: 15 Ω/km at 20 °C are 12.54 at 70 °C', () => {
    const warm = [12.6, 12.5].map((ohmPerKm) => ({ ohmPerKm, carriesAmps: 9, temperature: 70 }));
    expect(smallestConductor(run, { maxDrop: 0.05 }, warm)).toBe(1);
    expect(smallestConductor(run, { maxDrop: 0.05 }, [{ ...warm[0]!, temperature: 20 }])).toBe(0);
  });

  test('of no conductors is none', () => {
    expect(smallestConductor(run, {}, [])).toBeNull();
  });

  test('is the first of equals', () => {
    const equals = [5, 7, 7].map((ohmPerKm) => ({ ohmPerKm, carriesAmps: 9, temperature: 20 }));
    expect(smallestConductor(run, {}, equals)).toBe(1);
  });
});

describe('short circuits', () => {
  test('a longer cable never gives more', () => {
    fc.assert(fc.property(between(0.001, 0.1), between(0, 500), between(0, 500), (ohm, length, more) => {
      const short = faultCurrent(24, ohm, length, 0.3, 24);
      const long = faultCurrent(24, ohm, length + more, 0.3, 24);
      expect(exceeds(long, short)).toBe(false);
      expect(short).toBeLessThanOrEqual(24);
    }));
  });

  test('a current of just the multiple clears', () => {
    expect(mayNotClear(0.1 * 3, 3, 0.1)).toBe(false);
    expect(mayNotClear(0.3, 3, 0.1)).toBe(false);
    expect(mayNotClear(0.2999, 3, 0.1)).toBe(true);
  });
});

test('pairs in parallel share the current; no pairs carry none', () => {
  expect(loopResistancePerMetre(12.1, 20, 4)).toEqual(closeTo(0.0242 / 4, EXACT));
  expect(loopResistancePerMetre(12.1, 20, 0)).toBeNull();
});
