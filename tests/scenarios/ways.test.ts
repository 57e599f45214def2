import { expect, test } from 'vitest';
import { readData, rowsOf } from '../data/read-data.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { enter, findingsAt, idAt, scheduleOf, valueAt } from '../support/schedules.ts';
import type { Cells, SheetName } from '../../src/schedule/index.ts';

const conductors = rowsOf(readData('conductors.json'), 'conductors') as Cells[];
const rules = (schedule: ReturnType<typeof scheduleOf>, sheet: SheetName, at = 0) =>
  findingsAt(schedule, sheet, at).filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);

test('10 A × 1.2 with 7 A on other devices: 5 A are left for a short circuit, not 12 A', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 10, peak: 1.2, target: 1 }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'fast', rated: 1.5 }, { way: 'F2', rail: 'L1', kind: 'electronic', rated: 2 }],
    runs: [{ run: 'W1', way: 'F1', conductor: '2.5 mm² solid', length: 5 }], conductors,
    devices: [{ ref: 'D1', qty: 1, unitDraw: 500, run: 'W1' }, { ref: 'D2', qty: 1, unitDraw: 7000, rail: 'L1' }],
  });
  // 12 A − 7 A; 4 × 1.5 A would be needed.
  expect(valueAt(schedule, 'ways', 0, 'available')).toEqual(closeTo(5, EXACT));
  expect(valueAt(schedule, 'runs', 0, 'available')).toEqual(closeTo(5, EXACT));
  expect(rules(schedule, 'ways')).toEqual(['way-may-not-act']);
  // Told at the way, and not at its run, whose status it is all the same.
  expect(rules(schedule, 'runs')).toEqual([]);
  expect(valueAt(schedule, 'runs', 0, 'status')).toBe('near');
  enter(schedule, 'ways', 0, { kind: 'electronic' });
  expect([valueAt(schedule, 'ways', 0, 'status'), valueAt(schedule, 'runs', 0, 'status')]).toEqual(['ok', 'ok']);
  // Of two redundant units one may have failed: nothing changes.
  enter(schedule, 'supplies', 0, { units: 2, redundant: true, seriesDrop: 0 });
  expect(valueAt(schedule, 'ways', 0, 'available')).toEqual(closeTo(5, EXACT));
});

test('one way feeds several runs: what they ask for adds up, and each cable is held against its rating', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 40 }], ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 10 }], conductors,
    runs: [
      { run: 'W1', way: 'F1', conductor: '2.5 mm² solid', length: 10 },
      { run: 'W2', way: 'F1', conductor: '0.75 mm² flexible', length: 10, maxDrop: 0.2 },
    ],
    devices: [{ ref: 'D1', qty: 2, unitDraw: 2000, run: 'W1' }, { ref: 'D2', qty: 3, unitDraw: 1000, run: 'W2' }],
  });
  expect(['connected', 'demand', 'loading'].map((key) => valueAt(schedule, 'ways', 0, key)))
    .toEqual([7, 7, 0.7].map((value) => closeTo(value, EXACT)));
  expect([0, 1].map((at) => [valueAt(schedule, 'runs', at, 'rail'), rules(schedule, 'runs', at)]))
    .toEqual([['L1', []], ['L1', ['run-protection-over-carries']]]);
  expect(schedule.target('devices', idAt(schedule, 'devices', 1), 'rail')).toBe(idAt(schedule, 'supplies'));
});

// 24 V ÷ (2 × 7.41 Ω/km × 1.1965 at 70 °C × 20 m + 0.3 Ω) = 36.66 A: enough for B 4 (30 A), not for B 6 (45 A).
// At 15 m 42.1 A are too few for B 6 too; at 12 m 46.8 A are enough, as is all of it for 10.8 A of an electronic way.
test.each([
  [12, 'B', 'One of 6.00 A would do'], [15, 'B', undefined], [20, 'B', undefined], [20, 'electronic', 'One of 6.00 A would do'],
])('behind %d m of cable a larger way %s is named only where it acts at the far end', (length, kind, said) => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 40, peak: 2 }], ways: [{ way: 'F1', rail: 'L1', kind, rated: 4 }], conductors,
    runs: [{ run: 'W1', way: 'F1', conductor: '2.5 mm² solid', length, maxDrop: 0.2 }],
    devices: [{ ref: 'D1', qty: 1, unitDraw: 4500, run: 'W1' }],
  });
  const told = () => findingsAt(schedule, 'ways').filter(({ severity }) => severity === 'over').map(({ message }) => message);
  expect(rules(schedule, 'ways')).toEqual(['way-over-rated']);
  expect(/One of [^,]*/.exec(told()[0]!)?.[0]).toBe(said);
  enter(schedule, 'ways', 0, { rated: 6 });
  expect(rules(schedule, 'ways')).toEqual([]);
  expect(rules(schedule, 'runs')).toEqual(said === undefined ? ['run-may-not-clear'] : []);
});

test('a way moved to another rail takes its runs and their devices along', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }], ways: [{ way: 'F1', rail: 'L1', kind: 'fast', rated: 2 }],
    runs: [{ run: 'W1', way: 'F1' }], devices: [{ ref: 'D1', qty: 1, unitDraw: 1000, run: 'W1' }],
  });
  const demands = () => [0, 1].map((at) => valueAt(schedule, 'supplies', at, 'demand'));
  expect(demands()).toEqual([1, 0]);
  enter(schedule, 'ways', 0, { rail: 'L2' });
  expect([demands(), valueAt(schedule, 'devices', 0, 'rail')]).toEqual([[0, 1], 'L2']);
  schedule.undo();
  expect(demands()).toEqual([1, 0]);
  enter(schedule, 'runs', 0, { way: null });
  expect(demands()).toEqual([0, 0]);
});

test('a supply of 5 A that trips none of four breakers is one finding, with its four ways', () => {
  const ways = [1, 2, 3, 4].map((at) => ({ way: `F${at}`, rail: 'L1', kind: 'B', rated: 1 + at % 2 }));
  const schedule = scheduleOf({ supplies: [{ rail: 'L1', rated: 5 }], ways });
  // B 1 needs 7.5 A.
  const told = schedule.findings.filter(({ severity }) => severity === 'near');
  expect(told).toMatchObject([{ rule: 'supply-trips-no-way', tag: 'L1', value: 7.5, limit: 5, waiting: 4 }]);
  expect(ways.map((_way, at) => valueAt(schedule, 'ways', at, 'status'))).toEqual(['near', 'near', 'near', 'near']);
  enter(schedule, 'ways', 0, { kind: 'electronic' });
  expect(schedule.findings.filter(({ severity }) => severity === 'near').map(({ rule, tag }) => [rule, tag]))
    .toEqual([['way-may-not-act', 'F2'], ['way-may-not-act', 'F3'], ['way-may-not-act', 'F4']]);
});

test('a fuse of 63 A on a supply of 5 A never acts, and ways of 20 A behind a fuse of 20 A do not discriminate', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 5, fuse: 63 }, { rail: 'L2', rated: 40, peak: 5, fuse: 20, fuseKind: 'gG' }],
    ways: [
      { way: 'F1', rail: 'L1', kind: 'electronic', rated: 2 }, { way: 'F2', rail: 'L2', kind: 'gG', rated: 20 },
      { way: 'F3', rail: 'L2', kind: 'gG', rated: 10 },
    ],
  });
  expect(rules(schedule, 'supplies')).toEqual(['supply-fuse-never-acts']);
  expect([0, 1, 2].map((at) => rules(schedule, 'ways', at))).toEqual([[], ['way-not-discriminating'], []]);
});

test('a way of 20 A behind a fuse of 20 A of unknown kind is not within limits', () => {
  const ways = (kind: string, rated: number) => [{ way: 'F1', rail: 'L1', kind, rated }];
  const statusOf = (kind: string, rated: number) => valueAt(scheduleOf({
    supplies: [{ rail: 'L1', rated: 20, peak: 10, fuse: 20 }], ways: ways(kind, rated),
  }), 'ways', 0, 'status');
  expect([statusOf('B', 20), statusOf('B', 10), statusOf('electronic', 20), statusOf('electronic', 25)])
    .toEqual(['incomplete', 'ok', 'ok', 'incomplete']);
});

/** Total wire [m], both conductors, over which a breaker was seen to clear: see tests/standards/protection. */
const CLEARED: readonly (readonly [kind: string, rated: number, wire: readonly number[]])[] = [
  ['C', 2, [23, 28, 43, 69]], ['C', 3, [18, 23, 34, 54]], ['C', 4, [6, 12, 18, 28]], ['C', 6, [3, 4, 6, 7]],
  ['C', 8, [2, 3, 4, 5]], ['C', 10, [1, 2, 3, 4]], ['B', 6, [9, 14, 19, 33]], ['B', 10, [4, 5, 6, 9]],
  ['B', 13, [3, 4, 5, 8]],
];
// IEC 60228, classes 1 and 2, 20 °C.
const OHMS = [24.5, 18.1, 12.1, 7.41];

test('no longest run is beyond what a power-supply manual saw clear, in any of 36 cells', () => {
  const schedule = scheduleOf({
    // 10 A for ever, five times that for a moment.
    supplies: [{ rail: 'L1', rated: 10, peak: 5 }],
    conductors: OHMS.map((resistance, at) => ({ conductor: `C${at}`, resistance, maxCurrent: 30 })),
    ways: CLEARED.map(([kind, rated]) => ({ way: `${kind} ${rated}`, rail: 'L1', kind, rated })),
    runs: CLEARED.flatMap(([kind, rated]) =>
      OHMS.map((_ohm, at) => ({ run: `${kind}${rated}-${at}`, way: `${kind} ${rated}`, conductor: `C${at}`, length: 1 }))),
  });
  const most = CLEARED.flatMap(([, , wire]) => wire.map((metres) => metres / 2));
  expect(most).toHaveLength(36);
  most.forEach((metres, at) => {
    expect([at, (valueAt(schedule, 'runs', at, 'maxLength') as number) <= metres]).toEqual([at, true]);
  });
});
