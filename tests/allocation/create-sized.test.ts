import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createSized, sizePanel, type SizingOptions } from '../../src/allocation/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';
import { quantity } from './support.ts';

const lists = { ratings: [2.5, 5, 10], ways: [4, 8], wayRating: 4 };
const lamp: Cells = { type: 'Lamp', purpose: 'lighting', draw: 500, nodes: 0 };
const sensor: Cells = { type: 'Sensor', purpose: 'control', draw: 50, nodes: 1 };

async function short(schedule: LoadSchedule, options: SizingOptions = {}): Promise<[string | null, string, number][]> {
  const lines = await sizePanel(schedule, { lists, ...options });
  return lines.map(({ panel, item, quantity }) => [panel, item, quantity]);
}

describe('sizing by panel', () => {
  const sheets: Parameters<typeof scheduleOf>[0] = {
    enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }], types: [lamp, sensor],
    supplies: [
      { rail: 'L1', purpose: 'lighting', rated: 10, enclosure: 'P1', target: 0.5, width: 50 },
      { rail: 'L2', purpose: 'lighting', rated: 10, enclosure: 'P2' },
    ],
    devices: [
      { type: 'Lamp', qty: 10, rail: 'L1' }, { type: 'Lamp', qty: 8, rail: 'L2' },
    ],
  };

  test('counts each by itself, at the target of its last rail', async () => {
    // P1: 5 A at 50 % need 10 A. P2: 4 A at 80 % need 5 A. Ways: 10 and 8 lamps of 0.5 A, six on a way of 4 A × 0.8.
    expect(await short(scheduleOf(sheets))).toEqual([
      ['P1', 'Supply 24 V, lighting, 10 A', 1], ['P1', 'Way 24 V, lighting, electronic, 4 A', 2], ['P1', 'Mains feed 230 V, B 16', 1],
      ['P1', 'Mounting rail [mm]', 50],
      ['P2', 'Supply 24 V, lighting, 5 A', 1], ['P2', 'Way 24 V, lighting, electronic, 4 A', 2], ['P2', 'Mains feed 230 V, B 16', 1],
    ]);
  });

  test('leaves room for extension in supplies, ways, branches, outputs and width alike', async () => {
    const schedule = scheduleOf({
      types: [lamp, sensor], contacts: [{ contact: 'K5' }], outputs: Array.from({ length: 8 }, () => ({ contact: 'K5' })),
      branches: [{ branch: 'B1', limit: 12, width: 20 }],
      devices: [{ type: 'Lamp', qty: 16 }, { type: 'Sensor', qty: 12 }],
    });
    expect(await short(schedule)).toEqual([
      // 8 A at 80 % need 10 A; 16 lamps on ways of 6; 0.6 A need 2.5 A.
      [null, 'Supply 24 V, lighting, 10 A', 1], [null, 'Way 24 V, lighting, electronic, 4 A', 3],
      [null, 'Supply 24 V, control, 2.5 A', 1], [null, 'Way 24 V, control, electronic, 4 A', 1], [null, 'Mains feed 230 V, B 16', 1],
      [null, 'Bus branch, 12 nodes', 1], [null, 'Relay module, K5, 8 ways', 1], [null, 'Mounting rail [mm]', 20],
    ]);
    expect(await short(schedule, { extension: 0.25 })).toEqual([
      // 8 A × 1.25 = 10 A at 80 % need 12.5 A: 10 + 2.5 holds 8 + 2 A, with 12 and 4 lamps at most 3 each way spare.
      [null, 'Supply 24 V, lighting, 10 A', 1], [null, 'Supply 24 V, lighting, 5 A', 1],
      // 12 lamps on two ways and 4 on one; a quarter more of each, rounded up.
      [null, 'Way 24 V, lighting, electronic, 4 A', 5],
      [null, 'Supply 24 V, control, 2.5 A', 1], [null, 'Way 24 V, control, electronic, 4 A', 2], [null, 'Mains feed 230 V, B 16', 1],
      // 12 nodes × 1.25 = 15 on branches of 12; 10 outputs; two couplers of 20 mm and a quarter more.
      [null, 'Bus branch, 12 nodes', 2], [null, 'Relay module, K5, 8 ways', 1], [null, 'Relay module, K5, 4 ways', 1],
      [null, 'Mounting rail [mm]', 50],
    ]);
  });

  test('takes equal units where the office wants them', async () => {
    const schedule = scheduleOf({ types: [lamp], devices: [{ type: 'Lamp', qty: 20 }] });
    // 10 A at 80 % need 12.5 A: two supplies, 10 + 2.5; of one rating, two of 10 A, as two of 5 A hold 8 A.
    expect((await short(schedule)).slice(0, 2).map(([, item]) => item))
      .toEqual(['Supply 24 V, lighting, 10 A', 'Supply 24 V, lighting, 2.5 A']);
    expect((await short(schedule, { equalUnits: true }))[0]).toEqual([null, 'Supply 24 V, lighting, 10 A', 2]);
  });
});

describe('«Create these»', () => {
  test('makes of counts a whole panel, in one action', async () => {
    const schedule = scheduleOf({
      types: [lamp, sensor], branches: [{ branch: 'B1', limit: 10, enclosure: 'KP' }], enclosures: [{ enclosure: 'KP' }],
      contacts: [{ contact: 'K5' }], outputs: [{ output: 'Q1', contact: 'K5' }, { output: 'Q2', contact: 'K5' }],
      runs: [{ run: 'W1' }],
      devices: [
        { ref: 'D1', type: 'Lamp', qty: 20 }, { ref: 'D2', type: 'Sensor', qty: 15 }, { ref: 'D3', type: 'Lamp', qty: 2, run: 'W1' },
      ],
    });
    const before = schedule.content();
    const { changes, made } = await createSized(schedule, { lists });
    // 11 A at 80 % need 13.75 A: 10 + 5; 0.75 A: 2.5 A. 15 nodes on branches of 10. 2 outputs on a module of 4.
    expect(made).toMatchObject({ enclosures: 0, feeds: 1, supplies: 3, branches: 2, modules: 1 });
    schedule.act('Create', changes);
    const { sheets } = schedule.content();
    expect(sheets.supplies!.map(({ rail, purpose, rated, enclosure }) => [rail, purpose, rated, enclosure])).toEqual([
      ['L1', 'lighting', 10, 'KP'], ['L2', 'lighting', 5, 'KP'], ['C1', 'control', 2.5, 'KP'],
    ]);
    expect(sheets.ways).toHaveLength(made.ways);
    expect(sheets.ways![0]).toEqual({ way: 'L1-F1', rail: 'L1', kind: 'electronic', rated: 4 });
    expect(sheets.branches!.map(({ branch, enclosure }) => [branch, enclosure])).toEqual([['B1', 'KP'], ['B2', 'KP'], ['B3', 'KP']]);
    expect(sheets.modules).toEqual([{ module: 'K1', outputs: 4, enclosure: 'KP' }]);
    expect(sheets.outputs!.map(({ module }) => module)).toEqual(['K1', 'K1']);
    expect(sheets.runs![0]).toMatchObject({ way: expect.stringMatching(/^L[12]-F\d$/) as string });
    expect(quantity(schedule)).toBe(37);
    for (const { id } of schedule.rows('supplies')) expect(Number(schedule.value('supplies', id, 'loading'))).toBeLessThanOrEqual(0.8 + 1e-9);
    for (const { id } of schedule.rows('branches')) expect(Number(schedule.value('branches', id, 'free'))).toBeGreaterThanOrEqual(0);
    expect((await createSized(schedule, { lists })).changes).toEqual([]);
    schedule.undo();
    expect(schedule.content()).toEqual(before);
  });

  test('makes a panel where there is none, and leaves what is placed alone', async () => {
    const schedule = scheduleOf({
      types: [lamp], supplies: [{ rail: 'HL4', purpose: 'lighting', rated: 5, redundant: true, units: 2, fuse: 5, note: 'Hall' }],
      devices: [{ ref: 'D1', type: 'Lamp', qty: 4, rail: 'HL4' }, { ref: 'D2', type: 'Lamp', qty: 10 }],
    });
    const { changes, made } = await createSized(schedule, { lists });
    schedule.act('Create', changes);
    expect(made).toMatchObject({ enclosures: 1, supplies: 1 });
    const { sheets } = schedule.content();
    expect(sheets.enclosures).toEqual([{ enclosure: 'P1' }]);
    // 5 A at 80 % need 6.25 A: 10 A with a spare unit; the fuse of the 5 A supply is not taken over.
    expect(sheets.supplies![1]).toEqual({ rail: 'HL5', purpose: 'lighting', rated: 10, redundant: true, units: 2, enclosure: 'P1', feed: 'X1' });
    expect(sheets.feeds).toEqual([{ feed: 'X1', rated: 16, curve: 'B', enclosure: 'P1' }]);
    expect(sheets.devices![0]).toEqual({ ref: 'D1', type: 'Lamp', qty: 4, rail: 'HL4' });
  });

  test('makes feeds that stand the start of the supplies on them, and leaves those of others alone', async () => {
    const schedule = scheduleOf({
      types: [lamp], feeds: [{ feed: 'F1', rated: 16, curve: 'C', width: 18, note: 'Hall' }],
      supplies: [{
        rail: 'L1', purpose: 'lighting', rated: 5, efficiency: 0.9, inputPowerFactor: 0.95, inputInrush: 40, feed: 'F1',
      }],
      devices: [{ ref: 'D1', type: 'Lamp', qty: 8, rail: 'L1' }, { ref: 'D2', type: 'Lamp', qty: 40 }],
    });
    const { changes, made } = await createSized(schedule, { lists: { ...lists, ratings: [5] } });
    schedule.act('Create', changes);
    // 20 A in supplies of 4 A: five. Two of 40 A on a breaker C 16, which stands 112.8 A.
    expect(made).toMatchObject({ feeds: 3, supplies: 5 });
    const { feeds, supplies } = schedule.content().sheets;
    expect(feeds!.slice(1).map(({ feed, note, width }) => [feed, note, width]))
      .toEqual(['F2', 'F3', 'F4'].map((tag) => [tag, undefined, 18]));
    expect(supplies!.map(({ feed }) => feed).sort()).toEqual(['F1', 'F2', 'F2', 'F3', 'F3', 'F4']);
    expect(schedule.rows('feeds').map(({ id }) => schedule.value('feeds', id, 'status'))).toEqual(['ok', 'ok', 'ok', 'ok']);
  });

  test('whatever the counts: no device is lost, everything placed is within its target, and once is enough', async () => {
    const input = fc.record({
      devices: fc.array(fc.record({
        type: fc.constantFrom('Lamp', 'Sensor', 'Unknown'), qty: fc.integer({ min: 1, max: 40 }),
        area: fc.constantFrom('Hall', 'Attic'), run: fc.constantFrom('', '', 'W1', 'W2'),
      }), { minLength: 1, maxLength: 8 }),
      extension: fc.constantFrom(0, 0.2), equalUnits: fc.boolean(), wholeRows: fc.boolean(),
    });
    await fc.assert(fc.asyncProperty(input, async ({ devices, ...options }) => {
      const schedule = scheduleOf({
        types: [lamp, sensor], branches: [{ branch: 'B1', limit: 25 }], runs: [{ run: 'W1' }, { run: 'W2' }],
        devices: devices.map(({ run, ...cells }, index) => ({ ref: `D${index}`, ...cells, ...(run === '' ? {} : { run }) })),
      });
      const before = { content: schedule.content(), quantity: quantity(schedule) };
      const { changes } = await createSized(schedule, { lists, ...options });
      schedule.act('Create', changes);
      expect(quantity(schedule)).toBe(before.quantity);
      for (const { id } of schedule.rows('supplies')) {
        expect(Number(schedule.value('supplies', id, 'loading'))).toBeLessThanOrEqual(0.8 / (1 + options.extension) + 1e-9);
        expect(schedule.value('supplies', id, 'enclosure')).toBe('P1');
      }
      for (const { id } of schedule.rows('branches')) {
        expect(Number(schedule.value('branches', id, 'nodes'))).toBeLessThanOrEqual(25 / (1 + options.extension));
      }
      expect((await createSized(schedule, { lists, ...options })).changes).toEqual([]);
      schedule.undo();
      expect(schedule.content()).toEqual(before.content);
      schedule.dispose();
    }), { numRuns: 60 });
  }, 120_000);
});
