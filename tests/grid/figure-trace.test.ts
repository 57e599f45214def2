import { expect, test } from 'vitest';
import { FigureTrace } from '../../components/what-changed/figure-trace.ts';
import { setCells, type CellValue } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';

/** By hand: L1 is asked for 660 mA of 1 A, 66 %. */
function traced() {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 1, target: 1 }], devices: [{ ref: 'D1', rail: 'L1', qty: 1, unitDraw: 660 }, { ref: 'D2', rail: 'L1', qty: 1, unitDraw: 0 }],
  });
  const trace = new FigureTrace(schedule);
  const told: string[][] = [];
  schedule.subscribe((event) => {
    told.push(trace.follow(event).map(({ before, after }) => `${before.text} → ${after.text}`.replaceAll(/\s/g, ' ')));
  });
  const set = (id: number, key: string, value: CellValue) => {
    schedule.act('', setCells(schedule.document, [{ sheet: 'devices', id, key, value }]));
    return told.at(-1);
  };
  return { schedule, set };
}

test('a figure that is shown as before is not told, though it moved', () => {
  const { set } = traced();
  expect(set(0, 'unitDraw', 661)).toEqual([]);
  expect(set(0, 'unitDraw', 700)).toEqual(['66 % → 70 %']);
});

test('that a figure lacks something is told with its sign', () => {
  const { set } = traced();
  expect(set(1, 'unitDraw', null)).toEqual(['66 % → ≥ 66 %']);
  expect(set(0, 'unitDraw', 700)).toEqual(['≥ 66 % → ≥ 70 %']);
});
