import { describe, expect, test } from 'vitest';
import { insertRows, moveRows, removeRows, SHEET_NAMES } from '../../src/schedule/index.ts';
import { enter, findingsAt, idAt, scheduleOf, valueAt } from '../support/schedules.ts';

const LOAD = { ref: 'D1', qty: 1, unitDraw: 1000, rail: 'L1' };

describe('two rows with one tag', () => {
  const twins = () => scheduleOf({ supplies: [{ rail: 'L1', rated: 1 }, { rail: 'L1', rated: 2 }], devices: [LOAD] });
  const shared = (schedule: ReturnType<typeof twins>) =>
    schedule.findings.filter(({ rule }) => rule === 'tag-used-twice').map(({ row }) => row);

  test('are both told; the first one is meant', () => {
    const schedule = twins();
    expect(shared(schedule)).toEqual([1, 2]);
    expect([0, 1].map((at) => valueAt(schedule, 'supplies', at, 'demand'))).toEqual([1, 0]);
    expect(findingsAt(schedule, 'supplies', 1).find(({ rule }) => rule === 'tag-used-twice')).toMatchObject({
      severity: 'incomplete', value: 'L1',
      message: 'Rail L1 stands in more than one row. References mean the first of them. Give each row a tag of its own.',
    });
  });

  test('moving the second one up makes it the one that is meant', () => {
    const schedule = twins();
    schedule.act('Move', moveRows(schedule.document, 'supplies', [idAt(schedule, 'supplies', 1)], 0));
    expect([0, 1].map((at) => [
      valueAt(schedule, 'supplies', at, 'rated'), valueAt(schedule, 'supplies', at, 'demand'),
    ])).toEqual([[2, 1], [1, 0]]);
  });

  test('another tag, or taking one row out, ends it for both', () => {
    const renamed = twins();
    enter(renamed, 'supplies', 0, { rail: 'L2' });
    expect(shared(renamed)).toEqual([]);
    expect([0, 1].map((at) => valueAt(renamed, 'supplies', at, 'demand'))).toEqual([0, 1]);
    const removed = twins();
    removed.act('Delete', removeRows(removed.document, 'supplies', [idAt(removed, 'supplies', 0)]));
    expect(shared(removed)).toEqual([]);
    expect(valueAt(removed, 'supplies', 0, 'demand')).toBe(1);
    removed.undo();
    expect(shared(removed)).toEqual([1, 2]);
  });

  test('a way behind two rails is told at both of its rows, and what hangs on it is never within limits', () => {
    const schedule = scheduleOf({
      supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }],
      ways: ['L1', 'L2'].map((rail) => ({ way: 'F1', rail, kind: 'electronic', rated: 2 })),
      conductors: [{ conductor: 'C', resistance: 12.1, maxCurrent: 16 }],
      runs: [{ run: 'W1', way: 'F1', conductor: 'C', length: 10 }], devices: [{ ref: 'D1', qty: 1, unitDraw: 500, run: 'W1' }],
    });
    expect(schedule.findings.filter(({ severity }) => severity !== 'note').map(({ sheet, row, rule, value }) => [sheet, row, rule, value]))
      .toEqual([['ways', 1, 'tag-used-twice', 'F1'], ['ways', 2, 'tag-used-twice', 'F1']]);
    expect(findingsAt(schedule, 'ways')[0]!.message).toContain('Give each row a tag of its own.');
    expect([...[0, 1].map((at) => valueAt(schedule, 'ways', at, 'status')), valueAt(schedule, 'runs', 0, 'status')])
      .toEqual(['incomplete', 'incomplete', 'incomplete']);
    enter(schedule, 'ways', 1, { way: 'F2' });
    expect(valueAt(schedule, 'runs', 0, 'status')).toBe('ok');
  });

  test('among device rows, to which nothing refers, it is a note', () => {
    const schedule = scheduleOf({ devices: [LOAD, LOAD] });
    expect(findingsAt(schedule, 'devices', 1).find(({ rule }) => rule === 'tag-used-twice'))
      .toMatchObject({ severity: 'note' });
  });
});

describe('a tag that names nothing', () => {
  test('is told, and its row counts in no total until the row comes', () => {
    const schedule = scheduleOf({ supplies: [{ rail: 'L2', rated: 5 }], devices: [LOAD] });
    expect(findingsAt(schedule, 'devices').find(({ rule }) => rule === 'tag-names-nothing')).toMatchObject({
      key: 'rail', value: 'L1',
      message: 'Ref D1: there is no supply L1, so 1.00 A count in none. Add it to the sheet Supplies, or correct the tag.',
    });
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBe(0);
    expect(valueAt(schedule, 'devices', 0, 'demand')).toBe(1);
    schedule.act('New', insertRows(schedule.document, 'supplies', 0, [{ rail: 'L1', rated: 5 }]));
    expect(findingsAt(schedule, 'devices').map(({ rule }) => rule)).not.toContain('tag-names-nothing');
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBe(1);
  });

  test('is one that differs in case or in a space', () => {
    for (const rail of ['l1', 'L1 ']) {
      const schedule = scheduleOf({ supplies: [{ rail: 'L1' }], devices: [{ ...LOAD, rail }] });
      expect(findingsAt(schedule, 'devices').map(({ rule }) => rule)).toContain('tag-names-nothing');
    }
  });
});

test('blank rows count for nothing and nothing is said of them, on any sheet', () => {
  const schedule = scheduleOf(Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, [{}, { note: null }]])));
  expect(schedule.findings).toEqual([]);
  expect(schedule.findingCounts).toEqual({ over: 0, near: 0, incomplete: 0, note: 0 });
  for (const key of ['voltage', 'units', 'usable', 'demand', 'status']) expect(valueAt(schedule, 'supplies', 0, key))
    .toBeNull();
});

test('a blank row comes alive with its first cell, and is blank again without it', () => {
  const schedule = scheduleOf({ supplies: [{}], devices: [LOAD] });
  enter(schedule, 'supplies', 0, { rail: 'L1' });
  expect(
    [
      valueAt(schedule, 'supplies', 0, 'voltage'), valueAt(schedule, 'supplies', 0, 'demand'),
      valueAt(schedule, 'supplies', 0, 'status'),
    ]
  )
    .toEqual([24, 1, 'incomplete']);
  enter(schedule, 'supplies', 0, { rail: null });
  expect(
    [
      valueAt(schedule, 'supplies', 0, 'voltage'), valueAt(schedule, 'supplies', 0, 'demand'),
      valueAt(schedule, 'supplies', 0, 'status'),
    ]
  )
    .toEqual([null, null, null]);
  expect(findingsAt(schedule, 'supplies')).toEqual([]);
});

test('a device on a run of another rail is told', () => {
  const schedule = scheduleOf(
    { supplies: [{ rail: 'L1' }, { rail: 'L2' }], runs: [{ run: 'W1', rail: 'L2' }], devices: [{ ...LOAD, run: 'W1' }] }
  );
  const found = () => findingsAt(schedule, 'devices').find(({ rule }) => rule === 'device-run-on-other-rail');
  expect(found()?.message).toBe('Ref D1 is on rail L1 but its run W1 is fed from rail L2. Correct one of them.');
  enter(schedule, 'runs', 0, { rail: 'L1' });
  expect(found()).toBeUndefined();
});
