import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSharing, shareOut, type SharingProblem } from '../../src/allocation/index.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';
import { leastCost } from './milp.ts';

/** Cases that are compared of each kind. */
const CASES = 60;
/** Weighs a new bin so that no saving of others makes up for it. */
const NEW = 1000;

/** The solver's answer to a problem without pools: new bins and bins in use, each as few as possible in this order. */
async function solved({ groups }: SharingProblem, tooLarge: ReadonlySet<number>, mostNew: number) {
  let cost = 0;
  for (const { rows, bins, further } of groups) {
    const inUse = bins.filter((bin) => bin.inUse);
    const free = bins.filter((bin) => !bin.inUse);
    const least = await leastCost(
      rows.filter(({ row }) => !tooLarge.has(row)),
      [
        ...inUse.map(({ capacity, kept }) => ({ capacity: capacity! - kept, cost: 0 })),
        ...free.map(({ capacity }) => ({ capacity: capacity!, cost: 1 })),
        ...Array.from({ length: mostNew }, () => ({ capacity: further!.capacity, cost: 1 + NEW })),
      ],
    );
    cost += least! + inUse.length;
  }
  return { added: Math.floor(cost / NEW), used: cost % NEW };
}

/**
 * Compares one case.
 * @returns false when it is none: something is over its limit already, or has room in a bin that is there alone
 */
async function agrees(problem: SharingProblem): Promise<boolean> {
  expect(problem.leftOut).toEqual([]);
  if (problem.groups.some(({ bins }) => bins.some(({ capacity, kept }) => kept > capacity!))) return false;
  const sharing = await shareOut(problem, { milliseconds: 10_000 });
  if (sharing.leftOut.some(({ code }) => code === 'no-room')) return false;
  const tooLarge = new Set(sharing.leftOut.map(({ row }) => row));
  expect({ added: sharing.added.length, used: sharing.used })
    .toEqual(await solved(problem, tooLarge, sharing.added.length));
  expect(sharing.proven).toBe(true);
  return true;
}

const branchSheet = fc.array(
  fc.record(
    { limit: fc.integer({ min: 8, max: 20 }), reserve: fc.constantFrom(0, 0.1, 0.25) }
  ), { minLength: 1, maxLength: 4 },
).map((rows) => rows.map((row, index): Cells => ({ branch: `B${index + 1}`, ...row })));

describe('agrees with an exact solver (HiGHS, mixed-integer linear programming)', () => {
  test(`on ${CASES} random cases of branches, split, whole and with devices that stay`, async () => {
    const cases = fc.record({
      branches: branchSheet,
      types: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 3, maxLength: 3 }),
      rows: fc.array(fc.record({
        type: fc.integer({ min: 0, max: 2 }), qty: fc.integer({ min: 1, max: 5 }), on: fc.integer({ min: 0, max: 9 }),
        area: fc.constantFrom('Hall', 'Attic', undefined),
      }), { minLength: 1, maxLength: 9 }),
      wholeRows: fc.boolean(), keepPlaced: fc.boolean(),
    });
    let compared = 0;
    for (const { branches, types, rows, wholeRows, keepPlaced } of fc.sample(cases, { numRuns: 3 * CASES, seed: 21 })) {
      if (compared === CASES) break;
      const schedule = scheduleOf({
        branches,
        types: types.map((nodes, index) => ({ type: `T${index}`, nodes })),
        devices: rows.map(({ type, qty, on, area }) => ({
          type: `T${type}`, qty, ...(
            on < branches.length && qty < 3 ? { branch: `B${on + 1}` } : {}
          ), ...(area && { area }),
        })),
      });
      if (await agrees(readSharing(schedule, { over: 'branches', wholeRows, keepPlaced }))) compared += 1;
      schedule.dispose();
    }
    expect(compared).toBe(CASES);
  }, 120_000);

  test(`on ${CASES} random cases of supplies of three purposes, split and whole`, async () => {
    const purposes = ['lighting', 'field', 'control'];
    const cases = fc.record({
      ratings: fc.array(fc.constantFrom(1.25, 2.5, 5), { minLength: 3, maxLength: 6 }),
      draws: fc.array(fc.integer({ min: 100, max: 1200 }), { minLength: 3, maxLength: 3 }),
      rows: fc.array(fc.record({
        type: fc.integer({ min: 0, max: 2 }), qty: fc.integer({ min: 1, max: 4 }),
        diversity: fc.constantFrom(1, 0.7, 0.35),
      }), { minLength: 1, maxLength: 10 }),
      wholeRows: fc.boolean(),
    });
    let compared = 0;
    for (const { ratings, draws, rows, wholeRows } of fc.sample(cases, { numRuns: 3 * CASES, seed: 22 })) {
      if (compared === CASES) break;
      const schedule = scheduleOf({
        supplies: ratings.map((rated, index) => ({ rail: `R${index + 1}`, rated, purpose: purposes[index % 3]! })),
        types: draws.map((draw, index) => ({ type: `T${index}`, draw, purpose: purposes[index]! })),
        devices: rows.map(({ type, ...cells }) => ({ type: `T${type}`, ...cells })),
      });
      if (await agrees(readSharing(schedule, { over: 'supplies', wholeRows }))) compared += 1;
      schedule.dispose();
    }
    expect(compared).toBe(CASES);
  }, 120_000);
});
