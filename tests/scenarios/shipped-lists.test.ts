import { expect, test } from 'vitest';
import type { Cells } from '../../src/schedule/index.ts';
import { readData, rowsOf } from '../data/read-data.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { findingsAt, scheduleOf, valueAt } from '../support/schedules.ts';

const conductors = rowsOf(readData('conductors.json'), 'conductors') as Cells[];

/** A supply of 10 A with so many devices of a type as it comes with the software. */
function railWith(type: string, qty: number, rated = 10) {
  return scheduleOf({
    types: rowsOf(readData('device-types.json'), 'types') as Cells[],
    supplies: [{ rail: 'P1', rated }],
    devices: [{ ref: 'D1', type, qty, rail: 'P1' }],
  });
}

// No type says how many work at once: 38 blinds of 0.8 A are 30.4 A, and a supply of 10 A does not feed them.
test.each<{ type: string; qty: number; demand: number; status: string }>([
  { type: 'Blind motor', qty: 38, demand: 30.4, status: 'over' },
  { type: 'Damper actuator', qty: 80, demand: 80 * 3 / 24, status: 'near' },
  { type: 'LED strip 9.6 W/m', qty: 20, demand: 8, status: 'ok' },
  // Cold, 0.3 A each for minutes; held, 40 × 2 W ÷ 24 V would have been 3.33 A.
  { type: 'Valve actuator, thermal', qty: 40, demand: 12, status: 'over' },
  // The pulse of 105 mA, not its mean of 10 mA.
  { type: 'CO2 sensor', qty: 80, demand: 8.4, status: 'near' },
  // Drivers and bus supplies feed dimming inputs.
  { type: 'Driver, dimming input', qty: 500, demand: 0, status: 'ok' },
])('$qty × $type ask a supply of 10 A for $demand A: $status', ({ type, qty, demand, status }) => {
  const schedule = railWith(type, qty);
  expect(valueAt(schedule, 'supplies', 0, 'demand')).toEqual(closeTo(demand, EXACT));
  expect(valueAt(schedule, 'supplies', 0, 'status')).toBe(status);
});

/** One run of 50 m, with a load of constant current at its end that works down to so many volts. */
function run(conductor: string, amps: number, minVoltage = 10) {
  return scheduleOf({
    conductors, supplies: [{ rail: 'P1', rated: 20 }],
    runs: [{ run: 'W1', rail: 'P1', conductor, length: 50, maxDrop: 0.9, temperature: 20 }],
    types: [{ type: 'T', draw: amps * 1000, minVoltage }], devices: [{ ref: 'D1', type: 'T', qty: 1, run: 'W1' }],
  });
}

// A controller takes 20.4 V in the mean (IEC 61131-2); 19.2 V it bears for moments. 0.34 mm² of 57.4 Ω/km, by hand:
// 24 − 2 × 0.0574 × 50 × 0.7 = 19.982 V, which was enough for 19.2 V.
test('a rail controller at the end of 50 m of 0.34 mm² with 0.7 A is under its voltage', () => {
  const controller = rowsOf(readData('device-types.json'), 'types').find(({ type }) => type === 'Controller')!;
  const schedule = run('0.34 mm² stranded', 0.7, Number(controller.minVoltage));
  expect(valueAt(schedule, 'runs', 0, 'endVoltage')).toEqual(closeTo(19.982, EXACT));
  expect(findingsAt(schedule, 'runs').map(({ rule }) => rule)).toContain('run-under-voltage');
});

// Loop of 100 m, 20 °C, 0.1 A: the volts lost are 10 × the ohms of a metre. Carried: NFPA 79, 60 °C in air of 30 °C,
// AWG 24, 22, 18.
test.each([
  ['0.22 mm² stranded', 0.0911, 2], ['0.34 mm² stranded', 0.0574, 3], ['AWG 24 stranded', 0.085899, 2],
  ['AWG 18 stranded', 0.021367, 7],
])('%s loses %d Ω a metre and carries %d A', (conductor, ohms, carries) => {
  const schedule = run(conductor, 0.1);
  expect(valueAt(schedule, 'runs', 0, 'drop')).toEqual(closeTo(10 * ohms, EXACT));
  expect(valueAt(schedule, 'runs', 0, 'carries')).toEqual(closeTo(carries, EXACT));
  const over = run(conductor, carries + 0.1, 0);
  expect(findingsAt(over, 'runs').map(({ rule }) => rule)).toContain('run-over-carries');
});
