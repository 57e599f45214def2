import { describe, expect, test } from 'vitest';
import { explainCell } from '../../src/explanations.ts';
import type { Cells, Content, SheetName } from '../../src/schedule/index.ts';
import { enter, findingsAt, idAt, scheduleOf, valueAt } from '../support/schedules.ts';

// What is missing is told once, where it is entered, with how many rows wait; those are incomplete and tell it only in
// the explanation of their status.

/** A converter of 24 W and its run on a way, a branch, a lamp that a relay switches; everything is known. */
const PANEL: Content['sheets'] = {
  supplies: [{ rail: 'L1', rated: 10, peak: 2 }], ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 4 }],
  types: [{ type: 'T', power: 24, load: 'power', minVoltage: 10, maxVoltage: 30, nodes: 1, busDraw: 2 }],
  branches: [{ branch: 'B1', limit: 32, terminated: true, maxCable: 100, busCurrent: 0.25 }],
  conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 16 }],
  runs: [{ run: 'W1', way: 'F1', branch: 'B1', conductor: 'C', length: 20 }],
  devices: [{ ref: 'D1', type: 'T', qty: 1, run: 'W1', branch: 'B1' }],
  contacts: [{ contact: 'K', resistive: 16, lamp: 5, motor: 4 }], modules: [{ module: 'M1', common: 16 }],
  feeds: [{ feed: 'Q1', rated: 10 }],
  outputs: [{ output: 'K1', module: 'M1', contact: 'K', kind: 'resistive', power: 100, feed: 'Q1' }],
};
const without = (sheet: SheetName, cells: Cells) => {
  const schedule = scheduleOf(PANEL);
  enter(schedule, sheet, 0, cells);
  return schedule;
};
const told = (schedule: ReturnType<typeof scheduleOf>) => schedule.findings
  .filter(({ severity }) => severity === 'over' || severity === 'near' || severity === 'incomplete')
  .map(({ rule, waiting }) => [rule, waiting]);
const incomplete = (schedule: ReturnType<typeof scheduleOf>) =>
  (['supplies', 'ways', 'branches', 'runs', 'modules', 'outputs', 'feeds'] as const)
    .filter((sheet) => valueAt(schedule, sheet, 0, 'status') === 'incomplete');

describe('one input that is missing', () => {
  test('nothing is, at first', () => {
    expect([told(scheduleOf(PANEL)), incomplete(scheduleOf(PANEL))]).toEqual([[], []]);
  });

  test.each<[SheetName, Cells, string, number | undefined, SheetName[]]>([
    ['runs', { conductor: null }, 'run-conductor-missing', 2, ['supplies', 'ways', 'runs']],
    ['runs', { length: null }, 'run-length-missing', 3, ['supplies', 'ways', 'branches', 'runs']],
    ['conductors', { resistance: null }, 'conductor-resistance-missing', 1, ['supplies', 'ways', 'runs']],
    ['conductors', { maxCurrent: null }, 'conductor-current-missing', 1, ['runs']],
    ['devices', { qty: null }, 'device-quantity-missing', 4, ['supplies', 'ways', 'branches', 'runs']],
    ['devices', { type: null }, 'device-draw-missing', 4, ['supplies', 'ways', 'branches', 'runs']],
    ['types', { power: null }, 'type-draw-missing', 1, ['supplies', 'ways', 'runs']],
    ['types', { nodes: null }, 'type-nodes-missing', 1, ['branches']],
    ['types', { busDraw: null }, 'type-bus-draw-missing', 1, ['branches']],
    ['outputs', { power: null }, 'output-power-missing', 2, ['modules', 'outputs', 'feeds']],
    ['outputs', { kind: null }, 'output-kind-missing', 2, ['modules', 'outputs', 'feeds']],
    ['outputs', { kind: 'motor', inrush: 1, efficiency: 1 }, 'output-power-factor-missing', 2, ['modules', 'outputs', 'feeds']],
    ['outputs', { kind: 'motor', inrush: 1, powerFactor: 1 }, 'output-efficiency-missing', 2, ['modules', 'outputs', 'feeds']],
  ])('of %s, without %o, is told by %s', (sheet, cells, rule, waiting, rows) => {
    const schedule = without(sheet, cells);
    const causes = told(schedule).filter(([each]) => each !== 'contact-inrush-missing');
    expect([causes, incomplete(schedule)]).toEqual([[[rule, waiting]], rows]);
  });

  test('is named in the explanation of what waits for it', () => {
    const schedule = without('devices', { qty: null });
    const explained = explainCell(schedule, 'supplies', idAt(schedule, 'supplies'), 'status')!;
    expect([explained.result, explained.numbers!.split(';')[0]]).toEqual([
      'incomplete',
      expect.stringContaining('Rail L1 carries at least 0.00 A: 2 rows on it are not wholly known. Complete them to know the rest.'),
    ]);
    expect(explained.checks).toContain('waits for: Qty of the device row D1');
  });

  test('is counted in its sentence', () => {
    const message = (sheet: SheetName, cells: Cells) => findingsAt(without(sheet, cells), sheet)
      .find(({ severity }) => severity === 'incomplete')!.message;
    expect(message('runs', { conductor: null }))
      .toBe('Run W1 has no conductor, so its drop is not known, and 2 rows wait for it. Choose one of the conductors.');
    expect(message('outputs', { power: null })).toBe(
      'Output K1 has no power entered, so its current is not known, and 2 rows wait for it. Enter the power of one load in W; 0 for a spare output.');
  });
});

test('a run whose devices draw constant currents makes nothing wait but itself', () => {
  const schedule = without('runs', { conductor: null });
  enter(schedule, 'types', 0, { load: null });
  expect([told(schedule), incomplete(schedule)]).toEqual([[['run-conductor-missing', undefined]], ['runs']]);
});

test('a tag that stands twice is told at its rows, with how many name it, and at none of these', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L1', rated: 10 }],
    devices: [1, 2, 3].map((at) => ({ ref: `D${at}`, qty: 1, unitDraw: 10, rail: 'L1' })),
  });
  expect(told(schedule)).toEqual([['tag-used-twice', 3], ['tag-used-twice', undefined]]);
  expect(findingsAt(schedule, 'supplies').find(({ rule }) => rule === 'tag-used-twice')!.message)
    .toBe('Rail L1 stands in more than one row. References mean the first of them, and 3 rows wait for it. Give each row a tag of its own.');
});

test('a run without a working voltage is told there, and its way and rail say so where they are explained', () => {
  // 20 W behind 10 Ω, which gives 24² ÷ (4 × 10) = 14.4 W at most; beside 1 A.
  const schedule = scheduleOf({
    ...PANEL, supplies: [{ rail: 'L1', rated: 10 }], types: [{ type: 'T', power: 20, load: 'power' }], branches: [],
    conductors: [{ conductor: 'C', resistance: 100, maxCurrent: 9, baseTemperature: 20 }],
    runs: [{ run: 'W1', way: 'F1', conductor: 'C', length: 50, ambient: 20, temperature: 20 }],
    devices: [{ ref: 'D1', type: 'T', qty: 1, run: 'W1' }, { ref: 'D2', qty: 1, unitDraw: 1000, rail: 'L1' }],
  });
  // Behind as much resistance no short circuit trips the way either, which is another cause.
  expect(told(schedule).map(([rule]) => rule)).toEqual(['run-no-working-voltage', 'run-may-not-clear']);
  const explained = (sheet: 'supplies' | 'ways') => explainCell(schedule, sheet, idAt(schedule, sheet), 'status')!.numbers!;
  expect(explained('supplies')).toContain(
    'Rail L1 carries at least 1.83 A: 1 run on it has no stable operating point, and what it draws is not known. Put that right first, at the runs.');
  expect(explained('ways')).toContain(
    'Way F1 carries at least 0.83 A: 1 run on it has no stable operating point, and what it draws is not known. Put that right first, at the runs.');
});

/**
 * Two supplies in one enclosure, the first derated above 40 °C; 24 V × 5 A × (1 ÷ 0.9 − 1) on 2 × 2 × 1 m² warms
 * little.
 */
const WARM = (second: number | undefined) => ({
  enclosures: [{ enclosure: 'E', height: 2000, width: 2000, depth: 1000, mounting: 'free', ambient: 20, otherLoss: 0 }],
  supplies: [
    { rail: 'L1', rated: 10, efficiency: 0.9, enclosure: 'E', fullUpTo: 40, lessPerKelvin: 0.03 },
    { rail: 'L2', rated: 10, enclosure: 'E', ...(second === undefined ? {} : { efficiency: second }) },
  ],
  devices: [{ ref: 'D1', qty: 1, unitDraw: 5000, rail: 'L1' }, { ref: 'D2', qty: 1, unitDraw: 5000, rail: 'L2' }],
});
/** A supply rated twice what the second one is asked for: 2 A and a row of so many devices of 1 A. */
const RATED = (qty: number | undefined) => ({
  supplies: [{ rail: 'L1', rated: '=2*[supplies.demand@L2]' }, { rail: 'L2', rated: 10 }],
  devices: [
    { ref: 'D1', qty: 2, unitDraw: 1000, rail: 'L2' },
    { ref: 'D2', ...(qty === undefined ? {} : { qty }), unitDraw: 1000, rail: 'L2' },
  ],
});

test.each([
  ['the warmth of its enclosure, which lacks a loss', WARM(undefined), WARM(0.9), 'figure-partial'],
  ['a figure that lacks a row, which its formula reads', RATED(undefined), RATED(3), 'formula-partial'],
])('a supply that follows from %s is incomplete, and that is told where it is to be entered', (_what, partial, whole, rule) => {
  const schedule = scheduleOf(partial);
  const { id } = schedule.rows('supplies')[0]!;
  expect([valueAt(schedule, 'supplies', 0, 'status'), schedule.rulesAgainst('supplies', id).includes(rule)]).toEqual(['incomplete', true]);
  expect(told(schedule).map(([each]) => each)).not.toContain(rule);
  expect(explainCell(schedule, 'supplies', id, 'status')!.numbers).toMatch(/not wholly known/);
  expect(scheduleOf(whole).rulesAgainst('supplies', id)).not.toContain(rule);
});

test.each<[SheetName, Cells, string]>([
  ['runs', { way: 'X' }, 'tag-names-nothing'], ['devices', { run: 'X', rail: null }, 'tag-names-nothing'],
  ['runs', { length: -3 }, 'number-out-of-range'], ['supplies', { units: 0 }, 'number-out-of-range'],
])('an entry of %s that means nothing, %o, is told once, and its row is not within limits', (sheet, cells, rule) => {
  const schedule = without(sheet, cells);
  expect(told(schedule).filter(([each]) => each !== 'supply-gives-nothing').map(([each]) => each)).toEqual([rule]);
  if (sheet !== 'devices') expect(valueAt(schedule, sheet, 0, 'status')).not.toBe('ok');
});

test('one device that is more than its way bears is told with all of it, where that is too much already', () => {
  const schedule = scheduleOf({
    ...PANEL, devices: [{ ref: 'D1', qty: 1, unitDraw: 6000, diversity: 1, rail: 'L1', run: 'W1' }],
  });
  expect(told(schedule).map(([rule]) => rule).filter((rule) => String(rule).startsWith('way'))).toEqual(['way-over-rated']);
  enter(schedule, 'devices', 0, { diversity: 0.5 });
  expect(told(schedule).map(([rule]) => rule).filter((rule) => String(rule).includes('device'))).toEqual(['way-device-over-rated']);
});

test('a run that loses too much for a device on it is told once, though it loses more than it may too', () => {
  // 1 A through 2 × 10 Ω/km × 200 m and more when warm: 4 V and more of 24 V, where 21.6 V are needed.
  const schedule = scheduleOf({
    ...PANEL, types: [{ type: 'T', draw: 1000, minVoltage: 21.6, maxVoltage: 30, nodes: 1, busDraw: 2 }],
    branches: [{ branch: 'B1', limit: 32 }], runs: [{ run: 'W1', way: 'F1', conductor: 'C', length: 200 }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 2 }],
  });
  expect(told(schedule).map(([rule]) => rule)).toEqual(['run-under-voltage']);
  enter(schedule, 'types', 0, { minVoltage: 10 });
  expect(told(schedule).map(([rule]) => rule)).toEqual(['run-over-drop']);
});
