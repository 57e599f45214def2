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

// Values by hand: draws in column E, 16 in all, of five; every row has a voltage, which is a number too, in D.
test.each([
  ['=SUM(types!E1:E6)', 16],
  ['=SUM(types!E1:E3;types!E6)', 11],
  ['=SUMSQ(types!E1:E6)', 64],
  ['=PRODUCT(types!E1:E6)', 150],
  ['=AVERAGE(types!E1:E6)', 3.2],
  ['=AVERAGEA(types!E1:E6)', 3.2],
  ['=MIN(types!E1:E6)+MAX(types!E1:E6)', 6],
  ['=MEDIAN(types!E1:E6)', 3],
  ['=LARGE(types!E1:E6;3)', 3],
  ['=SMALL(types!E1:E6;2)', 2],
  ['=PERCENTILE.INC(types!E1:E6;0.5)', 3],
  ['=VAR.P(types!E1:E6)', 2.56],
  ['=COUNT(types!A1:E6)', 11],
  ['=COUNTA(types!A1:A6)', 6],
  ['=COUNTBLANK(types!E1:E6)', 1],
  ['=COUNTUNIQUE(types!E1:E3)', 3],
  ['=COUNTIF(types!E1:E6;">2")', 3],
  ['=COUNTIFS(types!E1:E6;">2";types!A1:A6;"e")', 1],
  ['=SUMIF(types!E1:E6;">2")', 13],
  ['=SUMIF(types!A1:A6;"b";types!E1:E6)', 2],
  ['=SUMIFS(types!E1:E6;types!E1:E6;">1";types!E1:E6;"<5")', 5],
  ['=AVERAGEIF(types!E1:E6;"<4")', 2],
  ['=MAXIFS(types!E1:E6;types!E1:E6;"<4")', 3],
  ['=MINIFS(types!E1:E6;types!E1:E6;">2")', 3],
  ['=SUMPRODUCT(types!E1:E3;types!E1:E3)', 14],
  ['=INDEX(types!E1:E6;3)', 3],
  ['=INDEX(types!A1:E6;2;5)', 2],
  ['=MATCH("b";types!A1:A6;0)', 2],
  ['=INDEX(types!E1:E6;MATCH("c";types!A1:A6;0))', 3],
  ['=XLOOKUP("b";types!A1:A6;types!E1:E6)', 2],
  ['=ROWS(types!E1:E6)+COLUMNS(types!A1:E6)', 11],
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
