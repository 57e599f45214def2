import type { Cells, Content } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

/** Devices of 12 A, a tenth of which is expected, on a supply of 10 A and a run. */
const LARGE = (draws: readonly number[], supply: Cells = {}, diversity = 0.1): Content['sheets'] => ({
  supplies: [{ rail: 'L1', rated: 10, ...supply }],
  conductors: [{ conductor: 'C', resistance: 0.1, maxCurrent: 9 }],
  runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 1, basis: 'demand' }],
  devices: draws.map((unitDraw, at) => ({ ref: `D${at + 1}`, qty: 1, unitDraw, diversity, run: 'W1' })),
});

/** A supply in an enclosure of 5 m² that loses 27.5 W besides: 1.2 K a watt hundred, 1.3 times as much at its top. */
const WARM = (supply: Cells): Content['sheets'] => ({
  supplies: [{ rail: 'L1', rated: 10, enclosure: 'E1', efficiency: 1, fullUpTo: 40, lessPerKelvin: 0.1, ...supply }],
  enclosures: [{
    enclosure: 'E1', height: 1000, width: 1000, depth: 1000, mounting: 'free', ambient: 50, otherLoss: 0, topFactor: 1,
    maxInside: 70,
  }],
});

/** A run of 5 m without a way on a supply of 10 A that gives 15 A for ever and 10 A at once. */
const FUSED = (supply: Cells, length = 5): Content['sheets'] => ({
  supplies: [{ rail: 'L1', rated: 10, fuse: 2, fuseKind: 'B', ...supply }],
  conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 13 }],
  runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length }], devices: [{ qty: 1, unitDraw: 100, run: 'W1' }],
});

/** A run in air of so many degrees. */
const LAID = (ambient: number, run: Cells = {}): Content['sheets'] => ({
  supplies: [{ rail: 'L1', rated: 10 }], ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 4 }],
  conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 13 }],
  runs: [{ run: 'W1', way: 'F1', conductor: 'C', length: 5, ambient, ...run }],
  devices: [{ qty: 1, unitDraw: 100, run: 'W1' }],
});

/** Two device rows of a type that says nothing, and one that says what it draws itself. */
const TYPED = (type: Cells): Content['sheets'] => ({
  types: [{ type: 'T', ...type }], supplies: [{ rail: 'L1', rated: 10 }],
  devices: [{ type: 'T', qty: 1, rail: 'L1' }, { type: 'T', rail: 'L1' }, { type: 'T', qty: 1, unitDraw: 5, rail: 'L1' }],
});

/** Rules that tell once what is the cause of much, at the row where it is put right. */
export const CAUSE_CASES: readonly FindingCase[] = [
  {
    rule: 'supply-gives-nothing', sheet: 'supplies', sheets: LARGE([1000], { redundant: true, seriesDrop: 0 }), severity: 'over',
    key: 'usable', value: 0, inStatus: true,
    message: 'Rail L1 is redundant and has one unit, which is the spare: nothing is left to carry the load. Fit one more unit, or enter how many there are with the spare.',
    silent: [LARGE([1000]), LARGE([1000], { redundant: true, units: 2, seriesDrop: 0 })],
  },
  {
    // 10 K above 40 °C at a tenth each.
    rule: 'supply-gives-nothing', sheet: 'supplies', sheets: WARM({}), severity: 'over', key: 'usable', value: 0, inStatus: true,
    message: 'Rail L1 stands in 50.0 °C at the top of its enclosure, gives its full current up to 40.0 °C, and so gives nothing there. Use a larger enclosure, move supplies or losses out of it, or cool it.',
    silent: [WARM({ lessPerKelvin: 0.09 })],
  },
  {
    // 1.2 A, 1.3 A and 0.5 A of demand are no matter.
    rule: 'supply-devices-over-usable', sheet: 'supplies', sheets: LARGE([12_000, 13_000, 5000]), severity: 'over',
    key: 'usable', value: 13, limit: 10, inStatus: true,
    message: 'Rail L1 has 10.00 A usable, and single devices of 2 rows on it draw more than that, up to 13.00 A: no diversity helps. Put them on a larger supply.',
    // One is told at its row, more than may be used together as that, and nothing as nothing.
    silent: [LARGE([12_000, 5000]), LARGE([12_000, 13_000], {}, 0.9), LARGE([12_000, 13_000], { rated: 13 })],
  },
  {
    rule: 'run-devices-over-carries', sheet: 'runs', sheets: LARGE([12_000, 10_000], { rated: 40 }), severity: 'over',
    key: 'carries', value: 12, limit: 9, inStatus: true,
    message: 'Run W1 may carry 9.00 A, and single devices of 2 rows on it draw more than that, up to 12.00 A: no diversity helps. Use a larger conductor or more pairs.',
    silent: [LARGE([12_000], { rated: 40 }), LARGE([9000, 9000], { rated: 40 })],
  },
  {
    // 2 A × 7.5
    rule: 'supply-trips-no-fuse', sheet: 'supplies', sheets: FUSED({}), severity: 'near', key: 'fuse', value: 10, limit: 15,
    inStatus: true,
    message: 'Rail L1: its fuse of 2.00 A needs 15.00 A (7.5 × its rating) to trip instantaneously, and the supply gives 10.00 A: a short circuit on the run without a way that it protects makes all of the rail go dark. Give it a way that acts sooner, such as an electronic one, or fit a supply that gives more for a moment.',
    silent: [
      FUSED({ peak: 1.5 }), FUSED({ fuseKind: 'electronic' }), FUSED({ maxOutput: 1.3 }), FUSED({ fuse: 11 }), FUSED({ fuse: null }),
    ],
  },
  {
    // 24 V ÷ (0.02393 Ω/m × 100 m + 0.3 Ω)
    rule: 'run-fuse-may-not-act', sheet: 'runs', sheets: FUSED({ peak: 2 }, 100), severity: 'near', key: 'faultCurrent',
    value: 8.911994058670627, limit: 15, inStatus: true,
    message: 'Run W1 has no way, and a short circuit at its far end draws 8.91 A, where the fuse of its supply, 2.00 A, needs 15.00 A (7.5 × its rating) to trip instantaneously. Give it a way that acts sooner, such as an electronic one, or a larger conductor or a shorter cable.',
    silent: [FUSED({ peak: 2 }), FUSED({}, 100), FUSED({ peak: 2, fuseKind: 'electronic' }, 100)],
  },
  {
    rule: 'supply-trips-no-way', sheet: 'supplies', severity: 'near', key: 'leastTrip', value: 18, limit: 10, inStatus: true,
    sheets: {
      supplies: [{ rail: 'L1', rated: 10 }],
      ways: ['F1', 'F2'].map((way) => ({ way, rail: 'L1', kind: 'electronic', rated: 10 })),
    },
    message: 'Rail L1: a short circuit on any of its 2 ways does not trip it: 18.00 A would be needed and the supply gives 10.00 A, so it folds back and all of the rail goes dark. Use ways of a lower setting, or a supply that gives more for a moment.',
    silent: [],
  },
  {
    rule: 'run-too-warm', sheet: 'runs', sheets: LAID(70), severity: 'over', key: 'ambient', value: 70, limit: 70,
    inStatus: true,
    message: 'Run W1 lies in 70.0 °C and its conductor may get 70.0 °C: it may not get any warmer, so no size of it carries anything there. Lay it where it is cooler, or use a conductor that may get warmer.',
    silent: [LAID(69)],
  },
  {
    rule: 'run-temperature-below-ambient', sheet: 'runs', sheets: LAID(30, { temperature: 20 }), severity: 'incomplete',
    key: 'temperature', value: 20, limit: 30, inStatus: true,
    message: 'Run W1: its conductors are entered at 20.0 °C and it is 30.0 °C around them, so they cannot be that cool and drop more than is shown. Empty the temperature, which then follows from the load, or correct the ambient.',
    silent: [LAID(30, { temperature: 30 }), LAID(20, { temperature: 20 }), LAID(30)],
  },
  {
    rule: 'run-temperature-over-conductor', sheet: 'runs', sheets: LAID(30, { temperature: 95 }), severity: 'over',
    key: 'temperature', value: 95, limit: 70, inStatus: true,
    message: 'Run W1: its conductors are entered at 95.0 °C and may get 70.0 °C: their insulation does not last. Use a larger conductor or one that may get warmer, or empty the temperature, which then follows from the load.',
    silent: [LAID(30, { temperature: 70 }), LAID(30)],
  },
  {
    rule: 'type-draw-missing', sheet: 'types', sheets: TYPED({}), severity: 'incomplete', key: 'draw', value: null,
    inStatus: false,
    message: 'Type T: what one draws is not known, and 2 device rows wait for it. Enter its draw in mA, or its power.',
    silent: [TYPED({ draw: 0 }), TYPED({ power: 5 }), TYPED({ draw: '=1/0' }), { types: [{ type: 'T' }] }],
  },
];
