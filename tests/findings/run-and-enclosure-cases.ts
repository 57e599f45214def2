import type { Cells } from '../../src/schedule/index.ts';
import { withWays } from '../support/schedules.ts';
import type { FindingCase } from './finding-case.ts';

/**
 * A run of 50 m of a conductor of 10 Ω/km at 20 °C, so a loop of 1 Ω, with a device at its end: at 2 A it loses 2 V
 * of 24 V. The supply gives 12 A into a short circuit.
 */
const RUN = (run: Cells, device: Cells = {}, more: Record<string, Cells[]> = {}) => withWays({
  types: [{ type: 'T', minVoltage: 20 }], supplies: [{ rail: 'L1', rated: 10, peak: 1.2 }], conductors: [
    { conductor: 'C', resistance: 10, maxCurrent: 6 },
  ], ...more,
  runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 50, temperature: 20, protection: 2, maxDrop: 0.5, ...run }],
  devices: [{ ref: 'D1', type: 'T', qty: 1, unitDraw: 2000, rail: 'L1', run: 'W1', ...device }],
});
/** The same run with no way of its own: 10 A × 1.5 for ever, on 6 A. */
const UNFUSED = (supply: Cells, run: Cells = {}, more: Record<string, Cells[]> = {}) =>
  RUN({ protection: null, ...run }, {}, { supplies: [{ rail: 'L1', rated: 10, peak: 1.2, ...supply }], ...more });
/** The conductor of it where it lies in 20 °C, at which it carries as much. */
const COOL = { conductor: 'C', resistance: 10, maxCurrent: 6, baseTemperature: 20 };
/** The same run behind a way of its own, on a rail of its own unless said otherwise. */
const BEHIND = (way: Cells, run: Cells = {}) => RUN({ protection: null, way: 'F1', ...run }, { unitDraw: 100 }, {
  ways: [{ way: 'F1', rail: 'L1', ...way }],
  supplies: [{ rail: 'L1', rated: 10, peak: 1.2 }, { rail: 'L2', rated: 10, peak: 1.2 }],
});
/** A cube of 1 m that stands free: 1.4 m² of top and 0.9 m² of each of four sides, 5 m²; 5.5 W/(m²K). */
const ENCLOSURE = (enclosure: Cells, supplies: Cells[] = []) => ({
  supplies, enclosures: [
    {
      enclosure: 'E1', height: 1000, width: 1000, depth: 1000, mounting: 'free', ambient: 30, otherLoss: 275,
      topFactor: 1.5, maxInside: 60, ...enclosure
    },
  ],
});
const missing = (key: string, rule: string, what: string, how: string): FindingCase => ({
  rule, sheet: 'enclosures', sheets: ENCLOSURE({ [key]: null }), severity: 'incomplete', key, value: null,
  inStatus: true,
  message: `Enclosure E1 has no ${what}, so the temperature inside is not known. ${how}`, silent: [ENCLOSURE({})],
});

export const RUN_AND_ENCLOSURE_CASES: readonly FindingCase[] = [
  {
    rule: 'run-over-cores', sheet: 'runs', sheets: RUN({ cores: 4, pairs: 2, branch: 'B1' }), severity: 'over', key: 'cores',
    value: 6, limit: 4, inStatus: true,
    message: 'Run W1 has 6 cores in use and its cable has 4: 2 too many. Take a cable with more cores.',
    silent: [RUN({ cores: 6, pairs: 2, branch: 'B1' }), RUN({ cores: 4, pairs: 2 }), RUN({ pairs: 2, branch: 'B1' })],
  },
  {
    rule: 'run-under-voltage', sheet: 'runs', sheets: RUN(
      { protection: null, ambient: 20 }, { unitDraw: 5000 },
      { supplies: [{ rail: 'L1', rated: 6, maxOutput: 1 }], conductors: [COOL] }
    ), severity: 'over', key: 'voltageMargin', value: -1, limit: 0, inStatus: true,
    message: 'Run W1: from 24.00 V at its start, ref D1 gets 1.00 V less than it needs at its place. With C it may be 40 m long.',
    silent: [
      RUN({ protection: null }, { unitDraw: 4000 }),
      RUN({ protection: null }, { unitDraw: 5000 }, { types: [{ type: 'T' }] }),
    ],
  },
  {
    // 6 A × 0.5 Ω, then 4 A × 0.5 Ω: 21 V for D1, 19 V for those at the end, which need 20 V and 19.5 V
    rule: 'run-under-voltage', sheet: 'runs', sheets: {
      ...UNFUSED({ rated: 6, maxOutput: 1 }, { ambient: 20 }, { conductors: [COOL] }),
      types: [{ type: 'T', minVoltage: 21.5 }, { type: 'S', minVoltage: 20 }, { type: 'R', minVoltage: 19.5 }],
      devices: [
        { ref: 'D1', type: 'T', qty: 1, unitDraw: 2000, rail: 'L1', run: 'W1', distance: 25 },
        { ref: 'D2', type: 'S', qty: 1, unitDraw: 2000, rail: 'L1', run: 'W1' },
        { ref: 'D3', type: 'R', qty: 1, unitDraw: 2000, rail: 'L1', run: 'W1' },
      ],
    }, severity: 'over', key: 'voltageMargin', value: -1, limit: 0, inStatus: true,
    // Distances shrink with the length: at 40 m D1 gets 24 − 6 × 0.4 = 21.6 V and D2 21.6 − 4 × 0.4 = 20 V.
    message: 'Run W1: from 24.00 V at its start, ref D2 gets 1.00 V less than it needs at its place, and 2 more rows get too little. With C it may be 40 m long if the distances on it shrink along.',
    silent: [],
  },
  {
    rule: 'run-unprotected', sheet: 'runs', sheets: RUN({ protection: null }), severity: 'over', key: 'way', value: 15,
    limit: 6, inStatus: true,
    // 10 A × 1.5 for ever
    message: 'Run W1 has no way, its cable may carry 6.00 A and its supply feeds 15.00 A for ever without a fuse: the cable may overheat. Give it a way, such as B 4, or a larger conductor.',
    silent: [
      RUN({}), UNFUSED({ rated: 4 }), UNFUSED({ maxOutput: 1, rated: 6 }), UNFUSED({ fuse: 6, fuseKind: 'B' }),
      // gG of 4 A acts at 2.1 × 4 = 8.4 A, below 1.45 × 6 = 8.7 A
      UNFUSED({ fuse: 4, fuseKind: 'gG' }), UNFUSED({ fuse: 6 }), UNFUSED({ rated: null }),
    ],
  },
  {
    rule: 'run-unprotected', sheet: 'runs', sheets: UNFUSED({ fuse: 8, fuseKind: 'B' }), severity: 'over', key: 'way',
    value: 8, limit: 6, inStatus: true,
    message: 'Run W1 has no way, its cable may carry 6.00 A and the fuse of its supply, 8.00 A, does not protect that: the cable may overheat. Give it a way, such as B 4, or a larger conductor.',
    silent: [],
  },
  {
    // Within what the cable carries, but it acts at 1.9 × 6 = 11.4 A only, above 8.7 A; 6 × 1.45 ÷ 1.9 = 4.579 A
    rule: 'run-unprotected', sheet: 'runs', sheets: UNFUSED({ fuse: 6, fuseKind: 'gG' }), severity: 'over', key: 'way',
    value: 6, limit: 6 * 1.45 / 1.9, inStatus: true,
    message: 'Run W1 has no way, and the fuse of its supply, 6.00 A, acts on overload at 1.9 × its rating: its cable, which may carry 6.00 A, bears one of at most 4.57 A of that kind. Give it a way, such as B 4, or a larger conductor.',
    silent: [],
  },
  {
    rule: 'supply-fuse-kind-missing', sheet: 'supplies', sheets: UNFUSED({ fuse: 6 }), severity: 'incomplete',
    key: 'fuseKind', value: null, inStatus: false,
    message: 'Rail L1: the kind of its fuse is not known, and 1 run without a way waits for it, as when it acts decides what it protects. Enter it.',
    silent: [
      UNFUSED({ fuse: 6, fuseKind: 'gG' }), UNFUSED({ fuse: 6, rated: 4 }), UNFUSED({}), UNFUSED({ fuse: 8 }),
      RUN({}, {}, { supplies: [{ rail: 'L1', rated: 10, fuse: 6 }] }),
    ],
  },
  {
    rule: 'supply-series-drop-missing', sheet: 'supplies', sheets: UNFUSED({ units: 2, redundant: true }),
    severity: 'incomplete', key: 'seriesDrop', value: null, inStatus: true,
    message: 'Rail L1 is redundant: what decouples its units drops some voltage, and 1 run waits for it. Enter the drop, about 0.5 V for a diode; 0 if there is none.',
    silent: [
      UNFUSED({ units: 2 }), UNFUSED({ units: 2, redundant: true, seriesDrop: 0 }),
      UNFUSED({ units: 2, redundant: true, seriesDrop: '=1/0' }),
    ],
  },
  {
    rule: 'device-over-run', sheet: 'devices', sheets: RUN({ basis: 'demand' }, { unitDraw: 7000, diversity: 0.1 }),
    severity: 'over', key: 'unitDraw', value: 7, limit: 6, inStatus: false,
    message: 'Ref D1: one device draws 7.00 A, and the cable of run W1 may carry 6.00 A. No diversity helps: use a larger conductor or more pairs.',
    silent: [
      RUN({ basis: 'demand' }, { unitDraw: 6000, diversity: 0.1 }), RUN({}, { unitDraw: 7000, qty: 0 }),
      RUN({ basis: 'demand', pairs: 2 }, { unitDraw: 7000, diversity: 0.1 }),
    ],
  },
  {
    rule: 'run-no-working-voltage', sheet: 'runs', severity: 'over', key: 'endVoltage', value: null, inStatus: true,
    // A loop of 1 Ω at 24 V delivers 24² ÷ 4 = 144 W at most, closed form
    sheets: RUN(
      { protection: null, ambient: 20 }, { unitDraw: null },
      {
        types: [{ type: 'T', power: 145, load: 'power' }],
        conductors: [{ ...COOL, maxCurrent: 15 }],
      }
    ),
    message: 'Run W1 has no stable operating point: its devices draw constant power, and the cable cannot deliver what they ask for at any voltage. With C it may be 49.6 m long.',
    silent: [RUN({}, { unitDraw: null }, { types: [{ type: 'T', power: 143, load: 'power' }] })],
  },
  {
    rule: 'run-over-carries', sheet: 'runs', sheets: RUN(
      {}, { unitDraw: 7000 }
    ), severity: 'over', key: 'current', value: 7, limit: 6, inStatus: true,
    message: 'Run W1 carries 7.00 A and its cable may carry 6.00 A where it lies: 1.00 A too much. Use a larger conductor or more pairs, or lay it apart from other circuits.',
    silent: [
      RUN({}, { unitDraw: 6000 }), RUN({ pairs: 2 }, { unitDraw: 7000 }), RUN({ ambient: 20 }, { unitDraw: 6700 }),
    ],
  },
  {
    rule: 'run-protection-over-carries', sheet: 'runs', sheets: RUN({ protection: 10 }), severity: 'over',
    key: 'way', value: 10, limit: 6, inStatus: true,
    message: 'Run W1 is protected by 10.00 A and its cable may carry 6.00 A where it lies: the cable would overheat before the way acts. Use a lower-rated way or a larger conductor.',
    silent: [RUN({ protection: 6 })],
  },
  {
    // gG 6 A acts at 1.9 × 6 = 11.4 A, the cable of 6 A bears 1.45 × 6 = 8.7 A; 6 × 1.45 ÷ 1.9 = 4.579 A
    rule: 'run-protection-acts-late', sheet: 'runs', sheets: BEHIND({ kind: 'gG', rated: 6 }), severity: 'over',
    key: 'way', value: 6, limit: 6 * 1.45 / 1.9, inStatus: true,
    message: 'Run W1 is protected by 6.00 A, which acts on overload at 1.9 × its rating, and its cable may carry 6.00 A where it lies: it could get more than 1.45 × that for an hour. Use a way of at most 4.57 A, one that acts sooner, or a larger conductor.',
    silent: [
      BEHIND({ kind: 'gG', rated: 4 }), BEHIND({ kind: 'B', rated: 6 }), BEHIND({ kind: 'gG', rated: 6, k2: 1.45 }),
      BEHIND({ kind: 'gG', rated: 10 }), BEHIND({ rated: 6 }),
    ],
  },
  {
    rule: 'run-way-on-other-rail', sheet: 'runs', sheets: BEHIND({ kind: 'B', rated: 1, rail: 'L2' }),
    severity: 'incomplete', key: 'way', value: 'L2', limit: 'L1', inStatus: true,
    message: 'Run W1 is on rail L1 but its way F1 hangs on rail L2. Empty the rail of the run, which then is that of its way, or choose a way behind L1.',
    silent: [BEHIND({ kind: 'B', rated: 1 }), BEHIND({ kind: 'B', rated: 1, rail: 'L2' }, { rail: null })],
  },
  {
    // A cable that carries the 15 A that its supply gives for ever needs no way.
    rule: 'run-over-drop', sheet: 'runs', sheets: RUN(
      { maxDrop: 0.05, protection: null, ambient: 20 }, {}, { conductors: [{ ...COOL, maxCurrent: 15 }] }
    ), severity: 'near', key: 'dropRatio', value: 2 / 24, limit: 0.05, inStatus: true,
    message: 'Run W1 loses 2.00 V, 8 % of its voltage, and may lose 5 %. With C it may be 30 m long.',
    silent: [RUN({ maxDrop: 2 / 24, protection: null }), RUN({ maxDrop: 0.05, length: 30, protection: null })],
  },
  {
    // What decouples its supply is not known, so nobody can say which conductor would do.
    rule: 'run-over-drop', sheet: 'runs', sheets: RUN({ maxDrop: 0.05, protection: null }, {}, {
      supplies: [{ rail: 'L1', rated: 5, units: 2, redundant: true }],
      conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 15 }],
    }), severity: 'near', key: 'dropRatio', value: 2 / 24, limit: 0.05, inStatus: true,
    message: 'Run W1 loses 2.00 V, 8 % of its voltage, and may lose 5 %. Enter what it waits for, to see what would put it right.',
    silent: [],
  },
  // Nor while it is not known what protects it, what its cable carries, or what one of its devices draws.
  ...[
    BEHIND({ kind: 'electronic' }, { maxDrop: 0.003 }), BEHIND({ rated: 2 }, { maxDrop: 0.003 }),
    RUN({ maxDrop: 0.003, protection: null }, { unitDraw: 100 }, { supplies: [{ rail: 'L1', rated: 10, fuse: 5 }] }),
    RUN({ maxDrop: 0.003 }, { unitDraw: 100 }, { conductors: [{ conductor: 'C', resistance: 10 }] }),
  ].map((sheets): FindingCase => ({
    rule: 'run-over-drop', sheet: 'runs', sheets, severity: 'near', key: 'dropRatio', value: 0.1 / 24, limit: 0.003,
    inStatus: true,
    message: 'Run W1 loses 0.10 V, 0.4 % of its voltage, and may lose 0.3 %. Enter what it waits for, to see what would put it right.',
    silent: [],
  })),
  {
    // Made for 12 V on 24 V: on a rail of 12 V it would lose twice that share, so that no cable can be named here.
    rule: 'run-over-drop', sheet: 'runs', sheets: RUN({ maxDrop: 0.05 }, {}, {
      types: [{ type: 'T', voltage: 12 }], conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 15 }],
    }), severity: 'near', key: 'dropRatio', value: 2 / 24, limit: 0.05, inStatus: false,
    message: 'Run W1 loses 2.00 V, 8 % of its voltage, and may lose 5 %. Put its devices on a rail of their voltage first.',
    silent: [],
  },
  {
    // 24 V ÷ (3 Ω × 1.1965 at 70 °C + 0.3 Ω); where the supply has too little it is told there
    rule: 'run-may-not-clear', sheet: 'runs', sheets: RUN({ length: 150, protection: 2 }, { unitDraw: 100 }), severity: 'near',
    key: 'faultCurrent', value: 24 / (3 * 1.1965 + 0.3), limit: 10, inStatus: true,
    message: 'Run W1: a short circuit at its far end draws 6.17 A, and its way of 2.00 A needs 10.00 A (5 × its rating) to trip instantaneously. Use a lower-rated or faster way, or a larger conductor or a shorter cable.',
    silent: [
      RUN({ length: 150, protection: 1.2 }), RUN({ length: 150, protection: 2, trip: 3 }), RUN({ protection: 3 }),
    ],
  },
  {
    rule: 'run-rail-missing', sheet: 'runs', sheets: RUN({ rail: null, protection: null }), severity: 'incomplete', key: 'rail',
    value: null, inStatus: true,
    message: 'Run W1 has no rail, so its voltage is not known. Choose the rail that feeds it.',
    // That its way has none is told there.
    silent: [RUN({}), RUN({ rail: null })],
  },
  {
    rule: 'run-conductor-missing', sheet: 'runs', sheets: RUN({ conductor: null }), severity: 'incomplete',
    key: 'conductor', value: null, inStatus: true,
    message: 'Run W1 has no conductor, so its drop is not known. Choose one of the conductors.', silent: [RUN({})],
  },
  {
    rule: 'run-length-missing', sheet: 'runs', sheets: RUN({ length: null }), severity: 'incomplete', key: 'length',
    value: null, inStatus: true,
    message: 'Run W1 has no length, so its drop is not known. Enter the length of the cable, one way, in m.',
    silent: [RUN({})],
  },
  {
    rule: 'conductor-resistance-missing', sheet: 'conductors', sheets: RUN(
      {}, {}, { conductors: [{ conductor: 'C', maxCurrent: 16 }] }
    ), severity: 'incomplete', key: 'resistance', value: null, inStatus: false,
    message: 'Conductor C: its resistance is not known, and 1 run waits for it. Enter it in Ω/km, or choose another conductor there.',
    silent: [RUN({}), RUN({ conductor: null }, {}, { conductors: [{ conductor: 'C', maxCurrent: 16 }] })],
  },
  {
    rule: 'conductor-current-missing', sheet: 'conductors', sheets: RUN(
      {}, {}, { conductors: [{ conductor: 'C', resistance: 10 }] }
    ), severity: 'incomplete', key: 'maxCurrent', value: null, inStatus: false,
    message: 'Conductor C: what it carries is not known, and 1 run waits for it. Enter it, with the source that says so, or use a conductor of which it is known.',
    silent: [
      RUN({}), RUN({ conductor: null }, {}, { conductors: [{ conductor: 'C', resistance: 10 }] }),
      RUN({}, {}, { conductors: [{ conductor: 'C', resistance: 10, maxCurrent: '=1/0' }] }),
    ],
  },
  {
    rule: 'run-voltage-not-checked', sheet: 'runs', sheets: RUN(
      {}, {}, { types: [{ type: 'T' }] }
    ), severity: 'note', key: 'minVoltage', value: null, inStatus: false,
    message: 'Run W1: no device on it says which voltage it needs, so the end voltage is not checked. Enter the minimum voltage of their types.', silent: [RUN({})],
  },
  {
    // 275 W ÷ (5.5 × 5) = 10 K, at the top 1.5 times that above 30 °C
    rule: 'enclosure-over-temperature', sheet: 'enclosures', sheets: ENCLOSURE({ maxInside: 43 }), severity: 'over',
    key: 'top', value: 45, limit: 43, inStatus: true,
    message: 'Enclosure E1 gets 45.0 °C at its top, where supplies sit, and may get 43.0 °C: 2.0 K too warm. Use a larger or better ventilated enclosure, or move supplies out of it.',
    silent: [ENCLOSURE({ maxInside: 45 })],
  },
  {
    rule: 'enclosure-near-temperature', sheet: 'enclosures', sheets: ENCLOSURE({ maxInside: 47.5 }), severity: 'near',
    key: 'top', value: 45, limit: 47.5, inStatus: true,
    message: 'Enclosure E1 gets 45.0 °C at its top, 2.5 K below the 47.5 °C that it may get. Use a larger or better ventilated enclosure to have more in hand.',
    silent: [ENCLOSURE({ maxInside: 50.1 }), ENCLOSURE({ maxInside: 38 })],
  },
  missing('height', 'enclosure-height-missing', 'height', 'Enter its outside height in mm.'),
  missing('width', 'enclosure-width-missing', 'width', 'Enter its outside width in mm.'),
  missing('depth', 'enclosure-depth-missing', 'depth', 'Enter its outside depth in mm.'),
  {
    rule: 'enclosure-temperature-missing', sheet: 'enclosures', sheets: ENCLOSURE({ maxInside: null }),
    severity: 'incomplete', key: 'maxInside', value: null, inStatus: true,
    message: 'Enclosure E1 has no highest inside temperature, so whether it gets too warm is not known. Enter the highest that its contents bear in °C.',
    silent: [ENCLOSURE({})],
  },
];
