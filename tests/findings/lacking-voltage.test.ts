import { expect, test } from 'vitest';
import { removeRows } from '../../src/schedule/index.ts';
import { enter, findingsAt, idAt, scheduleOf } from '../support/schedules.ts';

/** Two devices of 2 A at the end of a loop of 1 Ω get 20 V; the first needs 21 V, the second as much as is said. */
const lacking = (volts: number) => scheduleOf({
  supplies: [{ rail: 'L1', rated: 10 }], conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 16 }],
  types: [{ type: 'S', minVoltage: 21 }, { type: 'T', minVoltage: volts }],
  runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 50, temperature: 20 }],
  devices: ['S', 'T'].map((type, at) => ({ ref: `D${at + 1}`, type, qty: 1, unitDraw: 2000, run: 'W1' })),
});
const said = (schedule: ReturnType<typeof lacking>) =>
  findingsAt(schedule, 'runs').find(({ rule }) => rule === 'run-under-voltage')?.message;

test('a run names the device row that lacks most as it is called now, and counts the others', () => {
  const schedule = lacking(21);
  expect(said(schedule)).toContain('ref D1 gets 1.00 V less than it needs at its place, and 1 more row gets too little.');
  enter(schedule, 'devices', 0, { ref: 'E1' });
  expect(said(schedule)).toContain('ref E1 gets 1.00 V less');
  enter(schedule, 'devices', 0, { ref: null });
  expect(said(schedule)).toContain('a device on it gets 1.00 V less');
  schedule.undo();
  schedule.undo();
  // The first lacks nothing any more, the margin of the run stays what it was.
  enter(schedule, 'devices', 0, { type: null });
  expect(said(schedule)).toContain('ref D2 gets 1.00 V less than it needs at its place.');
  schedule.undo();
  expect(said(schedule)).toContain('ref D1 gets 1.00 V less than it needs at its place, and 1 more row');
  schedule.act('Deletion', removeRows(schedule.document, 'devices', [idAt(schedule, 'devices', 0)]));
  // 2 A through 1 Ω leave 22 V.
  expect(said(schedule)).toBe(undefined);
});

test('one that has exactly what it needs is not counted', () => {
  expect(said(lacking(20))).toContain('ref D1 gets 1.00 V less than it needs at its place.');
  expect(said(lacking(23))).toContain('ref D2 gets 3.00 V less than it needs at its place, and 1 more row gets too little.');
});
