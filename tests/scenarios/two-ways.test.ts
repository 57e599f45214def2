import { expect, test } from 'vitest';
import { tapOrder } from '../../src/electrical/runs/tap-order.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { BETWEEN } from '../findings/second-way-cases.ts';
import { findingsAt, idAt, scheduleOf, valueAt } from '../support/schedules.ts';

// What holds for the way of a run holds for its second way too.

const rulesAt = (schedule: LoadSchedule, sheet: 'ways' | 'runs', at: number) =>
  schedule.rulesAgainst(sheet, idAt(schedule, sheet, at));

test('an inrush that cannot be read waits at both electronic ways of a run', () => {
  const sheets = BETWEEN();
  const schedule = scheduleOf({ ...sheets, types: [{ ...sheets.types![0]!, inrush: '=1/0' }] });
  for (const at of [0, 1]) {
    expect([valueAt(schedule, 'ways', at, 'status'), rulesAt(schedule, 'ways', at)])
      .toEqual(['incomplete', expect.arrayContaining(['way-start-unknown'])]);
  }
});

test('a device row that is entered on another rail makes the sums of both ways unsure', () => {
  const sheets = BETWEEN();
  const schedule = scheduleOf({ ...sheets, devices: [{ ...sheets.devices![0]!, rail: 'L2' }] });
  for (const at of [0, 1]) {
    expect([valueAt(schedule, 'ways', at, 'status'), rulesAt(schedule, 'ways', at)])
      .toEqual(['incomplete', expect.arrayContaining(['way-rows-misplaced'])]);
  }
});

test('a measured current that two ways share is held against neither alone', () => {
  // 4 A at 10 V: as much as one way of 4 A bears, of which each carries 2 A; its cable carries 16 A, its supply 10 A.
  const schedule = scheduleOf(BETWEEN({ measuredVoltage: 10, measuredCurrent: 4 }));
  expect(findingsAt(schedule, 'runs').map(({ rule }) => rule)).not.toContain('run-measured-short-circuit');
  // Through one way alone 4 A are what it limits at.
  const alone = scheduleOf(BETWEEN({ measuredVoltage: 10, measuredCurrent: 4, secondWay: null }));
  expect(findingsAt(alone, 'runs').map(({ rule }) => rule)).toContain('run-measured-short-circuit');
});

test('no length is promised while the second way, or a fuse that stands in for one, is not known', () => {
  const said = (schedule: LoadSchedule) => findingsAt(schedule, 'runs')
    .filter(({ rule }) => rule === 'run-under-voltage').map(({ message }) => message);
  const needing = (sheets: ReturnType<typeof BETWEEN>) =>
    ({ ...sheets, types: [{ type: 'T', draw: 1000, minVoltage: 23.5, maxVoltage: 30 }] });
  expect(said(scheduleOf(needing(BETWEEN())))).toEqual([expect.stringContaining('may be')]);
  expect(said(scheduleOf(needing(BETWEEN({}, { rated: null })))))
    .toEqual([expect.stringContaining('Enter what it waits for')]);
  const alone = { way: null, secondWay: null, rail: 'L1' };
  for (const key of ['fuse', 'maxOutput']) {
    expect(said(scheduleOf(needing(BETWEEN(alone, {}, { [key]: '=1/0' })))))
      .toEqual([expect.stringContaining('Enter what it waits for')]);
  }
});

test('no larger way is said to do where it shares a run, as what both need together is not tried', () => {
  // Both B 4 need 30 A; 6 A in place of one would need 45 A and the other 30 A: more than the 70 A that there are.
  const breaker = { kind: 'B', target: 0.2 };
  const sheets = BETWEEN({}, breaker, { peak: 7 });
  const schedule = scheduleOf({ ...sheets, ways: sheets.ways!.map((way) => ({ ...way, ...breaker })) });
  const [found] = findingsAt(schedule, 'ways').filter(({ rule }) => rule === 'way-over-target');
  expect(found?.message).toMatch(/^Way F1/);
  expect(found?.message).not.toContain('would do');
});

test('the second feed stays the last of the taps, however far out a device stands', () => {
  const order = tapOrder([{ distanceMetres: 80, amps: 1 }, { distanceMetres: 20, amps: 1 }], 60);
  expect([[...order.distances], order.places.at(-1)]).toEqual([[20, 60, 60], 2]);
});
