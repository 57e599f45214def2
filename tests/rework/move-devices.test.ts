import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { tryChanges } from '../../src/report/index.ts';
import { moveDevices, type PartlyFate, type WayFate } from '../../src/rework/index.ts';
import { setCells, tagOf, type Cells, type Content, type SheetName } from '../../src/schedule/index.ts';

const idOf = (schedule: LoadSchedule, sheet: SheetName, tag: string) =>
  schedule.rows(sheet).find((row) => tagOf(sheet, row) === tag)!.id;
const idsOf = (schedule: LoadSchedule, tags: readonly string[]) => tags.map((tag) => idOf(schedule, 'devices', tag));
const cellsOf = (schedule: LoadSchedule, sheet: SheetName) => schedule.rows(sheet).map(({ cells }) => cells);

/** Two rails; L1 feeds W1 and W2 through F1, W3 through F2, and D9 without a run. W1 takes its rail from its way. */
const panel = (): LoadSchedule => new LoadSchedule({
  details: {},
  sheets: {
    types: [{ type: 'Lamp', draw: 100, nodes: 1 }],
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }],
    branches: [{ branch: 'B1', limit: 50 }, { branch: 'B2', limit: 50 }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: '=2*2' }, { way: 'F2', rail: 'L1', kind: 'C', rated: 6 }, { way: 'L2-F1', rail: 'L2' }],
    runs: [
      { run: 'W1', way: 'F1', branch: 'B1' }, { run: 'W2', way: 'F1', rail: 'L1' }, { run: 'W3', way: 'F2', rail: 'L1' },
      { run: 'W4', way: 'L2-F1', rail: 'L2' },
    ],
    devices: [
      { ref: 'D1', type: 'Lamp', qty: 1, run: 'W1', distance: 5, branch: 'B1' }, { ref: 'D2', type: 'Lamp', qty: 1, run: 'W1', rail: 'L1' },
      { ref: 'D3', type: 'Lamp', qty: 1, run: 'W2', rail: 'L1' }, { ref: 'D4', type: 'Lamp', qty: 1, run: 'W3', rail: 'L1', branch: 'B1' },
      { ref: 'D9', type: 'Lamp', qty: 1, rail: 'L1' }, { ref: 'D10', type: 'Lamp', qty: 1 },
    ],
  },
});
const L2 = { sheet: 'supplies', tag: 'L2' } as const;

describe('to another rail', () => {
  test('a run moves with all its rows, and its way with all its runs', () => {
    const schedule = panel();
    const plan = moveDevices(schedule, { devices: idsOf(schedule, ['D4', 'D9', 'D10']), to: L2 });
    expect(plan).toMatchObject({ isDecided: true, partly: [], shared: [], runs: [2], ways: [1] });
    schedule.act('', plan.changes);
    expect(cellsOf(schedule, 'devices').slice(3)).toEqual([
      { ref: 'D4', type: 'Lamp', qty: 1, run: 'W3', rail: 'L2', branch: 'B1' }, { ref: 'D9', type: 'Lamp', qty: 1, rail: 'L2' },
      // It was on no rail, so there is nothing to move.
      { ref: 'D10', type: 'Lamp', qty: 1 },
    ]);
    expect(cellsOf(schedule, 'runs')[2]).toEqual({ run: 'W3', way: 'F2', rail: 'L2' });
    expect(cellsOf(schedule, 'ways')[1]).toEqual({ way: 'F2', rail: 'L2', kind: 'C', rated: 6 });
  });

  test('what is on no rail stays and is named: device rows and runs', () => {
    const schedule = panel();
    schedule.act('', setCells(schedule.document, [{ sheet: 'runs', id: idOf(schedule, 'runs', 'W4'), key: 'way', value: null },
      { sheet: 'runs', id: idOf(schedule, 'runs', 'W4'), key: 'rail', value: 'L9' }]));
    const runs = ['W3', 'W4'].map((tag) => idOf(schedule, 'runs', tag));
    const plan = moveDevices(schedule, { devices: idsOf(schedule, ['D9', 'D10']), runs, to: L2 });
    expect(plan.staying).toEqual({ devices: idsOf(schedule, ['D10']), runs: [runs[1]] });
    expect(plan.runs).toEqual([runs[0]]);
    schedule.act('', plan.changes);
    expect(cellsOf(schedule, 'runs')[3]).toEqual({ run: 'W4', rail: 'L9' });
  });

  test('of a run of which some rows move, nothing is guessed', () => {
    const schedule = panel();
    const plan = moveDevices(schedule, { devices: idsOf(schedule, ['D1', 'D9']), to: L2 });
    expect(plan).toMatchObject({
      isDecided: false, changes: [], partly: [{ run: 0, moving: [0], staying: [1], others: ['W4'] }], shared: [],
    });
  });

  test('it moves whole: then its way, which feeds others too, has to be decided', () => {
    const schedule = panel();
    const partly = new Map<number, PartlyFate>([[0, 'whole']]);
    const open = moveDevices(schedule, { devices: [0], to: L2, partly });
    expect(open).toMatchObject({ isDecided: false, changes: [], shared: [{ way: 0, moving: [0], staying: [1] }] });
    const plan = moveDevices(schedule, { devices: [0], to: L2, partly, ways: new Map<number, WayFate>([[0, 'new']]) });
    schedule.act('', plan.changes);
    // The new way is like F1 (B, 2 × 2 A), with the next tag of its rail; D1 and W1 follow it, D2 says its rail itself.
    expect(cellsOf(schedule, 'ways').at(-1)).toEqual({ way: 'L2-F2', rail: 'L2', kind: 'B', rated: 4 });
    expect(cellsOf(schedule, 'runs')[0]).toEqual({ run: 'W1', way: 'L2-F2', branch: 'B1' });
    expect(cellsOf(schedule, 'devices').slice(0, 2).map(({ rail }) => rail)).toEqual([undefined, 'L2']);
    expect([0, 1].map((id) => schedule.value('devices', id, 'rail'))).toEqual(['L2', 'L2']);
    expect(cellsOf(schedule, 'ways')[0]).toMatchObject({ rail: 'L1' });
  });

  test.each([
    ['a way that is there', { way: 'L2-F1' }, { run: 'W1', way: 'L2-F1', branch: 'B1' }],
    ['no way', 'none', { run: 'W1', branch: 'B1', rail: 'L2' }],
  ] as const)('or it gets %s', (_name, fate, expected) => {
    const schedule = panel();
    const plan = moveDevices(schedule, { devices: [0, 1], to: L2, ways: new Map<number, WayFate>([[0, fate]]) });
    schedule.act('', plan.changes);
    expect(cellsOf(schedule, 'runs')[0]).toEqual(expected);
    expect(schedule.value('devices', 0, 'rail')).toBe('L2');
  });

  test('or the rows go on another run, where their distance is not known', () => {
    const schedule = panel();
    const plan = moveDevices(schedule, { devices: [0], to: L2, partly: new Map<number, PartlyFate>([[0, { run: 'W4' }]]) });
    schedule.act('', plan.changes);
    expect(cellsOf(schedule, 'devices')[0]).toEqual({ ref: 'D1', type: 'Lamp', qty: 1, run: 'W4', branch: 'B1' });
    expect(schedule.value('devices', 0, 'rail')).toBe('L2');
    expect(cellsOf(schedule, 'runs')[0]).toEqual({ run: 'W1', way: 'F1', branch: 'B1' });
  });

  test('runs move by themselves too, and what is there already changes nothing', () => {
    const schedule = panel();
    expect(moveDevices(schedule, { devices: [], runs: [0, 1], to: L2 })).toMatchObject({
      isDecided: true, devices: [0, 1, 2], ways: [0],
    });
    expect(moveDevices(schedule, { devices: [], runs: [3], to: L2 })).toMatchObject({ isDecided: true, changes: [] });
    // Nor does it count among what moves.
    const all = schedule.rows('devices').map(({ id }) => id);
    expect(moveDevices(schedule, { devices: all, to: { sheet: 'supplies', tag: 'L1' } }))
      .toMatchObject({ devices: [], isDecided: true, changes: [] });
  });

  test('a rail that is not there is a fault of the caller', () => {
    expect(() => moveDevices(panel(), { devices: [0], to: { sheet: 'supplies', tag: 'L9' } })).toThrow(RangeError);
  });
});

test('to another branch: the run goes with its rows that are nodes, its rail and way stay', () => {
  const schedule = panel();
  const plan = moveDevices(schedule, { devices: idsOf(schedule, ['D1', 'D4', 'D3']), to: { sheet: 'branches', tag: 'B2' } });
  // D2 of the same run is on no branch; W3 belongs to none, D3 neither.
  expect(plan).toMatchObject({ isDecided: true, partly: [], shared: [], runs: [0], ways: [], devices: [0, 3] });
  schedule.act('', plan.changes);
  expect(cellsOf(schedule, 'runs').map(({ branch }) => branch ?? null)).toEqual(['B2', null, null, null]);
  expect(cellsOf(schedule, 'devices').map(({ branch }) => branch ?? null)).toEqual(['B2', null, null, 'B2', null, null]);
  expect(cellsOf(schedule, 'runs')[0]).toMatchObject({ way: 'F1' });
});

test('forty rows moved with their runs raise none of the findings that moving the rows alone raises', () => {
  const places = ['W1', 'W2', 'W3', 'W4'];
  const content: Content = {
    details: {},
    sheets: {
      types: [{ type: 'Lamp', draw: 50, nodes: 0, minVoltage: 20, maxVoltage: 30 }],
      conductors: [{ conductor: '2.5', size: 2.5, resistance: 7.41, maxCurrent: 23 }],
      supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }],
      ways: places.map((run) => ({ way: `F-${run}`, rail: 'L1', kind: 'electronic', rated: 2 })),
      runs: places.map((run) => ({ run, rail: 'L1', way: `F-${run}`, conductor: '2.5', length: 20 })),
      devices: Array.from({ length: 40 }, (_, at) =>
        ({ ref: `D${at}`, type: 'Lamp', qty: 1, rail: 'L1', run: places[at % 4]!, distance: 10 })),
    },
  };
  const schedule = new LoadSchedule(content);
  const devices = schedule.rows('devices').map(({ id }) => id);
  const alone = devices.map((id) => ({ op: 'set', sheet: 'devices', id, key: 'rail', value: 'L2' }) as const);
  const came = (changes: Parameters<typeof tryChanges>[1]) => tryChanges(schedule, changes).findings.filter(({ kind }) => kind === 'came');
  expect(came(alone).length).toBeGreaterThan(0);
  const { changes } = moveDevices(schedule, { devices, to: L2 });
  expect(came(changes)).toEqual([]);
  schedule.act('', changes);
  expect(['L1', 'L2'].map((tag) => schedule.value('supplies', idOf(schedule, 'supplies', tag), 'demand'))).toEqual([0, expect.closeTo(2, 1)]);
});

describe('whatever is moved', () => {
  const rail = fc.constantFrom('L1', 'L2', 'L3');
  const maybe = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null });
  const someSheets = fc.record({
    ways: fc.array(fc.record({ rail: maybe(rail) }), { maxLength: 4 }),
    runs: fc.array(fc.record({ rail: maybe(rail), way: maybe(fc.nat(3)) }), { maxLength: 5 }),
    devices: fc.array(fc.record({ rail: maybe(rail), run: maybe(fc.nat(4)) }), { maxLength: 12 }),
  }).map(({ ways, runs, devices }) => {
    const filled = (cells: Record<string, unknown>) =>
      Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== null)) as Cells;
    const named = (stem: string, at: number | null) => (at === null ? null : `${stem}${at}`);
    return {
      supplies: ['L1', 'L2', 'L3'].map((tag) => ({ rail: tag, rated: 5 })),
      ways: ways.map((cells, at) => filled({ way: `F${at}`, kind: 'B', rated: 4, ...cells })),
      runs: runs.map((cells, at) => filled({ run: `W${at}`, ...cells, way: named('F', cells.way) })),
      devices: devices.map((cells, at) => filled({ ref: `D${at}`, qty: 1, ...cells, run: named('W', cells.run) })),
    };
  });
  type Sheets = Record<'ways' | 'runs' | 'devices', readonly Cells[]>;
  const find = (rows: readonly Cells[], key: string, tag: unknown) =>
    (tag === undefined ? undefined : rows.find((row) => row[key] === tag));
  /** The rail of a run, and of a device row, from what is entered alone. */
  const railOfRun = ({ ways }: Sheets, run: Cells | undefined) => run && (run.rail ?? find(ways, 'way', run.way)?.rail);
  const railOf = (sheets: Sheets, device: Cells) => device.rail ?? railOfRun(sheets, find(sheets.runs, 'run', device.run));

  test('what moves is on the target with its run and way, what stays is as it was, undo gives all back', () => {
    const chosen = fc.record({
      sheets: someSheets, picked: fc.func(fc.boolean()), whole: fc.boolean(),
      way: fc.constantFrom<WayFate>('new', 'none'),
    });
    fc.assert(fc.property(chosen, ({ sheets, picked, whole, way }) => {
      const schedule = new LoadSchedule({ details: {}, sheets });
      const before = schedule.content();
      const devices = schedule.rows('devices').map(({ id }) => id).filter((id) => picked(id));
      const [partly, ways] = [new Map<number, PartlyFate>(), new Map<number, WayFate>()];
      const planned = () => moveDevices(schedule, { devices, to: { sheet: 'supplies', tag: 'L3' }, partly, ways });
      for (const { run, others } of planned().partly) {
        partly.set(run, whole || others.length === 0 ? 'whole' : { run: others[0]! });
      }
      for (const shared of planned().shared) ways.set(shared.way, way);
      const plan = planned();
      expect(plan.isDecided).toBe(true);
      schedule.act('Move', plan.changes);
      const after = schedule.content().sheets as Sheets;
      // Nothing is lost: as many rows, under the same tags, ways may be more.
      expect(after.devices.map(({ ref }) => ref)).toEqual(sheets.devices.map(({ ref }) => ref));
      expect(after.runs.map(({ run }) => run)).toEqual(sheets.runs.map(({ run }) => run));
      const tagsOf = (rows: readonly Cells[]) => rows.map((each) => each.way);
      expect(tagsOf(after.ways.slice(0, sheets.ways.length))).toEqual(tagsOf(sheets.ways));
      const moved = new Set(plan.devices);
      sheets.devices.forEach((device, id) => {
        if (moved.has(id)) {
          expect(railOf(after, after.devices[id]!)).toBe('L3');
          const run = find(after.runs, 'run', after.devices[id]!.run);
          // Its run is on the target as well, unless it is on none at all.
          if (railOfRun(after, run) !== undefined) expect(railOfRun(after, run)).toBe('L3');
        } else expect(after.devices[id]).toEqual(device);
      });
      for (const id of devices) if (!['L3', undefined].includes(railOf(sheets, sheets.devices[id]!) as string | undefined)) expect(moved.has(id)).toBe(true);
      sheets.runs.forEach((run, id) => {
        if (!plan.runs.includes(id)) { expect(after.runs[id]).toEqual(run); return; }
        expect(railOfRun(after, after.runs[id])).toBe('L3');
        const [was, is] = [find(sheets.ways, 'way', run.way), find(after.ways, 'way', after.runs[id]!.way)];
        if (is?.rail !== undefined && was?.rail !== undefined) expect(is.rail).toBe('L3');
      });
      schedule.undo();
      expect(schedule.content()).toEqual(before);
      schedule.dispose();
    }), { numRuns: 150 });
  });
});
