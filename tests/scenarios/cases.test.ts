import { describe, expect, test } from 'vitest';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { enter, findingsAt, scheduleOf, valueAt } from '../support/schedules.ts';

/** Ten blinds of 0.5 A at a quarter, and forty lamps of 0.1 A at 80 %. */
const PANEL = (supply: Cells, cases: readonly Cells[], factors: readonly Cells[], more: Content['sheets'] = {}) => ({
  types: [
    { type: 'Blind', draw: 500, nodes: 0, diversity: 0.25, group: 'blinds', minVoltage: 18, maxVoltage: 30 },
    { type: 'Lamp', draw: 100, nodes: 0, diversity: 0.8, group: 'lamps', minVoltage: 18, maxVoltage: 30 },
  ],
  supplies: [{ rail: 'P1', rated: 20, ...supply }],
  devices: [{ ref: 'D1', type: 'Blind', qty: 10, rail: 'P1' }, { ref: 'D2', type: 'Lamp', qty: 40, rail: 'P1' }],
  cases, factors, ...more,
});
const rules = (schedule: ReturnType<typeof scheduleOf>) =>
  findingsAt(schedule, 'supplies').filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);

describe('what all blinds run in a wind alarm does to their supply', () => {
  const WIND = { case: 'wind alarm' };
  const BLINDS = { case: 'wind alarm', group: 'blinds', factor: 1 };

  test('by the diversity of its rows it is within its limits, and lives on diversity', () => {
    const schedule = scheduleOf(PANEL({ rated: 8, target: 0.6 }, [], []));
    // 10 × 0.5 × 0.25 + 40 × 0.1 × 0.8
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBeCloseTo(4.45, 12);
    expect(rules(schedule)).toEqual(['supply-lives-on-diversity-usable']);
    expect(valueAt(schedule, 'supplies', 0, 'worstCase')).toBeNull();
  });

  test('in the case it is over, and the sentence says in which', () => {
    const schedule = scheduleOf(PANEL({ rated: 8 }, [WIND], [BLINDS]));
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBeCloseTo(8.2, 12);
    expect(valueAt(schedule, 'supplies', 0, 'worstCase')).toBe('wind alarm');
    expect(findingsAt(schedule, 'supplies').find(({ rule }) => rule === 'supply-over-usable')!.message)
      .toMatch(/^In the case “wind alarm”: Rail P1: demand 8\.20 A exceeds the usable 8\.00 A by 0\.20 A\./);
  });

  test('a case marked together that names every group stands for everything connected', () => {
    const RETURN = { case: 'power return', together: true };
    const factor = (group: string, share: number) => ({ case: 'power return', group, factor: share });
    const covered = scheduleOf(PANEL({ rated: 8.5 }, [RETURN], [factor('blinds', 0.3), factor('lamps', 1)]));
    expect(valueAt(covered, 'supplies', 0, 'connected')).toBeCloseTo(9, 12);
    expect(valueAt(covered, 'supplies', 0, 'togetherDemand')).toBeCloseTo(5.5, 12);
    expect(rules(covered)).toEqual([]);
    const halfNamed = scheduleOf(PANEL({ rated: 8.5 }, [RETURN], [factor('lamps', 1)]));
    expect(valueAt(halfNamed, 'supplies', 0, 'togetherDemand')).toBeNull();
    expect(rules(halfNamed)).toEqual(['supply-lives-on-diversity-usable']);
    const unmarked = scheduleOf(PANEL({ rated: 8.5 }, [{ case: 'power return' }], [factor('blinds', 0.3), factor('lamps', 1)]));
    expect(rules(unmarked)).toEqual(['supply-lives-on-diversity-usable']);
  });

  test('what the rows themselves say counts as long as a case leaves a group out', () => {
    const low = { case: 'wind alarm', group: 'blinds', factor: 0 };
    const schedule = scheduleOf(PANEL({}, [WIND], [low]));
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBeCloseTo(4.45, 12);
    expect(valueAt(schedule, 'supplies', 0, 'worstCase')).toBeNull();
    const all = scheduleOf(PANEL({}, [WIND], [low, { case: 'wind alarm', group: 'lamps', factor: 0.1 }]));
    expect(valueAt(all, 'supplies', 0, 'demand')).toBeCloseTo(0.4, 12);
    expect(valueAt(all, 'supplies', 0, 'worstCase')).toBe('wind alarm');
  });

  test('a factor of the demand is a second level of diversity', () => {
    const schedule = scheduleOf(PANEL({}, [WIND], [
      { case: 'wind alarm', group: 'blinds', factor: 1, of: 'demand' },
      { case: 'wind alarm', group: 'lamps', factor: 0.5, of: 'demand' },
    ]));
    // 10 × 0.5 × 0.25 × 1 + 40 × 0.1 × 0.8 × 0.5
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBeCloseTo(2.85, 12);
  });

  test('a factor that is not known makes the demand a part of the whole', () => {
    const schedule = scheduleOf(PANEL({}, [WIND], [BLINDS]));
    enter(schedule, 'factors', 0, { factor: '' });
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('incomplete');
    expect(schedule.partialSign('supplies', schedule.rows('supplies')[0]!.id, 'demand')).toBe('≥');
  });
});

test('a battery has to bridge the case marked standby, and no other', () => {
  const standby = scheduleOf(PANEL(
    { standbyHours: 4, battery: 50 }, [{ case: 'mains off', standby: true }, { case: 'wind alarm' }], [
      { case: 'mains off', group: 'blinds', factor: 0 }, { case: 'mains off', group: 'lamps', factor: 0.2 },
      { case: 'wind alarm', group: 'blinds', factor: 1 },
    ],
  ));
  expect(valueAt(standby, 'supplies', 0, 'standbyDemand')).toBeCloseTo(0.8, 12);
  // BS 5839-1, Annex E: 1.25 × 1 × 0.8 A × 4 h, as 0.8 A is no more than 50 Ah in 20 hours.
  expect(valueAt(standby, 'supplies', 0, 'batteryNeeded')).toBeCloseTo(4, 12);
});

test('what a way has for a short circuit is what is left in the same case', () => {
  const schedule = scheduleOf({
    types: [{ type: 'T', draw: 1000, nodes: 0, diversity: 0 }],
    supplies: [{ rail: 'P1', rated: 20 }],
    ways: [{ way: 'F1', rail: 'P1', kind: 'B', rated: 2 }, { way: 'F2', rail: 'P1', kind: 'B', rated: 10 }],
    runs: [{ run: 'W1', way: 'F1' }, { run: 'W2', way: 'F2' }],
    devices: [
      { ref: 'D1', type: 'T', qty: 2, run: 'W1', group: 'one' }, { ref: 'D2', type: 'T', qty: 10, run: 'W2', group: 'other' },
    ],
    cases: [{ case: 'A' }, { case: 'B' }],
    factors: [
      { case: 'A', group: 'one', factor: 1 }, { case: 'A', group: 'other', factor: 0.1 },
      { case: 'B', group: 'one', factor: 0 }, { case: 'B', group: 'other', factor: 1 },
    ],
  });
  // In A the others take 1 A, in B 10 A.
  expect(valueAt(schedule, 'ways', 0, 'available')).toBeCloseTo(10, 12);
  // In A the others take 2 A, in B nothing: the highest demands of rail and way, 10 A each, would leave 20 A.
  expect(valueAt(schedule, 'ways', 1, 'available')).toBeCloseTo(18, 12);
});

test('a case that names all that is on a feed takes the place of its diversity', () => {
  const FEED = (factors: readonly Cells[]) => scheduleOf({
    feeds: [{ feed: 'N1', rated: 16, diversity: 0.5 }],
    outputs: [
      { output: 'K1', feed: 'N1', kind: 'resistive', power: 920, group: 'heaters' },
      { output: 'K2', feed: 'N1', kind: 'resistive', power: 460, group: 'fans' },
    ],
    cases: [{ case: 'morning' }], factors,
  });
  // 4 A and 2 A at 230 V.
  const heaters = { case: 'morning', group: 'heaters', factor: 0.75 };
  expect(valueAt(FEED([heaters]), 'feeds', 0, 'demand')).toBeCloseTo(3, 12);
  expect(valueAt(FEED([heaters, { case: 'morning', group: 'fans', factor: 1 }]), 'feeds', 0, 'demand')).toBeCloseTo(5, 12);
});

test('a case that says what comes together says nothing of starts beyond it', () => {
  const ruled = (inrush: number, qty: number, together: boolean) => findingsAt(scheduleOf({
    types: [{ type: 'M', draw: 500, inrush, nodes: 0, group: 'motors' }], supplies: [{ rail: 'P1', rated: 20 }],
    ways: [{ way: 'F1', rail: 'P1', kind: 'electronic', rated: 2 }], runs: [{ run: 'W1', way: 'F1' }],
    devices: [{ ref: 'D1', type: 'M', qty, run: 'W1' }], cases: [{ case: 'power return', together }],
    factors: [{ case: 'power return', group: 'motors', factor: 0.2 }],
  }), 'ways').filter(({ severity }) => severity === 'near').map(({ rule }) => rule);
  // 3 × 0.5 A run, and start with 3 A; 5 × 0.5 A are more than the way bears, of which 0.5 A come together in the case.
  expect(ruled(1, 3, true)).toEqual(['way-over-start']);
  expect(ruled(1, 5, true)).toEqual(['way-over-start']);
  expect(ruled(0.5, 5, true)).toEqual([]);
  expect(ruled(1, 5, false)).toEqual(['way-lives-on-diversity']);
});
