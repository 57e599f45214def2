import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

/** 5 A on a rail of 10 A that may be used whole. */
const SUPPLY = (measured: Cells) => ({
  supplies: [{ rail: 'L1', rated: 10, ...measured }], devices: [{ ref: 'D1', qty: 1, rail: 'L1', unitDraw: 5000 }],
});

/** 1 A over 50 m there and back of 10 Ω/km: 1 Ω, 1 V, 23 V at the end, where 21 V are needed. */
const RUN = (measured: Cells) => ({
  supplies: [{ rail: 'L1', rated: 10 }], conductors: [{ conductor: 'C', resistance: 10 }], types: [
    { type: 'T', draw: 1000, minVoltage: 21 },
  ],
  runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 50, ...measured }],
  devices: [{ ref: 'D1', qty: 1, rail: 'L1', run: 'W1', type: 'T' }],
});

/** Differences by hand: share × figure worked out is what may differ. */
export const MEASURED_CASES: readonly FindingCase[] = [
  {
    rule: 'supply-measured-over-usable', sheet: 'supplies', sheets: SUPPLY({
      measuredCurrent: 11,
    }), severity: 'over', key: 'measuredCurrent', value: 11, limit: 10,
    message: 'Rail L1 was measured at 11.00 A and may be used for 10.00 A: 1.00 A too much. Move devices to another rail, or fit a larger supply.',
    silent: [SUPPLY({}), SUPPLY({ measuredCurrent: 10 }), SUPPLY({ measuredCurrent: 11, rated: 12 })], inStatus: false,
  },
  {
    rule: 'supply-measured-current-differs', sheet: 'supplies', sheets: SUPPLY({
      measuredCurrent: 6,
    }), severity: 'near', key: 'measuredCurrent', value: 6, limit: 5,
    message: 'Rail L1: 6.00 A measured, 5.00 A worked out: 1.00 A more, where 0.50 A may differ. Usually more is switched on at once than the diversity says, or a device is missing in the schedule or draws more than entered. Check diversity, counts and draws.',
    silent: [
      SUPPLY({}), SUPPLY({ measuredCurrent: 5.5 }), SUPPLY({ measuredCurrent: 4.5 }),
      SUPPLY({ measuredCurrent: 6, currentTolerance: 0.2 }),
      { ...SUPPLY({ measuredCurrent: 6 }), devices: [{ rail: 'L1', qty: 1, unitDraw: 5000 }, { rail: 'L1', qty: 1 }] },
    ],
    inStatus: false,
  },
  {
    rule: 'supply-measured-voltage-differs', sheet: 'supplies', sheets: SUPPLY({
      measuredVoltage: 23,
    }), severity: 'near', key: 'measuredVoltage', value: 23, limit: 24,
    message: 'Rail L1: 23.00 V measured, 24.00 V worked out: 1.00 V less, where 0.48 V may differ. Usually it is overloaded and limits its current, or its output is set too low. Check its load and its setting.',
    silent: [SUPPLY({}), SUPPLY({ measuredVoltage: 23.52 }), SUPPLY({ measuredVoltage: 24.48 })], inStatus: false,
  },
  {
    rule: 'run-measured-current-differs', sheet: 'runs', sheets: RUN({
      measuredCurrent: 0.5,
    }), severity: 'near', key: 'measuredCurrent', value: 0.5, limit: 1,
    message: 'Run W1: 0.50 A measured, 1.00 A worked out: 0.50 A less, where 0.10 A may differ. Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.',
    silent: [RUN({}), RUN({ measuredCurrent: 0.9 }), RUN({ measuredCurrent: 1.1 })], inStatus: false,
  },
  {
    rule: 'run-measured-voltage-differs', sheet: 'runs', sheets: RUN({
      measuredVoltage: 22,
    }), severity: 'near', key: 'measuredVoltage', value: 22, limit: 23,
    message: 'Run W1: 22.00 V measured, 23.00 V worked out: 1.00 V less, where 0.46 V may differ. Usually a joint has a high resistance, the cable is longer or thinner than entered, or carries more. Check joints, length and conductor.',
    silent: [RUN({}), RUN({ measuredVoltage: 22.54 }), RUN({ measuredVoltage: 22, voltageTolerance: 0.05 })],
    inStatus: false,
  },
  {
    rule: 'run-measured-under-voltage', sheet: 'runs', sheets: RUN({
      measuredVoltage: 20,
    }), severity: 'over', key: 'measuredVoltage', value: 20, limit: 21,
    message: 'Run W1 was measured at 20.00 V at its far end, where a device needs 21.00 V. Check joints, length and conductor; use a thicker conductor or more pairs.',
    silent: [RUN({}), RUN({ measuredVoltage: 21 })], inStatus: false,
  },
];
