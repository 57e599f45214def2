import type { Cells } from '../../src/schedule/index.ts';
import { withWays } from '../support/schedules.ts';
import type { FindingCase } from './finding-case.ts';

/** 5 A on a rail of 10 A that may be used whole. */
const SUPPLY = (measured: Cells) => ({
  supplies: [{ rail: 'L1', rated: 10, ...measured }], devices: [{ ref: 'D1', qty: 1, rail: 'L1', unitDraw: 5000 }],
});

/** The same with a type that bears 26.4 V. */
const BEARING = (measured: Cells, qty = 1) => ({
  ...SUPPLY(measured), types: [{ type: 'T', maxVoltage: 26.4, minVoltage: 20, draw: 5000 }],
  devices: [{ ref: 'D1', type: 'T', qty, rail: 'L1' }],
});

/** 1 A over 50 m there and back of 10 Ω/km: 1 Ω, 1 V, 23 V at the end, where 21 V are needed. */
const RUN = (measured: Cells) => withWays({
  supplies: [{ rail: 'L1', rated: 10 }], conductors: [{ conductor: 'C', resistance: 10 }], types: [
    { type: 'T', draw: 1000, minVoltage: 21 },
  ],
  runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 50, temperature: 20, ...measured }],
  devices: [{ ref: 'D1', qty: 1, rail: 'L1', run: 'W1', type: 'T' }],
});

/** At its start the rail was measured, so that the drop is known. */
const FROM = (volts: number, measured: Cells, more: Cells = {}) => ({
  ...RUN(measured), supplies: [{ rail: 'L1', rated: 10, measuredVoltage: volts }],
  conductors: [{ conductor: 'C', resistance: 10, ...more }],
});

/** With a type that bears 30 V. */
const STANDS = (measured: Cells) =>
  ({ ...RUN(measured), types: [{ type: 'T', draw: 1000, minVoltage: 21, maxVoltage: 30 }] });

/** 5 × 0.2 A on W1 and 2 × 0.3 A on W2. */
const TWO_RUNS = (first: Cells, second: Cells, more: readonly Cells[] = []) => ({
  supplies: [{ rail: 'L1', rated: 10 }], conductors: [{ conductor: 'C', resistance: 1 }],
  ways: ['F1', 'F2', 'F3'].map((way) => ({ way, rail: 'L1', kind: 'electronic', rated: 4 })),
  types: [{ type: 'T', draw: 200, minVoltage: 21 }, { type: 'U', draw: 300, minVoltage: 21 }, { type: 'V', draw: 205, minVoltage: 21 }],
  runs: [first, second].map((measured, at) => ({ run: `W${at + 1}`, way: `F${at + 1}`, conductor: 'C', length: 1, ...measured })),
  devices: [{ ref: 'D1', type: 'T', qty: 5, run: 'W1' }, { ref: 'D2', type: 'U', qty: 2, run: 'W2' }, ...more],
});

/** Two supplies on one feed. */
const ON_FEED = (first: Cells, second: Cells) => ({
  feeds: [{ feed: 'M1' }, { feed: 'M2' }],
  supplies: [first, second].map((measured, at) => ({ rail: `L${at + 1}`, rated: 10, feed: 'M1', ...measured })),
});

/** Differences by hand: share × figure worked out is what may differ. */
export const MEASURED_CASES: readonly FindingCase[] = [
  {
    rule: 'supply-measured-over-usable', sheet: 'supplies', sheets: SUPPLY({ measuredCurrent: 11 }), severity: 'over',
    key: 'measuredCurrent', value: 11, limit: 10, inStatus: true,
    message: 'Rail L1 was measured at 11.00 A, which exceeds the usable 10.00 A by 1.00 A. Move devices to another rail, or fit a larger supply.',
    silent: [SUPPLY({}), SUPPLY({ measuredCurrent: 10 }), SUPPLY({ measuredCurrent: 11, rated: 12 })],
  },
  {
    rule: 'supply-measured-current-differs', sheet: 'supplies', sheets: SUPPLY({ measuredCurrent: 6 }),
    severity: 'near', key: 'measuredCurrent', value: 6, limit: 5, inStatus: true,
    message: 'Rail L1: 6.00 A measured, 5.00 A calculated: 1.00 A more, where 0.50 A may differ. Usually more is switched on at the same time than the diversity says, or a device is missing in the schedule or draws more than entered. Check diversity, counts and draws.',
    silent: [
      SUPPLY({}), SUPPLY({ measuredCurrent: 5.5 }), SUPPLY({ measuredCurrent: 4.5 }),
      SUPPLY({ measuredCurrent: 6, currentTolerance: 0.2 }), SUPPLY({ measuredCurrent: 11 }),
      { ...SUPPLY({ measuredCurrent: 6 }), devices: [{ rail: 'L1', qty: 1, unitDraw: 5000 }, { rail: 'L1', qty: 1 }] },
    ],
  },
  {
    rule: 'supply-measured-voltage-differs', sheet: 'supplies', sheets: SUPPLY({ measuredVoltage: 25 }),
    severity: 'near', key: 'measuredVoltage', value: 25, limit: 24, inStatus: true,
    message: 'Rail L1: 25.00 V measured, 1.00 V above 24.00 V, where 0.48 V may differ. Check that the devices accept it, or set it lower.',
    silent: [
      SUPPLY({}), SUPPLY({ measuredVoltage: 23.52 }), SUPPLY({ measuredVoltage: 24.48 }),
      // A battery is charged with 27.6 V; 24 V × 1.1 = 26.4 V.
      SUPPLY({ measuredVoltage: 27.6, battery: 7 }), SUPPLY({ measuredVoltage: 26.4, tolerance: 0.1 }),
    ],
  },
  {
    rule: 'supply-measured-over-voltage', sheet: 'supplies', sheets: BEARING({ measuredVoltage: 27.5 }), severity: 'over',
    key: 'measuredVoltage', value: 27.5, limit: 26.4, inStatus: true,
    message: 'Rail L1 was measured at 27.50 V, and a device on it stands 26.40 V at the most: 1.10 V too much. Disconnect its devices, set it lower or replace it, and test every device that was connected.',
    silent: [
      BEARING({ measuredVoltage: 26.4 }), BEARING({ measuredVoltage: 27.5 }, 0), SUPPLY({ measuredVoltage: 27.5 }),
      BEARING({ measuredVoltage: -27.5 }),
    ],
  },
  {
    // What the devices do not bear is told instead.
    rule: 'supply-measured-voltage-differs', sheet: 'supplies', sheets: BEARING({ measuredVoltage: 26 }), severity: 'near',
    key: 'measuredVoltage', value: 26, limit: 24, inStatus: true,
    message: 'Rail L1: 26.00 V measured, 2.00 V above 24.00 V, where 0.48 V may differ. Check that the devices accept it, or set it lower.',
    silent: [BEARING({ measuredVoltage: 27.5 })],
  },
  {
    rule: 'supply-measured-under-voltage', sheet: 'supplies', sheets: SUPPLY({ measuredVoltage: 23 }), severity: 'over',
    key: 'measuredVoltage', value: 23, limit: 24, inStatus: true,
    message: 'Rail L1: 23.00 V measured, 1.00 V below 24.00 V, where 0.48 V may differ. Disconnect its load: if the voltage returns, it is overloaded; if not, measure the mains at its input against its nameplate, then set it higher or replace it.',
    silent: [
      SUPPLY({ measuredVoltage: 23.52 }), SUPPLY({ measuredVoltage: 24.48 }), SUPPLY({ measuredVoltage: 0 }),
      // 24 V less a diode of 0.5 V and 0.48 V; 24 V × 0.9 = 21.6 V.
      SUPPLY({ measuredVoltage: 23.02, seriesDrop: 0.5 }), SUPPLY({ measuredVoltage: 21.6, tolerance: 0.1 }),
    ],
  },
  {
    rule: 'supply-measured-reversed', sheet: 'supplies', sheets: SUPPLY({ measuredVoltage: -24 }), severity: 'over',
    key: 'measuredVoltage', value: -24, limit: 24, inStatus: true,
    message: 'Rail L1 was measured at -24.00 V and ought to have 24.00 V: plus and minus are changed over. Switch it off, look at the leads of the meter first, then at the wiring of the output; test every device that was connected.',
    silent: [SUPPLY({}), SUPPLY({ measuredVoltage: 24 }), SUPPLY({ measuredVoltage: -2.4 })],
  },
  {
    rule: 'supply-measured-dead', sheet: 'supplies', sheets: SUPPLY({ measuredVoltage: 0, measuredCurrent: 0 }),
    severity: 'over', key: 'measuredVoltage', value: 0, limit: 24, inStatus: true,
    message: 'Rail L1 was measured at 0.00 V and ought to have 24.00 V: it is dead. See whether mains is at its input and its protection closed, then whether the voltage returns with the output disconnected: if so, look for a short circuit behind it; if not, replace it.',
    silent: [SUPPLY({ measuredCurrent: 0 }), SUPPLY({ measuredVoltage: 0, measuredCurrent: 9 })],
  },
  {
    rule: 'supply-measured-short-circuit', sheet: 'supplies', severity: 'over', key: 'measuredVoltage', value: 3,
    limit: 24, inStatus: true, sheets: SUPPLY({ measuredVoltage: 3, measuredCurrent: 1 }),
    message: 'Rail L1 was measured at 3.00 V and ought to have 24.00 V: it feeds a short circuit, limits its current or tries again and again. Disconnect its ways one by one until the voltage returns: the fault is on the last one.',
    silent: [
      SUPPLY({ measuredVoltage: 0, measuredCurrent: 8.9 }), SUPPLY({ measuredVoltage: 12, measuredCurrent: 10 }),
    ],
  },
  {
    rule: 'supply-measured-open', sheet: 'supplies', sheets: SUPPLY({ measuredVoltage: 24, measuredCurrent: 0 }),
    severity: 'near', key: 'measuredCurrent', value: 0, limit: 5, inStatus: true,
    message: 'Rail L1 has its voltage and gives 0.00 A, where 5.00 A are calculated. See whether the devices are switched on and fitted, then look for an open protection or terminal behind it.',
    silent: [SUPPLY({ measuredVoltage: 24, measuredCurrent: 0.11 }), SUPPLY({ measuredVoltage: 24 })],
  },
  {
    rule: 'run-measured-current-differs', sheet: 'runs', sheets: RUN({ measuredCurrent: 0.5 }), severity: 'near',
    key: 'measuredCurrent', value: 0.5, limit: 1, inStatus: true,
    message: 'Run W1: 0.50 A measured, 1.00 A calculated: 0.50 A less, where 0.10 A may differ. Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.',
    silent: [RUN({}), RUN({ measuredCurrent: 0.9 }), RUN({ measuredCurrent: 1.1 })],
  },
  {
    rule: 'run-measured-current-differs', sheet: 'runs', sheets: TWO_RUNS({ measuredCurrent: 0.8 }, {}), severity: 'near',
    key: 'measuredCurrent', value: 0.8, limit: 1, inStatus: true,
    message: 'Run W1: 0.80 A measured, 1.00 A calculated: 0.20 A less, where 0.10 A may differ. One T draws as much: see first whether one is missing, not connected or switched off. Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.',
    silent: [TWO_RUNS({}, {})],
  },
  {
    rule: 'run-measured-current-differs', sheet: 'runs', sheets: TWO_RUNS({ measuredCurrent: 0.41 }, {}), severity: 'near',
    key: 'measuredCurrent', value: 0.41, limit: 1, inStatus: true,
    message: 'Run W1: 0.41 A measured, 1.00 A calculated: 0.59 A less, where 0.10 A may differ. 3 T draw as much: see first whether as many are missing, not connected or switched off. Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.',
    silent: [TWO_RUNS({}, {})],
  },
  {
    // No number of them draws as much.
    rule: 'run-measured-current-differs', sheet: 'runs', sheets: TWO_RUNS({ measuredCurrent: 0.7 }, {}), severity: 'near',
    key: 'measuredCurrent', value: 0.7, limit: 1, inStatus: true,
    message: 'Run W1: 0.70 A measured, 1.00 A calculated: 0.30 A less, where 0.10 A may differ. Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.',
    silent: [TWO_RUNS({}, {})],
  },
  {
    // It may be one of either type.
    rule: 'run-measured-current-differs', sheet: 'runs', severity: 'near', key: 'measuredCurrent', value: 1, limit: 1.205, inStatus: true,
    sheets: TWO_RUNS({ measuredCurrent: 1 }, {}, [{ ref: 'D3', type: 'V', qty: 1, run: 'W1' }]),
    message: 'Run W1: 1.00 A measured, 1.21 A calculated: 0.21 A less, where 0.12 A may differ. Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.',
    silent: [TWO_RUNS({}, {})],
  },
  {
    // 0.6 A and 1 A, changed over; that 2 T draw 0.4 A is not told then.
    rule: 'run-measured-current-differs', sheet: 'runs', sheets: TWO_RUNS({ measuredCurrent: 0.6 }, { measuredCurrent: 1 }), severity: 'near',
    key: 'measuredCurrent', value: 0.6, limit: 1, inStatus: true,
    message: 'Run W1: 0.60 A measured, 1.00 A calculated: 0.40 A less, where 0.10 A may differ. What W2 has is measured here, and what this run has is measured there: see first whether their cables are changed over at the terminals. Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.',
    silent: [TWO_RUNS({}, {})],
  },
  {
    rule: 'supply-measured-dead', sheet: 'supplies', sheets: ON_FEED({ measuredVoltage: 0 }, { measuredVoltage: 21 }), severity: 'over',
    key: 'measuredVoltage', value: 0, limit: 24, inStatus: true,
    message: 'Rail L1 was measured at 0.00 V and ought to have 24.00 V, and all 2 supplies that were measured on feed M1 are low. Measure the mains at M1 under load, and look at its protection, before anything else.',
    silent: [ON_FEED({}, {})],
  },
  {
    // The other one is well, or on another feed.
    rule: 'supply-measured-dead', sheet: 'supplies', sheets: ON_FEED({ measuredVoltage: 0 }, { measuredVoltage: 24 }), severity: 'over',
    key: 'measuredVoltage', value: 0, limit: 24, inStatus: true,
    message: 'Rail L1 was measured at 0.00 V and ought to have 24.00 V: it is dead. See whether mains is at its input and its protection closed, then whether the voltage returns with the output disconnected: if so, look for a short circuit behind it; if not, replace it.',
    silent: [ON_FEED({}, {})],
  },
  {
    rule: 'supply-measured-under-voltage', sheet: 'supplies', severity: 'over', key: 'measuredVoltage', value: 23, limit: 24, inStatus: true,
    sheets: ON_FEED({ measuredVoltage: 23 }, { measuredVoltage: 21, feed: 'M2' }),
    message: 'Rail L1: 23.00 V measured, 1.00 V below 24.00 V, where 0.48 V may differ. Disconnect its load: if the voltage returns, it is overloaded; if not, measure the mains at its input against its nameplate, then set it higher or replace it.',
    silent: [ON_FEED({}, {})],
  },
  {
    // 24 V − 22.4 V, where 1 V is worked out: a fifth of it and 0.1 V of the meter may be more.
    rule: 'run-measured-drop-differs', sheet: 'runs', sheets: FROM(24, { measuredVoltage: 22.4 }), severity: 'near',
    key: 'measuredVoltage', value: 1.6, limit: 1, inStatus: true,
    message: 'Run W1 loses 1.60 V as measured, where 1.00 V are calculated and 0.30 V more may be. Look for a joint or a terminal of high resistance first; then check length and conductor.',
    silent: [
      FROM(24, { measuredVoltage: 22.7 }), FROM(24, { measuredVoltage: 23.9 }), FROM(23.7, { measuredVoltage: 22.4 }),
      // Not measured at its start, which may differ by 2 %: 0.48 V.
      RUN({ measuredVoltage: 22.33 }),
      // With the 1.5 A that flow, 1.5 V are right.
      FROM(24, { measuredVoltage: 22.4, measuredCurrent: 1.5 }), RUN({}),
    ],
  },
  {
    rule: 'run-measured-under-voltage', sheet: 'runs', sheets: RUN({ measuredVoltage: 20 }), severity: 'over',
    key: 'measuredVoltage', value: 20, limit: 21, inStatus: true,
    message: 'Run W1 was measured at 20.00 V at its far end, where a device needs 21.00 V. Check joints, length and conductor; use a larger conductor or more pairs.',
    silent: [RUN({}), RUN({ measuredVoltage: 21 }), RUN({ measuredVoltage: 0 })],
  },
  {
    // Its type bears 30 V.
    rule: 'run-measured-over-voltage', sheet: 'runs', sheets: STANDS({ measuredVoltage: 31 }), severity: 'over',
    key: 'measuredVoltage', value: 31, limit: 30, inStatus: true,
    message: 'Run W1 was measured at 31.00 V at its far end, and a device on it stands 30.00 V at the most: 1.00 V too much. Disconnect its devices, see whether its cable hangs on another rail, and test every device that was connected.',
    silent: [STANDS({ measuredVoltage: 30 }), RUN({ measuredVoltage: 31 })],
  },
  {
    rule: 'run-measured-above-start', sheet: 'runs', sheets: FROM(24, { measuredVoltage: 26 }), severity: 'near',
    key: 'measuredVoltage', value: 26, limit: 24, inStatus: true,
    message: 'Run W1 was measured at 26.00 V at its far end, 2.00 V above the 24.00 V at its start, where 0.48 V may differ, and no cable adds voltage. See whether it hangs on another rail or is joined with one, then measure both ends again.',
    silent: [
      FROM(24, { measuredVoltage: 24.48 }), FROM(26, { measuredVoltage: 26 }), STANDS({ measuredVoltage: 31 }),
      // Not measured at its start, where it may be 10 % above 24 V: 26.4 V.
      { ...RUN({ measuredVoltage: 26.8 }), supplies: [{ rail: 'L1', rated: 10, tolerance: 0.1 }] },
    ],
  },
  {
    rule: 'run-measured-over-protection', sheet: 'runs', severity: 'over', key: 'measuredCurrent', value: 5, limit: 3,
    inStatus: true, sheets: RUN({ measuredCurrent: 5, protection: 3 }),
    message: 'Run W1 was measured at 5.00 A through a protection of 3.00 A: 2.00 A too much. Switch devices off until it holds, find the one that draws too much or is missing in the schedule, and share the load over more runs.',
    silent: [RUN({ measuredCurrent: 3, protection: 3 }), RUN({ measuredCurrent: 5 })],
  },
  {
    rule: 'run-measured-over-carries', sheet: 'runs', severity: 'over', key: 'measuredCurrent', value: 5, limit: 4,
    inStatus: true, sheets: FROM(24, { measuredCurrent: 5 }, { maxCurrent: 4 }),
    message: 'Run W1 was measured at 5.00 A and its cable may carry 4.00 A where it lies: 1.00 A too much. Switch devices off until it does, then use a larger conductor or more pairs.',
    silent: [FROM(24, { measuredCurrent: 4 }, { maxCurrent: 4 }), RUN({ measuredCurrent: 5 })],
  },
  {
    rule: 'run-measured-reversed', sheet: 'runs', sheets: RUN({ measuredVoltage: -22.9 }), severity: 'over',
    key: 'measuredVoltage', value: -22.9, limit: 24, inStatus: true,
    message: 'Run W1 was measured at -22.90 V at its far end and ought to have 24.00 V: plus and minus are changed over. Switch it off, look at the leads of the meter first, then put its conductors right at one end; test every device that was connected.',
    silent: [RUN({ measuredVoltage: 22.9 })],
  },
  {
    rule: 'run-measured-dead', sheet: 'runs', sheets: RUN({ measuredVoltage: 0 }), severity: 'over',
    key: 'measuredVoltage', value: 0, limit: 24, inStatus: true,
    message: 'Run W1 was measured at 0.00 V at its far end and ought to have 24.00 V: it is dead. See whether its rail has voltage and its protection is closed, then look for an open terminal or a broken conductor.',
    silent: [RUN({}), RUN({ measuredVoltage: 0, measuredCurrent: 2, protection: 2 }), RUN({ measuredVoltage: 8 })],
  },
  {
    rule: 'run-measured-short-circuit', sheet: 'runs', severity: 'over', key: 'measuredVoltage', value: 1, limit: 24,
    inStatus: true, sheets: RUN({ measuredVoltage: 1, measuredCurrent: 2, protection: 2 }),
    message: 'Run W1 was measured at 1.00 V at its far end and ought to have 24.00 V, with as much current as feeds a short circuit. Switch it off, disconnect its devices one by one, and measure the resistance of the cable before it is switched on again.',
    silent: [RUN({ measuredVoltage: 1, measuredCurrent: 1.7, protection: 2 })],
  },
  {
    rule: 'run-measured-open', sheet: 'runs', sheets: RUN({ measuredVoltage: 24, measuredCurrent: 0 }), severity: 'near',
    key: 'measuredCurrent', value: 0, limit: 1, inStatus: true,
    message: 'Run W1 has its voltage and carries 0.00 A, where 1.00 A are calculated. See whether the devices are switched on and fitted, then look for an open terminal at them.',
    silent: [RUN({ measuredVoltage: 24, measuredCurrent: 0.03 }), RUN({ measuredVoltage: 21.5, measuredCurrent: 0 })],
  },
];
