import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  computedColumns, findColumn, numericInputs, SHEET_NAMES, type Cells, type CellValue, type Content, type InputColumn,
  type SheetName,
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

describe('a number that is none, behind a reference, is not as if nothing were entered', () => {
  /** Within limits: a run behind a way, one that only the fuse of the supply protects, and 24 V for types of 24 V. */
  const sheets = (): Record<string, Cells[]> => ({
    types: [{ type: 'T', draw: 500, minVoltage: 20 }, { type: 'U', draw: 500 }],
    supplies: [{ rail: 'L1', rated: 10, peak: 2, fuse: 10, fuseKind: 'electronic' }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 4 }],
    conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 12 }],
    runs: [{ run: 'W1', way: 'F1', conductor: 'C', length: 10 }, { run: 'W2', rail: 'L1', conductor: 'C', length: 10 }],
    devices: [{ ref: 'D1', type: 'T', qty: 1, run: 'W1' }, { ref: 'D2', type: 'U', qty: 1, run: 'W2' }],
  });
  const PLACES = [['supplies', 0], ['ways', 0], ['runs', 0], ['runs', 1]] as const;
  const statuses = (schedule: LoadSchedule) => PLACES.map(([sheet, at]) => valueAt(schedule, sheet, at, 'status'));
  const [OK, WAITS] = ['ok', 'incomplete'];

  test('what is known is within limits', () => {
    expect(statuses(scheduleOf(sheets()))).toEqual([OK, OK, OK, OK]);
  });

  // What the conductor carries is not known, and so neither current nor protection is checked.
  test.each<[SheetName, number, string, string[]]>([
    ['conductors', 0, 'maxTemperature', [OK, OK, WAITS, WAITS]], ['conductors', 0, 'baseTemperature', [OK, OK, WAITS, WAITS]],
    // Nor is what a supply feeds for ever through a run that has no way, and whether its fuse stays whole.
    ['supplies', 0, 'maxOutput', [WAITS, OK, OK, WAITS]], ['supplies', 0, 'units', [WAITS, WAITS, WAITS, WAITS]],
    ['supplies', 0, 'fuse', [WAITS, WAITS, OK, WAITS]],
    // Nor are the voltages of what hangs on it; of a type without limits it counts for which it is made.
    ['types', 0, 'minVoltage', [WAITS, OK, WAITS, OK]], ['types', 0, 'maxVoltage', [WAITS, OK, WAITS, OK]],
    ['types', 1, 'voltage', [WAITS, OK, OK, WAITS]],
    // Nor whether an electronic way comes up.
    ['types', 0, 'inrush', [OK, WAITS, OK, OK]],
  ])('of %s %d: %s', (sheet, at, key, expected) => {
    for (const none of [-300, '=1/0']) {
      const schedule = scheduleOf(sheets());
      enter(schedule, sheet, at, { [key]: none });
      expect([none, ...statuses(schedule)]).toEqual([none, ...expected]);
      expect(schedule.findings.filter(({ severity }) => severity !== 'note').map((each) => [each.sheet, each.key]))
        .toEqual([[sheet, key]]);
      schedule.undo();
      expect(statuses(schedule)).toEqual([OK, OK, OK, OK]);
    }
  });

  test('of a type with both limits its voltage is not asked', () => {
    const schedule = scheduleOf(sheets());
    enter(schedule, 'types', 0, { maxVoltage: 30, voltage: '=1/0' });
    expect(statuses(schedule)).toEqual([OK, OK, OK, OK]);
  });
});
