import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { moveRows } from '../../src/schedule/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { findingsAt, idAt, scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';

/** Types with draws 1, 2, 3, nothing, 5 and 5 mA, brought into this order by moves: the engine holds them scattered. */
function scattered(): LoadSchedule {
  const schedule = scheduleOf({
    types: [
      { type: 'c', draw: 3 }, { type: 'f', draw: 5 }, { type: 'a', draw: 1 }, { type: 'd' }, { type: 'b', draw: 2 },
      { type: 'e', draw: 5 },
    ],
    enclosures: [{ enclosure: 'E' }],
  });
  for (const tag of ['a', 'b', 'c', 'd', 'e', 'f']) {
    const id = schedule.rows('types').find(({ cells }) => cells.type === tag)!.id;
    schedule.act('Move', moveRows(schedule.document, 'types', [id], schedule.rows('types').length - 1));
  }
  expect(schedule.rows('types').map(({ cells }) => cells.type).join('')).toBe('abcdef');
  return schedule;
}

// Values by hand: 16 in all, of five.
test.each([
  ['=SUM(types!D1:D6)', 16],
  ['=SUM(types!D1:D3;types!D6)', 11],
  ['=SUMSQ(types!D1:D6)', 64],
  ['=PRODUCT(types!D1:D6)', 150],
  ['=AVERAGE(types!D1:D6)', 3.2],
  ['=AVERAGEA(types!D1:D6)', 3.2],
  ['=MIN(types!D1:D6)+MAX(types!D1:D6)', 6],
  ['=MEDIAN(types!D1:D6)', 3],
  ['=LARGE(types!D1:D6;3)', 3],
  ['=SMALL(types!D1:D6;2)', 2],
  ['=PERCENTILE.INC(types!D1:D6;0.5)', 3],
  ['=VAR.P(types!D1:D6)', 2.56],
  ['=COUNT(types!A1:D6)', 5],
  ['=COUNTA(types!A1:A6)', 6],
  ['=COUNTBLANK(types!D1:D6)', 1],
  ['=COUNTUNIQUE(types!D1:D3)', 3],
  ['=COUNTIF(types!D1:D6;">2")', 3],
  ['=COUNTIFS(types!D1:D6;">2";types!A1:A6;"e")', 1],
  ['=SUMIF(types!D1:D6;">2")', 13],
  ['=SUMIF(types!A1:A6;"b";types!D1:D6)', 2],
  ['=SUMIFS(types!D1:D6;types!D1:D6;">1";types!D1:D6;"<5")', 5],
  ['=AVERAGEIF(types!D1:D6;"<4")', 2],
  ['=MAXIFS(types!D1:D6;types!D1:D6;"<4")', 3],
  ['=MINIFS(types!D1:D6;types!D1:D6;">2")', 3],
  ['=SUMPRODUCT(types!D1:D3;types!D1:D3)', 14],
  ['=INDEX(types!D1:D6;3)', 3],
  ['=INDEX(types!A1:D6;2;4)', 2],
  ['=MATCH("b";types!A1:A6;0)', 2],
  ['=INDEX(types!D1:D6;MATCH("c";types!A1:A6;0))', 3],
  ['=XLOOKUP("b";types!A1:A6;types!D1:D6)', 2],
  ['=ROWS(types!D1:D6)+COLUMNS(types!A1:D6)', 10],
  ['=LEN(CONCATENATE(types!A1:A6))', 6],
])('%s is %d, whether its rows stand together or scattered in the engine', (formula, value) => {
  const schedule = scattered();
  expect(typeFormula(schedule, 'enclosures', 0, 'otherLoss', formula)).toBeUndefined();
  const afresh = new LoadSchedule(schedule.content());
  for (const each of [schedule, afresh]) {
    expect(findingsAt(each, 'enclosures').filter(({ rule }) => rule === 'formula-without-result')).toEqual([]);
    expect(valueAt(each, 'enclosures', 0, 'otherLoss')).toEqual(closeTo(value, EXACT));
  }
  expect(idAt(afresh, 'types', 0)).not.toBe(idAt(schedule, 'types', 0));
});
