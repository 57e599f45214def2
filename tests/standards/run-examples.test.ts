import { describe, expect, test } from 'vitest';
import type { Cells } from '../../src/schedule/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';
import { scheduleOf, valueAt } from '../support/schedules.ts';

/*
 * Published examples, entered as a schedule as a person enters them. The sources are those of volt-drop.test.ts and
 * protection.test.ts beside this file.
 */

interface Example {
  readonly source: string;
  readonly volts: number;
  /** Resistance of one conductor, as warm as it is in the example [Ω/km]. */
  readonly resistance: number;
  readonly metres: number;
  /** Current [A] or power [W] and distance [m] of each load; without a distance at the end. */
  readonly loads: readonly { readonly amps?: number; readonly watts?: number; readonly at?: number }[];
}

/** Resistance of copper at 70 °C over that at 20 °C: 1 + 0.00393 × 50 (α of annealed copper, IEC 60028). */
const WARM = 1.1965;

function scheduleFor(
  { volts, resistance, metres, loads }: Example, run: Cells = {}, supply: Cells = {}, ways: readonly Cells[] = [],
) {
  return scheduleOf({
    types: loads.flatMap(({ watts }, index) => watts === undefined ? [] : [
      { type: `T${index}`, power: watts, load: 'power' },
    ]),
    supplies: [{ rail: 'A', voltage: volts, rated: 1e6, innerResistance: 0, ...supply }],
    ways,
    // The textbooks do not ask what the conductor carries.
    conductors: [{ conductor: 'C', resistance, maxCurrent: 1e6 }],
    // Their resistances are those of the conductors as they are.
    runs: [{ run: 'W1', rail: 'A', conductor: 'C', length: metres, maxDrop: 1, temperature: 20, ...run }],
    devices: loads.map(({ amps, at }, index) => ({
      rail: 'A', run: 'W1', qty: 1, ...(amps === undefined ? { type: `T${index}` } : { unitDraw: amps * 1000 }),
      ...(at === undefined ? {} : { distance: at }),
    })),
  });
}

/** Of mains, which no rail may have, a tenth is entered: a circuit of given currents is linear. */
const MAINS = 10;

const terminals = (example: Example) => {
  const part = example.volts > 120 ? MAINS : 1;
  const loads = example.loads.map(({ amps, ...load }) => amps === undefined ? load : { ...load, amps: amps / part });
  const schedule = scheduleFor({ ...example, volts: example.volts / part, loads });
  return loads.map((_load, at) => valueAt(schedule, 'devices', at, 'terminalVoltage') as number * part);
};

describe('distributors of the textbooks, as runs of a schedule', () => {
  test.each<Example & { printed: string[] }>([
    {
      source: 'MEH13 13.1 p. 313', volts: 300, resistance: 0.01, metres: 2000, printed: ['295', '291', '288', '287.6'],
      loads: [{ amps: 100, at: 500 }, { amps: 150, at: 1000 }, { amps: 200, at: 1600 }, { amps: 50 }],
    },
    {
      source: 'MEH13 13.3 p. 315', volts: 600, resistance: 0.14, metres: 6000,
      loads: [{ amps: 40, at: 2000 }, { amps: 20 }], printed: ['566.4', '544.0'],
    },
    {
      source: 'EDU', volts: 500, resistance: 0.02, metres: 4000, loads: [{ amps: 100, at: 2000 }, { amps: 200 }],
      printed: ['476', '460'],
    },
    {
      // Inputs and equation as in a published problem, which prints no answer; two independent solvers agree on these.
      source: 'eight devices of 1.196 W at 10 m spacing on 1 mm wire', volts: 24,
      resistance: 1000 * 0.017 / (Math.PI / 4), metres: 80,
      loads: Array.from({ length: 8 }, (_, index) => ({ watts: 1.196, at: 10 * (index + 1) })),
      printed: ['23.82324', '23.66821', '23.53506', '23.42391', '23.33486', '23.26800', '23.22339', '23.20107'],
    },
  ])('$source', ({ printed: digits, ...example }) => {
    expect(terminals(example)).toEqual(digits.map((text) => closeTo(Number(text), printed(text))));
  });
});

// What is lost hangs on the current alone, so that the rail may have any voltage that it can have.
describe('single loads at the end of a cable, as runs of a schedule', () => {
  test.each([
    {
      source: 'NEC-E2, AWG 16 at 4.99 Ω/kft, 100 ft, 4 A on 24 V', volts: 24, resistance: 4.99 / 0.3048, metres: 30.48,
      amps: 4, drop: '3.992',
    },
    { source: 'BS 7671, 1.5 mm², 29 mV/A/m', volts: 48, resistance: 14.5, metres: 10, amps: 16, drop: '4.64' },
    { source: 'BS 7671, 4 mm², 11 mV/A/m', volts: 48, resistance: 5.5, metres: 20, amps: 30, drop: '6.6' },
    { source: 'BS 7671, 6 mm², 7.3 mV/A/m', volts: 48, resistance: 3.65, metres: 40, amps: 45, drop: '13.14' },
    { source: 'BS 7671, 10 mm², 4.4 mV/A/m', volts: 48, resistance: 2.2, metres: 40, amps: 45, drop: '7.92' },
  ])('$source: $drop V', ({ amps, drop, ...example }) => {
    const schedule = scheduleFor({ ...example, loads: [{ amps }] });
    expect(valueAt(schedule, 'runs', 0, 'drop')).toEqual(closeTo(Number(drop), printed(drop)));
    expect(valueAt(schedule, 'runs', 0, 'current')).toBe(amps);
    // Two pairs in parallel halve it.
    const double = scheduleFor({ ...example, loads: [{ amps }] }, { pairs: 2 });
    expect(valueAt(double, 'runs', 0, 'drop')).toEqual(closeTo(Number(drop) / 2, printed(drop)));
  });

  test('24 W behind 1 Ω on 24 V work at 22.954451 V, 145 W at none; closed form', () => {
    const example = { source: '', volts: 24, resistance: 10, metres: 50 };
    expect(valueAt(scheduleFor({ ...example, loads: [{ watts: 24 }] }), 'runs', 0, 'endVoltage'))
      .toEqual(closeTo((24 + Math.sqrt(24 * 24 - 4 * 24)) / 2, { absolute: 1e-9, relative: 0 }));
    const collapsed = scheduleFor({ ...example, loads: [{ watts: 145 }] });
    for (const key of ['current', 'drop', 'dropRatio', 'endVoltage']) expect(valueAt(collapsed, 'runs', 0, key))
      .toBeNull();
    expect(valueAt(collapsed, 'devices', 0, 'terminalVoltage')).toBeNull();
    expect(valueAt(collapsed, 'runs', 0, 'status')).toBe('over');
  });
});

describe('short circuits at the end of a run', () => {
  test('LEC: 230 V into 2 × 2300 ft of AWG 14, 11.301 Ω, are 20.352 A', () => {
    const metres = 2300 * 0.3048;
    const resistance = 11.301 / 2 / metres * 1000 / WARM;
    const schedule = scheduleFor({ source: '', volts: 230 / MAINS, resistance, metres, loads: [] });
    expect(valueAt(schedule, 'runs', 0, 'faultCurrent') as number * MAINS)
      .toEqual(closeTo(20.352, printed('20.352')));
  });

  test.each([
    // BS 7671 Table 41.3, as reprinted: largest loop impedance at which a breaker acts at once, at 0.95 × 230 V.
    { name: 'B', trip: 5, rating: 6, ohm: 7.28 }, { name: 'B', trip: 5, rating: 32, ohm: 1.37 },
    { name: 'C', trip: 10, rating: 10, ohm: 2.19 }, { name: 'C', trip: 10, rating: 63, ohm: 0.35 },
    { name: 'D', trip: 20, rating: 16, ohm: 0.68 }, { name: 'D', trip: 20, rating: 40, ohm: 0.27 },
  ])('BS 7671 Table 41.3, $name $rating A: it clears below $ohm Ω and may not above', ({ name, trip, rating, ohm }) => {
    const rules = (loop: number) => {
      const resistance = loop / 2 * 1000 / 50 / WARM;
      const example = { source: '', volts: 0.95 * 230 / MAINS, resistance, metres: 50, loads: [] };
      const schedule = scheduleFor(example, { way: 'F1' }, {}, [
        { way: 'F1', rail: 'A', kind: name, rated: rating / MAINS, trip },
      ]);
      return schedule.findings.filter(({ rule }) => rule === 'run-may-not-clear').length;
    };
    // The table is rounded to two decimals, to nearest or down.
    expect([rules(ohm - 0.01), rules(ohm + 0.01)]).toEqual([0, 1]);
  });

  test('a supply that limits its output: 10 A at a peak of 1.2 × make 1 A of characteristic B act, and may never 2 A', () => {
    // 10 × 1.2 = 12 A lie between 7.5 × 1 A and 7.5 × 2 A, the multiple of B on direct current. Common practice, no
    // source.
    const statusWith = (rated: number) => {
      const example = { source: '', volts: 24, resistance: 4.61, metres: 10, loads: [{ amps: 0.5 }] };
      return scheduleFor(
        example, { way: 'F1', ambient: 20 }, { rated: 10, peak: 1.2 }, [{ way: 'F1', rail: 'A', kind: 'B', rated }]
      );
    };
    expect(valueAt(statusWith(1), 'runs', 0, 'status')).toBe('ok');
    const folding = statusWith(2);
    expect(valueAt(folding, 'runs', 0, 'faultCurrent')).toEqual(closeTo(12, EXACT));
    expect([valueAt(folding, 'runs', 0, 'status'), valueAt(folding, 'ways', 0, 'status')]).toEqual(['near', 'near']);
  });
});
