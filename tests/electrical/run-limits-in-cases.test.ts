import fc from 'fast-check';
import { expect, test } from 'vitest';
import { longestRun, smallestConductor, type RunLimits, type Tap } from '../../src/electrical/index.ts';
import { closeTo } from '../support/close-to.ts';

/*
 * What hangs on one run in several cases: the longest and the smallest of all of them are those of the strictest one,
 * each worked out by itself.
 */

const NEAR = { absolute: 0, relative: 1e-9 };
const share = fc.constantFrom(0, 0.2, 0.37, 0.5, 0.8, 1);

/** Devices at the same places and of the same kind in each case, and how much of each is on. */
const someCases = fc.array(fc.record({
  distanceMetres: fc.integer({ min: 1, max: 60 }), amps: fc.constantFrom(0, 0, 0.1, 0.25, 0.6),
  watts: fc.constantFrom(0, 0, 3, 12),
  leastVolts: fc.constantFrom(0, 0, 0, 0, 0, 0, 15, 20, 23), shares: fc.tuple(share, share, share, share, share, share),
}), { minLength: 1, maxLength: 5 }).chain((devices) => fc.integer({ min: 2, max: 6 }).map((count): Tap[][] =>
  Array.from({ length: count }, (_, at) => devices.map(({ shares, amps, watts, ...place }) =>
    ({ ...place, amps: amps * shares[at]!, watts: watts * shares[at]! })))));

const someLimits: fc.Arbitrary<RunLimits> = fc.record({
  maxDrop: fc.constantFrom(0.02, 0.05, 0.3), lowestVolts: fc.constantFrom(24, 22.5),
  protection: fc.constantFrom(undefined, { protectionAmps: 2, trip: 5, availableAmps: 30 }, { protectionAmps: 1 }),
  carriesAmps: fc.constantFrom(undefined, 3, 9),
}).map(({ protection, carriesAmps, ...limits }) => ({
  ...limits, ...protection === undefined ? {} : { protection }, ...carriesAmps === undefined ? {} : { carriesAmps },
}));

test('the longest run of several cases is the least of them', () => {
  const seen = { none: 0, some: 0, unlimited: 0, later: 0 };
  fc.assert(fc.property(someCases, someLimits, fc.constantFrom(undefined, 90), (cases, limits, fedAgainMetres) => {
    const run = {
      supplyVolts: 24, loopOhmPerMetre: 0.04, ...fedAgainMetres === undefined ? {} : { fedAgainMetres },
    };
    const each = cases.map((taps) => longestRun({ ...run, taps }, 60, limits, 0.05) ?? Infinity);
    const least = Math.min(...each);
    const [taps = [], ...others] = cases;
    const found = longestRun({ ...run, taps }, 60, limits, 0.05, others);
    expect(found).toEqual(least === Infinity ? null : closeTo(least, NEAR));
    seen[least === 0 ? 'none' : least === Infinity ? 'unlimited' : 'some'] += 1;
    if (least < each[0]!) seen.later += 1;
  }), { numRuns: 400 });
  for (const [kind, count] of Object.entries(seen)) expect([kind, count > 5]).toEqual([kind, true]);
});

test('the smallest conductor of several cases is the first that does in each of them', () => {
  const CANDIDATES = [[36, 5], [18.1, 8], [12.1, 3], [7.41, 17], [3.08, 30], [1.15, 60]]
    .map(([ohmPerKm, carriesAmps]) => ({ ohmPerKm: ohmPerKm!, carriesAmps: carriesAmps!, temperature: 40 }));
  const seen = { none: 0, later: 0 };
  fc.assert(fc.property(someCases, someLimits, (cases, { carriesAmps: _carries, ...limits }) => {
    const run = { supplyVolts: 24, lengthMetres: 60, pairs: 1 };
    const does = (taps: readonly Tap[], at: number) =>
      smallestConductor({ ...run, taps }, limits, [CANDIDATES[at]!]) !== null;
    // They stand in the order of their resistance.
    const expected = CANDIDATES.findIndex((_each, at) => cases.every((taps) => does(taps, at)));
    const [taps = [], ...others] = cases;
    expect(smallestConductor({ ...run, taps }, limits, CANDIDATES, others)).toBe(expected < 0 ? null : expected);
    if (expected < 0) seen.none += 1;
    else if (CANDIDATES.findIndex((_each, at) => does(taps, at)) < expected) seen.later += 1;
  }), { numRuns: 400 });
  for (const [kind, count] of Object.entries(seen)) expect([kind, count > 5]).toEqual([kind, true]);
});
