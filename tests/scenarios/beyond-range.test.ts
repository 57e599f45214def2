import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  computedColumns, findColumn, numericInputs, SHEET_NAMES, type CellValue, type Content, type InputColumn,
} from '../../src/schedule/index.ts';
import { readData } from '../data/read-data.ts';
import { enter, scheduleOf, valueAt } from '../support/schedules.ts';

// A file can hold a number that its column does not allow. Nobody knows what was meant, so what reads it is not known.

const DEMO = readData('demo.schedule.json') as unknown as Content;

/** A number that no schedule means. */
const beyond = ({ kind, min, above, max }: InputColumn): number | undefined =>
  min !== undefined ? min - 1 : above !== undefined ? above - 1 : max !== undefined ? max + 1
    : kind === 'integer' ? 0.5 : undefined;

/** The figures of all rows, with what lacks something marked, and their statuses. */
function figuresOf(
  schedule: LoadSchedule,
): Map<string, { figures: CellValue[]; lacking: boolean[]; status: CellValue }> {
  return new Map(SHEET_NAMES.flatMap((sheet) => schedule.rows(sheet).map(({ id }) => {
    const keys = computedColumns(sheet).filter(({ status }) => status !== true).map(({ key }) => key);
    return [`${sheet} ${id}`, {
      figures: keys.map((key) => schedule.value(sheet, id, key)),
      lacking: keys.map((key) => schedule.isPartial(sheet, id, key)),
      status: findColumn(sheet, 'status') === undefined ? null : schedule.value(sheet, id, 'status'),
    }] as const;
  })));
}

const INPUTS = SHEET_NAMES.flatMap((sheet) => numericInputs(sheet).filter((column) => beyond(column) !== undefined)
  .map((column) => [sheet, column.key, column] as const));

test.each(INPUTS)('of %s, a number beyond the range of %s is told once, and no row that lacks it is within limits', (
  sheet, key, column,
) => {
  const schedule = new LoadSchedule(DEMO);
  const rows = schedule.rows(sheet);
  const at = Math.max(0, rows.findIndex(({ cells }) => typeof cells[key] === 'number'));
  const { id } = rows[at]!;
  const before = figuresOf(schedule);
  enter(schedule, sheet, at, { [key]: beyond(column)! });
  expect(schedule.value(sheet, id, key)).toBe(beyond(column));
  expect(schedule.findingsOf(sheet, id).filter((each) => each.key === key).map(({ rule }) => rule))
    .toEqual(['number-out-of-range']);
  // A module whose common has no rating is held against nothing that it adds up.
  for (const [place, { figures, lacking, status }] of figuresOf(schedule)) {
    const was = before.get(place)!;
    const lacks = figures.some((value, at) =>
      (value === null && was.figures[at] !== null) || (lacking[at] === true && was.lacking[at] !== true));
    if (lacks && !place.startsWith('modules')) expect([place, status]).not.toEqual([place, 'ok']);
  }
});

test('a draw below zero lightens no supply', () => {
  // 6 A and −5 A come to 1 A; of 6 A and something that is not known nothing can be said but that it is 6 A or more.
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 10 }],
    devices: [{ ref: 'A', rail: 'L1', qty: 1, unitDraw: 6000 }, { ref: 'B', rail: 'L1', qty: 1, unitDraw: -5000 }],
  });
  expect([valueAt(schedule, 'supplies', 0, 'demand'), valueAt(schedule, 'supplies', 0, 'status')]).toEqual([6, 'incomplete']);
});
