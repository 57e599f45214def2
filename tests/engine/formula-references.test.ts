import { beforeEach, describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { insertRows, moveRows, removeRows, type Cells, type SheetName } from '../../src/schedule/index.ts';
import { enter, findingsAt, idAt, reference, scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';

/** A feed whose rating is the formula, beside branches whose limits are 10, 20, 30, 40 and 50. */
let schedule: LoadSchedule;
const TENS = [10, 20, 30, 40, 50];
beforeEach(() => {
  schedule = scheduleOf({ branches: TENS.map((limit) => ({ branch: `B${limit}`, limit })), feeds: [{ feed: 'F1' }] });
});

function type(formula: string): void {
  expect(typeFormula(schedule, 'feeds', 0, 'rated', formula)).toBeUndefined();
}
const rated = () => valueAt(schedule, 'feeds', 0, 'rated');
const shown = () => schedule.formulaText('feeds', idAt(schedule, 'feeds'), 'rated');
const state = () => [shown(), rated()];
const act = (changes: Parameters<LoadSchedule['act']>[1]) => schedule.act('Rows', changes);
const remove = (sheet: SheetName, ...places: number[]) =>
  act(removeRows(schedule.document, sheet, places.map((at) => idAt(schedule, sheet, at))));
const move = (sheet: SheetName, from: number, to: number) =>
  act(moveRows(schedule.document, sheet, [idAt(schedule, sheet, from)], to));
const insert = (at: number, ...limits: (number | null)[]) =>
  act(insertRows(schedule.document, 'branches', at, limits.map((limit): Cells => limit === null ? {} : { limit })));

test('a blank row within a range adds no default either', () => {
  schedule = scheduleOf({ runs: [{ run: 'W1' }, {}, { run: 'W2' }], feeds: [{ feed: 'F1' }] });
  type(`=SUM(${reference('runs', 'ambient')}:${reference('runs', 'ambient', 3).split('!')[1]})`);
  // Two runs in air of 30 °C, which is the default.
  expect(rated()).toBe(60);
});

describe('references follow their rows', () => {
  test.each<[string, string, () => void, [string, number | null]]>([
    ['a cell, when a row comes above', '=branches!B2', () => insert(0, 5), ['=branches!B3', 20]],
    ['a cell, when a row comes below', '=branches!B2', () => insert(2, 5), ['=branches!B2', 20]],
    ['a fixed cell too', '=branches!$B$2', () => insert(0, 5), ['=branches!$B$3', 20]],
    ['a cell, when its row moves', '=branches!B1', () => move('branches', 0, 4), ['=branches!B5', 10]],
    ['a cell, when another moves over it', '=branches!B2', () => move('branches', 4, 0), ['=branches!B3', 20]],
    ['a cell, when a row above goes', '=branches!B5', () => remove('branches', 1), ['=branches!B4', 50]],
    ['a range grows with a row within', '=SUM(branches!B1:B3)', () => insert(1, 5), ['=SUM(branches!B1:B4)', 65]],
    [
      'a range does not grow with a row beyond', '=SUM(branches!B1:B3)', () => insert(3, 5),
      ['=SUM(branches!B1:B3)', 60],
    ],
    [
      'a range does not grow with a row before', '=SUM(branches!B1:B3)', () => insert(0, 5),
      ['=SUM(branches!B2:B4)', 60],
    ],
    ['a blank row within adds nothing', '=SUM(branches!B1:B3)', () => insert(1, null), ['=SUM(branches!B1:B4)', 60]],
    [
      'a range shrinks by a row within', '=SUM(branches!B1:B4)', () => remove('branches', 1),
      ['=SUM(branches!B1:B3)', 80],
    ],
    [
      'a range shrinks at its start', '=SUM(branches!B1:B4)', () => remove('branches', 0, 1),
      ['=SUM(branches!B1:B2)', 70],
    ],
    [
      'a range shrinks at its end', '=SUM(branches!B1:B4)', () =>
        remove('branches', 2, 3), ['=SUM(branches!B1:B2)', 30],
    ],
    [
      'a range that was typed upwards shrinks', '=SUM(branches!B4:B1)', () => remove('branches', 3),
      ['=SUM(branches!B3:B1)', 60],
    ],
    [
      'a range of which all rows go is broken', '=SUM(branches!B2:B3)', () => remove('branches', 1, 2),
      ['=SUM(#REF!)', null],
    ],
    ['a cell whose row goes is broken', '=branches!B2*2', () => remove('branches', 1), ['=#REF!*2', null]],
    [
      'a range covers what moves into it', '=SUM(branches!B1:B2)', () => move('branches', 4, 1),
      ['=SUM(branches!B1:B3)', 80],
    ],
    [
      'and leaves what moves out of it', '=SUM(branches!B1:B3)', () => move('branches', 1, 4),
      ['=SUM(branches!B1:B2)', 40],
    ],
    [
      'a range stretches with its corner', '=SUM(branches!B1:B2)', () => move('branches', 1, 4),
      ['=SUM(branches!B1:B5)', 150],
    ],
    [
      'conditions still match when the order has changed', '=COUNTIF(branches!B1:B5;">25")',
      () => move('branches', 0, 2), ['=COUNTIF(branches!B3:B5;">25")', 2],
    ],
    [
      'sums beside a condition keep their rows', '=SUMIF(branches!A2:A5;"B30";branches!B2:B5)',
      () => move('branches', 2, 3), ['=SUMIF(branches!A2:A5;"B30";branches!B2:B5)', 30],
    ],
    [
      'a place in a range counts in the order shown', '=INDEX(branches!B2:B5;2)', () => move('branches', 2, 3),
      ['=INDEX(branches!B2:B5;2)', 40],
    ],
  ])('%s', (_name, formula, change, expected) => {
    type(formula);
    const before = state();
    change();
    expect(state()).toEqual(expected);
    const afresh = new LoadSchedule(schedule.content());
    expect(valueAt(afresh, 'feeds', 0, 'rated')).toBe(expected[1]);
    schedule.undo();
    expect(state()).toEqual(before);
    schedule.redo();
    expect(state()).toEqual(expected);
  });

  test('many moves later, each formula still reads the rows that it was typed for', () => {
    type('=branches!B3+branches!B5*100');
    for (let turn = 0; turn < 20; turn += 1) {
      move('branches', turn % 5, (turn * 3) % 4);
      if (turn % 4 === 0) insert(turn % 3, 1);
      expect(rated()).toBe(5030);
    }
  });

  test('a formula goes with its own row', () => {
    act(insertRows(schedule.document, 'feeds', 0, [{ feed: 'F0', rated: 6 }]));
    expect(typeFormula(schedule, 'feeds', 1, 'rated', '=C1*2')).toBeUndefined();
    move('feeds', 1, 0);
    expect([schedule.formulaText('feeds', idAt(schedule, 'feeds', 0), 'rated'), valueAt(schedule, 'feeds', 0, 'rated')])
      .toEqual(['=C2*2', 12]);
  });
});

describe('a broken reference', () => {
  test('is told, and stays broken when a row takes the place', () => {
    type('=branches!B2*2');
    remove('branches', 1);
    expect(findingsAt(schedule, 'feeds').find(({ rule }) => rule === 'formula-without-result')?.message)
      .toBe('Feed F1: the formula in Rated refers to a row that has been deleted. Refer to another one.');
    insert(1, 99);
    expect(state()).toEqual(['=#REF!*2', null]);
  });

  test('is saved and loaded as it is, and can be typed', () => {
    type('=branches!B2*2');
    remove('branches', 1);
    const afresh = new LoadSchedule(schedule.content());
    expect(afresh.content()).toEqual(schedule.content());
    expect(afresh.checkFormula('feeds', 'rated', '=#REF!*2').ok).toBe(true);
    expect(findingsAt(afresh, 'feeds')).toEqual(findingsAt(schedule, 'feeds'));
  });
});

test('formula cells are saved and loaded identically', () => {
  const cells = [
    '=[branches.limit#1]', '=[branches.$limit$#2]+1', '=SUM([branches.limit#1:#5])', '=[supplies.fuse#2]',
    '=IF("B1"="[fuse]";[fuse];[supplies.$fuse#2])', '=ROUND(1.5;0)', '=#REF!', '=1/0',
    '=1;2', '=2,5', '=FOO([branches.limit#1])',
  ];
  const branches = [1, 2, 3, 4, 5].map((limit) => ({ limit }));
  const content = { details: {}, sheets: { branches, supplies: cells.map((rated) => ({ rated })) } };
  const once = new LoadSchedule(content);
  expect(once.formulaProblems).toEqual([
    {
      sheet: 'supplies', row: 11, key: 'rated', text: '=FOO([branches.limit#1])',
      problem: expect.stringMatching(/^FOO /) as string,
    },
  ]);
  expect(once.content().sheets.supplies?.slice(0, -1)).toEqual(content.sheets.supplies.slice(0, -1));
  const twice = new LoadSchedule(once.content());
  expect(twice.content()).toEqual(once.content());
  expect(twice.findings).toEqual(once.findings);
});

test('a file with a formula that cannot be read is not loaded at all', () => {
  const before = schedule.content();
  for (const rated of ['=NOW()', '=SUM(B:B)', '=((1)', '=[nowhere.qty#1]', '=[feeds.rated#9]', '=C2']) {
    const problems = schedule.load({ details: {}, sheets: { feeds: [{ feed: 'F9', rated: 1 }, { rated }] } }, 'Open');
    expect(problems).toEqual(
      [{ sheet: 'feeds', row: 2, key: 'rated', text: rated, problem: expect.any(String) as string }]
    );
    expect(schedule.content()).toEqual(before);
    expect(schedule.undoLabel).toBeUndefined();
  }
});

test('a text that begins with = is a text in a column of texts', () => {
  enter(schedule, 'feeds', 0, { note: '=1+1' });
  expect(valueAt(schedule, 'feeds', 0, 'note')).toBe('=1+1');
  expect(schedule.formulaText('feeds', idAt(schedule, 'feeds'), 'note')).toBeUndefined();
});
