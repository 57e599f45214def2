import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { belongingRows, duplicateRows, DUPLICATED, proposeRenamings, renamedTag, type DuplicateOf } from '../../src/rework/index.ts';
import { beginsWith, begunOtherwise, nextText } from '../../src/rework/renamed.ts';
import { inputColumns, SCHEMA, tagOf, type Cells, type SheetName } from '../../src/schedule/index.ts';
import { belongingToSupply } from '../support/independent-copies.ts';

const cellsOf = (schedule: LoadSchedule, sheet: SheetName) => schedule.rows(sheet).map(({ cells }) => cells);
const idOf = (schedule: LoadSchedule, sheet: SheetName, tag: string) =>
  schedule.rows(sheet).find((row) => tagOf(sheet, row) === tag)!.id;
const supply = (schedule: LoadSchedule, tag: string): DuplicateOf => ({ sheet: 'supplies', ids: [idOf(schedule, 'supplies', tag)] });

/** L1 with two ways, one of them spare, a run, three lamps, a relay on a module of its own; L2 shares the branch B1. */
const panel = () => new LoadSchedule({
  details: {},
  sheets: {
    types: [{ type: 'Lamp', draw: 100, nodes: 1 }],
    enclosures: [{ enclosure: 'KP-1' }],
    supplies: [{ rail: 'L1', rated: 10, enclosure: 'KP-1', measuredVoltage: 24.1 }, { rail: 'L2', rated: '=[supplies.rated@L1]' }],
    branches: [{ branch: 'B1', limit: 50 }, { branch: 'B2', limit: 50 }],
    ways: [{ way: 'L1-F1', rail: 'L1', kind: 'B', rated: 4 }, { way: 'L1-F2', rail: 'L1' }],
    runs: [{ run: 'L1-W1', way: 'L1-F1', branch: 'B2', length: 20, measuredCurrent: 0.3 }],
    devices: [
      { ref: 'L1-001', area: 'Level 1, hall', type: 'Lamp', group: 'hall', qty: 2, run: 'L1-W1', branch: 'B2', source: 'a.csv: 3', distance: 4 },
      { ref: 'L1-002', area: 'Level 1', type: 'Lamp', qty: '=[devices.qty@L1-001]*2', run: 'L1-W1', branch: 'B2' },
      { ref: 'Spot', area: 'Level 10', type: 'Lamp', qty: '=SUM([devices.qty@L1-001:@L1-002])', rail: 'L1', branch: 'B1' },
      { ref: 'L2-001', area: 'Level 1', type: 'Lamp', qty: 1, rail: 'L2', branch: 'B1' },
    ],
    modules: [{ module: 'K1' }],
    outputs: [{ output: 'K1.1', module: 'K1', kind: 'dc', rail: 'L1', power: 12 }],
  },
  accepted: [{ sheet: 'supplies', tag: 'L1', rule: 'any', reason: 'r', name: 'n', date: '2026-01-01', value: 1 }],
});

/** W1 has F1 and F2 as its ways, F2 feeds W2 too; W3, with nothing on it yet, names F3 and, second, F2. */
const twoWays = () => new LoadSchedule({
  details: {},
  sheets: {
    types: [{ type: 'Lamp', draw: 100 }],
    supplies: [{ rail: 'L1', rated: 10 }],
    ways: [{ way: 'F1', rail: 'L1' }, { way: 'F2', rail: 'L1' }, { way: 'F3', rail: 'L1' }],
    runs: [{ run: 'W1', way: 'F1', secondWay: 'F2' }, { run: 'W2', way: 'F2' }, { run: 'W3', way: 'F3', secondWay: 'F2' }],
    devices: [
      { ref: 'D1', type: 'Lamp', qty: 1, run: 'W1' }, { ref: 'D2', type: 'Lamp', qty: 1, run: 'W2' },
      { ref: 'D3', type: 'Lamp', qty: 1, rail: 'L1' },
    ],
  },
});

describe('a way', () => {
  test.each([
    // All of F1 hangs on F2 as well, and so does W3, which has nothing on it; L1 has D3 besides, and F3 nothing.
    ['F2', { ways: ['F1', 'F2'], runs: ['W1', 'W2', 'W3'], devices: ['D1', 'D2'] }],
    // D2 is on F2 alone.
    ['F1', { ways: ['F1'], runs: ['W1'], devices: ['D1'] }],
  ])('%s goes with the runs that name it first or second', (tag, expected) => {
    const schedule = twoWays();
    const found = belongingRows(schedule, { sheet: 'ways', ids: [idOf(schedule, 'ways', tag)] });
    const tags = (sheet: 'supplies' | 'ways' | 'runs' | 'devices') => found[sheet].map((id) => tagOf(sheet, schedule.document.row(sheet, id)!));
    expect({ ways: tags('ways'), runs: tags('runs'), devices: tags('devices') }).toEqual(expected);
    expect(tags('supplies')).toEqual([]);
  });

  test('asked for twice it belongs once', () => {
    const schedule = twoWays();
    const id = idOf(schedule, 'ways', 'F1');
    expect(belongingRows(schedule, { sheet: 'ways', ids: [id, id] })).toEqual(belongingRows(schedule, { sheet: 'ways', ids: [id] }));
  });
});

describe('a supply', () => {
  test('goes with all that hangs on it alone, under tags that follow; what others share stays shared', () => {
    const schedule = panel();
    const of = supply(schedule, 'L1');
    const { tags, area } = proposeRenamings(schedule, of);
    expect({ tags, area }).toEqual({
      // Level 10 has another beginning than Level 1, so nothing is proposed for the areas.
      tags: [{ from: 'L1', to: 'L3' }, { from: 'B2', to: 'B3' }, { from: 'K1', to: 'K2' }], area: undefined,
    });
    const { rows, changes } = duplicateRows(schedule, { of, tags, area: { from: 'Level 1', to: 'Level 2' } });
    expect(rows.map(({ sheet, from, to }) => `${sheet} ${from} ${to}`)).toEqual([
      'supplies L1 L3', 'ways L1-F1 L3-F1', 'ways L1-F2 L3-F2', 'branches B2 B3', 'runs L1-W1 L3-W1',
      'devices L1-001 L3-001', 'devices L1-002 L3-002', 'devices Spot Spot 2', 'modules K1 K2', 'outputs K1.1 K2.1',
    ]);
    const before = schedule.content();
    schedule.act('Copy', changes);
    expect(schedule.content().sheets.supplies!.at(-1)).toEqual({ rail: 'L3', rated: 10, enclosure: 'KP-1' });
    expect(schedule.content().sheets.runs!.at(-1)).toEqual({ run: 'L3-W1', way: 'L3-F1', branch: 'B3', length: 20 });
    expect(schedule.content().sheets.devices!.slice(4)).toEqual([
      { ref: 'L3-001', area: 'Level 2, hall', type: 'Lamp', group: 'hall', qty: 2, run: 'L3-W1', branch: 'B3', distance: 4 },
      { ref: 'L3-002', area: 'Level 2', type: 'Lamp', qty: '=[devices.qty@L3-001]*2', run: 'L3-W1', branch: 'B3' },
      { ref: 'Spot 2', area: 'Level 10', type: 'Lamp', qty: '=SUM([devices.qty#5:#6])', rail: 'L3', branch: 'B1' },
    ]);
    expect(schedule.content().sheets.outputs!.at(-1)).toEqual({ output: 'K2.1', module: 'K2', kind: 'dc', rail: 'L3', power: 12 });
    expect(schedule.content().accepted).toEqual(before.accepted);
    // 2 + 4 + 6 lamps of 0.1 A and 12 W ÷ 24 V, on both of them.
    for (const rail of ['L1', 'L3']) {
      expect(schedule.value('supplies', idOf(schedule, 'supplies', rail), 'demand')).toBeCloseTo(1.7, 9);
    }
    schedule.undo();
    expect(schedule.content()).toEqual(before);
  });

  test('a tag that rows name already, though no row has it, is passed over, and refused where it was chosen', () => {
    const schedule = new LoadSchedule({
      details: {}, sheets: { supplies: [{ rail: 'L1' }], devices: [{ ref: 'D1', rail: 'L2', qty: 1 }] },
    });
    const of = supply(schedule, 'L1');
    expect(proposeRenamings(schedule, of).tags).toEqual([{ from: 'L1', to: 'L3' }]);
    expect(duplicateRows(schedule, { of, tags: [{ from: 'L1', to: 'L2' }] }))
      .toEqual({ rows: [{ sheet: 'supplies', id: 0, from: 'L1', to: 'L2', problem: 'named' }], changes: [] });
  });

  test('a tag that exists is refused with its row, one that two copies get, and an empty one', () => {
    const schedule = panel();
    const problems = (tags: { from: string; to: string }[], chosen: [string, string][] = []) =>
      duplicateRows(schedule, { of: supply(schedule, 'L1'), tags, chosen: new Map(chosen) });
    const taken = problems([{ from: 'L1', to: 'L2' }]);
    expect(taken.changes).toEqual([]);
    expect(taken.rows.filter(({ problem }) => problem !== undefined)).toEqual([
      { sheet: 'supplies', id: 0, from: 'L1', to: 'L2', problem: 'taken', takenBy: 2 },
      { sheet: 'devices', id: 0, from: 'L1-001', to: 'L2-001', problem: 'taken', takenBy: 4 },
    ]);
    const others = problems([{ from: 'L1', to: 'L3' }], [['ways 0', 'X'], ['ways 1', 'X'], ['runs 0', ' ']]);
    expect(others.rows.filter(({ problem }) => problem !== undefined)).toEqual([
      { sheet: 'ways', id: 1, from: 'L1-F2', to: 'X', problem: 'twice' }, { sheet: 'runs', id: 0, from: 'L1-W1', to: '', problem: 'missing' },
    ]);
    const chosen = problems([{ from: 'L1', to: 'L3' }], [['ways 0', 'X1']]);
    schedule.act('', chosen.changes);
    expect(cellsOf(schedule, 'runs').at(-1)).toMatchObject({ way: 'X1' });
  });
});

test('some rows of an area are more of the same there; all of them go on to the next area', () => {
  const schedule = new LoadSchedule({
    details: {}, sheets: { devices: [{ ref: 'D1', area: 'Level 1, hall' }, { ref: 'D2', area: 'Level 1' }, { ref: 'D3', area: 'Level 10' }] },
  });
  const area = (...ids: readonly number[]) => proposeRenamings(schedule, { sheet: 'devices', ids }).area;
  expect(area(0)).toBeUndefined();
  expect(area(0, 1)).toEqual({ from: 'Level 1', to: 'Level 2' });
  expect(area(2)).toEqual({ from: 'Level 10', to: 'Level 11' });
});

describe('an area', () => {
  test('takes its devices, and what has no others: runs, ways, supplies, branches', () => {
    const schedule = panel();
    const of = { area: 'Level 1' };
    // The spot on Level 10 is on L1 and B1 as well, so that these stay, and with L1 its spare way.
    expect(belongingRows(schedule, of)).toEqual({
      supplies: [1], ways: [0], branches: [1], runs: [0], devices: [0, 1, 3], modules: [], outputs: [],
    });
    const proposed = proposeRenamings(schedule, of);
    expect(proposed).toEqual({ tags: [{ from: 'L2', to: 'L3' }, { from: 'B2', to: 'B3' }], area: { from: 'Level 1', to: 'Level 2' } });
    schedule.act('', duplicateRows(schedule, { of, ...proposed }).changes);
    expect(schedule.content().sheets.devices!.slice(4)).toMatchObject([
      // L1 stays, so that the tags that bear it go on.
      { ref: 'L1-003', area: 'Level 2, hall', run: 'L1-W2', branch: 'B3' },
      { ref: 'L1-004', area: 'Level 2', run: 'L1-W2', branch: 'B3' },
      { ref: 'L3-001', area: 'Level 2', rail: 'L3', branch: 'B1' },
    ]);
    expect(cellsOf(schedule, 'ways').at(-1)).toMatchObject({ way: 'L1-F3', rail: 'L1' });
  });

  test('a word or a number does not end within its beginning', () => {
    expect(['Level 1', 'Level 1, hall', 'Level 1.02', 'Level 10', 'Levels'].filter((area) => beginsWith(area, 'Level 1')))
      .toEqual(['Level 1', 'Level 1, hall', 'Level 1.02']);
    expect(['0.01 Foyer', '10.05'].filter((area) => beginsWith(area, '0.'))).toEqual(['0.01 Foyer']);
    expect(beginsWith('Hall', '')).toBe(false);
    expect(begunOtherwise('Level 1, near Level 1', { from: 'Level 1', to: 'Level 2' })).toBe('Level 2, near Level 1');
    expect(nextText('Level 1', (text) => text === 'Level 2')).toBe('Level 3');
    expect(nextText('L09 east', () => false)).toBe('L10 east');
    expect(nextText('Hall', () => false)).toBe('Hall 2');
  });
});

describe('tags', () => {
  test.each([
    ['L1-001', [['L1', 'L3']], 'L3-001'], ['L10-001', [['L1', 'L3']], 'L10-001'], ['XL1', [['L1', 'L3']], 'XL1'],
    ['L1-L2', [['L1', 'L2'], ['L2', 'L1']], 'L2-L1'], ['L1-W1', [['L1', 'L3'], ['L1-W', 'M']], 'M1'],
    ['L1-W1', [['L1', 'L3'], ['L1-W1', 'M1']], 'M1'], ['K1.1', [['K1.', 'K9.']], 'K9.1'], ['a+b(c)', [['+b(', '$&']], 'a$&c)'],
    ['L1', [['', 'x']], 'L1'], ['L1', [], 'L1'],
  ] as const)('%s with %j becomes %s', (tag, renamings, expected) => {
    expect(renamedTag(tag, renamings.map(([from, to]) => ({ from, to })))).toBe(expected);
  });
});

describe('whatever is duplicated', () => {
  const maybe = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: undefined });
  const filled = (cells: Record<string, unknown>) =>
    Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== undefined)) as Cells;
  const rail = fc.constantFrom('L1', 'L2');
  const branch = fc.constantFrom('B1', 'B2');
  const someSheets = fc.record({
    ways: fc.array(fc.record({ rail: maybe(rail) }), { maxLength: 3 }),
    runs: fc.array(fc.record({ rail: maybe(rail), way: maybe(fc.constantFrom('F0', 'F1', 'F2')), branch: maybe(branch) }), { maxLength: 4 }),
    devices: fc.array(fc.record({
      rail: maybe(rail), branch: maybe(branch), run: maybe(fc.constantFrom('W0', 'W1', 'W2', 'W3')), type: maybe(fc.constant('Lamp')),
      qty: fc.oneof(
        { arbitrary: fc.nat(9), weight: 12 },
        { arbitrary: fc.constantFrom('=[devices.qty#1]+1', '=SUM([devices.qty#1:#2])'), weight: 1 },
      ),
    }), { minLength: 2, maxLength: 8 }),
    outputs: fc.array(fc.record({ module: maybe(fc.constantFrom('K1', 'K2')), rail: maybe(rail) }), { maxLength: 3 }),
  }).map(({ ways, runs, devices, outputs }) => ({
    types: [{ type: 'Lamp', draw: 100, nodes: 1 }],
    supplies: [{ rail: 'L1', rated: 5 }, { rail: 'L2', rated: 5 }], branches: [{ branch: 'B1', limit: 9 }, { branch: 'B2', limit: 9 }],
    modules: [{ module: 'K1' }, { module: 'K2' }],
    ways: ways.map((cells, at) => filled({ way: `F${at}`, ...cells })),
    runs: runs.map((cells, at) => filled({ run: `W${at}`, ...cells })),
    // The first row holds a number, so that no formula goes round.
    devices: devices.map((cells, at) => filled({ ref: `L1-${at}`, ...cells, qty: at < 2 ? 3 : cells.qty })),
    outputs: outputs.map((cells, at) => filled({ output: `Q${at}`, kind: 'dc', power: 2.4, ...cells })),
  }));

  test('what belongs is copied once, references among it follow, all else is as it was, undo gives all back', () => {
    fc.assert(fc.property(someSheets, (sheets) => {
      const schedule = new LoadSchedule({ details: {}, sheets });
      const before = schedule.content();
      const of = supply(schedule, 'L1');
      const belonging = belongingToSupply(sheets, 'L1');
      expect(belongingRows(schedule, of)).toEqual(belonging);
      const { rows, changes } = duplicateRows(schedule, { of, ...proposeRenamings(schedule, of) });
      schedule.act('Copy', changes);
      const tagOfCopy = new Map(rows.map(({ sheet, from, to }) => [`${sheet} ${from}`, to]));
      for (const sheet of DUPLICATED) {
        const [old, all] = [sheets[sheet] as readonly Cells[], cellsOf(schedule, sheet)];
        expect(all.length).toBe(old.length + belonging[sheet]!.length);
        expect(schedule.content().sheets[sheet]?.slice(0, old.length) ?? []).toEqual(before.sheets[sheet] ?? []);
        expect(new Set(all.map((cells) => cells[SCHEMA[sheet].tag])).size).toBe(all.length);
        belonging[sheet]!.forEach((place, index) => {
          for (const { key, to } of inputColumns(sheet)) {
            if (to === undefined) continue;
            const was = old[place]![key];
            expect(all[old.length + index]![key])
              .toBe(was === undefined ? undefined : tagOfCopy.get(`${to} ${String(was)}`) ?? was);
          }
        });
      }
      // The copy of the supply is asked for what the original is.
      const [original, copy] = [schedule.rows('supplies')[0]!.id, schedule.rows('supplies')[2]!.id];
      expect(schedule.value('supplies', copy, 'rail')).toBe('L3');
      const demands = [original, copy].map((id) => schedule.value('supplies', id, 'connected'));
      // Formulas read the first two rows, or the copies of these, which hold the same.
      if (demands[0] !== null) expect(demands[1]).toBeCloseTo(Number(demands[0]), 9);
      schedule.undo();
      expect(schedule.content()).toEqual(before);
      schedule.dispose();
    }), { numRuns: 80 });
  });
});
