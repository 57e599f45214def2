import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { tryChanges } from '../../src/report/index.ts';
import { ownOfType, rowsToSwap, sumDevices, swapType, TYPE_VALUES } from '../../src/rework/index.ts';
import type { Cells } from '../../src/schedule/index.ts';

const TYPES: readonly Cells[] = [
  { type: 'Lamp', draw: 400, nodes: 1, price: 30 }, { type: 'Bright lamp', draw: 600, nodes: 2, price: 45 },
  { type: 'Horn', draw: 50, nodes: 0 },
];
const scheduleOf = (devices: readonly Cells[]) =>
  new LoadSchedule({ details: {}, sheets: { types: TYPES, devices, supplies: [{ rail: 'L1', rated: 5, target: 1 }] } });

test('a device row takes its unit draw and its diversity from its type', () => {
  expect(TYPE_VALUES).toEqual(expect.arrayContaining(['unitDraw', 'diversity']));
});

test('an own value goes or stays as it was chosen, formulas too', () => {
  const schedule = scheduleOf([
    { type: 'Lamp', qty: 1, unitDraw: '=100*2', diversity: 0.5 }, { type: 'Lamp', qty: 2 }, { type: 'Horn', qty: 3, unitDraw: 7 },
  ]);
  const swap = { from: 'Lamp', to: 'Bright lamp', drop: ['unitDraw'] };
  expect([...ownOfType(rowsToSwap(schedule.document, swap))]).toEqual([['unitDraw', 1], ['diversity', 1]]);
  schedule.act('', swapType(schedule.document, swap));
  expect(schedule.rows('devices').map(({ cells }) => cells)).toEqual([
    { type: 'Bright lamp', qty: 1, diversity: 0.5 }, { type: 'Bright lamp', qty: 2 }, { type: 'Horn', qty: 3, unitDraw: 7 },
  ]);
});

test('what is not known of one row is not known of all', () => {
  const schedule = scheduleOf([{ type: 'Lamp', qty: 2 }, { type: 'Horn', qty: 1 }, { type: 'Lamp' }]);
  const [lamp, horn, uncounted] = schedule.rows('devices').map(({ id }) => id) as [number, number, number];
  expect(sumDevices(schedule, [lamp])).toEqual({ rows: 1, qty: 2, connected: 0.8, demand: 0.8, nodes: 2, price: 60 });
  // A horn has no price; a row without a quantity has nothing.
  const both = { qty: 3, connected: expect.closeTo(0.85, 12) as number, nodes: 2, price: null };
  expect(sumDevices(schedule, [lamp, horn])).toMatchObject(both);
  const unknown = { qty: null, connected: null, demand: null, nodes: null, price: null };
  expect(sumDevices(schedule, [lamp, uncounted])).toEqual({ rows: 2, ...unknown });
});

test('a type that is not there is a fault of the caller', () => {
  expect(() => swapType(scheduleOf([]).document, { from: 'Lamp', to: 'Lantern', drop: [] })).toThrow(RangeError);
});

test('only the rows meant change, only in what was asked for, and undo gives all of it back', () => {
  const someRow = fc.record({
    type: fc.constantFrom('Lamp', 'Horn', 'Bright lamp'), qty: fc.nat({ max: 9 }), unitDraw: fc.integer({ min: 1, max: 900 }),
    diversity: fc.constantFrom(0.5, 1), note: fc.constantFrom('a', 'b'),
  }, { requiredKeys: ['type'] });
  fc.assert(fc.property(fc.array(someRow, { maxLength: 8 }), fc.subarray(['unitDraw', 'diversity']), fc.func(fc.boolean()), (rows, drop, isMeant) => {
    const schedule = scheduleOf(rows);
    const before = schedule.content();
    const among = schedule.rows('devices').map(({ id }) => id).filter((id) => isMeant(id));
    schedule.act('Swap', swapType(schedule.document, { from: 'Lamp', to: 'Bright lamp', among, drop }));
    expect(schedule.rows('devices').map(({ cells }) => cells)).toEqual(rows.map((row, id) =>
      (row.type !== 'Lamp' || !isMeant(id) ? row
        : { ...Object.fromEntries(Object.entries(row).filter(([key]) => !drop.includes(key))), type: 'Bright lamp' })));
    schedule.undo();
    expect(schedule.content()).toEqual(before);
    schedule.dispose();
  }), { numRuns: 60 });
});

test('tried on a copy: rows, findings and how rows stand before and after, and the schedule is as it was', () => {
  const schedule = scheduleOf([{ ref: 'D1', type: 'Lamp', qty: 10, rail: 'L1' }]);
  const before = schedule.content();
  const tried = tryChanges(schedule, swapType(schedule.document, { from: 'Lamp', to: 'Bright lamp', drop: [] }));
  expect(schedule.content()).toEqual(before);
  expect(schedule.undoLabel).toBeUndefined();
  expect(tried.rows).toEqual([{
    kind: 'changed', sheet: 'devices', tag: 'D1', row: 1, was: 1, values: [{ key: 'type', before: 'Lamp', after: 'Bright lamp' }],
  }]);
  // 10 × 0.4 A of 5 A become 10 × 0.6 A.
  expect(tried.standings.filter(({ sheet }) => sheet === 'supplies')).toMatchObject([
    { tag: 'L1', key: 'loading', before: { figure: '80\u202f%' }, after: { figure: '120\u202f%', status: 'over' } },
  ]);
  expect(tried.counts.after.over).toBe(tried.counts.before.over + 1);
  expect(tried.findings).toContainEqual(expect.objectContaining({ kind: 'came', rule: 'supply-over-usable', tag: 'L1', after: 'over' }));
});

test('findings are counted as the overview counts them: what was accepted is apart', () => {
  // 15 × 0.4 A of 5 A.
  const schedule = scheduleOf([{ ref: 'D1', type: 'Lamp', qty: 15, rail: 'L1' }]);
  const open = () => schedule.findings.filter(({ severity, accepted }) => severity === 'over' && accepted === undefined);
  const all = open().length;
  schedule.accept(open().find(({ rule }) => rule === 'supply-over-usable')!, { reason: 'r', name: 'n', date: '2026-03-02' });
  const { before, after } = tryChanges(schedule, swapType(schedule.document, { from: 'Lamp', to: 'Horn', drop: [] })).counts;
  expect([before.over, after.over]).toEqual([all - 1, 0]);
});
