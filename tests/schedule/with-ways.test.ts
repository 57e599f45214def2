import { expect, test } from 'vitest';
import { insertRows, setCells, withWays, type Cells, type Content } from '../../src/schedule/index.ts';
import { ENGLISH, loadWords } from '../../src/words/index.ts';
import { idAt, scheduleOf } from '../support/schedules.ts';

const SHEETS: Content['sheets'] = {
  supplies: [{ rail: 'L1', rated: 10 }], ways: [{ way: 'Q7', rail: 'L1', kind: 'gG', rated: 4 }, { way: 'C 6', rail: 'L2' }],
  runs: [{ run: 'W1', rail: 'L1' }, { run: 'W2', rail: 'L2', way: 'C 6' }, { run: 'W3' }],
};

/** Types texts in the ways of runs, as one action. */
function typed(texts: readonly string[], words = ENGLISH) {
  const schedule = scheduleOf(SHEETS);
  const edits = texts.map((value, at) => ({ sheet: 'runs' as const, id: idAt(schedule, 'runs', at), key: 'way', value }));
  schedule.act('Entry', withWays(schedule.document, setCells(schedule.document, edits), words));
  const cells = (sheet: 'ways' | 'runs') => schedule.rows(sheet).map((row) => row.cells);
  return { schedule, ways: cells('ways').slice(2), named: cells('runs').map(({ way }) => way) };
}

test.each<[text: string, made: Cells]>([
  ['B 4', { kind: 'B', rated: 4 }], ['c6', { kind: 'C', rated: 6 }], ['gG 10 A', { kind: 'gG', rated: 10 }],
  [' slow 6,3 ', { kind: 'slow', rated: 6.3 }], ['electronic 3.15', { kind: 'electronic', rated: 3.15 }],
])('%s makes a way on the rail of the run, with the next tag there', (text, made) => {
  expect(typed([text])).toMatchObject({ ways: [{ way: 'Q8', rail: 'L1', ...made }], named: ['Q8', 'C 6', undefined] });
});

test.each(['C 6', 'Q7', 'F1', 'B', '4', 'B 0', 'X 4', 'B 4 5', ''])('%j is a tag and makes none', (text) => {
  expect(typed([text])).toMatchObject({ ways: [], named: [text, 'C 6', undefined] });
});

test('each run gets one of its own, and one without a rail hangs on none', () => {
  const { ways, named, schedule } = typed(['B 4', 'B 4', 'B 2']);
  expect(ways).toEqual([
    { way: 'Q8', rail: 'L1', kind: 'B', rated: 4 }, { way: 'C 7', rail: 'L2', kind: 'B', rated: 4 },
    { way: 'F1', kind: 'B', rated: 2 },
  ]);
  expect(named).toEqual(['Q8', 'C 7', 'F1']);
  schedule.undo();
  expect(schedule.content().sheets.ways).toEqual(SHEETS.ways);
  expect(schedule.content().sheets.runs).toEqual(SHEETS.runs);
});

test('rows that come with one, and a rail that comes along', () => {
  const schedule = scheduleOf(SHEETS);
  const { document } = schedule;
  const id = idAt(schedule, 'runs', 2);
  const changes = [
    ...setCells(document, [{ sheet: 'runs', id, key: 'way', value: 'D 1' }, { sheet: 'runs', id, key: 'rail', value: 'L3' }]),
    ...insertRows(document, 'runs', 3, [{ run: 'W4', rail: 'L3', way: 'D 2' }, { run: 'W5', way: 'Q7' }]),
  ];
  schedule.act('Paste', withWays(document, changes, ENGLISH));
  expect(schedule.rows('ways').slice(2).map(({ cells }) => cells)).toEqual([
    { way: 'L3-F1', rail: 'L3', kind: 'D', rated: 1 }, { way: 'L3-F2', rail: 'L3', kind: 'D', rated: 2 },
  ]);
  expect(schedule.rows('runs').slice(2).map(({ cells }) => cells.way)).toEqual(['L3-F1', 'L3-F2', 'Q7']);
});

test('kinds are understood in the language of the person', async () => {
  expect(typed(['träge 2'], await loadWords('de')).ways).toMatchObject([{ kind: 'slow', rated: 2 }]);
});

test('a second way is made on the rail of the first, which the same action names or makes', () => {
  for (const [first, rail] of [['C 6', 'L2'], ['B 4', 'L1']] as const) {
    const schedule = scheduleOf(SHEETS);
    const id = idAt(schedule, 'runs', 0);
    // W1 hangs on L1 by its own cell, which goes; without it the way says the rail.
    const edits = [{ key: 'secondWay', value: 'D 1' }, { key: 'way', value: first }, ...first === 'C 6' ? [{ key: 'rail', value: null }] : []];
    schedule.act('', withWays(schedule.document, setCells(schedule.document, edits.map((edit) => ({ sheet: 'runs', id, ...edit }))), ENGLISH));
    const made = schedule.rows('ways').map(({ cells }) => cells).at(-1)!;
    expect(made).toMatchObject({ rail, kind: 'D', rated: 1 });
    expect(schedule.rows('runs')[0]!.cells.secondWay).toBe(made.way);
  }
});
