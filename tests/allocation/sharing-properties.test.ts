import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSharing, shareOut, type Sharing } from '../../src/allocation/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';
import { quantity, shareAndApply } from './support.ts';

const types = fc.array(fc.record({
  purpose: fc.constantFrom('lighting', 'field', 'control', 'other', undefined),
  draw: fc.constantFrom(0, 20, 350, 1250, 333.3, undefined), nodes: fc.constantFrom(0, 1, 1, 2, 5, 0.5),
}), { minLength: 1, maxLength: 4 });
const devices = fc.array(fc.record({
  type: fc.integer({ min: 0, max: 4 }), qty: fc.constantFrom(0, 1, 2, 5, 17, 60, undefined),
  diversity: fc.constantFrom(undefined, 0, 0.3, 1), area: fc.constantFrom(undefined, 'Hall', 'Attic', 'Yard'),
  on: fc.integer({ min: 0, max: 6 }), run: fc.constantFrom(undefined, undefined, 'W1', 'W2'),
}), { maxLength: 14 });
const supplies = fc.array(fc.record({
  purpose: fc.constantFrom('lighting', 'control', undefined), rated: fc.constantFrom(2.5, 10, undefined),
  units: fc.constantFrom(1, 2), fuse: fc.constantFrom(undefined, 6), voltage: fc.constantFrom(undefined, undefined, 12),
}), { maxLength: 4 });
const branches = fc.array(fc.record({
  limit: fc.constantFrom(undefined, 6, 20, 32), reserve: fc.constantFrom(undefined, 0.2, 1),
}), { maxLength: 4 });
const input = fc.record({
  types, devices, supplies, branches, over: fc.constantFrom(
    'branches', 'supplies'
  ), wholeRows: fc.boolean(), keepPlaced: fc.boolean(),
});

/** Cells without the keys that have no value. */
function cellsOf(cells: Readonly<Record<string, string | number | undefined>>): Cells {
  return Object.fromEntries(Object.entries(cells).filter((entry): entry is [
    string, string | number,
  ] => entry[1] !== undefined));
}

type Input = typeof input extends fc.Arbitrary<infer Value> ? Value : never;

function scheduleFrom(from: Input): LoadSchedule {
  return scheduleOf({
    runs: [{ run: 'W1' }, { run: 'W2' }],
    types: from.types.map((cells, index) => cellsOf({ type: `T${index}`, ...cells })),
    supplies: from.supplies.map((cells, index) => cellsOf({ rail: `R${index}`, ...cells })),
    branches: from.branches.map((cells, index) => cellsOf({ branch: `B${index}`, ...cells })),
    devices: from.devices.map(({ type, on, ...cells }, index) => cellsOf({
      ref: `D${index}`, type: `T${type}`, ...(on < 3 ? { rail: `R${on}`, branch: `B${on}` } : {}), ...cells,
    })),
  });
}

/**
 * What each branch or supply carries beyond what it may; at most the rounding of the arithmetic where nothing is over.
 */
function excess(schedule: LoadSchedule, over: 'branches' | 'supplies'): Map<string, number> {
  return new Map(schedule.rows(over).map(({ id, cells }) => {
    if (over === 'branches') return [String(cells.branch), -Number(schedule.value(over, id, 'free') ?? 0)];
    const demand = Number(schedule.value(over, id, 'demand') ?? 0);
    const fuse = schedule.value(over, id, 'fuse');
    const spare = Number(schedule.value(over, id, 'spare') ?? -demand);
    return [String(cells.rail), Math.max(-spare, fuse === null ? -Infinity : demand - Number(fuse))];
  }));
}

/** Number of devices that a sharing says something about. */
function accounted({ placements, kept, leftOut }: Sharing): number {
  return [...placements, ...kept, ...leftOut].reduce((sum, { qty }) => sum + (qty ?? 0), 0);
}

describe('whatever the schedule', () => {
  test('no limit is passed that was not passed before, no device is lost, and one undo takes it back', async () => {
    await fc.assert(fc.asyncProperty(input, async (from) => {
      const schedule = scheduleFrom(from);
      const { over, keepPlaced } = from;
      const before = { content: schedule.content(), quantity: quantity(schedule), excess: excess(schedule, over) };
      const sharing = await shareAndApply(schedule, from);

      for (const [tag, amount] of excess(schedule, over)) {
        const allowed = keepPlaced ? Math.max(0, before.excess.get(tag) ?? 0) : 0;
        expect(amount, tag).toBeLessThanOrEqual(allowed + 1e-9);
      }
      expect(quantity(schedule)).toBe(before.quantity);
      expect(accounted(sharing)).toBe(before.quantity);
      expect(sharing.lowerBound).toBeLessThanOrEqual(sharing.used);
      expect(sharing.used).toBe(sharing.fillings.length);
      schedule.undo();
      expect(schedule.content()).toEqual(before.content);
      schedule.dispose();
    }), { numRuns: 150 });
  }, 120_000);

  test('the count never grows when the limit grows', async () => {
    const cases = fc.record({
      nodes: fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 25 }),
      limit: fc.integer({ min: 6, max: 20 }), more: fc.integer({ min: 0, max: 10 }), wholeRows: fc.boolean(),
    });
    await fc.assert(fc.asyncProperty(cases, async ({ nodes, limit, more, wholeRows }) => {
      const used = await Promise.all([limit, limit + more].map(async (each) => {
        const schedule = scheduleOf({
          types: nodes.map((count, index) => ({ type: `T${index}`, nodes: count })),
          branches: [{ branch: 'B1', limit: each }],
          devices: nodes.map((_, index) => ({ type: `T${index}`, qty: 1 + (index % 3) })),
        });
        const sharing = await shareOut(readSharing(schedule, { over: 'branches', wholeRows }));
        // With whole rows, a larger limit may take in rows that were left out before.
        return sharing.leftOut.length > 0 ? undefined : sharing.used;
      }));
      if (used[0] !== undefined) expect(used[1]).toBeLessThanOrEqual(used[0]);
    }), { numRuns: 60 });
  }, 120_000);
});

test('1,000 rows are shared out over the least number, proven, and others have their turn meanwhile', async () => {
  const random = fc.sample(fc.record({
    type: fc.integer({ min: 0, max: 19 }), qty: fc.integer({ min: 1, max: 12 }),
  }), { numRuns: 1000, seed: 3 });
  const schedule = scheduleOf({
    types: Array.from({ length: 20 }, (_, index) => ({
      type: `T${index}`, nodes: 1 + (index % 3), draw: 20 + 17 * index, purpose: index % 2 === 0
        ? 'lighting' : 'control',
    })),
    branches: [{ branch: 'B1', limit: 50, reserve: 0.1 }],
    supplies: [{ rail: 'L1', purpose: 'lighting', rated: 10 }, { rail: 'C1', purpose: 'control', rated: 5 }],
    devices: random.map(({ type, qty }, index) => (
      { ref: `D${index}`, area: `A${index >> 3}`, type: `T${type}`, qty }
    )),
  });
  for (const over of ['branches', 'supplies'] as const) {
    for (const wholeRows of [false, true]) {
      const problem = readSharing(schedule, { over, wholeRows });
      const total = random.reduce((sum, { qty }) => sum + qty, 0);
      const hasty = await shareOut(problem, { milliseconds: 1 });
      expect(accounted(hasty)).toBe(total);
      expect(hasty.fillings.filter(({ capacity, placed }) => placed > capacity! * (1 + 1e-9))).toEqual([]);
      let turns = 0;
      const other = setInterval(() => { turns += 1; }, 0);
      const sharing = await shareOut(problem, { milliseconds: 10_000 });
      clearInterval(other);
      expect([over, wholeRows, sharing.proven]).toEqual([over, wholeRows, true]);
      expect(accounted(sharing)).toBe(total);
      expect(turns).toBeGreaterThan(1);
    }
  }
}, 60_000);
