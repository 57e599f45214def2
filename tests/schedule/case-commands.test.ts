import { expect, test } from 'vitest';
import { parseCell, removeCase, setFactors, columnOf, type InputColumn } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';

const some = () => scheduleOf({
  cases: [{ case: 'evening' }, { case: 'storm' }],
  factors: [
    { case: 'evening', group: 'lamps', factor: 0.8, note: 'as agreed' }, { case: 'storm', group: 'blinds', factor: 1 },
    { case: 'evening', group: 'lamps', factor: 0.5 },
  ],
});
const factors = (schedule: ReturnType<typeof some>) => schedule.rows('factors').map(({ cells }) => cells);

test('a factor is changed, made and taken away as one action, which undo takes back', () => {
  const schedule = some();
  const before = schedule.content();
  schedule.act('Factors', setFactors(schedule.document, [
    { case: 'evening', group: 'lamps', value: 0.6 }, { case: 'storm', group: 'blinds', value: null },
    { case: 'storm', group: 'lamps', value: 0 }, { case: 'storm', group: 'sensors', value: null },
  ]));
  // What said the pair a second time is gone.
  expect(factors(schedule)).toEqual([
    { case: 'evening', group: 'lamps', factor: 0.6, note: 'as agreed' }, { case: 'storm', group: 'lamps', factor: 0 },
  ]);
  schedule.undo();
  expect(schedule.content()).toEqual(before);
});

test('nothing is changed where all is as it is to be', () => {
  const schedule = some();
  expect(setFactors(schedule.document, [{ case: 'storm', group: 'blinds', value: 1 }])).toEqual([]);
});

test('a case goes with its factors, and formulas that named them say so', () => {
  const schedule = some();
  const id = schedule.rows('cases')[0]!.id;
  const before = schedule.content();
  schedule.act('Deletion', removeCase(schedule.document, id));
  expect(schedule.rows('cases').map(({ cells }) => cells.case)).toEqual(['storm']);
  expect(factors(schedule)).toEqual([{ case: 'storm', group: 'blinds', factor: 1 }]);
  schedule.undo();
  expect(schedule.content()).toEqual(before);
});

test('of two cases with one name, the first keeps the factors when the second goes', () => {
  const schedule = scheduleOf({
    cases: [{ case: 'storm' }, { case: 'storm' }], factors: [{ case: 'storm', group: 'blinds', factor: 1 }],
  });
  schedule.act('Deletion', removeCase(schedule.document, schedule.rows('cases')[1]!.id));
  expect(schedule.rows('cases')).toHaveLength(1);
  expect(factors(schedule)).toHaveLength(1);
});

test.each([
  ['25 %', 0.25], ['0.25', 0.25], ['0,25', 0.25], ['1', 1], ['0', 0], ['', null],
])('a factor is typed as “%s”', (text, value) => {
  expect(parseCell(columnOf('factors', 'factor') as InputColumn, text)).toMatchObject({ ok: true, value });
});

test('a factor above 1 is refused with a hint at the reciprocal', () => {
  const read = parseCell(columnOf('factors', 'factor') as InputColumn, '1.6');
  expect(read).toEqual({
    ok: false, problem: '“1.6” is more than 1; 0 to 1 (at most 100 %) is allowed: a factor is the share of the group that is on. Some texts print its reciprocal: if yours does, type 0.625.',
  });
});
