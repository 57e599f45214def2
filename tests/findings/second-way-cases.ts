import type { Cells, Content } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

/**
 * 2 A in the middle of 100 m between two channels of 4 A: 1 A from each over 50 m of 0.02 Ω/m drop 1 V. At 70 °C the
 * cable has 0.02393 Ω/m.
 */
export const BETWEEN = (run: Cells = {}, second: Cells = {}, supply: Cells = {}): Content['sheets'] => ({
  supplies: [{ rail: 'L1', rated: 10, peak: 5, ...supply }, { rail: 'L2', rated: 10 }],
  ways: [
    { way: 'F1', rail: 'L1', kind: 'electronic', rated: 4 }, { way: 'F2', rail: 'L1', kind: 'electronic', rated: 4, ...second },
  ],
  conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 16 }],
  runs: [{
    run: 'W1', way: 'F1', secondWay: 'F2', conductor: 'C', length: 50, secondLength: 50, temperature: 20, ambient: 20,
    grouped: 1, ...run,
  }],
  types: [{ type: 'T', draw: 1000, minVoltage: 20, maxVoltage: 30 }],
  devices: [{ ref: 'D1', type: 'T', qty: 2, run: 'W1' }],
});

const needing = (minVoltage: number): Content['sheets'] =>
  ({ ...BETWEEN(), types: [{ type: 'T', draw: 1000, minVoltage, maxVoltage: 30 }] });

export const SECOND_WAY_CASES: readonly FindingCase[] = [
  {
    rule: 'run-joins-supplies', sheet: 'runs', sheets: BETWEEN({}, { rail: 'L2' }), severity: 'over', key: 'secondWay',
    value: 'L2', limit: 'L1', inStatus: true,
    message: 'Run W1 is fed from rail L1 through F1 and from rail L2 through F2: a cable must not join two supplies, as each would feed into the other. Choose another way of rail L1, or split the run in two.',
    silent: [BETWEEN(), BETWEEN({ secondWay: null }, { rail: 'L2' })],
  },
  {
    rule: 'run-second-way-same', sheet: 'runs', sheets: BETWEEN({ secondWay: 'F1' }), severity: 'incomplete',
    key: 'secondWay', value: null, inStatus: true,
    message: 'Run W1 names the same way at both of its ends, so what either carries is not known. Choose another way of its rail for the second.',
    silent: [BETWEEN(), BETWEEN({ secondWay: null })],
  },
  {
    rule: 'run-first-way-missing', sheet: 'runs', sheets: BETWEEN({ way: null, rail: 'L1' }), severity: 'incomplete',
    key: 'way', value: null, inStatus: true,
    message: 'Run W1 has a second way and no way at its start, so what either carries is not known, and 2 rows wait for it. Choose its way, or empty the second.',
    silent: [BETWEEN(), BETWEEN({ way: null, secondWay: null, rail: 'L1' })],
  },
  {
    rule: 'run-second-length-missing', sheet: 'runs', sheets: BETWEEN({ secondLength: null }), severity: 'incomplete',
    key: 'secondLength', value: null, inStatus: true,
    message: 'Run W1 has a second way, and how long the cable is from its far end to there is not known, so its drop is not known either, and 3 rows wait for it. Enter the length to the second way in m.',
    silent: [BETWEEN(), BETWEEN({ secondWay: null, secondLength: null })],
  },
  {
    // Beside the 1 A of the other way 10 A leave 9 A; each channel acts at 7.2 A, both together at 14.4 A.
    rule: 'run-ways-share-fault', sheet: 'runs', sheets: BETWEEN({}, {}, { peak: 1 }), severity: 'near',
    key: 'faultCurrent', value: 9, limit: 14.4, inStatus: true,
    message: 'Run W1: its two ways share a short circuit on it. Where that is hardest on them it draws 9.00 A in all, and to trip instantaneously they need 14.40 A together: neither may trip. Use lower-rated or faster ways, or one way alone.',
    silent: [BETWEEN(), BETWEEN({ secondWay: null }, {}, { peak: 1 }), BETWEEN({}, {}, { peak: 1.6 })],
  },
  {
    // One way alone: 2 A over 50 m drop 2 V.
    rule: 'run-one-way-open', sheet: 'runs', sheets: needing(22.4), severity: 'note', key: 'openMargin', value: -0.4,
    limit: 0, inStatus: false,
    message: 'Run W1 is judged with both of its ways closed. While one of them is open a device on it gets up to 0.40 V less than it needs. Let an opened way be signalled, and prove both at commissioning.',
    silent: [needing(22), needing(23.2)],
  },
  {
    rule: 'run-second-protection-over-carries', sheet: 'runs', sheets: BETWEEN({}, { rated: 20 }), severity: 'over',
    key: 'secondWay', value: 20, limit: 17.92, inStatus: true,
    message: 'Run W1 is protected by 20.00 A and its cable may carry 17.92 A where it lies: the cable would overheat before the way acts. Use a lower-rated way or a larger conductor.',
    silent: [BETWEEN(), BETWEEN({}, { rated: 17.92 })],
  },
  {
    // 17.92 A × 1.45 ÷ 1.6
    rule: 'run-second-protection-acts-late', sheet: 'runs', sheets: BETWEEN({}, { kind: 'gG', rated: 17 }), severity: 'over',
    key: 'secondWay', value: 17, limit: 16.24, inStatus: true,
    message: 'Run W1 is protected by 17.00 A, which acts on overload at 1.6 × its rating, and its cable may carry 17.92 A where it lies: it could get more than 1.45 × that for an hour. Use a way of at most 16.24 A, one that acts sooner, or a larger conductor.',
    silent: [BETWEEN(), BETWEEN({}, { kind: 'gG', rated: 16 })],
  },
  {
    // 24 V ÷ (100 m × 0.02393 Ω/m + 0.3 Ω), where 6 A × 1.8 are needed.
    rule: 'run-second-may-not-clear', sheet: 'runs', sheets: BETWEEN({}, { rated: 6 }), severity: 'near', key: 'secondWay',
    value: 24 / 2.693, limit: 10.8, inStatus: true,
    message: 'Run W1: a short circuit as far from F2 as may be, when its other way has opened, draws 8.91 A, and F2 of 6.00 A needs 10.80 A (1.8 × its rating) to trip instantaneously. Use a lower-rated or faster way, or a larger conductor or a shorter cable.',
    silent: [BETWEEN(), BETWEEN({ secondWay: null }, { rated: 6 })],
  },
];
