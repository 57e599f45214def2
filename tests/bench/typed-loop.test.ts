import { expect, test } from 'vitest';
import { computedColumns, type Cells } from '../../src/schedule/index.ts';
import { KINDS } from './kinds.ts';
import type { WorkSheet } from './operation.ts';
import { ScheduleCandidate } from './peers/load-schedule.ts';
import { TypedLoop } from './peers/typed-loop.ts';
import { SIZES, workload, type Workload } from './workload.ts';

const SHEETS: readonly WorkSheet[] = ['devices', 'types', 'supplies', 'branches'];
const [SIZE] = SIZES as [typeof SIZES[0]];

/** Holds every figure, status and number of findings of the loop against those of the schedule. */
function same(loop: TypedLoop, { schedule }: ScheduleCandidate): void {
  for (const sheet of SHEETS) {
    for (const { key } of computedColumns(sheet)) {
      const expected = schedule.rows(sheet).map(({ id }) => schedule.value(sheet, id, key));
      const found = expected.map((_, at) => loop.figure(sheet, at, key));
      // What is unknown throughout hangs on sheets that hold no rows here, and the loop need not have it.
      if (found.includes(undefined) && expected.every((value) => value === null)) continue;
      const rounded = (values: typeof found) => values.map((value) =>
        typeof value === 'number' ? Number(value.toPrecision(9)) : value);
      expect(rounded(found), `${sheet} ${key}`).toEqual(rounded(expected));
    }
  }
  const expected: Record<string, number> = {};
  for (const { rule } of schedule.findings) expected[rule] = (expected[rule] ?? 0) + 1;
  const found = Object.fromEntries(Object.entries(loop.findings).filter(([, count]) => count > 0));
  expect(found).toEqual(expected);
}

function pair(sheets: Workload): { loop: TypedLoop; schedule: ScheduleCandidate } {
  return { loop: new TypedLoop(sheets), schedule: new ScheduleCandidate(sheets) };
}

test('the plain loop calculates the figures and finds what the schedule finds, after every kind of operation', () => {
  const { loop, schedule } = pair(workload(SIZE));
  same(loop, schedule);
  for (const { operation } of KINDS) {
    for (const call of [0, 1]) for (const each of [loop, schedule]) each.apply(operation(SIZE, call));
    same(loop, schedule);
    for (const each of [loop, schedule, loop, schedule]) each.undo();
    same(loop, schedule);
  }
});

/** The workload with something wrong in places, so that every check of the loop finds something. */
function disturbed(): Workload {
  const { devices, types, supplies, branches } = workload(SIZE);
  const filled = (cells: Cells) => Object.fromEntries(Object.entries(cells).filter(([, own]) => own !== null));
  const changed = (rows: readonly Cells[], by: Readonly<Record<number, Cells>>) =>
    rows.map((cells, at) => filled({ ...cells, ...by[at] }));
  return {
    devices: changed(devices, {
      1: { qty: null }, 2: { type: null }, 3: { type: 'T9999' }, 4: { rail: null }, 5: { rail: 'L9999' },
      6: { rail: 'L\u200B0001' }, 7: { branch: 'B9999' }, 9: { ref: 'D0001.0' }, 10: { ref: 'D0001.0' },
      11: { ref: 'D\u200B0012' }, 13: { qty: -1 }, 14: { qty: 1.5 }, 15: { unitDraw: -5 }, 17: { diversity: 1.5 },
      18: { distance: -1 }, 19: { qty: 0 }, 21: { unitDraw: 90_000 }, 22: { ref: null },
      23: { type: null, unitDraw: 30 }, 25: { branch: null }, 26: { type: 'T0005', rail: 'L0003' },
      27: { unitDraw: 90_000, diversity: 0.001, rail: 'L0007' }, 28: { unitDraw: 90_000, diversity: 0.001, rail: 'L0007' },
      29: { type: null, unitDraw: null },
    }),
    types: changed(types, {
      0: { maxVoltage: 20 }, 1: { minVoltage: 30 }, 2: { voltage: 12 }, 3: { power: -2 }, 4: { nodes: null },
      5: { inrush: 3 }, 6: { type: 'T0006' }, 7: { type: null }, 8: { diversity: null }, 9: { purpose: 'other' },
      10: { type: 'T\u200B11' }, 11: { minVoltage: 20, maxVoltage: 28, voltage: 48 }, 12: { draw: null },
      ...Object.fromEntries([13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23].map((at) => [at, { busDraw: 4000 }])),
    }),
    supplies: changed(supplies, {
      0: { redundant: true }, 1: { fuse: null, purpose: 'other' }, 2: { overload: 'retries', tolerance: 0.1 },
      3: { rated: null }, 4: { fuse: 5_000, voltage: 48 }, 5: { fullUpTo: 40 }, 6: { standbyHours: 2, battery: 10 },
      7: { standbyHours: 2 }, 8: { rated: 9_000, fuse: 40, units: 2 }, 9: { overload: 'retries', peak: 11, rated: 0.5 },
    }),
    branches: changed(branches, {
      0: { limit: null }, 1: { terminators: 3 }, 2: { terminators: 1 }, 3: { terminated: null }, 4: { limit: 1.5 },
      5: { reserve: 2 }, 6: { branch: 'B0006' }, 8: { limit: 300, reserve: 0.9 },
      10: { busCurrent: 9999, reserve: 0.99999 }, 11: { busCurrent: 9999, reserve: 0.99999 },
      12: { busCurrent: 0.001 }, 13: { busCurrent: 0.001 },
    }),
  };
}

test('the plain loop finds what the schedule finds where something is wrong, by each of its checks', () => {
  const { loop, schedule } = pair(disturbed());
  same(loop, schedule);
  const never = Object.entries(loop.findings).filter(([, count]) => count === 0).map(([rule]) => rule);
  expect(never).toEqual([]);
});
