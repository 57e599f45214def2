import { expect, test } from 'vitest';
import { explainCell } from '../../src/explanations.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { readData, rowsOf } from '../data/read-data.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { enter, findingsAt, idAt, scheduleOf, valueAt, withWays } from '../support/schedules.ts';

/** One run of a conductor as it comes with the software, 5 m long, with a load at its end. */
function run(conductor: string, amps: number, cells: Cells = {}) {
  return scheduleOf(withWays({
    supplies: [{ rail: 'L1', rated: 40, peak: 10 }],
    conductors: rowsOf(readData('conductors.json'), 'conductors') as Cells[],
    runs: [{ run: 'W1', rail: 'L1', conductor, length: 5, maxDrop: 0.2, protection: amps, trip: 1, ...cells }],
    types: [{ type: 'T', draw: amps * 1000, minVoltage: 10 }], devices: [
      { ref: 'D1', type: 'T', qty: 1, rail: 'L1', run: 'W1' },
    ],
  }));
}

const figures = (schedule: ReturnType<typeof run>) =>
  [valueAt(schedule, 'runs', 0, 'carries'), valueAt(schedule, 'runs', 0, 'status')];
const over = (schedule: ReturnType<typeof run>) =>
  findingsAt(schedule, 'runs').filter(({ severity }) => severity === 'over').map(({ rule }) => rule);

// NFPA 79: AWG 24 carries 2 A.
test('AWG 24 behind a fuse of 16 A is over its limits, whatever it carries', () => {
  expect(figures(run('AWG 24', 1, { protection: 2 }))).toEqual([2, 'ok']);
  const behind = run('AWG 24', 1, { protection: 16, trip: 1 });
  expect(figures(behind)).toEqual([2, 'over']);
  expect(over(behind)).toEqual(['run-protection-over-carries']);
});

test('AWG 23 is not proposed for 8 A: the thinnest that carries 8 A is', () => {
  const schedule = run('AWG 23', 8);
  expect(over(schedule)).toEqual(['run-over-carries', 'run-protection-over-carries']);
  // 0.75 mm², 8.5 A in 40 °C by EN 60204-1, √(40 ÷ 30) times that in 30 °C, by hand.
  expect(valueAt(schedule, 'runs', 0, 'smallestConductor')).toBe('0.75 mm² flexible');
  const proposed = run('0.75 mm² flexible', 8);
  expect(figures(proposed)).toEqual([closeTo(8.5 * Math.sqrt(4 / 3), EXACT), 'ok']);
});

// IEC 60364-5-52, method B2: 1.5 mm² carries 16.5 A in 30 °C alone.
test.each<{ why: string; cells: Cells; carries: number; status: string }>([
  { why: 'alone in 30 °C', cells: {}, carries: 16.5, status: 'ok' },
  { why: 'in 40 °C, 0.87', cells: { ambient: 40 }, carries: 14.355, status: 'ok' },
  { why: 'among 4 circuits, 0.65', cells: { grouped: 4 }, carries: 10.725, status: 'over' },
  { why: 'among 4 circuits in 40 °C', cells: { grouped: 4, ambient: 40 }, carries: 9.33075, status: 'over' },
  { why: 'on two pairs, which warm each other, 0.80', cells: { pairs: 2 }, carries: 26.4, status: 'ok' },
  { why: 'on two pairs, said to be alone', cells: { pairs: 2, grouped: 1 }, carries: 26.4, status: 'ok' },
])('1.5 mm² with 12 A, $why: $carries A, $status', ({ cells, carries, status }) => {
  expect(figures(run('1.5 mm² solid', 12, cells))).toEqual([closeTo(carries, EXACT), status]);
});

test('runs whose conductor does not say what it carries are never within limits, and the conductor is told once',
  () => {
  const { sheets } = run('C', 1).content();
  const wires = ['W1', 'W2', 'W3'].map((name) => ({ ...sheets.runs![0], run: name }));
  const schedule = scheduleOf({ ...sheets, runs: wires, conductors: [{ conductor: 'C', resistance: 12.1 }] });
  expect(figures(schedule)).toEqual([null, 'incomplete']);
  expect(valueAt(schedule, 'runs', 0, 'smallestConductor')).toBeNull();
  const { numbers } = explainCell(schedule, 'runs', idAt(schedule, 'runs'), 'status')!;
  expect(numbers).toContain('what its conductor carries is not known');
  const told = schedule.findings.filter(({ rule }) => /carries|current-missing/.test(rule));
  expect(told).toMatchObject(
    [{ rule: 'conductor-current-missing', sheet: 'conductors', tag: 'C', key: 'maxCurrent', waiting: 3 }]
  );
  const counted = Object.values(schedule.findingCounts).reduce((sum, count) => sum + count, 0);
  expect(counted).toBe(schedule.findings.length);
  enter(schedule, 'conductors', 0, { maxCurrent: 10 });
  expect(figures(schedule)).toEqual([10, 'ok']);
  expect(schedule.findings.filter(({ rule }) => rule === 'conductor-current-missing')).toEqual([]);
});

test('what a cable carries is explained with its numbers and its tables', () => {
  const schedule = run('1.5 mm² solid', 12, { grouped: 4, ambient: 40 });
  const { numbers, result, source } = explainCell(schedule, 'runs', idAt(schedule, 'runs'), 'carries')!;
  expect(numbers).toBe(
    '16.50\u00a0A × 1 × the factor for 40\u00a0°C around a conductor of 70\u00a0°C rated at 30\u00a0°C × the factor for 4 bunched circuits'
  );
  expect(result).toBe('9.33\u00a0A');
  expect(source).toContain('B.52.17');
});
