import { describe, expect, test } from 'vitest';
import { explainCell } from '../../src/explanations.ts';
import { buildReport } from '../../src/report/index.ts';
import { enter, findingsAt, idAt, reference, scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';

/**
 * Two supplies of 24 V and 5 A each in an enclosure whose surface is 1.28 m² (0.8 × 0.6 × 0.3 m against a wall: IEC TR
 * 60890 weighs top 1.4, front and sides 0.9, back 0.5), of which the second has no efficiency. The first gives 10 A up
 * to 45 °C and nothing from 55 °C on.
 */
const warm = () => scheduleOf({
  enclosures: [{ enclosure: 'E', height: 800, width: 600, depth: 300, mounting: 'wall', ambient: 25, otherLoss: 40 }],
  supplies: [
    { rail: 'L1', rated: 10, efficiency: 0.9, enclosure: 'E', fullUpTo: 45, lessPerKelvin: 0.1, fuse: 10 },
    { rail: 'L2', rated: 10, enclosure: 'E' },
  ],
  devices: [{ ref: 'D1', qty: 1, unitDraw: 5000, rail: 'L1' }, { ref: 'D2', qty: 1, unitDraw: 5000, rail: 'L2' }],
});

test('what is not known bears no sign, though it follows from a partial total', () => {
  const schedule = scheduleOf({
    branches: [{ branch: 'B1' }, { branch: 'B2', limit: 10 }],
    devices: [{ ref: 'D1', qty: 1, branch: 'B1' }, { ref: 'D2', qty: 1, branch: 'B2' }],
  });
  const explained = (at: number) => explainCell(schedule, 'branches', idAt(schedule, 'branches', at), 'free')!.result;
  expect([explained(0), explained(1)]).toEqual(['not known', '≤ 10']);
  const report = buildReport(schedule, { generated: '2026-11-25' });
  const { tables: [listed] } = report.sections.find(({ name }) => name === 'branches')!;
  const place = listed!.columns.findIndex(({ title }) => title === 'Free after reserve');
  expect(listed!.rows.map(({ cells }) => cells[place]!.text)).toEqual(['', '≤10']);
});

test('a figure that may be more or less than what is shown bears no sign either', () => {
  // Which of the two supplies is meant is not known: 48 V, or 24 V.
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', voltage: 48 }, { rail: 'L1' }], conductors: [{ conductor: 'C', resistance: 10 }],
    runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 10 }], types: [{ type: 'T', draw: 100, minVoltage: 20.4 }],
    devices: [{ type: 'T', qty: 1, run: 'W1' }],
  });
  expect(explainCell(schedule, 'runs', idAt(schedule, 'runs'), 'minVoltage')!.result).toBe('20.40\u00a0V');
});

describe('what follows from a partial figure through a reference is partial too', () => {
  test('a supply whose enclosure is not wholly known is not within limits, and its figures bear signs', () => {
    const schedule = warm();
    const sign = (key: string, at = 0) => schedule.partialSign('supplies', idAt(schedule, 'supplies', at), key);
    expect(schedule.partialSign('enclosures', idAt(schedule, 'enclosures'), 'inside')).toBe('≥');
    expect([valueAt(schedule, 'supplies', 0, 'usable'), valueAt(schedule, 'supplies', 0, 'status')])
      .toEqual([10, 'incomplete']);
    expect(['usable', 'loading', 'spare', 'limitDiversity', 'demand', 'connected'].map((key) => sign(key)))
      .toEqual(['≤', '≥', '≤', '≤', '', '']);
    // The second supply is not derated by warmth: its figures do not follow from the enclosure.
    expect([sign('usable', 1), sign('loading', 1)]).toEqual(['', '']);
    expect(schedule.partialSign('devices', idAt(schedule, 'devices'), 'share')).toBe('≥');
    enter(schedule, 'supplies', 1, { efficiency: 0.3 });
    // 280 W more, at 5.5 W/(m²K) on about 1.3 m²: some 39 K more
    expect([valueAt(schedule, 'supplies', 0, 'usable'), valueAt(schedule, 'supplies', 0, 'status')])
      .toEqual([0, 'over']);
    expect(['usable', 'loading', 'spare'].map((key) => sign(key))).toEqual(['', '', '']);
    schedule.undo();
    expect([sign('usable'), valueAt(schedule, 'supplies', 0, 'status')]).toEqual(['≤', 'incomplete']);
  });

  test('a formula carries it on, and totals over it count what they lack', () => {
    const schedule = scheduleOf({
      supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }],
      devices: [
        {
          ref: 'D1', qty: 2, unitDraw: 1000, rail: 'L1',
        }, { ref: 'D2', unitDraw: 1000, rail: 'L1' }, { ref: 'D3', unitDraw: 500, rail: 'L2' },
      ],
    });
    expect(
      typeFormula(
        schedule, 'devices', 2, 'qty',
        `=ROUND(SUM(${reference('supplies', 'demand')}:${reference('supplies', 'demand').split('!')[1]});0)`
      )
    ).toBeUndefined();
    const l2 = () => [
      valueAt(schedule, 'supplies', 1, 'demand'),
      schedule.partialSign('supplies', idAt(schedule, 'supplies', 1), 'demand'),
      valueAt(schedule, 'supplies', 1, 'status'),
    ];
    expect(l2()).toEqual([1, '≥', 'incomplete']);
    enter(schedule, 'devices', 1, { qty: 1 });
    expect(l2()).toEqual([1.5, '', 'ok']);
    enter(schedule, 'devices', 2, { qty: 2 });
    expect(l2()).toEqual([1, '', 'ok']);
  });
});

describe('a tag that stands twice', () => {
  const twice = () => scheduleOf({
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L1', rated: 10 }], types: [{ type: 'T', draw: 1000 }],
    conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 20 }],
    runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 10 }],
    devices: [{ ref: 'D1', type: 'T', qty: 7, rail: 'L1' }],
  });
  const statuses = (schedule: ReturnType<typeof scheduleOf>) =>
    [
      valueAt(schedule, 'supplies', 0, 'status'), valueAt(schedule, 'supplies', 1, 'status'),
      valueAt(schedule, 'runs', 0, 'status'),
    ];

  test('makes both rows incomplete and what hangs on them, until one is renamed', () => {
    const schedule = twice();
    expect(statuses(schedule)).toEqual(['incomplete', 'incomplete', 'incomplete']);
    expect(schedule.rulesAgainst('runs', idAt(schedule, 'runs'))).toContain('tag-not-unique');
    enter(schedule, 'supplies', 1, { rail: 'L2' });
    expect(statuses(schedule)).toEqual(['ok', 'ok', 'ok']);
    expect(findingsAt(schedule, 'devices')).toEqual([]);
    schedule.undo();
    expect(statuses(schedule)).toEqual(['incomplete', 'incomplete', 'incomplete']);
  });

  test('of a type makes the supply of its devices incomplete; of device refs it stays a note', () => {
    const schedule = scheduleOf({
      supplies: [{ rail: 'L1', rated: 10 }], types: [{ type: 'T', draw: 1000 }, { type: 'T', draw: 2000 }],
      devices: [{ ref: 'D1', type: 'T', qty: 1, rail: 'L1' }, { ref: 'D1', qty: 1, unitDraw: 10, rail: 'L1' }],
    });
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('incomplete');
    expect(findingsAt(schedule, 'devices', 1)).toMatchObject([{ rule: 'tag-used-twice', severity: 'note' }]);
    enter(schedule, 'types', 1, { type: 'U' });
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('ok');
  });
});

describe('the rail of a device is that of its run where it has none of its own', () => {
  const onRun = () => scheduleOf({
    supplies: [
      { rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 },
    ], runs: [{ run: 'W1', rail: 'L1' }, { run: 'W2', rail: 'L2' }],
    devices: [{ ref: 'D1', qty: 7, unitDraw: 1000, run: 'W1' }],
  });
  const demands = (schedule: ReturnType<typeof scheduleOf>) =>
    [0, 1].map((at) => valueAt(schedule, 'supplies', at, 'demand'));

  test('it counts there, and follows the run', () => {
    const schedule = onRun();
    expect([valueAt(schedule, 'devices', 0, 'rail'), demands(schedule)]).toEqual(['L1', [7, 0]]);
    expect(schedule.isOwn('devices', idAt(schedule, 'devices'), 'rail')).toBe(false);
    enter(schedule, 'runs', 0, { rail: 'L2' });
    expect([valueAt(schedule, 'devices', 0, 'rail'), demands(schedule)]).toEqual(['L2', [0, 7]]);
    enter(schedule, 'devices', 0, { rail: 'L1' });
    expect(demands(schedule)).toEqual([7, 0]);
    enter(schedule, 'devices', 0, { rail: null, run: 'W2' });
    expect(demands(schedule)).toEqual([0, 7]);
    enter(schedule, 'runs', 1, { run: 'W3' });
    expect([valueAt(schedule, 'devices', 0, 'rail'), demands(schedule)]).toEqual([null, [0, 0]]);
    schedule.undo();
    enter(schedule, 'supplies', 1, { rail: 'L9' });
    expect([valueAt(schedule, 'devices', 0, 'rail'), demands(schedule)]).toEqual(['L2', [0, 0]]);
    // Its run names a rail that there is not: told once, there.
    expect(findingsAt(schedule, 'devices')).toEqual([]);
    expect(findingsAt(schedule, 'runs', 1).map(({ rule }) => rule)).toContain('tag-names-nothing');
  });

  test('the explanation says where it comes from', () => {
    const schedule = onRun();
    expect(explainCell(schedule, 'devices', idAt(schedule, 'devices'), 'rail'))
      .toMatchObject({ words: 'rail of the run W1', result: 'L1' });
  });
});
