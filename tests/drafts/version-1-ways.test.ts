import { expect, test } from 'vitest';
import { fromVersion1 } from '../../components/drafts/migrate-draft.ts';
import { History, ScheduleDocument, SHEET_NAMES } from '../../src/schedule/index.ts';

const run = (id: number, cells: object) => ({ id, cells });
const EMPTY = Object.fromEntries(SHEET_NAMES.filter((sheet) => sheet !== 'ways').map((sheet) => [sheet, []]));
const set = (id: number, key: string, value: unknown) => ({ op: 'set', sheet: 'runs', id, key, value });
const act = (...changes: object[]) => ({ cause: 'act', label: 'Entry', changes });

/** The ways of a draft of version 1 and the ways that its runs name, after each of its actions. */
function states(runs: object[], actions: object[]) {
  const { base, actions: now } = fromVersion1({
    base: { details: {}, sheets: { ...EMPTY, runs }, accepted: [], revisions: [], unknown: {} }, actions,
  } as never);
  const document = new ScheduleDocument(base);
  const history = new History(document);
  const look = () => [
    document.rows('ways').map(({ id, cells }) => ({ id, ...cells })),
    document.rows('runs').map(({ cells }) => cells.way ?? null),
  ];
  return [look(), ...now.map((action) => { history.repeat(action); return look(); })];
}

test('a protection that is typed, changed, moved and taken out is a way all the time, and can be taken back', () => {
  const W1 = { id: 4, way: 'W1', rail: 'L1', kind: 'B', rated: 2, trip: 5 };
  const found = states([run(4, { run: 'W1', rail: 'L1', protection: 2 }), run(5, { run: 'W2', rail: 'L1' })], [
    act(set(5, 'protection', 4), set(5, 'trip', 10)), act(set(4, 'rail', 'L2')), act(set(5, 'protection', null)),
    { cause: 'undo' }, act({ op: 'remove', sheet: 'runs', at: 0, count: 1 }), { cause: 'undo' },
    act({ op: 'insert', sheet: 'runs', at: 2, rows: [run(6, { run: 'W2', protection: '=6', trip: 7 })] }),
  ]);
  const W2 = { id: 5, way: 'W2', rail: 'L1', kind: 'C', rated: 4, trip: 10 };
  const moved = { ...W1, rail: 'L2' };
  expect(found).toEqual([
    [[W1], ['W1', null]], [[W1, W2], ['W1', 'W2']], [[moved, W2], ['W1', 'W2']], [[moved], ['W1', null]],
    [[moved, W2], ['W1', 'W2']], [[W2], ['W2']], [[moved, W2], ['W1', 'W2']],
    [[moved, W2, { id: 6, way: 'W3', kind: 'gG', rated: '=6', trip: 7 }], ['W1', 'W2', 'W3']],
  ]);
});

test('formulas that read a protection read its way', () => {
  const { base } = fromVersion1({
    base: {
      details: {}, accepted: [], revisions: [], unknown: {}, sheets: {
        ...EMPTY,
        runs: [run(0, { run: 'W1', protection: 2 }), run(1, { run: 'W2', protection: '=⟦runs#protection@0⟧*2' })],
        supplies: [{
          id: 0, cells: {
            rated: '=SUM(⟦runs#protection@0:protection@1⟧)+⟦runs#trip@1⟧', fuse: '=SUM(⟦runs#length@0:trip@1⟧)',
          },
        }],
      },
    }, actions: [],
  } as never);
  expect(base.sheets.ways[1]!.cells.rated).toBe('=⟦ways#rated@0⟧*2');
  expect(base.sheets.supplies[0]!.cells).toMatchObject({
    rated: '=SUM(⟦ways#rated@0:rated@1⟧)+⟦ways#trip@1⟧', fuse: '=SUM(⟦missing⟧)',
  });
});
