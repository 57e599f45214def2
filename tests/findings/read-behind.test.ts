import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { inputColumns, SHEET_NAMES, type CellValue, type InputColumn } from '../../src/schedule/index.ts';
import { enter, findingsAt, scheduleOf } from '../support/schedules.ts';

/**
 * Everything filled in so that checks read as far as they can: a run with its conductor and supply, an output with its
 * contact.
 */
const SHEETS = {
  types: [{ type: 'T', power: 12, minVoltage: 20, group: 'g' }],
  cases: [{ case: 'A', hours: 2 }, { case: 'B', together: true }],
  factors: [{ case: 'A', group: 'g', factor: 0.5 }, { case: 'B', group: 'g', factor: 0.9 }], supplies: [
    {
      rail: 'L1', rated: 10, efficiency: 0.9, enclosure: 'E', fullUpTo: 30, lessPerKelvin: 0.02, feed: 'F',
      inputPowerFactor: 0.9, inputInrush: 60,
    },
  ],
  branches: [{ branch: 'B1', limit: 40 }], conductors: [{ conductor: 'C', resistance: 12, maxCurrent: 3 }],
  runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 40, way: 'F1' }],
  ways: [{ way: 'F1', rail: 'L1', kind: 'gG', rated: 2 }],
  devices: [
    { ref: 'D1', type: 'T', qty: 3, run: 'W1', branch: 'B1', distance: 35 },
    { ref: 'D2', type: 'T', rail: 'L2', run: 'W1' },
  ],
  enclosures: [
    { enclosure: 'E', height: 600, width: 400, depth: 200, mounting: 'wall', ambient: 30, otherLoss: 5, maxInside: 45 },
  ],
  contacts: [{ contact: 'K', lamp: 5, inrush: 80, dc: 5, maxDcVoltage: 30 }],
  terminals: [
    { terminal: 'X1:1', strip: 'X1', enclosure: 'E', potential: 'F1 L+', inside: 'F1:2', outside: 'W1', core: '1', size: 2.5, maxSize: 2.5, bridge: 'a' },
    { terminal: 'X1:2', strip: 'X1', potential: 'Q1 L', inside: 'Q1:14', outside: 'Q1', core: 'L', bridge: 'a', maxSize: 2.5 },
    { terminal: 'X1:3', strip: 'X1', potential: 'F1 L+', inside: 'X1:1', outside: 'W1', core: '3' },
  ],
  feeds: [{ feed: 'F', rated: 10, curve: 'B' }], modules: [{ module: 'M', common: 0.6, outputs: 8 }],
  outputs: [
    { output: 'Q1', module: 'M', contact: 'K', kind: 'lamp', power: 100, powerFactor: 0.9, inrush: 90, feed: 'F' },
    { output: 'Q2', contact: 'K', kind: 'dc', power: 24, rail: 'L1' },
    { output: 'Q3', contact: 'K', kind: 'motor', power: 100, feed: 'F' },
  ],
} as const;

function anotherValue({ kind, to, tag, choices, max, default: otherwise }: InputColumn): CellValue {
  if (to !== undefined || tag === true) return 'X';
  if (kind === 'boolean') return otherwise !== true;
  if (kind === 'choice') return choices!.at(-1)!;
  return kind === 'text' ? 'text' : Math.min(max ?? 50, kind === 'ratio' ? 0.5 : 50);
}

test('that what a conductor carries is not known is found until it is entered', () => {
  const schedule = scheduleOf({ ...SHEETS, conductors: [{ conductor: 'C', resistance: 12 }] });
  const isFound = () => findingsAt(schedule, 'conductors').some(({ rule }) => rule === 'conductor-current-missing');
  expect(isFound()).toBe(true);
  enter(schedule, 'conductors', 0, { maxCurrent: 3 });
  expect(isFound()).toBe(false);
  enter(schedule, 'conductors', 0, { maxCurrent: null });
  expect(isFound()).toBe(true);
});

test('whatever cell is emptied, changed or put back, the findings are those of a schedule built afresh', () => {
  for (const sheet of SHEET_NAMES) {
    for (const column of inputColumns(sheet)) {
      const schedule = scheduleOf(SHEETS);
      for (const value of [null, anotherValue(column)]) {
        enter(schedule, sheet, 0, { [column.key]: value });
        const afresh = new LoadSchedule(schedule.content());
        expect([sheet, column.key, value, schedule.findings]).toEqual([sheet, column.key, value, afresh.findings]);
        afresh.dispose();
      }
      schedule.undo();
      schedule.undo();
      expect([sheet, column.key, schedule.findings]).toEqual([sheet, column.key, scheduleOf(SHEETS).findings]);
      schedule.dispose();
    }
  }
});
