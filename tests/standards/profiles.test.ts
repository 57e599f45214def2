import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  averagePower, batteryHours, batteryNeeded, coincidenceFactor, coincidentPowers, connectedCurrent, contributionFactor,
  demandCurrent, diversityFactor, limitFactor, loadDiversity, loadFactor, loadingRatio, loadingStep, peakPeriod,
  profileEnergy,
} from '../../src/electrical/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';

/*
 * Printed figures are held to their last digit. Those marked D are no print, but follow from the row by arithmetic.
 *
 * MEH3 V.K. Mehta, R. Mehta, Principles of Power System, ch. 3
 * THE50 B.L. Theraja, A.K. Theraja, A Textbook of Electrical Technology, vol. III, ch. 50
 * GON2 T. Gonen, Electric Power Distribution System Engineering, ch. 2
 * WAD2 C.L. Wadhwa, Generation, Distribution and Utilization of Electrical Energy, ch. 2
 * CHA Chakrabarti, Soni, Gupta, Bhatnagar, A Textbook on Power System Engineering, 1.7
 * AF1, AF2 exercises with their solutions, askfilo.com 3339333436343031 and 3236383330343335
 * AH exercise, askmehelpdesk.com 734141
 */

const HOURS_OF_YEAR = 8760;
const figure = (digits: string) => closeTo(Number(digits), printed(digits));

/** A profile as its table writes it: a power, how many times. */
const repeated = (...parts: (readonly [power: number, times: number])[]) =>
  parts.flatMap(([power, times]) => Array.from({ length: times }, () => power));

/** What a group of consumers comes to, all of it by the functions under test. */
function figuresOf(profiles: readonly (readonly number[])[], hours: readonly number[]) {
  const together = coincidentPowers(profiles);
  const peak = peakPeriod(together)!;
  const maxima = profiles.map((profile) => profile[peakPeriod(profile)!]!);
  const days = hours.reduce((sum, each) => sum + each, 0);
  const factorOf = (profile: readonly number[]) =>
    loadFactor(profileEnergy(profile, hours), profile[peakPeriod(profile)!]!, days);
  return {
    together, peak, maxima, coincident: together[peak]!,
    energies: profiles.map((profile) => profileEnergy(profile, hours)), energy: profileEnergy(together, hours),
    loadFactors: profiles.map(factorOf), loadFactor: factorOf(together),
    diversity: diversityFactor(maxima, together[peak]!), coincidence: coincidenceFactor(maxima, together[peak]!),
    contributions: profiles.map((profile, index) => contributionFactor(profile[peak]!, maxima[index]!)),
    loadDiversity: loadDiversity(maxima, together[peak]!),
  };
}

/** 0–8, 8–14, 14–16, 16–22 and 22–24 h. */
const BLOCKS = [8, 6, 2, 6, 2];

describe('consumers by blocks of hours', () => {
  test('MEH3 3.12 p. 54: sums, diversity factor 1.25, load factors 45.8, 16.7, 13.9 and 29.2 %', () => {
    const found = figuresOf([[0, 600, 200, 800, 0], [200, 0, 1000, 0, 200], [0, 200, 1200, 0, 200]], BLOCKS);
    expect(found.together).toEqual([200, 800, 2400, 800, 400]);
    expect(found.diversity).toEqual(figure('1.25'));
    expect([...found.loadFactors, found.loadFactor].map((each) => each! * 100))
      .toEqual(['45.8', '16.7', '13.9', '29.2'].map(figure));
    expect(found.coincidence).toEqual(closeTo(0.8, EXACT)); // D
  });

  test('AF1: totals, maxima, 7600 Wh, 316.67 W, 0.396, 5000 Wh', () => {
    const found = figuresOf([[0, 300, 500, 800, 0], [300, 0, 900, 0, 400], [0, 300, 1100, 0, 200]], BLOCKS);
    expect(found.together).toEqual([300, 600, 2500, 800, 600]);
    expect(found.maxima).toEqual([800, 900, 1100]);
    expect(found.energies.slice(0, 2)).toEqual([7600, 5000]);
    expect(averagePower(found.energies[0]!, 24)).toEqual(figure('316.67'));
    expect(found.loadFactors[0]).toEqual(figure('0.396'));
    // D
    expect([found.diversity, found.coincidence]).toEqual([figure('1.12'), figure('0.892857')]);
    expect(found.loadFactors).toEqual(['0.39583', '0.23148', '0.16667'].map(figure));
    expect([found.energy, found.loadFactor]).toEqual([17_000, figure('0.28333')]);
  });

  test('AF2: maxima 800, 1000 and 1100', () => {
    const found = figuresOf([[0, 500, 200, 800, 0], [200, 0, 1000, 0, 200], [0, 300, 1100, 100, 100]], BLOCKS);
    expect(found.maxima).toEqual([800, 1000, 1100]);
    // D
    expect(found.together).toEqual([200, 800, 2300, 900, 300]);
    expect([found.diversity, found.coincidence]).toEqual([figure('1.26087'), figure('0.793103')]);
    expect(found.loadFactors).toEqual(['0.42708', '0.16667', '0.18182'].map(figure));
    expect([found.energy, found.loadFactor]).toEqual([17_000, figure('0.30797')]);
  });

  test('WAD2 ex 1 p. 73: 900 W, 600 W, 66.67 %, load factor 17.5 %, with heaters 26.47 %', () => {
    // 5, 10 and 6 of 15 lamps of 60 W for 2 h each; then heaters of 2 kW for 4 h and 3 h, one beside the most lamps.
    const lamps = [300, 600, 360];
    const lit = profileEnergy(lamps, [2, 2, 2]);
    expect(connectedCurrent(15, 60_000)).toBe(900);
    expect(lamps[peakPeriod(lamps)!]).toBe(600);
    expect(loadingRatio(600, 900)! * 100).toEqual(figure('66.67'));
    expect(loadFactor(lit, 600, 24)! * 100).toEqual(figure('17.5'));
    expect(loadFactor(lit + profileEnergy([2000, 2000], [4, 3]), 600 + 2000, 24)! * 100).toEqual(figure('26.47'));
  });
});

/** Powers at 0, 1 … 24 h [kW]: 25 of them, of which a day has the 24 that end its hours, or the 24 that begin them. */
const HOURLY = {
  GON2: [
    repeated([100, 8], [0, 10], [100, 7]),
    repeated(
      [200, 7], [300, 1], [400, 1], [500, 8], [600, 1], [700, 1], [800, 1],
      [1000, 2], [800, 1], [600, 1], [300, 1]),
    repeated([200, 8], [300, 1], [500, 1], [1000, 4], [1200, 4], [800, 1], [400, 3], [200, 3]),
  ],
  AH: [
    repeated([100, 7], [0, 13], [100, 5]),
    repeated(
      [250, 7], [350, 1], [450, 1], [550, 3], [600, 5], [650, 1], [750, 1], [900, 1], [1100, 2], [900, 1], [700, 1],
      [250, 1]),
    repeated([300, 8], [400, 1], [600, 1], [1100, 4], [1300, 4], [900, 1], [500, 3], [300, 3]),
  ],
};
const ONE_HOUR_EACH = Array.from({ length: 24 }, () => 1);
/** Hours 1 to 24, each named by its end. */
const ended = (profiles: readonly number[][]) => figuresOf(profiles.map((profile) => profile.slice(1)), ONE_HOUR_EACH);
/** Hours 0 to 23, each named by its beginning. */
const begun = (profiles: readonly number[][]) =>
  figuresOf(profiles.map((profile) => profile.slice(0, 24)), ONE_HOUR_EACH);

describe('classes of consumers by the hour: lighting, residential, commercial', () => {
  test.each(Object.entries(HOURLY))('%s has 25 figures a class', (_source, profiles) => {
    expect(profiles.map(({ length }) => length)).toEqual([25, 25, 25]);
  });

  test('GON2 2.6 p. 50: 1800 kW at 17:00, diversity 1.27778, coincidence 0.782609, contributions 0, 0.6, 1', () => {
    const [day, found] = [ended(HOURLY.GON2), begun(HOURLY.GON2)];
    expect([found.peak, day.peak + 1]).toEqual([17, 17]);
    for (const each of [day, found]) {
      expect([each.coincident, each.maxima]).toEqual([1800, [100, 1000, 1200]]);
      expect([each.diversity, each.coincidence]).toEqual([figure('1.27778'), figure('0.782609')]);
      expect(each.contributions).toEqual([closeTo(0, EXACT), closeTo(0.6, EXACT), closeTo(1, EXACT)]);
      expect(each.loadDiversity).toBe(500); // D
    }
    // D: with hours 1 to 24 and with 0 to 23.
    expect([day.energy, day.loadFactor]).toEqual([26_700, figure('0.61806')]);
    expect([found.energy, found.loadFactor]).toEqual([26_600, figure('0.61574')]);
  });

  test('AH, all answers D: 1950 kW at 17 h on 4 MW connected and 5 MW rated', () => {
    const found = ended(HOURLY.AH);
    expect([found.coincident, found.peak + 1]).toEqual([1950, 17]);
    expect([loadingRatio(1950, 4000), loadingRatio(1950, 5000)]).toEqual([figure('0.4875'), figure('0.39')]);
    expect([found.diversity, found.coincidence, found.loadDiversity]).toEqual([figure('1.28205'), figure('0.78'), 550]);
    expect(found.loadFactor).toEqual(figure('0.64957'));
    // Loss goes with the square of the current, so the loss factor is the load factor of the squares.
    const squares = found.together.map((power) => power ** 2);
    expect(loadFactor(profileEnergy(squares, ONE_HOUR_EACH), found.coincident ** 2, 24)).toEqual(figure('0.48921'));
  });
});

describe('load factor of a year from energy and maximum', () => {
  test.each([
    { source: 'MEH3 3.2 and THE50 50.7, per cent', energy: 61.5e6, maximum: 20_000, answer: '35.1' },
    { source: 'MEH3 3.5 p. 51, per cent', energy: 45e5, maximum: 2500, answer: '20.5' },
    { source: 'THE50 50.12 p. 1958, turned round, per cent', energy: 4.809e7, maximum: 18_000, answer: '30.5' },
  ])('$source: $answer', ({ energy, maximum, answer }) => {
    expect(loadFactor(energy, maximum, HOURS_OF_YEAR)! * 100).toEqual(figure(answer));
  });

  test('THE50 50.12 p. 1958: 18 000 kW at a load factor of 0.305 are 4.809e7 kWh a year', () => {
    const energy = profileEnergy([demandCurrent(18_000, 0.305)], [HOURS_OF_YEAR]);
    expect(energy / 1e7).toEqual(figure('4.809'));
  });
});

describe('diversity of given maxima', () => {
  test.each([
    { source: 'MEH3 3.5 p. 51', maxima: [1500, 750, 100, 450], coincident: 2500, diversity: '1.12' },
    { source: 'THE50 50.11 p. 1957', maxima: [125, 125, 350, 600], coincident: 1000, diversity: '1.2' },
    {
      source: 'THE50 50.12 p. 1958', maxima: [7500, 5000, 3400, 4600, 2800], coincident: 18_000, diversity: '1.29',
    },
    { source: 'GON2 2.5 p. 48', maxima: [2000, 2000], coincident: 3000, diversity: '1.3333', coincidence: '0.75' },
    {
      source: 'CHA 1.7.5 p. 74', maxima: [150, 120, 85, 60, 5], coincident: 220, diversity: '1.909',
      coincidence: '0.524',
    },
  ])('$source: $diversity', ({ maxima, coincident, diversity, coincidence }) => {
    expect(diversityFactor(maxima, coincident)).toEqual(figure(diversity));
    if (coincidence !== undefined) expect(coincidenceFactor(maxima, coincident)).toEqual(figure(coincidence));
  });

  test('GON2 2.5 p. 48: load diversity 1000 kW', () => {
    expect(loadDiversity([2000, 2000], 3000)).toBe(1000);
  });
});

describe('where nothing is drawn', () => {
  test('ratios are not known, sums are 0, and no period is the peak', () => {
    expect([diversityFactor([], 0), diversityFactor([0, 0], 0), coincidenceFactor([], 0), coincidenceFactor([0, 0], 0)])
      .toEqual([null, null, null, null]);
    expect([contributionFactor(0, 0), averagePower(0, 0), loadFactor(0, 0, 24), loadFactor(0, 5, 0)])
      .toEqual([null, null, null, null]);
    expect([loadDiversity([], 0), loadDiversity([0, 0], 0), profileEnergy([], []), averagePower(0, 24)])
      .toEqual([0, 0, 0, 0]);
    expect([peakPeriod([]), peakPeriod([0, 0]), peakPeriod([1, 3, 3])]).toEqual([null, null, 1]);
    expect([coincidentPowers([]), coincidentPowers([[0, 0]])]).toEqual([[], [0, 0]]);
    expect([limitFactor(10, 4, 0), loadingStep(4, 0, 0.1), batteryHours(0, 7)]).toEqual([null, null, null]);
  });

  test('profiles over other periods are refused', () => {
    expect(() => profileEnergy([1, 2], [24])).toThrow(RangeError);
    expect(() => coincidentPowers([[1], [1, 2]])).toThrow(RangeError);
  });
});

const power = fc.double({ min: 0, max: 1e4, noNaN: true });
const group = fc.integer({ min: 1, max: 24 }).chain((periods) =>
  fc.array(fc.array(power, { minLength: periods, maxLength: periods }), { minLength: 1, maxLength: 8 }));

describe('any group of profiles', () => {
  test('has a diversity of 1 or more, its reciprocal as coincidence, and contributions that make its maximum', () => {
    fc.assert(fc.property(group, (profiles) => {
      const together = coincidentPowers(profiles);
      const peak = peakPeriod(together);
      fc.pre(peak !== null && together[peak]! > 1e-9);
      const maxima = profiles.map((profile) => Math.max(...profile));
      const coincident = together[peak]!;
      const diversity = diversityFactor(maxima, coincident)!;
      expect(diversity).toBeGreaterThanOrEqual(1);
      expect(loadDiversity(maxima, coincident)).toBeGreaterThanOrEqual(0);
      expect(coincidenceFactor(maxima, coincident)).toEqual(closeTo(1 / diversity, EXACT));
      const made = profiles.reduce((sum, profile, index) =>
        sum + (contributionFactor(profile[peak]!, maxima[index]!) ?? 0) * maxima[index]!, 0);
      expect(made).toEqual(closeTo(coincident, EXACT));
    }));
  });

  test('draws together what its members draw, and is on average what its load factor says', () => {
    fc.assert(fc.property(group, (profiles) => {
      const together = coincidentPowers(profiles);
      const hours = together.map((_power, period) => 1 + period % 3);
      const total = hours.reduce((sum, each) => sum + each, 0);
      const energy = profileEnergy(together, hours);
      const parts = profiles.reduce((sum, profile) => sum + profileEnergy(profile, hours), 0);
      expect(energy).toEqual(closeTo(parts, EXACT));
      const peak = peakPeriod(together);
      if (peak === null) return;
      fc.pre(together[peak]! > 1e-9);
      const factor = loadFactor(energy, together[peak]!, total)!;
      expect(factor * together[peak]!).toEqual(closeTo(averagePower(energy, total)!, EXACT));
      expect(factor).toBeLessThanOrEqual(1 + 1e-12);
    }));
  });
});

describe('the factor of one group', () => {
  const amps = fc.double({ min: 0.01, max: 100, noNaN: true });
  const factor = fc.double({ min: 0, max: 1, noNaN: true });

  test('meets the limit, is below 0 where the others are over it, above 1 where all of the group fits', () => {
    fc.assert(fc.property(amps, amps, amps, (limit, others, ownAtOne) => {
      const found = limitFactor(limit, others, ownAtOne)!;
      expect(others + ownAtOne * found).toEqual(closeTo(limit, { absolute: 1e-11, relative: 1e-12 }));
      expect(found < 0).toBe(others > limit);
      if (Math.abs(limit - others - ownAtOne) > 1e-9) expect(found > 1).toBe(others + ownAtOne < limit);
    }));
  });

  test('moves the loading by its step, up and down', () => {
    fc.assert(fc.property(amps, amps, amps, factor, fc.double({ min: -1, max: 1, noNaN: true }),
      (usable, others, ownAtOne, before, step) => {
        const loading = (at: number) => loadingRatio(others + ownAtOne * at, usable)!;
        expect(loadingStep(ownAtOne, usable, step))
          .toEqual(closeTo(loading(before + step) - loading(before), { absolute: 1e-10, relative: 1e-9 }));
      }));
  });
});

describe('how long a battery lasts, BS 5839-1 solved for the time', () => {
  test.each([
    // The capacities are the printed ones, each with the 1.25 for ageing.
    { source: 'forum of fire engineers, 0.25 A, 6 Ah printed', load: 0.25, capacity: 1.25 * 6, hours: 24 },
    { source: 'the same, 0.75 A for half an hour, 0.656 Ah printed', load: 0.75, capacity: 1.25 * 0.65625, hours: 0.5 },
    { source: 'battery manual of a panel, 0.0853 A', load: 0.0853, capacity: 1.25 * 24 * 0.0853, hours: 24 },
  ])('$source: $hours h', ({ load, capacity, hours }) => {
    expect(batteryHours(load, capacity)).toEqual(closeTo(hours, EXACT));
  });

  test('falls from 16 h to 16 ÷ 1.75 h at a twentieth of the capacity (D)', () => {
    expect(batteryHours(5, 100)).toEqual(closeTo(16, EXACT));
    expect(batteryHours(5.000001, 100)).toEqual(closeTo(16 / 1.75, { absolute: 1e-5, relative: 0 }));
    expect(batteryHours(2, 0)).toBe(0);
  });

  /**
   * Share of 100 Ah that is there at a current, 20-hour form of Peukert, as printed in a battery monitor manual, p. 27.
   * Figures printed for `t = C ÷ I^k` take another C, that at 1 A, and say nothing of a capacity at 20 hours.
   */
  const AVAILABLE = [
    { exponent: 1.1, amps: 10, percent: 93 }, { exponent: 1.2, amps: 25, percent: 72 },
    { exponent: 1.25, amps: 25, percent: 67 }, { exponent: 1.3, amps: 100, percent: 41 },
    { exponent: 1.5, amps: 500, percent: 10 },
  ];

  test.each(AVAILABLE)('exponent $exponent, $amps A: $percent % of 100 Ah last longer, if for an hour or more', (row) => {
    const hours = row.percent / row.amps;
    if (hours >= 1) expect(batteryHours(row.amps, 100)).toBeLessThan(hours);
    // Within an hour one D for all is not on the safe side: the limit that the function states.
    else expect(batteryHours(row.amps, 100)).toBeGreaterThan(hours);
  });

  test('is the inverse of the capacity needed, both ways', () => {
    const amps = fc.double({ min: 0.001, max: 100, noNaN: true });
    fc.assert(fc.property(amps, fc.double({ min: 0.1, max: 500, noNaN: true }), (load, capacity) => {
      const hours = batteryHours(load, capacity)!;
      expect(batteryNeeded(0, 0, load, hours, capacity)).toEqual(closeTo(capacity, EXACT));
      for (const share of [0.5, 0.999, 1.001, 2]) {
        expect(batteryNeeded(0, 0, load, share * hours, capacity) <= capacity).toBe(share < 1);
      }
    }));
    fc.assert(fc.property(amps, fc.double({ min: 0.01, max: 72, noNaN: true }), (load, hours) => {
      // A battery of just what is needed, at the D that it makes for itself, lasts as long as it was chosen for.
      for (const isSlow of [true, false]) {
        const capacity = batteryNeeded(0, 0, load, hours, isSlow ? Infinity : null);
        if (load <= capacity / 20 === isSlow) expect(batteryHours(load, capacity)).toEqual(closeTo(hours, EXACT));
      }
    }));
  });
});
