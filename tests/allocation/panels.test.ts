import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leftOutSentence, limitSentence, readSharing, shareOut, type ShareRequest } from '../../src/allocation/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { demoContent } from '../report/demo.ts';
import { LoadSchedule as Schedule } from '../../src/load-schedule.ts';
import { scheduleOf } from '../support/schedules.ts';
import { quantitiesOn, shareAndApply } from './support.ts';

const sensor: Cells = { type: 'Sensor', purpose: 'control', draw: 100, nodes: 1 };

/** The enclosure of what a device row is on, read from the cells alone; `undefined` where none is said. */
function panelOnPaper(schedule: LoadSchedule, { cells }: { cells: Cells }, key: 'branch' | 'rail') {
  const [sheet, tag] = key === 'branch' ? ['branches', 'branch'] as const : ['supplies', 'rail'] as const;
  return schedule.rows(sheet).find((row) => row.cells[tag] === cells[key])?.cells.enclosure;
}

/** Quantity of each type by the panel that its rows are in; what is in none counts under an empty name. */
function byPanel(schedule: LoadSchedule, key: 'branch' | 'rail'): Map<string, number> {
  const sums = new Map<string, number>();
  for (const row of schedule.rows('devices')) {
    const name = `${String(row.cells.type)} in ${panelOnPaper(schedule, row, key) ?? ''}`;
    sums.set(name, (sums.get(name) ?? 0) + Number(row.cells.qty ?? 0));
  }
  return sums;
}

describe('a panel is a boundary', () => {
  const sheets = {
    enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }],
    types: [sensor],
    branches: [{ branch: 'B1', limit: 10, enclosure: 'P1' }, { branch: 'B2', limit: 10, enclosure: 'P2' }],
    devices: [
      { ref: 'D1', type: 'Sensor', qty: 14, branch: 'B1' }, { ref: 'D2', type: 'Sensor', qty: 2, branch: 'B2' },
    ],
  };

  test('what is on a branch of a panel stays in it, although the other one has room', async () => {
    const schedule = scheduleOf(sheets);
    const sharing = await shareAndApply(schedule, { over: 'branches' });
    // 14 nodes need two branches of 10 in P1, 2 need one in P2; across panels 16 would need two.
    expect(sharing).toMatchObject({ used: 3, lowerBound: 3, proven: true });
    expect(schedule.content().sheets.branches!.map(({ branch, enclosure }) => [branch, enclosure]))
      .toEqual([['B1', 'P1'], ['B2', 'P2'], ['B3', 'P1']]);
    expect(quantitiesOn(schedule, 'branches')).toEqual({ B1: 10, B2: 2, B3: 4 });
    expect(sharing.limits.map(({ panel, size, used, byTotal }) => [panel, size, used, byTotal]))
      .toEqual([['P1', 14, 2, 2], ['P2', 2, 1, 1]]);
  });

  test('they are shared out between panels where that is asked for', async () => {
    const schedule = scheduleOf(sheets);
    expect(await shareAndApply(schedule, { over: 'branches', acrossPanels: true }))
      .toMatchObject({ used: 2, lowerBound: 2, proven: true });
  });

  test('what is on none goes where there is room, after what is bound', async () => {
    const devices = [...sheets.devices, { ref: 'D3', type: 'Sensor', qty: 13 }];
    const schedule = scheduleOf({ ...sheets, devices });
    // 14 + 2 + 13 = 29 nodes in 3 branches of 10.
    expect(await shareAndApply(schedule, { over: 'branches' })).toMatchObject({ used: 3, lowerBound: 3, proven: true });
    expect(schedule.rows('branches')).toHaveLength(3);
  });

  test('what each panel needs bounds the number, also beside what is on none', async () => {
    const devices: Cells[] = [
      { type: 'Sensor', qty: 14, branch: 'B1' }, { type: 'Sensor', qty: 12, branch: 'B2' }, { type: 'Sensor', qty: 1 },
    ];
    // 14 and 12 nodes need two branches of 10 in each panel; all 27 would need three where panels were none.
    expect(await shareAndApply(scheduleOf({ ...sheets, devices }), { over: 'branches' }))
      .toMatchObject({ used: 4, lowerBound: 4, proven: true });
  });

  test('a further branch that does for two smaller ones is no fewer than the least', async () => {
    const schedule = scheduleOf({
      enclosures: [{ enclosure: 'P1' }], types: [sensor, { type: 'Gate', draw: 350, nodes: 3 }],
      branches: [{ branch: 'B1', limit: 5 }, { branch: 'B2', limit: 5 }, { branch: 'B3', limit: 20, enclosure: 'P1' }],
      devices: [{ type: 'Sensor', qty: 3, branch: 'B3' }, { type: 'Gate', qty: 8 }],
    });
    // 3 + 8 × 3 = 27 nodes: one each on B1 and B2 leaves 21 for B3, so that a fourth of 20 is made, and B3 and it do.
    expect(await shareAndApply(schedule, { over: 'branches' })).toMatchObject({ used: 2, lowerBound: 2, proven: true });
  });

  test('a device without a branch belongs to the panel of its rail, where a further branch is made', async () => {
    const schedule = scheduleOf({
      ...sheets, branches: [{ branch: 'B1', limit: 10, enclosure: 'P1' }],
      supplies: [{ rail: 'C1', rated: 5, enclosure: 'P2' }], devices: [{ type: 'Sensor', qty: 3, rail: 'C1' }],
    });
    await shareAndApply(schedule, { over: 'branches' });
    expect(schedule.content().sheets.branches![1]).toEqual({ branch: 'B2', limit: 10, enclosure: 'P2' });
    expect(quantitiesOn(schedule, 'branches')).toEqual({ B1: 0, B2: 3 });
  });

  test('a supply that is made like one of another panel does not take its feed over', async () => {
    const schedule = scheduleOf({
      types: [sensor], feeds: [{ feed: 'F1', rated: 10 }],
      supplies: [{ rail: 'C1', purpose: 'control', rated: 5, enclosure: 'P1', feed: 'F1' }],
      branches: [{ branch: 'B2', limit: 10, enclosure: 'P2' }],
      devices: [{ type: 'Sensor', qty: 3, branch: 'B2' }],
    });
    await shareAndApply(schedule, { over: 'supplies' });
    expect(schedule.content().sheets.supplies![1]).toEqual({ rail: 'C2', purpose: 'control', rated: 5, enclosure: 'P2' });
  });

  test('a run whose devices belong to two panels is left out, and said', async () => {
    const schedule = scheduleOf({
      types: [sensor], runs: [{ run: 'W1' }],
      supplies: [{ rail: 'C1', rated: 5, enclosure: 'P1' }, { rail: 'C2', rated: 5, enclosure: 'P2' }],
      devices: [{ type: 'Sensor', qty: 3, rail: 'C1', run: 'W1' }, { type: 'Sensor', qty: 3, rail: 'C2', run: 'W1' }],
    });
    const { leftOut } = await shareOut(readSharing(schedule, { over: 'supplies' }));
    expect(leftOut.map(({ code }) => code)).toEqual(['run-between-panels', 'run-between-panels']);
    expect(leftOutSentence('supplies', leftOut[0]!, ENGLISH)).toContain('several panels');
  });

  test('no device of the demo changes its panel', async () => {
    const schedule = new Schedule(demoContent());
    const before = byPanel(schedule, 'rail');
    const sharing = await shareAndApply(schedule, { over: 'supplies' });
    // A detector whose draw nobody entered has no place any more, which is said.
    expect(sharing.leftOut.filter(({ code }) => code !== 'takes-none').map(({ code, qty }) => [code, qty]))
      .toEqual([['size-unknown', 1]]);
    const after = byPanel(schedule, 'rail');
    expect(after.get('Aspirating smoke detector in ')).toBe(1);
    for (const name of ['Aspirating smoke detector in KP-2', 'Aspirating smoke detector in ']) {
      before.delete(name);
      after.delete(name);
    }
    expect(after).toEqual(before);
    expect(new Set(sharing.limits.map(({ panel }) => panel))).toEqual(new Set(['KP-1', 'KP-2']));
  });
});

test('what decides the number is said of each panel: the sum, what stays together, target, fuse, extension', async () => {
  const said = async (sheets: Parameters<typeof scheduleOf>[0], request: ShareRequest) => {
    const { over, limits } = await shareOut(readSharing(scheduleOf(sheets), request));
    return limits.map((limit) => limitSentence(over, limit, ENGLISH)).sort();
  };
  const gate = { type: 'Gate', nodes: 6 };
  const branches: Cells[] = [{ branch: 'B1', limit: 10, enclosure: 'P1' }, { branch: 'B2', limit: 10, reserve: 0.2, enclosure: 'P2' }];
  // P1: 3 × 6 = 18 nodes need 2 branches by their sum, and 3 since no two gates go on one; P2: 14 of 8 each.
  expect(await said({
    types: [sensor, gate], branches,
    devices: [{ type: 'Gate', qty: 3, branch: 'B1' }, { type: 'Sensor', qty: 14, branch: 'B2' }],
  }, { over: 'branches' })).toEqual([
    'P1: 18 nodes on 3 branches. The sum alone would need 2; what stays together or where it is sets the number. A branch carries up to its limit.',
    'P2: 14 nodes on 2 branches. The sum sets the number. A branch carries up to its limit less its reserve.',
  ]);
  // 30 × 0.1 A: 4 A of P1 (80 % of 5 A), less a fifth to grow 3.33 A; the fuse of P2 bears 2 A.
  const supplies: Cells[] = [
    { rail: 'C1', purpose: 'control', rated: 5, enclosure: 'P1' }, { rail: 'C2', purpose: 'control', rated: 5, fuse: 2, target: 1, enclosure: 'P2' },
  ];
  const devices = [{ type: 'Sensor', qty: 30, rail: 'C1' }, { type: 'Sensor', qty: 30, rail: 'C2' }];
  expect(await said({ types: [sensor], supplies, devices }, { over: 'supplies' })).toEqual([
    'P1, control, 24 V: 3 A on 1 supply. The sum sets the number. A supply carries up to the target of its usable current.',
    'P2, control, 24 V: 3 A on 2 supplies. The sum sets the number. A supply carries up to its fuse.',
  ]);
  expect((await said({ types: [sensor], supplies, devices }, { over: 'supplies', extension: 0.2 })).join(' '))
    .toContain('Each carries so much less that what is there may grow by the extension.');
});

/** The least number of bins for some sizes: every way to put one after another into bins, or into a new one. */
function leastBins(sizes: readonly number[], capacity: number): number {
  let least = sizes.length;
  const place = (index: number, bins: readonly number[]): void => {
    if (bins.length >= least && index < sizes.length) return;
    const size = sizes[index];
    if (size === undefined) {
      least = Math.min(least, bins.length);
      return;
    }
    bins.forEach((filled, at) => {
      if (filled + size <= capacity) place(index + 1, bins.map((each, other) => other === at ? each + size : each));
    });
    place(index + 1, [...bins, size]);
  };
  place(0, []);
  return least;
}

test('the proof of the least number holds panel by panel: an exact search of each finds no fewer', async () => {
  const sizes = fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 7 });
  await fc.assert(fc.asyncProperty(sizes, sizes, async (first, second) => {
    const panels = [{ name: 'P1', nodes: first, limit: 8 }, { name: 'P2', nodes: second, limit: 11 }];
    const schedule = scheduleOf({
      enclosures: panels.map(({ name }) => ({ enclosure: name })),
      types: [1, 2, 3, 4, 5, 6, 7].map((nodes) => ({ type: `T${nodes}`, nodes })),
      branches: panels.map(({ name, limit }) => ({ branch: `${name}-B1`, limit, enclosure: name })),
      devices: panels.flatMap(({ name, nodes }) => nodes.map((size) => ({ type: `T${size}`, qty: 1, branch: `${name}-B1` }))),
    });
    const sharing = await shareOut(readSharing(schedule, { over: 'branches' }));
    expect(sharing.proven).toBe(true);
    const least = panels.map(({ name, nodes, limit }) => [name, leastBins(nodes, limit)]);
    expect(sharing.limits.map(({ panel, used }) => [panel, used])).toEqual(least);
    expect(sharing.limits.map(({ panel, lowerBound }) => [panel, lowerBound])).toEqual(least);
    schedule.dispose();
  }), { numRuns: 60 });
});

describe('whatever the schedule', () => {
  const panel = fc.constantFrom(undefined, 'P1', 'P1', 'P2', 'P2', 'P3');
  const place = fc.constantFrom(undefined, '0', '1', '2', '3');
  const input = fc.record({
    branches: fc.array(fc.record({ enclosure: panel, limit: fc.constantFrom(undefined, 5, 12, 20) }), { maxLength: 4 }),
    supplies: fc.array(fc.record({
      enclosure: panel, rated: fc.constantFrom(undefined, 2.5, 5), purpose: fc.constantFrom('control', undefined),
    }), { maxLength: 4 }),
    devices: fc.array(fc.record({
      type: fc.constantFrom('T1', 'T2'), qty: fc.integer({ min: 1, max: 9 }), branch: place, rail: place,
      run: fc.constantFrom(undefined, undefined, 'W1'),
    }), { maxLength: 10 }),
    over: fc.constantFrom('branches', 'supplies'), wholeRows: fc.boolean(), keepPlaced: fc.boolean(),
    extension: fc.constantFrom(0, 0.25),
  });
  const tidy = (cells: Readonly<Record<string, string | number | undefined>>) =>
    Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== undefined)) as Cells;

  test('no device goes to another panel, and no bound is above what an exact search without panels finds', async () => {
    await fc.assert(fc.asyncProperty(input, async (from) => {
      const request: ShareRequest = from;
      const key = from.over === 'branches' ? 'branch' : 'rail';
      const make = () => scheduleOf({
        types: [{ type: 'T1', draw: 100, nodes: 1, purpose: 'control' }, { type: 'T2', draw: 350, nodes: 3 }],
        runs: [{ run: 'W1' }],
        branches: from.branches.map((cells, index) => tidy({ branch: `B${index}`, ...cells })),
        supplies: from.supplies.map((cells, index) => tidy({ rail: `R${index}`, ...cells })),
        devices: from.devices.map(({ branch, rail, ...cells }, index) => tidy({
          ref: `D${index}`, ...cells, ...(branch === undefined ? {} : { branch: `B${branch}` }),
          ...(rail === undefined ? {} : { rail: `R${rail}` }),
        })),
      });
      const schedule = make();
      const was = new Map(schedule.rows('devices').map((row) => [row.cells.ref, panelOnPaper(schedule, row, key)]));
      const sharing = await shareAndApply(schedule, request);
      for (const row of schedule.rows('devices')) {
        const [before, after] = [was.get(String(row.cells.ref).split('/')[0]), panelOnPaper(schedule, row, key)];
        if (before !== undefined && after !== undefined) expect(after, String(row.cells.ref)).toBe(before);
        if (before !== undefined && after === undefined) expect(row.cells[key], String(row.cells.ref)).toBeUndefined();
      }
      expect(sharing.used).toBe(sharing.fillings.length);
      expect(sharing.lowerBound).toBeLessThanOrEqual(sharing.used);
      for (const { used, byTotal, lowerBound } of sharing.limits) {
        expect(byTotal).toBeLessThanOrEqual(used);
        expect(lowerBound).toBeLessThanOrEqual(used);
      }
      expect(sharing.limits.map((limit) => limitSentence(sharing.over, limit, ENGLISH)).join(' ')).not.toMatch(/NaN|undef/);
      schedule.dispose();
    }), { numRuns: 200 });
  }, 120_000);

  test('where nothing is bound, the least number is that without panels', async () => {
    const cases = fc.record({
      nodes: fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 12 }),
      bound: fc.integer({ min: 0, max: 12 }),
    });
    await fc.assert(fc.asyncProperty(cases, async ({ nodes, bound }) => {
      const make = (panels: boolean) => scheduleOf({
        types: nodes.map((count, index) => ({ type: `T${index}`, nodes: count })),
        branches: ['P1', 'P2'].map((enclosure, index) => (
          { branch: `B${index + 1}`, limit: 8, ...(panels ? { enclosure } : {}) }
        )),
        devices: nodes.map((_, index) => ({ type: `T${index}`, qty: 1, ...(index < bound ? { branch: 'B1' } : {}) })),
      });
      const [apart, together] = await Promise.all([true, false].map((panels) =>
        shareOut(readSharing(make(panels), { over: 'branches' }))));
      expect(apart!.lowerBound).toBeGreaterThanOrEqual(together!.proven ? together!.used : together!.lowerBound);
      if (bound === 0) expect([apart!.used, apart!.proven]).toEqual([together!.used, together!.proven]);
    }), { numRuns: 60 });
  }, 60_000);
});
