import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exceeds } from '../../src/electrical/index.ts';
import { loadingOf, whatMatters, type FactorLimit, type LoadedSheet } from '../../src/engine/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';
import { someCases } from './random-weighed-runs.ts';

/** The content with another factor, written by hand into its list. */
function withFactor({ details, sheets }: Content, name: string, group: string, factor: number): Content {
  const factors = [...sheets.factors ?? []];
  const at = factors.findIndex((row) => row.case === name && row.group === group);
  if (at < 0) factors.push({ case: name, group, factor });
  else factors[at] = { ...factors[at], factor };
  return { details, sheets: { ...sheets, factors } };
}

/** Demand and what may be used of a row of a schedule that is made anew; the demand is beyond all where it is lost. */
function figuresOf(content: Content, sheet: LoadedSheet, id: number, place: number, missing: number) {
  const schedule = new LoadSchedule(content);
  const key = sheet === 'runs' ? 'current' : 'demand';
  const { limit, fuse } = loadingOf(schedule.figures, sheet, id);
  const isLost = schedule.figures.missing(sheet, id, key) > missing;
  const demand = isLost ? Infinity : schedule.inCase(sheet, id, key, place) ?? Infinity;
  schedule.dispose();
  return { demand, most: fuse ?? limit, usable: limit };
}

/** P1: 10 A usable; blinds 6 × 1.5 A = 9 A, lamps 4 × 0.5 A = 2 A. In a wind alarm all blinds, half of the lamps. */
const panel = (): Content['sheets'] => ({
  types: [
    { type: 'Blind', draw: 1500, diversity: 0.25, group: 'blinds' }, { type: 'Lamp', draw: 500, group: 'lamps' },
  ],
  supplies: [{ rail: 'P1', rated: 10, target: 0.8 }],
  devices: [{ ref: 'D1', type: 'Blind', qty: 6, rail: 'P1' }, { ref: 'D2', type: 'Lamp', qty: 4, rail: 'P1' }],
  cases: [{ case: 'evening' }, { case: 'wind alarm' }],
  factors: [
    { case: 'evening', group: 'lamps', factor: 1 }, { case: 'wind alarm', group: 'blinds', factor: 1 },
    { case: 'wind alarm', group: 'lamps', factor: 0.5 },
  ],
});

describe('how much each group matters', () => {
  test('by hand: the limit less the others, over the group at factor 1', () => {
    const schedule = scheduleOf(panel());
    const [blinds, lamps] = [...whatMatters(schedule.document, schedule.figures, 'supplies', 0, 1)];
    expect(blinds).toMatchObject({ group: 'blinds', now: 1, amps: 9, limit: { kind: 'always' } });
    // (8 A − 1 A) ÷ 9 A; with all of them (9 A + 1 A) ÷ 10 A; 0.1 × 9 A ÷ 10 A.
    expect(blinds!.target).toEqual({ kind: 'factor', factor: expect.closeTo(7 / 9, 9) as number });
    expect([blinds!.none, blinds!.all, blinds!.step])
      .toEqual([expect.closeTo(0.1), expect.closeTo(1), expect.closeTo(0.09)]);
    // The blinds alone are 9 A: (10 A − 9 A) ÷ 2 A, and above the target of 8 A whatever the lamps do.
    expect(lamps!.limit).toEqual({ kind: 'factor', factor: expect.closeTo(0.5, 9) as number });
    expect(lamps!.target).toEqual({ kind: 'never' });
    expect(lamps!.step).toBeCloseTo(0.02, 9);
  });

  test('a group without a factor in the case moves from what its own diversity comes to', () => {
    const schedule = scheduleOf(panel());
    const [blinds] = [...whatMatters(schedule.document, schedule.figures, 'supplies', 0, 0)].filter(({ group }) => group === 'blinds');
    expect(blinds).toMatchObject({ factor: undefined, now: 0.25, amps: 2.25 });
    // Lamps are 2 A by then: (10 A − 2 A) ÷ 9 A.
    expect(blinds!.limit).toEqual({ kind: 'factor', factor: expect.closeTo(8 / 9, 9) as number });
  });

  test('by the diversity of rows alone, and where there is no case at all', () => {
    const { cases: _cases, factors: _factors, ...rest } = panel();
    for (const schedule of [scheduleOf(panel()), scheduleOf(rest)]) {
      const [blinds] = [...whatMatters(schedule.document, schedule.figures, 'supplies', 0, -1)];
      expect(blinds).toMatchObject({ group: 'blinds', factor: undefined, now: 0.25 });
      expect(blinds!.limit).toEqual({ kind: 'factor', factor: expect.closeTo(8 / 9, 9) as number });
    }
  });

  test('the fuse of a supply is a limit too, the target is one of what may be used', () => {
    const schedule = scheduleOf({ ...panel(), supplies: [{ rail: 'P1', rated: 10, fuse: 6 }] });
    const [blinds] = [...whatMatters(schedule.document, schedule.figures, 'supplies', 0, 1)];
    expect(blinds!.limit).toEqual({ kind: 'factor', factor: expect.closeTo(5 / 9, 9) as number });
    expect(blinds!.target).toEqual({ kind: 'factor', factor: expect.closeTo(5 / 9, 9) as number });
  });

  test('a supply that gives less the warmer its enclosure gets: what it loses by the factor itself is in the limit', () => {
    const content = {
      details: {}, sheets: {
        ...panel(), supplies: [{
          rail: 'P1', rated: 10, efficiency: 0.8, enclosure: 'E', fullUpTo: 40, lessPerKelvin: 0.03,
        }],
        enclosures: [{ enclosure: 'E', height: 600, width: 400, depth: 200, mounting: 'wall', ambient: 30, maxInside: 60 }],
      },
    };
    const schedule = new LoadSchedule(content);
    const [blinds] = [...whatMatters(schedule.document, schedule.figures, 'supplies', 0, 1)];
    const { limit } = blinds!;
    if (limit.kind !== 'factor') throw new Error(`There is no factor but ${limit.kind}.`);
    expect(limit.factor).toBeLessThan(0.99);
    const at = (factor: number) => figuresOf(withFactor(content, 'wind alarm', 'blinds', factor), 'supplies', 0, 1, 0);
    expect(at(1).usable).toBeLessThan(at(0).usable!);
    expect(exceeds(at(limit.factor).demand, at(limit.factor).most!)).toBe(false);
    expect(at(limit.factor + 1e-6).demand).toBeGreaterThan(at(limit.factor + 1e-6).most!);
  });

  test('on random schedules with runs of constant power, two ways and feeds, against schedules that are made anew', () => {
    const kinds: Record<FactorLimit['kind'], number> = { never: 0, always: 0, factor: 0, unknown: 0 };
    let bent = 0;
    fc.assert(fc.property(someCases, (content) => {
      const schedule = new LoadSchedule(content);
      for (const [sheet, id] of [['supplies', 0], ['ways', 0], ['feeds', 0], ['runs', 0]] as const) {
        const row = schedule.rows(sheet)[0];
        if (row === undefined || (sheet === 'runs' && row.cells.basis !== 'demand')) continue;
        const missing = schedule.figures.missing(sheet, id, sheet === 'runs' ? 'current' : 'demand');
        const before = schedule.content();
        const matters = whatMatters(schedule.document, schedule.figures, sheet, id, 1);
        for (const { group, now, none, all, step, limit } of matters) {
          if (group === '') continue;
          const at = (factor: number) => figuresOf(withFactor(content, 'storm', group, factor), sheet, id, 1, missing);
          const loading = (factor: number) => {
            const { demand, usable } = at(factor);
            return usable === null || usable <= 0 || !Number.isFinite(demand) ? null : demand / usable;
          };
          const near = (value: number | null) => value === null ? null : expect.closeTo(value, 9) as number;
          expect([none, all]).toEqual([near(loading(0)), near(loading(1))]);
          if (now !== null && step !== null) {
            const [from, to] = now <= 0.9 ? [now, now + 0.1] : [now - 0.1, now];
            expect(step).toBeCloseTo(loading(to)! - loading(from)!, 9);
            if (none !== null && all !== null && Math.abs(step - (all - none) * 0.1) > 1e-6) bent += 1;
          }
          kinds[limit.kind] += 1;
          const beyond = (factor: number) => exceeds(at(factor).demand, at(factor).most!);
          if (limit.kind === 'unknown') expect(at(0).most).toBeNull();
          else if (limit.kind === 'never') expect(beyond(0)).toBe(true);
          else if (limit.kind === 'always') expect(beyond(1)).toBe(false);
          else expect([beyond(Math.max(0, limit.factor - 1e-6)), beyond(limit.factor + 1e-6)]).toEqual([false, true]);
        }
        expect(schedule.content()).toEqual(before);
      }
      schedule.dispose();
    }), { numRuns: 25 });
    for (const kind of ['never', 'always', 'factor', 'unknown'] as const) expect(kinds[kind], kind).toBeGreaterThan(3);
    // Some of them do not follow the factor in a straight line.
    expect(bent).toBeGreaterThan(3);
  });
});
