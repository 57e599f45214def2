import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { OFFICE_LISTS, sizePanel, sizingCsv } from '../../src/allocation/index.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { scheduleOf } from '../support/schedules.ts';
import { leastCost } from './milp.ts';

const lists = { ratings: [2.5, 5, 10], ways: [4, 8, 12] };
const lamp: Cells = { type: 'Lamp', purpose: 'lighting', draw: 500, nodes: 0, diversity: 0.5 };
const sensor: Cells = { type: 'Sensor', purpose: 'control', draw: 50, nodes: 1 };

async function counts(sheets: Parameters<typeof scheduleOf>[0], options = {}): Promise<[string, number][]> {
  const rows = await sizePanel(scheduleOf(sheets), { lists, ...options });
  return rows.filter(({ item }) => !/^(Way|Mains feed) /.test(item)).map(({ item, quantity }) => [item, quantity]);
}

describe('sizing', () => {
  test('takes the fewest supplies, then the smallest total rating, for each purpose', async () => {
    const devices = [{ type: 'Lamp', qty: 40 }, { type: 'Sensor', qty: 30 }];
    // Lighting: 40 × 0.5 A × 0.5 = 10 A, ÷ 80 % = 12.5 A of rating: 2 supplies at least, of which 10 + 2.5 just does.
    // Control: 30 × 0.05 A = 1.5 A, ÷ 80 % = 1.875 A: one of 2.5 A. Branches: 30 nodes in one of 32.
    expect(await counts({ types: [lamp, sensor], branches: [{ branch: 'B1', limit: 32 }], devices })).toEqual([
      ['Supply 24 V, lighting, 10 A', 1], ['Supply 24 V, lighting, 2.5 A', 1], ['Supply 24 V, control, 2.5 A', 1],
      ['Bus branch, 32 nodes', 1],
    ]);
  });

  test('derates supplies and gives each a spare unit, as the last rail for the purpose has it', async () => {
    // 10 A, ÷ 80 % ÷ 90 % = 13.89 A of rating: 10 + 5 do, 10 + 2.5 do not; two units of each, as one is a spare.
    const rail = { rail: 'L1', purpose: 'lighting', rated: 5, derating: 0.9 };
    const sheets = (supplies: Cells[]) => ({ types: [lamp], devices: [{ type: 'Lamp', qty: 40 }], supplies });
    const redundant = { ...rail, units: 2, redundant: true, seriesDrop: 0 };
    const rows = await sizePanel(scheduleOf(sheets([redundant])), { lists });
    expect(rows.map(({ item, quantity }) => [item, quantity])).toEqual([
      ['Supply 24 V, lighting, 10 A', 2], ['Supply 24 V, lighting, 5 A', 2],
      // Demand of one lamp 0.25 A: 10 × 0.9 × 0.8 = 7.2 A hold 28, 5 A 14 at most; a way of 4 A × 0.8 holds 12.
      ['Way 24 V, lighting, electronic, 4 A', expect.toSatisfy((count: number) => count === 4 || count === 5)],
      // Two units of each: 4 of 3 allowed on a breaker B 16.
      ['Mains feed 230 V, B 16', 2],
    ]);
    expect(rows[0]!.why).toBe('Demand 10.00 A at a target of 80 % needs 13.89 A of rating; 15.00 A in 2 is the least number and, with it, the smallest total rating of those kept, with whole devices on each. As on rail L1, 90 % of a rating may be used, and each supply has one unit more as a spare: 4 units. It lives on diversity: everything at the same time takes 20.00 A, and where all of it starts together, as in a wind alarm or at power return, the supplies shut down. What cables make devices draw more is not counted.');
    expect(await counts(sheets([rail])))
      .toEqual([['Supply 24 V, lighting, 10 A', 1], ['Supply 24 V, lighting, 5 A', 1]]);
    // At a target of 40 % they need 27.78 A: three of 10 A. A rail too hot to be used says nothing.
    expect(await counts(sheets([{ ...rail, target: 0.4 }]))).toEqual([['Supply 24 V, lighting, 10 A', 3]]);
    const hot = { ...rail, efficiency: 0.9, enclosure: 'P1', fullUpTo: 40, lessPerKelvin: 0.5 };
    expect(await counts({ ...sheets([hot]), enclosures: [{
      enclosure: 'P1', ambient: 50, mounting: 'wall', otherLoss: 0, height: 800, width: 600, depth: 200,
    }] }))
      .toEqual([['Supply 24 V, lighting, 10 A', 1], ['Supply 24 V, lighting, 2.5 A', 1]]);
    // Another purpose, and a rail that may be used whole, say nothing.
    expect(await counts(sheets([{ ...rail, purpose: 'control' }, { ...rail, rail: 'L2', derating: 1 }])))
      .toEqual([['Supply 24 V, lighting, 10 A', 1], ['Supply 24 V, lighting, 2.5 A', 1]]);
  });

  test('puts whole devices on each supply, so that what the sum alone would allow may not do', async () => {
    // 3 × 3 A = 9 A, ÷ 90 % = 10 A, which two of 5 A have; but each may carry 4.5 A, which is one device.
    const types = [{ type: 'Spot', purpose: 'lighting', draw: 3000, nodes: 0 }];
    expect(
      await counts({ types, devices: [{ type: 'Spot', qty: 3 }] }, { target: 0.9, lists: { ratings: [5], ways: [4] } })
    )
      .toEqual([['Supply 24 V, lighting, 5 A', 3]]);
  });

  test('counts branches at the limit less the reserve, and relay modules by contact', async () => {
    const outputs = [
      ...Array.from({ length: 13 }, () => ({ contact: 'K5' })), ...Array.from({ length: 3 }, () => ({ contact: 'K16' }))
    ];
    expect(await counts({
      types: [sensor], branches: [{ branch: 'B1', limit: 40, reserve: 0.25 }], devices: [{ type: 'Sensor', qty: 61 }],
      contacts: [{ contact: 'K5' }, { contact: 'K16' }], outputs: [...outputs, { output: 'Q17' }],
    })).toEqual([
      ['Supply 24 V, control, 5 A', 1], ['Bus branch, 30 nodes', 3],
      ...await relayRows(13), ['Relay module, K16, 4 ways', 1], ['Relay outputs without a contact', 1],
    ]);
  });

  test('says how many nodes there are where no branch has a limit, and makes none up', async () => {
    const devices = [{ type: 'Sensor', qty: 30 }, { type: 'Sensor', qty: 12 }];
    const rows = await sizePanel(scheduleOf({ types: [sensor], branches: [{ branch: 'B1' }], devices }), { lists });
    expect(rows.slice(3)).toEqual([{
      panel: null,
      item: 'Nodes on bus branches without a limit', quantity: 42,
      why: 'No branch has a known limit, so how many are needed is not known. Enter the most nodes that a branch may carry.',
    }]);
  });

  // 36 A of demand in supplies of 5 A, each loaded to 4 A: 9 of them.
  const NINE = { types: [{ ...lamp, diversity: 1 }], devices: [{ type: 'Lamp', qty: 72 }] };
  const rail = { rail: 'L1', purpose: 'lighting', rated: 5, efficiency: 0.9, inputPowerFactor: 0.95, feed: 'F1' };
  const feedsOf = async (supply: Cells, feed: Cells) => {
    const sheets = { ...NINE, supplies: [{ ...rail, ...supply }], feeds: [{ feed: 'F1', ...feed }] };
    return (await sizePanel(scheduleOf(sheets), { lists: { ratings: [5], ways: [4] } }))
      .filter(({ item }) => item.startsWith('Mains feed'));
  };

  test.each<[string, Cells, Cells, [string, number]]>([
    // 24 V × 5 A ÷ (0.9 × 230 V × 0.95) = 0.61 A each, 5.5 A of all.
    ['a maker’s 5 on B 16 are 8 on C 16, as 5 × 5 ÷ 3 = 8.3', { maxOnB16: 5 }, { rated: 16, curve: 'C' }, ['Mains feed 230 V, C 16', 2]],
    ['and 5 on B 16', { maxOnB16: 5 }, { rated: 16, curve: 'B' }, ['Mains feed 230 V, B 16', 2]],
    ['40 A of inrush: two on C 16, which stands 1.41 × 16 × 5 = 112.8 A', { inputInrush: 40 }, { rated: 16, curve: 'C' }, ['Mains feed 230 V, C 16', 5]],
    ['one on B 16, which stands 67.7 A', { inputInrush: 40 }, { rated: 16, curve: 'B' }, ['Mains feed 230 V, B 16', 9]],
    ['without inrush by current: 13 of 0.61 A on 10 A × 80 %, so that nine share one', { inputInrush: 0 }, { rated: 10, curve: 'D' }, ['Mains feed 230 V, D 10', 1]],
    ['a diversity that a feed of others has is none of theirs: seven on 6 A × 80 %', { inputInrush: 0 }, { rated: 6, curve: 'D', diversity: 0.5 }, ['Mains feed 230 V, D 6', 2]],
    ['a feed of extra-low voltage is no pattern', { maxOnB16: 9 }, { rated: 10, curve: 'D', voltage: 24 }, ['Mains feed 230 V, B 16', 1]],
    ['70 A is more than a B 16 stands', { inputInrush: 70 }, { rated: 16, curve: 'B' }, ['Mains feed 230 V, larger than B 16', 9]],
    ['a feed without a curve is no pattern', { maxOnB16: 9 }, { rated: 10 }, ['Mains feed 230 V, B 16', 1]],
  ])('counts mains feeds by current and by the start at power return: %s', async (_name, supply, feed, expected) => {
    expect((await feedsOf(supply, feed)).map(({ item, quantity }) => [item, quantity])).toEqual([expected]);
  });

  test('allows for the mains side of a supply where nothing says it, and says so', async () => {
    const [known] = await feedsOf({ maxOnB16: 5 }, { rated: 16, curve: 'B' });
    expect(known!.why).not.toContain('allowed for');
    const [row] = await feedsOf({ efficiency: null }, { rated: 16, curve: 'B' });
    expect([row!.quantity, row!.why]).toEqual([3, expect.stringContaining(
      'Of 9 of them the efficiency, the power factor or the start at the input is not known: 85 %, 0.5 and 3 units on a breaker B 16 are allowed for.'
    )]);
  });

  /** Rows of the relay modules. By hand: 13 outputs need 2 modules, 16 ways at least, as 12 + 4 or 8 + 8. */
  async function relayRows(count: number): Promise<[string, number][]> {
    const rows = await counts({
      contacts: [{ contact: 'K5' }], outputs: Array.from({ length: count }, () => ({ contact: 'K5' })),
    });
    const ways = rows.reduce((sum, [item, quantity]) => sum + quantity * Number(/(\d+) ways/.exec(item)![1]), 0);
    expect([rows.reduce((sum, [, quantity]) => sum + quantity, 0), ways]).toEqual([2, 16]);
    return rows;
  }

  test('devices of diversity 0 ask for nothing and have the smallest supply kept, wherever it stands in the list',
    async () => {
    const devices = [{ type: 'Lamp', qty: 3, diversity: 0 }];
    for (const ratings of [[2.5, 5, 10], [10, 2.5, 5], [10, 5, 2.5]]) {
      expect(await counts({ types: [lamp], devices }, { lists: { ratings, ways: [4] } }))
        .toEqual([['Supply 24 V, lighting, 2.5 A', 1]]);
    }
  });

  test('names what it cannot count', async () => {
    const devices: Cells[] = [
      { ref: 'D1', type: 'Sensor' }, { ref: 'D2', type: 'Lamp', qty: 2, unitDraw: 9000, diversity: 1 },
    ];
    const rows = await sizePanel(scheduleOf({ types: [lamp, sensor], devices }), { lists });
    expect(rows).toEqual([
      {
        panel: null, item: 'Supply 24 V, lighting, larger than 10 A', quantity: 2,
        why: 'D2 ask for more than 8.00 A in one piece, up to which the largest supply kept may be loaded.',
      },
      {
        panel: null, item: 'Devices of unknown demand, 24 V, control', quantity: 0,
        why: 'Not counted above: D1. Enter their quantity and draw.',
      },
      {
        panel: null, item: 'Devices of unknown nodes', quantity: 0,
        why: 'Not counted above: D1. Enter their quantity and a type that says how many nodes one counts.',
      },
    ]);
  });

  test('agrees with an exact solver (HiGHS) on 40 random cases', async () => {
    const cases = fc.record({
      draws: fc.array(
        fc.integer({ min: 200, max: 2500 }), { minLength: 1, maxLength: 6 }
      ), qty: fc.integer({ min: 1, max: 3 }),
    });
    for (const { draws, qty } of fc.sample(cases, { numRuns: 40, seed: 31 })) {
      const devices = draws.map((unitDraw) => ({ type: 'Lamp', qty, unitDraw, diversity: 1 }));
      const rows = await counts({ types: [lamp], devices });
      const ratings =
        rows.flatMap(([item, quantity]) => new Array<number>(quantity).fill(Number(/([\d.]+) A$/.exec(item)![1])));
      const needed = draws.map((draw) => ({ each: draw / 1000, qty, whole: false }));
      // A supply costs 1000 and ten times its rating: the number counts first, then the rating in all.
      const offered = lists.ratings.flatMap((rating) =>
        ratings.map(() => ({ capacity: rating * 0.8, cost: 1000 + 10 * rating })));
      const cost = ratings.reduce((sum, rating) => sum + 1000 + 10 * rating, 0);
      expect(cost, draws.join(', ')).toBe(await leastCost(needed, offered));
    }
  }, 60_000);

  test('an empty schedule needs nothing', async () => {
    expect(await counts({})).toEqual([]);
  });

  test('an empty list to choose from is refused', async () => {
    await expect(sizePanel(scheduleOf({}), { lists: { ratings: [], ways: [4] } })).rejects.toThrow(RangeError);
  });

  test('the lists of the project are in order', () => {
    expect(OFFICE_LISTS.ratings).toEqual([1.25, 2.5, 5, 10, 20, 40]);
    expect(OFFICE_LISTS.ways).toEqual([4, 8, 12]);
  });

  test('is written as CSV, with what a spreadsheet would run made safe', async () => {
    const rows = await sizePanel(scheduleOf({
      contacts: [{ contact: '=K"1"' }], outputs: [{ contact: '=K"1"' }], types: [sensor], devices: [{
        ref: '=1+1', type: 'Sensor',
      }],
    }), { lists });
    const csv = sizingCsv(rows, ENGLISH);
    expect(csv.endsWith('\r\n')).toBe(true);
    const [heading, ...lines] = Papa.parse<string[]>(csv, { skipEmptyLines: true }).data;
    expect(heading).toEqual(['Item', 'Quantity', 'Why']);
    expect(lines).toEqual(rows.map(({ item, quantity, why }) => [item, String(quantity), why]));
    expect(sizingCsv([{ panel: null, item: '=cmd', quantity: 1, why: '-' }], ENGLISH)).toBe("Item,Quantity,Why\r\n'=cmd,1,'-\r\n");
    expect(sizingCsv([{ panel: 'P1', item: 'x', quantity: 1, why: '' }], ENGLISH)).toBe('Panel,Item,Quantity,Why\r\nP1,x,1,\r\n');
  });
});
