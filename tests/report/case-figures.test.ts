import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contributionFactor } from '../../src/electrical/index.ts';
import { dayHours, profileFigures, sumOfProfiles, togetherFigures } from '../../src/engine/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { caseProfiles } from '../../src/report/model/case-profiles.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { closeTo, printed } from '../support/close-to.ts';
import { scheduleOf, valueAt } from '../support/schedules.ts';

/*
 * Whole profiles of textbooks, entered as schedules: a supply and a group for each consumer, a case for each of its
 * hours. Printed figures are held to their last digit; those marked D are no print, but follow by arithmetic.
 *
 * MEH3 V.K. Mehta, R. Mehta, Principles of Power System, ch. 3
 * GON2 T. Gonen, Electric Power Distribution System Engineering, ch. 2
 * AF1, AF2 exercises with their solutions, askfilo.com 3339333436343031 and 3236383330343335
 * AH exercise, askmehelpdesk.com 734141
 */
const figure = (digits: string) => closeTo(Number(digits), printed(digits));
const near = (value: number) => closeTo(value, { absolute: 1e-6, relative: 1e-9 });

const repeated = (...parts: (readonly [power: number, times: number])[]) =>
  parts.flatMap(([power, times]) => Array.from({ length: times }, () => power));

/** A schedule in which consumers draw these powers [W] in cases that last so long [h]. */
function consumers(profiles: readonly (readonly number[])[], hours: readonly number[]): LoadSchedule {
  const maxima = profiles.map((profile) => Math.max(...profile));
  const name = (at: number) => `consumer ${at + 1}`;
  return scheduleOf({
    supplies: profiles.map((_profile, at): Cells => ({ rail: `L${at + 1}`, rated: 100_000, voltage: 24 })),
    devices: profiles.map((_profile, at): Cells => ({
      ref: `D${at + 1}`, qty: 1, unitDraw: maxima[at]! / 24 * 1000, rail: `L${at + 1}`, group: name(at),
    })),
    cases: hours.map((each, at): Cells => ({ case: `period ${at + 1}`, hours: each })),
    factors: profiles.flatMap((profile, at) => profile.map((power, period): Cells =>
      ({ case: `period ${period + 1}`, group: name(at), factor: power / maxima[at]! }))),
  });
}

/** What a schedule comes to: by supplies, and by groups, which are the same here. */
function figuresOf(schedule: LoadSchedule) {
  const hours = schedule.rows('cases').map(({ cells }) => Number(cells.hours));
  const { supplies, groups, extra } = caseProfiles(schedule);
  const all = sumOfProfiles(supplies, hours.length);
  const each = supplies.map((profile) => profileFigures(profile, hours));
  const together = togetherFigures(supplies, hours);
  expect(extra).toBeUndefined();
  groups.forEach((group, at) => {
    expect(group.powers).toEqual(supplies[at]!.powers.map((power) => near(power!)));
    expect(profileFigures(group, hours).peak).toBe(each[at]!.peak);
  });
  expect(togetherFigures(groups, hours)).toEqual({
    diversity: near(together.diversity!), coincidence: near(together.coincidence!),
  });
  // The sheet of cases has the power of each, and its energy.
  all.powers.forEach((power, at) => {
    expect(valueAt(schedule, 'cases', at, 'demand')).toEqual(near(power!));
    expect(valueAt(schedule, 'cases', at, 'energy')).toEqual(near(power! * hours[at]! / 1000));
  });
  return { all: { ...profileFigures(all, hours), powers: all.powers }, each, together };
}

/** 0–8, 8–14, 14–16, 16–22 and 22–24 h. */
const BLOCKS = [8, 6, 2, 6, 2];

describe('consumers by blocks of hours', () => {
  test('MEH3 3.12 p. 54: sums, diversity factor 1.25, load factors 45.8, 16.7, 13.9 and 29.2 %', () => {
    const { all, each, together } = figuresOf(
      consumers([[0, 600, 200, 800, 0], [200, 0, 1000, 0, 200], [0, 200, 1200, 0, 200]], BLOCKS));
    expect(all.powers).toEqual([200, 800, 2400, 800, 400].map(near));
    expect([together.diversity, all.peak]).toEqual([figure('1.25'), 2]);
    expect([...each, all].map(({ loadFactor }) => loadFactor! * 100)).toEqual(['45.8', '16.7', '13.9', '29.2'].map(figure));
    expect(together.coincidence).toEqual(near(0.8)); // D
  });

  test('AF1: totals, maxima, 7600 Wh, 316.67 W, 0.396, 5000 Wh', () => {
    const { all, each, together } = figuresOf(
      consumers([[0, 300, 500, 800, 0], [300, 0, 900, 0, 400], [0, 300, 1100, 0, 200]], BLOCKS));
    expect(all.powers).toEqual([300, 600, 2500, 800, 600].map(near));
    expect(each.map(({ maximum }) => maximum)).toEqual([800, 900, 1100].map(near));
    expect(each.slice(0, 2).map(({ day }) => day)).toEqual([near(7.6), near(5)]);
    expect([each[0]!.average, each[0]!.loadFactor]).toEqual([figure('316.67'), figure('0.396')]);
    // D
    expect([together.diversity, together.coincidence]).toEqual([figure('1.12'), figure('0.892857')]);
    expect(each.map(({ loadFactor }) => loadFactor)).toEqual(['0.39583', '0.23148', '0.16667'].map(figure));
    expect([all.day, all.year, all.loadFactor]).toEqual([near(17), near(17 * 365), figure('0.28333')]);
  });

  test('AF2: maxima 800, 1000 and 1100', () => {
    const { all, each, together } = figuresOf(
      consumers([[0, 500, 200, 800, 0], [200, 0, 1000, 0, 200], [0, 300, 1100, 100, 100]], BLOCKS));
    expect(each.map(({ maximum }) => maximum)).toEqual([800, 1000, 1100].map(near));
    // D
    expect(all.powers).toEqual([200, 800, 2300, 900, 300].map(near));
    expect([together.diversity, together.coincidence]).toEqual([figure('1.26087'), figure('0.793103')]);
    expect(each.map(({ loadFactor }) => loadFactor)).toEqual(['0.42708', '0.16667', '0.18182'].map(figure));
    expect([all.day, all.loadFactor]).toEqual([near(17), figure('0.30797')]);
  });
});

/** Powers at 0, 1 … 24 h [kW]: 25 of them, of which a day has the 24 that end its hours, or the 24 that begin them. */
const HOURLY = {
  GON2: [
    repeated([100, 8], [0, 10], [100, 7]),
    repeated(
      [200, 7], [300, 1], [400, 1], [500, 8], [600, 1], [700, 1], [800, 1], [1000, 2], [800, 1], [600, 1], [300, 1]),
    repeated([200, 8], [300, 1], [500, 1], [1000, 4], [1200, 4], [800, 1], [400, 3], [200, 3]),
  ],
  AH: [
    repeated(
      [250, 7], [350, 1], [450, 1], [550, 3], [600, 5], [650, 1], [750, 1], [900, 1], [1100, 2], [900, 1], [700, 1],
      [250, 1]),
    repeated([300, 8], [400, 1], [600, 1], [1100, 4], [1300, 4], [900, 1], [500, 3], [300, 3]),
    repeated([100, 7], [0, 13], [100, 5]),
  ],
};
const HOURS = Array.from({ length: 24 }, () => 1);

describe('classes of consumers by the hour', () => {
  test.each([[1, 26_700, '0.61806'], [0, 26_600, '0.61574']])(
    'GON2 2.6 p. 50, hours from %i: 1800 at 17 h, 1.27778, 0.782609, contributions 0, 0.6, 1; D: %i and %s',
    (first, energy, factor) => {
      const profiles = HOURLY.GON2.map((profile) => profile.slice(first, first + 24));
      const schedule = consumers(profiles, HOURS);
      const { all, each, together } = figuresOf(schedule);
      expect([all.maximum, all.peak! + first]).toEqual([near(1800), 17]);
      expect(each.map(({ maximum }) => maximum)).toEqual([100, 1000, 1200].map(near));
      expect([together.diversity, together.coincidence]).toEqual([figure('1.27778'), figure('0.782609')]);
      const { groups } = caseProfiles(schedule);
      expect(groups.map(({ powers }, at) => contributionFactor(powers[all.peak!]!, each[at]!.maximum!)))
        .toEqual([0, 0.6, 1].map(near));
      expect([all.day, all.loadFactor]).toEqual([near(energy / 1000), figure(factor)]); // D
    });

  test('AH, all answers D: 1950 at 17 h, diversity 1.28205, coincidence 0.78, load factor 0.64957', () => {
    const { all, together } = figuresOf(consumers(HOURLY.AH.map((profile) => profile.slice(1)), HOURS));
    expect([all.maximum, all.peak! + 1]).toEqual([near(1950), 17]);
    expect([together.diversity, together.coincidence]).toEqual([figure('1.28205'), figure('0.78')]);
    expect(all.loadFactor).toEqual(figure('0.64957'));
  });
});

describe('schedules drawn at random agree with plain arithmetic', () => {
  const GROUPS = ['blinds', 'lamps', 'sensors'];
  const someGroup = fc.option(fc.constantFrom(...GROUPS));
  const someShare = fc.integer({ min: 0, max: 20 }).map((twentieths) => twentieths / 20);
  const someSchedule = fc.record({
    volts: fc.array(fc.constantFrom(12, 24, 48), { minLength: 2, maxLength: 2 }),
    devices: fc.array(fc.record({
      qty: fc.nat({ max: 9 }), draw: fc.integer({ min: 1, max: 900 }), diversity: someShare, rail: fc.constantFrom('L1', 'L2', null),
      group: someGroup,
    }), { minLength: 1, maxLength: 12 }),
    cases: fc.array(fc.record({
      weight: fc.integer({ min: 1, max: 9 }),
      factors: fc.array(fc.option(fc.record({ share: someShare, of: fc.constantFrom('connected', 'demand') })), { minLength: 3, maxLength: 3 }),
    }), { minLength: 1, maxLength: 6 }),
    rare: fc.boolean(),
  });

  test('of supplies, of groups, and of all of them', () => {
    fc.assert(fc.property(someSchedule, ({ volts, devices, cases, rare }) => {
      const weights = cases.reduce((sum, { weight }) => sum + weight, 0);
      const isRare = (at: number) => rare && at > 0 && at === cases.length - 1;
      const hours = cases.map(({ weight }, at) => isRare(at) ? null : weight * 24 / weights);
      const sheets: Content['sheets'] = {
        supplies: volts.map((voltage, at) => ({ rail: `L${at + 1}`, rated: 50, voltage })),
        devices: devices.map(({ draw, ...device }): Cells => ({ ...device, unitDraw: draw })),
        cases: hours.map((each, at): Cells => ({ case: `C${at}`, hours: each })),
        factors: cases.flatMap(({ factors }, at) => factors.flatMap((factor, group): Cells[] => factor === null ? []
          : [{ case: `C${at}`, group: GROUPS[group]!, factor: factor.share, of: factor.of }])),
      };
      const schedule = scheduleOf(sheets);
      const { supplies, groups } = caseProfiles(schedule);
      /** Watts of the device rows that are meant, in a case. */
      const watts = (place: number, isMeant: (device: (typeof devices)[number]) => boolean) => devices
        .filter((device) => device.rail !== null && isMeant(device))
        .reduce((sum, { qty, draw, diversity, rail, group }) => {
          const factor = group === null ? null : cases[place]!.factors[GROUPS.indexOf(group)]!;
          const share = factor === null ? diversity : factor.of === 'demand' ? diversity * factor.share : factor.share;
          return sum + qty * draw / 1000 * share * volts[rail === 'L1' ? 0 : 1]!;
        }, 0);
      const profileOf = (isMeant: Parameters<typeof watts>[1]) =>
        cases.map((_case, place) => near(watts(place, isMeant)));
      expect(supplies.map(({ powers }) => powers))
        .toEqual(['L1', 'L2'].map((tag) => profileOf(({ rail }) => rail === tag)));
      for (const { name, powers } of groups) expect(powers).toEqual(profileOf(({ group }) => (group ?? '') === name));
      expect(new Set(groups.map(({ name }) => name)))
        .toEqual(new Set(devices.filter(({ rail }) => rail !== null).map(({ group }) => group ?? '')));

      const isDay = hours.every((each) => each !== null);
      expect(dayHours(hours).isDay).toBe(isDay);
      if (!isDay) return;
      const all = cases.map((_case, place) => watts(place, () => true));
      const energy = all.reduce((sum, power, place) => sum + power * hours[place]!, 0);
      const most = Math.max(...all);
      const maxima = (['L1', 'L2'] as const).map((tag) =>
        Math.max(...cases.map((_case, place) => watts(place, ({ rail }) => rail === tag))));
      const found = profileFigures(sumOfProfiles(supplies, cases.length), hours);
      expect(found).toMatchObject({
        maximum: near(most), average: near(energy / 24), day: near(energy / 1000), year: near(energy * 0.365),
        loadFactor: most === 0 ? null : near(energy / 24 / most),
      });
      if (most === 0) return;
      const { diversity, coincidence } = togetherFigures(supplies, hours);
      const sum = maxima[0]! + maxima[1]!;
      expect([diversity, coincidence]).toEqual([near(sum / most), near(most / sum)]);
    }));
  });
});

describe('what is not known', () => {
  const partly = (device: Cells, factor: number | null = 0.5) => scheduleOf({
    supplies: [{ rail: 'L1', rated: 5, voltage: 24 }],
    devices: [{ qty: 1, unitDraw: 1000, rail: 'L1', group: 'lamps' }, { unitDraw: 500, rail: 'L1', group: 'blinds', ...device }],
    cases: [{ case: 'all day', hours: 24 }],
    factors: [{ case: 'all day', group: 'lamps', factor: 1 }, { case: 'all day', group: 'blinds', factor }],
  });

  test.each([
    ['a quantity', partly({ qty: null }), ['blinds']], ['a factor', partly({ qty: 2 }, null), ['blinds']],
    ['nothing', partly({ qty: 2 }), []],
  ])('%s makes supply and group partial, and neither load factor nor diversity is given', (_what, schedule, partial) => {
    const { supplies, groups } = caseProfiles(schedule);
    expect(groups.filter(({ isPartial }) => isPartial).map(({ name }) => name)).toEqual(partial);
    expect(supplies[0]!.isPartial).toBe(partial.length > 0);
    const figures = profileFigures(supplies[0]!, [24]);
    expect(figures.loadFactor).toBe(partial.length > 0 ? null : 1);
    // 24 V × 1 A for 24 h at least; with 2 × 0.5 A at a half of it 36 W.
    expect(figures.day).toEqual(near(partial.length > 0 ? 0.576 : 0.864));
    expect(togetherFigures(groups, [24]).diversity).toBe(partial.length > 0 ? null : 1);
  });

  test('what runs draw more is told beside the groups, so that they add up to the supply', () => {
    const schedule = scheduleOf({
      supplies: [{ rail: 'L1', rated: 5, voltage: 24 }], types: [{ type: 'Drive', power: 24, load: 'power', minVoltage: 12, group: 'blinds' }],
      conductors: [{ conductor: '0.8', resistance: 36, maxCurrent: 5 }],
      runs: [{ run: 'W1', rail: 'L1', conductor: '0.8', length: 20 }],
      devices: [{ qty: 2, type: 'Drive', rail: 'L1', run: 'W1', distance: 20 }],
      cases: [{ case: 'day', hours: 12 }, { case: 'night', hours: 12 }],
      factors: [{ case: 'day', group: 'blinds', factor: 1 }, { case: 'night', group: 'blinds', factor: 0 }],
    });
    const { supplies: [supply], groups: [group], extra } = caseProfiles(schedule);
    expect(group!.powers).toEqual([near(48), near(0)]);
    const id = schedule.rows('runs')[0]!.id;
    const more = [0, 1].map((place) => schedule.inCase('runs', id, 'extra', place)! * 24);
    expect(more[0]).toBeGreaterThan(1);
    expect(extra!.powers).toEqual(more.map(near));
    expect(supply!.powers).toEqual(more.map((watts, place) => near(watts + group!.powers[place]!)));
  });
});
