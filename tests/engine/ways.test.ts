import fc from 'fast-check';
import { expect, test } from 'vitest';
import { insertRows, removeRows, setCells, type Cells, type CellValue } from '../../src/schedule/index.ts';
import { closeTo } from '../support/close-to.ts';
import { misplacedOn } from '../support/independent-places.ts';
import { independentWays } from '../support/independent-ways.ts';
import { scheduleOf } from '../support/schedules.ts';

const KINDS = ['B', 'C', 'D', 'gG', 'fast', 'slow', 'electronic'] as const;
const cells = (of: Record<string, fc.Arbitrary<CellValue>>): fc.Arbitrary<Cells> => fc.record(of).map((row) =>
  Object.fromEntries(Object.entries(row).filter(([, value]) => value !== null)));
const maybe = (...values: readonly CellValue[]) => fc.constantFrom(null, ...values, ...values);
const tagged = (key: string, names: readonly string[], of: Record<string, fc.Arbitrary<CellValue>>) =>
  fc.tuple(...names.map((name) => cells(of).map((row): Cells => ({ [key]: name, ...row }))));
const RATINGS = [1, 2, 4, 6, 10, 16];

const someSheets = fc.record({
  supplies: tagged('rail', ['S0', 'S1'], {
    rated: maybe(2.5, 5, 10, 20), units: maybe(1, 2), redundant: maybe(true, false), peak: maybe(1.5, 5),
    fuse: maybe(6, 16, '=1/0'), fuseKind: maybe(...KINDS), target: fc.constant(1),
  }),
  ways: tagged('way', ['F0', 'F1', 'F2'], {
    rail: maybe('S0', 'S1'), kind: maybe(...KINDS), rated: maybe(...RATINGS), trip: fc.option(fc.constantFrom(2, 5)),
    k2: fc.option(fc.constantFrom(1.2, 2)), target: maybe(0.5, 1),
  }),
  runs: tagged('run', ['W0', 'W1', 'W2', 'W3'], { way: maybe('F0', 'F1', 'F2'), rail: fc.option(fc.constant('S0')) }),
  types: tagged('type', ['T0', 'T1'], { inrush: maybe(0, 0.5, 4, '=1/0') }),
  devices: fc.array(cells({
    qty: fc.integer({ min: 0, max: 4 }), unitDraw: fc.integer({ min: 0, max: 3000 }),
    diversity: maybe(0.25, 0.5), type: maybe('T0', 'T1'), run: maybe('W0', 'W1', 'W2', 'W3'), rail: fc.option(fc.constant('S1')),
  }), { minLength: 1, maxLength: 9 }),
});

test('ways come to what an independent calculation gives, status included, through every edit', () => {
  const seen = { over: 0, near: 0, incomplete: 0, ok: 0 };
  const edit = fc.tuple(fc.constantFrom('ways', 'runs', 'supplies', 'devices', 'types' as const), fc.nat(), fc.constantFrom(
    ['rated', 4], ['rated', null], ['kind', 'fast'], ['way', 'F1'], ['rail', 'S1'], ['rail', null], ['qty', 3], ['inrush', 6], ['inrush', null]));
  fc.assert(fc.property(someSheets, fc.array(edit, { maxLength: 4 }), (sheets, edits) => {
    const schedule = scheduleOf(sheets);
    for (const [sheet, at, [key, value]] of [undefined, ...edits].map((each) => each ?? ['ways', 0, ['note', 'x']] as const)) {
      const rows = schedule.rows(sheet);
      // Tags that stand twice, and devices without a quantity, are another test's.
      const isOther = (sheet === 'ways' && key === 'way') || (sheet === 'supplies' && key === 'rail');
      if (!isOther) {
        const { id } = rows[at % rows.length]!;
        schedule.act('edit', setCells(schedule.document, [{ sheet, id, key, value }]));
      }
      const { sheets: now } = schedule.content();
      const all = {
        supplies: now.supplies ?? [], ways: now.ways ?? [], runs: now.runs ?? [], devices: now.devices ?? [],
        types: now.types ?? [],
      };
      const [expected, misplaced] = [independentWays(all), misplacedOn(all)];
      // A run whose rail is not that of its way is told there, and its devices hang on its own.
      schedule.rows('ways').forEach(({ id }, place) => {
        const { status: alone, ...figures } = expected[place]!;
        const status = alone === 'ok' && misplaced.has(all.ways[place]!) ? 'incomplete' : alone;
        const found = Object.fromEntries(Object.keys(figures).map((name) => [name, schedule.value('ways', id, name)]));
        expect(found).toEqual(Object.fromEntries(Object.entries(figures).map(([name, figure]) =>
          [name, figure === null ? null : closeTo(figure, { absolute: 1e-9, relative: 1e-9 })])));
        expect([place, schedule.value('ways', id, 'status')]).toEqual([place, status]);
        seen[status] += 1;
      });
    }
    schedule.dispose();
  }), { numRuns: 150 });
  for (const [status, count] of Object.entries(seen)) expect([status, count > 20]).toEqual([status, true]);
});

test('a supply in the place of one that went has no trip current of its ways', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 10 }], ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 2 }],
  });
  const leastTrip = () => schedule.value('supplies', schedule.rows('supplies')[0]!.id, 'leastTrip');
  // B acts at 7.5 times its rating on direct current.
  expect(leastTrip()).toBe(15);
  schedule.act('edit', removeRows(schedule.document, 'supplies', [schedule.rows('supplies')[0]!.id]));
  schedule.act('edit', insertRows(schedule.document, 'supplies', 0, [{ rail: 'L2', rated: 10 }]));
  expect(leastTrip()).toBeNull();
});
