import { describe, expect, test } from 'vitest';
import { solveRun, type Tap } from '../../src/electrical/index.ts';
import { closeTo, printed } from '../support/close-to.ts';
import { scheduleOf, valueAt } from '../support/schedules.ts';

/*
 * MEH13 V.K. Mehta, R. Mehta, Principles of Power System, ch. 13
 */

interface Example {
  readonly source: string;
  readonly volts: number;
  /** Of both conductors together [Ω/m], as the book has it. */
  readonly loop: number;
  /** From feed to feed [m]. */
  readonly total: number;
  readonly taps: readonly Tap[];
  readonly first: string;
  readonly least: string;
}

const tap = (amps: number, distanceMetres: number): Tap => ({ amps, distanceMetres });

const EXAMPLES: readonly Example[] = [
  {
    // 1 cm² at 1.7e-6 Ω·cm: 3.4e-4 Ω for a metre of both wires.
    source: 'MEH13 13.10 p. 321', volts: 220, loop: 3.4e-4, total: 600, first: '61.7', least: '215.69',
    taps: [tap(20, 100), tap(40, 250), tap(50, 400), tap(30, 500)],
  },
  {
    // The ring: 0.03 Ω for 100 m of each wire, 120 A and 80 A at 150 m and 200 m of 300 m.
    source: 'MEH13 13.22 p. 334', volts: 240, loop: 6e-4, total: 300, first: '86.67', least: '232.2',
    taps: [tap(120, 150), tap(80, 200)],
  },
];

describe('distributors fed at both ends', () => {
  test.each(EXAMPLES)('$source', ({ volts, loop, total, taps, first, least }) => {
    const solution = solveRun({ supplyVolts: volts, loopOhmPerMetre: loop, taps, fedAgainMetres: total });
    expect(solution).toMatchObject({
      working: true, currentAmps: closeTo(Number(first), printed(first)),
      endVolts: closeTo(Number(least), printed(least)),
    });
  });

  test.each([
    ['MEH13 13.14 p. 327: 0.5 A/m over 1000 m at 0.05 Ω/km a wire drop 6.25 V', 0.5, 0.1e-3, 1000, '6.25'],
    ['MEH13 13.17 p. 329: 1.25 A/m over 1000 m at 0.05 Ω/km a wire drop 15.63 V', 1.25, 0.1e-3, 1000, '15.625'],
  ])('%s', (_source, ampsPerMetre, loop, total, drop) => {
    const taps = Array.from({ length: total }, (_each, place) => tap(ampsPerMetre, place + 0.5));
    // A place where nothing is drawn: the middle.
    taps.push(tap(0, total / 2));
    const solution = solveRun({ supplyVolts: 240, loopOhmPerMetre: loop, taps, fedAgainMetres: total });
    expect(solution).toMatchObject({ working: true, dropVolts: closeTo(Number(drop), printed(drop)) });
  });

  test.each(EXAMPLES)('$source, as a run of a schedule between two ways', ({ volts, loop, total, taps, first, least }) => {
    const length = total - 10;
    // The books do not ask what conductors carry, nor what makes a way act.
    const schedule = scheduleOf({
      supplies: [{ rail: 'A', voltage: Math.min(volts, 120), rated: 1e6 }],
      ways: ['F1', 'F2'].map((way) => ({ way, rail: 'A', kind: 'gG', rated: 400 })),
      conductors: [{ conductor: 'C', resistance: loop / 2 * 1000, maxCurrent: 1e6 }],
      runs: [{
        run: 'W1', way: 'F1', secondWay: 'F2', conductor: 'C', length, secondLength: 10, temperature: 20, ambient: 20,
        maxDrop: 1,
      }],
      devices: taps.map(({ amps, distanceMetres }) =>
        ({ run: 'W1', qty: 1, unitDraw: amps! * 1000, distance: distanceMetres })),
    });
    expect(valueAt(schedule, 'ways', 0, 'connected')).toEqual(closeTo(Number(first), printed(first)));
    expect(valueAt(schedule, 'ways', 1, 'demand')).toEqual(
      closeTo(taps.reduce((sum, { amps }) => sum + amps!, 0) - Number(first), printed(first)));
    // Constant currents drop the same whatever the voltage, which a supply of a schedule has no more than 120 V of.
    expect(valueAt(schedule, 'runs', 0, 'drop')).toEqual(closeTo(volts - Number(least), printed(least)));
  });
});
