import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { splitRun } from '../../src/rework/index.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { closeTo } from '../support/close-to.ts';
import { idAt, scheduleOf, valueAt } from '../support/schedules.ts';

/** Four lamps of 0.5 A on 60 m: at 10, 30 and 50 m, and one at the end. */
const SHEETS: Content['sheets'] = {
  supplies: [{ rail: 'L1', rated: 10, peak: 5 }],
  ways: [{ way: 'L1-F1', rail: 'L1', kind: 'electronic', rated: '=2*2' }, { way: 'L1-F7', rail: 'L1', kind: 'B', rated: 2 }],
  conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 16 }],
  runs: [
    { run: 'W1', way: 'L1-F1', conductor: 'C', length: 60, pairs: 2, temperature: 30, measuredCurrent: 2, note: 'x' },
    { run: 'W3', way: 'L1-F1', conductor: 'C', length: 5 },
  ],
  devices: [10, 30, null, 50].map((distance, at): Cells => ({
    ref: `D${at + 1}`, qty: 1, unitDraw: 500, run: 'W1', ...distance === null ? {} : { distance },
  })),
};
const cells = (schedule: LoadSchedule, sheet: 'runs' | 'devices' | 'ways') => schedule.rows(sheet).map((row) => row.cells);

describe('a run is parted in two', () => {
  test('at a device row: it and what is beyond goes, distances stay, lengths and tag are proposed', () => {
    const schedule = scheduleOf(SHEETS);
    const before = schedule.content();
    const plan = splitRun(schedule, { run: idAt(schedule, 'runs'), from: 3 });
    expect(plan).toMatchObject({ problem: undefined, going: [3, 2], staying: [0, 1], tag: 'W2', way: 'L1-F1', length: 60, rest: 30 });
    schedule.act('split', plan.changes);
    expect(cells(schedule, 'runs')).toEqual([
      { run: 'W1', way: 'L1-F1', conductor: 'C', length: 30, pairs: 2, temperature: 30, measuredCurrent: 2, note: 'x' },
      { run: 'W2', way: 'L1-F1', conductor: 'C', length: 60, pairs: 2, temperature: 30 },
      { run: 'W3', way: 'L1-F1', conductor: 'C', length: 5 },
    ]);
    expect(schedule.rows('runs')[1]!.id).toBe(plan.made);
    expect(cells(schedule, 'devices').map(({ run, distance = null }) => [run, distance]))
      .toEqual([['W1', 10], ['W1', 30], ['W2', null], ['W2', 50]]);
    // 0.5 A to 50 m and to 60 m on two pairs of 2 × 10 Ω/km at 30 °C, where all four together dropped more.
    const drop = 0.5 * (50 + 60) * 0.02 * 1.0393 / 2;
    expect(valueAt(schedule, 'runs', 1, 'drop')).toEqual(closeTo(drop, { absolute: 1e-9, relative: 1e-9 }));
    schedule.undo();
    expect(schedule.content()).toEqual(before);
  });

  test('the new run has the same way, a new one like it, or another of its rail', () => {
    const schedule = scheduleOf(SHEETS);
    const split = { run: idAt(schedule, 'runs'), from: 1, tag: 'W9' };
    expect(splitRun(schedule, { ...split, way: { way: 'L1-F7' } }).way).toBe('L1-F7');
    const plan = splitRun(schedule, { ...split, way: 'new', length: 70, rest: 12 });
    schedule.act('split', plan.changes);
    expect(cells(schedule, 'ways').at(-1)).toEqual({ way: 'L1-F8', rail: 'L1', kind: 'electronic', rated: 4 });
    expect(cells(schedule, 'runs').slice(0, 2)).toMatchObject([{ run: 'W1', length: 12 }, { run: 'W9', way: 'L1-F8', length: 70 }]);
  });

  test.each([
    ['none-stays', { from: 0 }], ['none-goes', { from: 99 }], ['no-tag', { from: 1, tag: '' }],
    ['tag-taken', { from: 1, tag: 'W3' }], ['no-length', { from: 1, length: null }], ['no-length', { from: 1, rest: 0 }],
    ['too-short', { from: 1, length: 49 }], ['too-short', { from: 3, rest: 29 }],
  ] as const)('not where %s', (problem, split) => {
    const schedule = scheduleOf(SHEETS);
    expect(splitRun(schedule, { run: idAt(schedule, 'runs'), ...split })).toMatchObject({ problem, changes: [] });
  });

  test('not where it is fed from two ways', () => {
    const schedule = scheduleOf({ ...SHEETS, runs: [{ ...SHEETS.runs![0], secondWay: 'L1-F7', secondLength: 10 }] });
    expect(splitRun(schedule, { run: 0, from: 1 }).problem).toBe('two-ways');
  });

  test('whatever the places: no device is lost, none drops more than before, one undo takes all back', () => {
    fc.assert(fc.property(
      fc.array(fc.option(fc.integer({ min: 1, max: 60 })), { minLength: 2, maxLength: 8 }), fc.nat({ max: 7 }),
      (places, pick) => {
        const schedule = scheduleOf({
          ...SHEETS, devices: places.map((distance, at) =>
            ({ ref: `D${at}`, qty: 1, unitDraw: 300, run: 'W1', ...distance === null ? {} : { distance } })),
        });
        const volts = () => schedule.rows('devices').map(({ id }) => schedule.value('devices', id, 'terminalVoltage') as number);
        const [before, content] = [volts(), schedule.content()];
        const plan = splitRun(schedule, { run: 0, from: pick % places.length });
        expect([...plan.going, ...plan.staying].sort()).toEqual(places.map((_each, at) => at));
        if (plan.problem !== undefined) return;
        schedule.act('split', plan.changes);
        volts().forEach((each, at) => { expect(each).toBeGreaterThanOrEqual(before[at]! - 1e-9); });
        schedule.undo();
        expect(schedule.content()).toEqual(content);
      }
    ));
  });
});
