import { describe, expect, test } from 'vitest';
import { leftOutSentence, noteSentence, readSharing, shareOut } from '../../src/allocation/index.ts';
import { piecesOf } from '../../src/allocation/sharing/pieces.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';
import { quantitiesOn, quantity, shareAndApply } from './support.ts';

const sensor: Cells = { type: 'Sensor', purpose: 'control', draw: 100, nodes: 1 };
const lamp: Cells = { type: 'Lamp', purpose: 'lighting', draw: 500, nodes: 0 };

/** Tags that the rows of an area are on. */
function tagsByArea(
  placements: readonly { row: number; tag: string }[], devices: readonly Cells[]
): Record<string, string[]> {
  const areas: Record<string, Set<string>> = {};
  for (const { row, tag } of placements) (areas[String(devices[row]!.area)] ??= new Set()).add(tag);
  return Object.fromEntries(Object.entries(areas).map(([area, tags]) => [area, [...tags].sort()]));
}

describe('sharing out over branches', () => {
  test('fills up to the limit less the reserve, splits a row and makes branches like the last', async () => {
    const schedule = scheduleOf({
      types: [sensor], branches: [{ branch: 'B09', limit: 50, reserve: 0.1, terminated: true, note: 'Basement' }],
      devices: [{ ref: 'D1', type: 'Sensor', qty: 100, area: 'Hall' }],
    });
    const before = schedule.content();
    const sharing = await shareAndApply(schedule, { over: 'branches' });
    // 50 less 10 % is 45; 100 ÷ 45 asks for 3.
    expect(sharing).toMatchObject({ used: 3, lowerBound: 3, proven: true, leftOut: [] });
    expect(schedule.content().sheets.branches).toEqual([
      { branch: 'B09', limit: 50, reserve: 0.1, terminated: true, note: 'Basement' },
      { branch: 'B10', limit: 50, reserve: 0.1 }, { branch: 'B11', limit: 50, reserve: 0.1 },
    ]);
    expect(schedule.content().sheets.devices!.map(({ ref, qty, branch }) => [ref, qty, branch])).toEqual([
      ['D1', 45, 'B09'], ['D1/2', 45, 'B10'], ['D1/3', 10, 'B11'],
    ]);
    expect(schedule.undo()).toBe('Sharing out');
    expect(schedule.content()).toEqual(before);
  });

  test('new branches are made like the last whose limit is known', async () => {
    const schedule = scheduleOf({
      types: [sensor], branches: [
        { branch: 'B1', limit: 32 }, { branch: 'B2' },
      ], devices: [{ type: 'Sensor', qty: 60 }],
    });
    const { notes } = await shareAndApply(schedule, { over: 'branches' });
    expect(quantitiesOn(schedule, 'branches')).toEqual({ B1: 32, B2: 0, B3: 28 });
    expect(notes.map((note) => noteSentence(note, ENGLISH)))
      .toEqual(['Branch B2 has no known limit, so nothing is put on it.']);
  });

  test('that the current of a bus is not heeded is said of each branch that has a limit of it', async () => {
    const schedule = scheduleOf({
      types: [sensor], branches: [{ branch: 'B1', limit: 32, busCurrent: 0.25 }, { branch: 'B2', limit: 32 }],
      devices: [{ type: 'Sensor', qty: 40 }],
    });
    const { notes } = await shareOut(readSharing(schedule, { over: 'branches' }));
    expect(notes.map((note) => noteSentence(note, ENGLISH))).toEqual([
      'What the supply of the bus of branch B1 gives is not heeded: only nodes are shared out. See its status afterwards.',
    ]);
  });

  test('what a branch without a limit may carry is not known, and is not 0', async () => {
    const schedule = scheduleOf({
      types: [sensor], branches: [{ branch: 'B1' }, { branch: 'B2', limit: 10 }],
      devices: [{ type: 'Sensor', qty: 4, branch: 'B1' }, { type: 'Sensor', qty: 6 }],
    });
    const { fillings } = await shareOut(readSharing(schedule, { over: 'branches', keepPlaced: true }));
    expect(fillings.map(({ tag, capacity, kept, placed }) => [tag, capacity, kept, placed]))
      .toEqual([['B1', null, 4, 0], ['B2', 10, 0, 6]]);
  });

  test.each<[string, Cells[]]>(
    [['there is no branch', []], ['no branch has a limit', [{ branch: 'B1' }, { branch: 'B2', limit: '=1/0' }]]]
  )(
    'where %s nothing is shared out, no limit is made up, and every device has the same reason',
      async (_case, branches) => {
      const schedule = scheduleOf({
        types: [sensor, lamp], branches, devices: [
          { type: 'Sensor', qty: 60 }, { type: 'Sensor', qty: 2 }, { type: 'Lamp', qty: 1 },
        ],
      });
      const { added, placements, leftOut, notes, used, proven } = await shareAndApply(schedule, { over: 'branches' });
      expect({ added, placements, notes, used, proven })
        .toEqual({ added: [], placements: [], notes: [], used: 0, proven: false });
      expect(leftOut.map(({ row, code }) => [row, code])).toEqual([
        [0, 'nothing-to-share-over'], [1, 'nothing-to-share-over'], [2, 'takes-none'],
      ]);
      expect(leftOutSentence('branches', leftOut[0]!, ENGLISH))
        .toBe(
          'No branch has a known limit. Enter the most nodes that a branch may carry, or the standard of the bus, such as TIA-485-A; further branches are made like it.'
        );
    });

  test('a row that stays whole and is larger than a branch is left out, with the reason', async () => {
    const schedule = scheduleOf({
      types: [sensor], branches: [{ branch: 'B1', limit: 20 }],
      devices: [{ ref: 'D1', type: 'Sensor', qty: 21, branch: 'B1' }, { ref: 'D2', type: 'Sensor', qty: 20 }],
    });
    const { placements, leftOut } = await shareAndApply(schedule, { over: 'branches', wholeRows: true });
    expect(placements).toMatchObject([{ row: 1, ref: 'D2', tag: 'B1', qty: 20 }]);
    expect(leftOut).toMatchObject([{ row: 0, ref: 'D1', qty: 21, code: 'too-large' }]);
    expect(leftOutSentence('branches', leftOut[0]!, ENGLISH))
      .toBe('The row takes 21 nodes; a branch has capacity for 20 nodes at most. Split the row, or enter a larger branch.');
    expect(valueAt(schedule, 'branches', 0, 'nodes')).toBe(20);
  });

  test('what has no known quantity or nodes is left out and named; what takes no nodes needs no branch', async () => {
    const schedule = scheduleOf({
      types: [sensor, lamp], branches: [{ branch: 'B1', limit: 40 }],
      devices: [{ type: 'Sensor' }, { qty: 3 }, { type: 'Lamp', qty: 4 }, { type: 'Sensor', qty: 5 }, {}],
    });
    const { leftOut, placements } = await shareOut(readSharing(schedule, { over: 'branches' }));
    expect(leftOut.map(({ row, code, qty }) => [row, code, qty])).toEqual([
      [0, 'quantity-unknown', null], [1, 'size-unknown', 3], [2, 'takes-none', 4],
    ]);
    expect(placements.map(({ row, qty }) => [row, qty])).toEqual([[3, 5]]);
  });

  test('rows that a formula works on, or whose quantity one works out, are not split', async () => {
    const schedule = scheduleOf({
      types: [sensor], branches: [{ branch: 'B1', limit: 10 }],
      devices: [
        { type: 'Sensor', qty: 4 }, { type: 'Sensor', qty: 7 }, { type: 'Sensor', qty: 5 }, { type: 'Sensor', qty: 4 },
      ],
    });
    expect(typeFormula(schedule, 'devices', 1, 'qty', '=D1*2')).toBeUndefined();
    expect(typeFormula(schedule, 'devices', 2, 'diversity', '=1/SUM(D3:D4)')).toBeUndefined();
    // 4, 8, 5 and 4 in branches of 10: 21 asks for 3.
    expect(await shareAndApply(schedule, { over: 'branches' })).toMatchObject({ used: 3, proven: true });
    expect(schedule.rows('devices')).toHaveLength(4);
    expect(quantity(schedule)).toBe(21);
  });

  test('devices that have a place keep it, and their branches take on what still fits', async () => {
    const schedule = scheduleOf({
      types: [sensor], branches: [{ branch: 'B1', limit: 10 }, { branch: 'B2', limit: 10 }],
      devices: [
        { ref: 'D1', type: 'Sensor', qty: 4, branch: 'B2' }, { ref: 'D2', type: 'Sensor', qty: 6 },
      ],
    });
    const sharing = await shareOut(readSharing(schedule, { over: 'branches', keepPlaced: true }));
    expect(sharing).toMatchObject(
      { used: 1, proven: true, placements: [{ ref: 'D2', tag: 'B2', qty: 6 }], kept: [{ ref: 'D1' }] }
    );
  });

  test('nothing is added to a branch that keeps devices of unknown nodes', async () => {
    const schedule = scheduleOf({
      types: [sensor], branches: [{ branch: 'B1', limit: 40 }], devices: [
        { qty: 4, branch: 'B1' }, { type: 'Sensor', qty: 6 },
      ],
    });
    const { placements, notes } = await shareOut(readSharing(schedule, { over: 'branches', keepPlaced: true }));
    expect(placements).toMatchObject([{ tag: 'B2', qty: 6 }]);
    expect(notes.map((note) => noteSentence(note, ENGLISH)))
      .toEqual(['Branch B1 keeps devices whose nodes are not known, so nothing is added to it.']);
  });

  test('a new branch is not given a tag that something names already', async () => {
    const schedule = scheduleOf({
      types: [sensor], branches: [{ branch: 'B1', limit: 5 }], devices: [
        { type: 'Sensor', qty: 5 }, { type: 'Sensor', qty: 5 },
      ],
      runs: [{ run: 'W1', branch: 'B2' }],
    });
    const { added } = await shareOut(readSharing(schedule, { over: 'branches' }));
    expect(added.map(({ tag }) => tag)).toEqual(['B3']);
  });
});

describe('areas', () => {
  test('stay together where there is a way', async () => {
    // 12 + 8, 11 + 9 and 10 + 10 fill three branches of 20 exactly, and so do many others that part the areas.
    const devices = [12, 11, 10, 10, 9, 8].flatMap((qty, index) => [
      { area: `A${index}`, type: 'Sensor', qty: qty - 3 }, { area: `A${index}`, type: 'Sensor', qty: 3 },
    ]);
    const schedule = scheduleOf({ types: [sensor], branches: [{ branch: 'B1', limit: 20 }], devices });
    for (const wholeRows of [false, true]) {
      const sharing = await shareOut(readSharing(schedule, { over: 'branches', wholeRows }));
      expect(sharing).toMatchObject({ used: 3, proven: true });
      expect(Object.values(tagsByArea(sharing.placements, devices)).every((tags) => tags.length === 1)).toBe(true);
    }
  });

  test('are parted where keeping them together would cost a branch, and no more of them than need be', async () => {
    // Three areas of 14 in branches of 21: two branches hold 42 when one area is parted; together they would need
    // three.
    const devices = [0, 1, 2].map((index) => ({ area: `A${index}`, type: 'Sensor', qty: 14 }));
    const schedule = scheduleOf({ types: [sensor], branches: [{ branch: 'B1', limit: 21 }], devices });
    const sharing = await shareOut(readSharing(schedule, { over: 'branches' }));
    expect(sharing).toMatchObject({ used: 2, proven: true });
    const counts = Object.values(tagsByArea(sharing.placements, devices)).map((tags) => tags.length);
    expect(counts.sort()).toEqual([1, 1, 2]);
  });

  test('that are larger than a branch fill whole branches first', async () => {
    const devices = [{ area: 'Hall', type: 'Sensor', qty: 25 }, { area: 'Attic', type: 'Sensor', qty: 5 }];
    const schedule = scheduleOf({ types: [sensor], branches: [{ branch: 'B1', limit: 10 }], devices });
    const sharing = await shareOut(readSharing(schedule, { over: 'branches' }));
    expect(sharing).toMatchObject({ used: 3, proven: true });
    expect(tagsByArea(sharing.placements, devices).Attic).toHaveLength(1);
  });
});

describe('what is placed as one', () => {
  const row = (at: number, area: string | null, run: number | null, whole = false) =>
    ({ row: at, id: at, ref: null, area, qty: 2, each: 1, whole, run });
  const areasOf = (...rows: Parameters<typeof piecesOf>[0]) =>
    piecesOf(rows).map(({ area, size, count }) => [area, size, count]);

  test('has an area only where all of it has the same', () => {
    expect(areasOf(row(0, 'Hall', 7), row(1, 'Hall', 7))).toEqual([['Hall', 4, 1]]);
    expect(areasOf(row(0, 'Hall', 7), row(1, 'Attic', 7))).toEqual([[null, 4, 1]]);
    expect(areasOf(row(0, 'Hall', 7), row(1, 'Hall', 7), row(2, 'Attic', 7))).toEqual([[null, 6, 1]]);
    expect(areasOf(row(0, 'Hall', 7), row(1, null, 7))).toEqual([[null, 4, 1]]);
    expect(areasOf(row(0, null, 7), row(1, 'Hall', 7))).toEqual([[null, 4, 1]]);
    expect(areasOf(row(0, 'Hall', 7), row(1, 'Attic', 8))).toEqual([['Hall', 2, 1], ['Attic', 2, 1]]);
    expect(areasOf(row(0, 'Hall', null), row(1, 'Attic', null, true))).toEqual([['Hall', 1, 2], ['Attic', 2, 1]]);
  });
});

describe('sharing out over supplies', () => {
  test('purposes keep to supplies of their own, up to what may be used times the target, and the fuse', async () => {
    const schedule = scheduleOf({
      types: [sensor, lamp],
      supplies: [{ rail: 'L1', purpose: 'lighting', rated: 10, fuse: 6 }, { rail: 'C1', purpose: 'control', rated: 5 }],
      devices: [{ type: 'Lamp', qty: 20 }, { type: 'Sensor', qty: 60, diversity: 0.5 }],
    });
    const sharing = await shareAndApply(schedule, { over: 'supplies' });
    // 20 × 0.5 A = 10 A over fuses of 6 A: 2. 60 × 0.1 A × 0.5 = 3 A of 5 A × 80 % = 4 A: 1.
    expect(sharing).toMatchObject({ used: 3, lowerBound: 3, proven: true });
    expect(schedule.content().sheets.supplies).toEqual([
      { rail: 'L1', purpose: 'lighting', rated: 10, fuse: 6 }, { rail: 'C1', purpose: 'control', rated: 5 },
      { rail: 'L2', purpose: 'lighting', rated: 10, fuse: 6 },
    ]);
    expect(quantitiesOn(schedule, 'supplies')).toEqual({ L1: 12, L2: 8, C1: 60 });
    // C1 lives on diversity, which is said: 60 × 0.1 A = 6 A at once of the 5 A that may be used.
    expect(schedule.findings.filter(({ severity }) => severity === 'over' || severity === 'near'))
      .toEqual([expect.objectContaining({ rule: 'supply-lives-on-diversity-usable', tag: 'C1', value: 6, limit: 5 })]);
  });

  test('a supply without a purpose goes to the purpose that needs it', async () => {
    const schedule = scheduleOf({
      types: [sensor, lamp], supplies: [{ rail: 'R1', rated: 10 }],
      devices: [{ type: 'Lamp', qty: 4 }, { type: 'Sensor', qty: 4 }],
    });
    const sharing = await shareAndApply(schedule, { over: 'supplies' });
    expect(sharing).toMatchObject({ used: 2, lowerBound: 2, proven: true });
    expect(sharing.added).toHaveLength(1);
    expect(schedule.findings.filter(({ rule }) => rule.includes('purpose'))).toEqual([]);
  });

  test('of supplies without a purpose, each is counted for one purpose only when the least number is proven',
    async () => {
    // By hand, at a target of 80 %: 16 A of lighting take two of 10 A; 8 A of control two of 5 A, or the one of 10 A.
    const supplies: Cells[] = [
      {
        rail: 'L1', purpose: 'lighting', rated: 10,
      }, { rail: 'R1', rated: 10 }, { rail: 'C1', purpose: 'control', rated: 5 },
    ];
    const devices = [{ type: 'Lamp', qty: 32 }, { type: 'Sensor', qty: 80 }];
    const schedule = scheduleOf({ types: [sensor, lamp], supplies, devices });
    expect(await shareOut(readSharing(schedule, { over: 'supplies' })))
      .toMatchObject({ used: 3, lowerBound: 3, proven: true });
  });

  test('a type that gives its power is reckoned at the voltage of the supplies for its purpose', async () => {
    const schedule = scheduleOf({
      types: [{ type: 'Spot', purpose: 'lighting', power: 12 }], supplies: [
        { rail: 'L1', purpose: 'lighting', voltage: 12, rated: 10 },
      ],
      devices: [{ type: 'Spot', qty: 8 }],
    });
    // 12 W ÷ 12 V = 1 A; 8 A is just what 10 A at 80 % may carry.
    expect(await shareAndApply(schedule, { over: 'supplies' })).toMatchObject({ used: 1, proven: true });
    expect(valueAt(schedule, 'supplies', 0, 'loading')).toBe(0.8);
  });

  test('devices of another voltage are not moved to a rail that they would not stand', async () => {
    const schedule = scheduleOf({
      types: [lamp],
      supplies: [
        { rail: 'L1', purpose: 'lighting', rated: 10, voltage: 12 }, { rail: 'L2', purpose: 'lighting', rated: 10 },
      ],
      devices: [{ type: 'Lamp', qty: 2, rail: 'L1' }, { type: 'Lamp', qty: 2, rail: 'L2' }],
    });
    const { placements } = await shareOut(readSharing(schedule, { over: 'supplies' }));
    expect(placements.map(({ tag }) => tag)).toEqual(['L1', 'L2']);
  });

  test('devices of one run stay together, and the run goes with them', async () => {
    const schedule = scheduleOf({
      types: [lamp], runs: [{ run: 'W1', rail: 'L1' }, { run: 'W2', rail: 'L1' }],
      supplies: [{ rail: 'L1', purpose: 'lighting', rated: 5 }],
      devices: [
        { type: 'Lamp', qty: 3, rail: 'L1', run: 'W1' }, { type: 'Lamp', qty: 3, rail: 'L1', run: 'W2' },
        { type: 'Lamp', qty: 2, rail: 'L1', run: 'W1' }, { type: 'Lamp', qty: 2, rail: 'L1', run: 'W2' },
      ],
    });
    await shareAndApply(schedule, { over: 'supplies' });
    const rails = schedule.rows('devices').map(({ cells }) => cells.rail);
    expect(rails[0]).toBe(rails[2]);
    expect(rails[1]).toBe(rails[3]);
    expect(new Set(rails)).toEqual(new Set(['L1', 'L2']));
    expect(schedule.findings.filter(({ rule }) => rule === 'device-run-on-other-rail')).toEqual([]);
  });

  test('a run of devices of several purposes is left out', async () => {
    const schedule = scheduleOf({
      types: [lamp, sensor], runs: [{ run: 'W1' }], supplies: [{ rail: 'R1', rated: 5 }],
      devices: [{ type: 'Lamp', qty: 1, run: 'W1' }, { type: 'Sensor', qty: 1, run: 'W1' }],
    });
    const { leftOut } = await shareOut(readSharing(schedule, { over: 'supplies' }));
    expect(leftOut.map(({ code }) => code)).toEqual(['mixed-run', 'mixed-run']);
  });

  test('devices join the others of their run on its rail, where it has room', async () => {
    const schedule = scheduleOf({
      // A run without a rail of its own: else the devices would be on that already.
      types: [lamp], runs: [{ run: 'W1' }], supplies: [{ rail: 'L1', purpose: 'lighting', rated: 5 }],
      devices: [
        { type: 'Lamp', qty: 6, rail: 'L1', run: 'W1' }, { type: 'Lamp', qty: 2, run: 'W1' },
        { type: 'Lamp', qty: 1, run: 'W1' },
      ],
    });
    const { placements, leftOut } = await shareOut(readSharing(schedule, { over: 'supplies', keepPlaced: true }));
    expect(placements).toMatchObject([{ row: 1, tag: 'L1' }]);
    expect(leftOut).toMatchObject([{ row: 2, code: 'run-elsewhere' }]);
  });

  test('a number is not called the least where devices are left out for want of room', async () => {
    // Runs of 14 A: L1 carries 20 A × 80 % = 16 A and takes one. More are made like L2, of 4 A, and take none; so one
    // supply is used, and no sharing does with fewer.
    const spot: Cells = { type: 'Spot', purpose: 'lighting', draw: 7000 };
    const schedule = scheduleOf({
      types: [spot], supplies: [
        { rail: 'L1', purpose: 'lighting', rated: 20 }, { rail: 'L2', purpose: 'lighting', rated: 5 },
      ],
      devices: [{ type: 'Spot', qty: 2 }, { type: 'Spot', qty: 2 }],
    });
    const sharing = await shareOut(readSharing(schedule, { over: 'supplies', wholeRows: true }));
    expect(sharing.leftOut).toMatchObject([{ code: 'no-room', qty: 2, piece: { of: 'row', size: 14, most: 16 } }]);
    expect(sharing).toMatchObject({ used: 1, lowerBound: 1, proven: false });
  });

  test('a device does not join the others of its run on a rail of another voltage', async () => {
    const schedule = scheduleOf({
      types: [lamp, { type: 'Spot', purpose: 'lighting', power: 6 }],
      supplies: [
        { rail: 'L1', purpose: 'lighting', rated: 10 }, { rail: 'L2', purpose: 'lighting', rated: 10, voltage: 12 },
      ],
      // Without a rail of its own, what is for lighting is taken to need the voltage of the last supply for it, 12 V.
      runs: [{ run: 'W1' }, { run: 'W2' }],
      devices: [
        { type: 'Lamp', qty: 1, rail: 'L1', run: 'W1' }, { type: 'Spot', qty: 1, run: 'W1' },
        { type: 'Lamp', qty: 1, rail: 'L2', run: 'W2' }, { type: 'Spot', qty: 1, run: 'W2' },
      ],
    });
    const { placements, leftOut } = await shareOut(readSharing(schedule, { over: 'supplies', keepPlaced: true }));
    expect(leftOut).toMatchObject([{ row: 1, code: 'run-elsewhere' }]);
    expect(placements).toMatchObject([{ row: 3, tag: 'L2' }]);
  });

  test('without a supply of known rating nothing can be shared, and that is said', async () => {
    const schedule = scheduleOf({ types: [lamp], supplies: [{ rail: 'L1' }], devices: [{ type: 'Lamp', qty: 1 }] });
    const { leftOut, notes, used } = await shareOut(readSharing(schedule, { over: 'supplies' }));
    expect(leftOut).toMatchObject([{ code: 'nothing-to-share-over' }]);
    expect(notes.map((note) => noteSentence(note, ENGLISH)))
      .toEqual(['Supply L1 has no known rating, so nothing is put on it.']);
    expect(used).toBe(0);
  });

  test('devices of diversity 0 ask for nothing and have a supply all the same', async () => {
    const schedule = scheduleOf({
      types: [lamp], supplies: [
        { rail: 'L1', purpose: 'lighting', rated: 5 },
      ], devices: [{ type: 'Lamp', qty: 3, diversity: 0 }],
    });
    expect(await shareOut(readSharing(schedule, { over: 'supplies' })))
      .toMatchObject({ used: 1, proven: true, placements: [{ tag: 'L1', qty: 3 }] });
  });
});
