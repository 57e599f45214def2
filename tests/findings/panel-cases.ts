import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

/** A cube of 1 m that stands free, 5 m²: 275 W make 10 K in the mean, 13 K at the top. */
const CUBE = {
  enclosure: 'E1', height: 1000, width: 1000, depth: 1000, mounting: 'free', ambient: 30, otherLoss: 275, maxInside: 70,
};
const PANEL = (supply: Cells, enclosure: Cells = {}, more: Record<string, Cells[]> = {}) => ({
  enclosures: [{ ...CUBE, ...enclosure }],
  supplies: [{ rail: 'L1', rated: 10, enclosure: 'E1', efficiency: 1, derating: 1, ...supply }], ...more,
});
const PARTS = (width: number | null, enclosure: Cells) => ({
  ...PANEL({ width, units: 2 }, { rails: 2, railLength: 500, ...enclosure }),
});
const ENCLOSURE = (width: number | null, enclosure: Cells) => {
  const { enclosures, supplies } = PARTS(width, enclosure);
  return { enclosures, supplies };
};
/** Ten devices that draw 0.5 A and 2 A when they start. */
const START = (supply: Cells, type: Cells = { inrush: 2 }, device: Cells = { type: 'M' }): Record<string, Cells[]> => ({
  types: [{ type: 'M', draw: 500, ...type }],
  supplies: [{ rail: 'L1', rated: 10, peak: 1.5, overload: 'retries', ...supply }],
  devices: [
    { ref: 'D1', qty: 4, rail: 'L1', ...device }, { ref: 'D2', qty: 6, rail: 'L1', type: 'M' },
  ],
});
/** The same with the second row alone, on a supply without a peak. */
const ONE_ROW = (supply: Cells, type: Cells = { inrush: 2 }) => {
  const { devices, ...sheets } = START({ peak: 1, ...supply }, type);
  return { ...sheets, devices: devices!.slice(1) };
};
const BRANCH = (branch: Cells, ...lengths: number[]) => ({
  branches: [{ branch: 'B1', limit: 32, terminated: true, ...branch }],
  runs: lengths.map((length, at) => ({ run: `W${at}`, branch: 'B1', length })),
});
/** Terminals of a terminating resistor in an enclosure, and of the bus in a cable. */
const RESISTOR = (enclosure: string): Cells[] => ['+', '-'].map((mark, at) => ({
  terminal: `${enclosure}:R${at + 1}`, strip: enclosure, enclosure, potential: `B1 ${mark}`, inside: `B1:R${at + 1}`,
}));
const GOES_ON = (enclosure: string, outside: string): Cells[] => ['+', '-'].map((mark, at) => ({
  terminal: `${enclosure}:${outside}${mark}`, strip: enclosure, enclosure, potential: `B1 ${mark}`, outside, core: `${at + 1}`,
}));
/** The same with two nodes on it. */
const ON_BRANCH = (branch: Cells, ...lengths: number[]) => ({
  ...BRANCH(branch, ...lengths), types: [{ type: 'T', nodes: 1 }],
  devices: [{ ref: 'D1', type: 'T', qty: 2, branch: 'B1' }],
});
/** 2 A for 4 h: 1.25 × 2 × 4 = 10 Ah, or 1.75 times that where it is discharged faster than in 20 hours. */
const STANDBY = (supply: Cells) => ({
  supplies: [{ rail: 'L1', rated: 10, ...supply }], devices: [{ ref: 'D1', qty: 1, rail: 'L1', unitDraw: 2000 }],
});

export const PANEL_CASES: readonly FindingCase[] = [
  {
    rule: 'supply-over-off', sheet: 'supplies', sheets: PANEL({ offAt: 43 }), severity: 'over', key: 'offAt', value: 43,
    limit: 43, inStatus: true,
    message: 'Rail L1 stands in 43.0 °C at the top of its enclosure and switches itself off at 43.0 °C. Use a larger enclosure, move supplies or losses out of it, or cool it.',
    silent: [PANEL({ offAt: 44 }), PANEL({}), PANEL({ offAt: 43, enclosure: null })],
  },
  {
    rule: 'supply-derating-missing', sheet: 'supplies', sheets: PANEL({ derating: null }), severity: 'incomplete',
    key: 'fullUpTo', value: null, inStatus: true,
    message: 'Rail L1 stands in 43.0 °C at the top of its enclosure, and what it gives above 40.0 °C is not known. Enter up to where it gives its full output and its derating per K above that, or its derating there; 100 % if its data sheet says so.',
    silent: [
      PANEL({}), PANEL({ derating: null, fullUpTo: 50, lessPerKelvin: 0.02 }),
      PANEL({ derating: null }, { ambient: 27 }), PANEL({ derating: null, enclosure: null }),
    ],
  },
  {
    rule: 'supply-efficiency-missing', sheet: 'supplies', sheets: PANEL({ efficiency: null }), severity: 'incomplete',
    key: 'efficiency', value: null, inStatus: true,
    message: 'Rail L1 has no efficiency, so neither its heat nor what it takes from a feed is known. Enter it as its data sheet gives it.',
    silent: [PANEL({}), PANEL({ efficiency: null, enclosure: null }), PANEL({ efficiency: '=1/0' })],
  },
  {
    rule: 'supply-width-missing', sheet: 'supplies', sheets: PARTS(null, {}), severity: 'incomplete', key: 'width',
    value: null, inStatus: false,
    message: 'Rail L1: the width of one unit is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.',
    silent: [PARTS(60, {}), PARTS(null, { railLength: null }), PANEL({})],
  },
  {
    rule: 'supply-over-start', sheet: 'supplies', sheets: START({}), severity: 'near', key: 'overload', value: 20,
    limit: 15, inStatus: true,
    message: 'Rail L1: its devices ask for 20.00 A when all start at the same time, as after a failure of the mains; it gives 15.00 A, then switches off and tries again, and may never come up. Let D2 start later than the others, or fit a supply that holds its current.',
    silent: [START({ overload: 'holds' }), START({ overload: null }), START({ peak: 2 }), START({}, { inrush: 1.5 })],
  },
  {
    // One row of 6 × 2 A on 10 A: one after the other 2 A beside 5 × 0.5 A; there is none to start before it.
    rule: 'supply-over-start', sheet: 'supplies', sheets: ONE_ROW({}), severity: 'near', key: 'overload', value: 12,
    limit: 10, inStatus: true,
    message: 'Rail L1: its devices ask for 12.00 A when all start at the same time, as after a failure of the mains; it gives 10.00 A, then switches off and tries again, and may never come up. Let its devices start one after the other, or fit a supply that holds its current.',
    silent: [ONE_ROW({ rated: 12 })],
  },
  {
    // 3 A beside 5 × 0.5 A are 5.5 A in whatever order they start.
    rule: 'supply-over-start', sheet: 'supplies', sheets: ONE_ROW({ rated: 5 }, { inrush: 3 }), severity: 'near',
    key: 'overload', value: 18, limit: 5, inStatus: true,
    message: 'Rail L1: its devices ask for 18.00 A when all start at the same time, as after a failure of the mains; it gives 5.00 A, then switches off and tries again, and may never come up. Fit a supply that holds its current, or one that gives 18.00 A for a moment; no order of starting helps.',
    silent: [],
  },
  {
    rule: 'type-inrush-missing', sheet: 'types', sheets: START({}, {}), severity: 'incomplete', key: 'inrush',
    value: null, inStatus: false,
    message: 'Type M: what one draws when it starts is not known, and 2 device rows wait for it, since their supply tries again and again on overload. Enter it; 0 if it is no more than its draw.',
    silent: [START({}), START({ overload: 'holds' }, {}), START({}, { inrush: 0 })],
  },
  {
    rule: 'device-start-unknown', sheet: 'devices', sheets: START({}, {}, { unitDraw: 500 }), severity: 'incomplete',
    key: 'type', value: null, inStatus: false,
    message: 'Ref D1 has no type, so what it draws when it starts is not known, and its supply tries again and again on overload. Choose a type that says it.',
    silent: [START({}), START({ overload: 'holds' }, {}, { unitDraw: 500 })],
  },
  {
    rule: 'supply-over-battery', sheet: 'supplies', sheets: STANDBY({ standbyHours: 4, battery: 17 }), severity: 'over',
    key: 'batteryNeeded', value: 17.5, limit: 17, inStatus: true,
    message: 'Rail L1 needs a battery of 17.5 Ah for its standby and has 17.0 Ah: 0.5 Ah too little. Fit a larger battery, or let less be on while the mains are off.',
    silent: [
      STANDBY({ standbyHours: 4, battery: 17.5 }), STANDBY({ battery: 17 }), STANDBY({ standbyHours: 4, battery: 40 }),
    ],
  },
  {
    rule: 'supply-battery-missing', sheet: 'supplies', sheets: STANDBY({ standbyHours: 4 }), severity: 'incomplete',
    key: 'battery', value: null, limit: 17.5, inStatus: true,
    message: 'Rail L1 is to bridge a failure of the mains and has no battery entered; 17.5 Ah would do, discharged fast. Enter its capacity in Ah.',
    silent: [STANDBY({}), STANDBY({ standbyHours: 4, battery: 18 })],
  },
  {
    // 2 × 520 mm on 2 × 500 mm
    rule: 'enclosure-over-width', sheet: 'enclosures', sheets: ENCLOSURE(520, {}), severity: 'over', key: 'usedWidth',
    value: 1040, limit: 1000, inStatus: true,
    message: 'Enclosure E1 is to hold 1040 mm of parts on 1000 mm of mounting rails: 40 mm too much. Use a larger enclosure, or move parts out of it.',
    silent: [ENCLOSURE(500, {}), ENCLOSURE(null, {})],
  },
  {
    rule: 'enclosure-near-width', sheet: 'enclosures', sheets: ENCLOSURE(450, {}), severity: 'near', key: 'freeWidth',
    value: -100, limit: 0, inStatus: true,
    message: 'Enclosure E1 holds 900 mm of parts on 1000 mm of mounting rails, 100 mm into its reserve. Use a larger enclosure, or give up part of the reserve.',
    silent: [ENCLOSURE(400, {}), ENCLOSURE(450, { reserve: 0.1 }), ENCLOSURE(520, {})],
  },
  {
    rule: 'enclosure-rails-missing', sheet: 'enclosures', sheets: ENCLOSURE(60, { rails: null }),
    severity: 'incomplete', key: 'rails', value: null, inStatus: true,
    message: 'Enclosure E1 has no number of mounting rails, so whether its parts fit is not known. Enter how many it has.',
    silent: [ENCLOSURE(60, {}), ENCLOSURE(60, { rails: null, railLength: null })],
  },
  {
    rule: 'enclosure-rail-length-missing', sheet: 'enclosures', sheets: ENCLOSURE(60, { railLength: null }),
    severity: 'incomplete', key: 'railLength', value: null, inStatus: true,
    message: 'Enclosure E1 has no length of its mounting rails, so whether its parts fit is not known. Enter the usable length of one in mm.',
    silent: [ENCLOSURE(60, {}), ENCLOSURE(60, { rails: null, railLength: null })],
  },
  {
    rule: 'branch-over-cable', sheet: 'branches', sheets: BRANCH({ maxCable: 100 }, 60, 41), severity: 'over',
    key: 'cableLength', value: 101, limit: 100, inStatus: true,
    message: 'Branch B1 has 101.0 m of cable and may have 100.0 m: 1.0 m too much. Move devices to another branch, or split it with a repeater.',
    silent: [BRANCH({ maxCable: 101 }, 60, 41), BRANCH({}, 60, 41)],
  },
  {
    rule: 'branch-cable-missing', sheet: 'branches', sheets: ON_BRANCH({ maxCable: 100 }), severity: 'incomplete',
    key: 'cableLength', value: null, inStatus: true,
    message: 'Branch B1 has nodes and no run names it, so how much cable it has is not known. Enter the branch of its runs on the sheet Runs.',
    silent: [ON_BRANCH({ maxCable: 100 }, 60), ON_BRANCH({}), BRANCH({ maxCable: 100 })],
  },
  {
    rule: 'branch-over-terminators', sheet: 'branches', sheets: BRANCH({ terminators: 3 }), severity: 'over',
    key: 'terminators', value: 3, limit: 2, inStatus: true,
    message: 'Branch B1 has 3 terminating resistors, 1 more than the two at its ends: they load its drivers. Take out those that are not at an end of the line.',
    silent: [BRANCH({ terminators: 2 }), BRANCH({})],
  },
  {
    rule: 'branch-under-terminators', sheet: 'branches', sheets: BRANCH({ terminators: 1 }), severity: 'near',
    key: 'terminators', value: 1, limit: 2, inStatus: true,
    message: 'Branch B1 has 1 terminating resistor of the 2 at its ends: what is sent is reflected there. Fit one at each end of the line.',
    silent: [BRANCH({ terminators: 2 }), BRANCH({})],
  },
  {
    rule: 'branch-over-terminators-on-terminals', sheet: 'branches', severity: 'over', key: 'terminators', value: null, inStatus: true,
    sheets: { ...BRANCH({}), terminals: ['A', 'B', 'C'].flatMap((enclosure) => RESISTOR(enclosure)) },
    message: 'Branch B1 has 3 terminating resistors on terminals, and a line has 2, at its ends: they load its drivers. Take out those that are not at an end of the line.',
    silent: [{ ...BRANCH({}), terminals: ['A', 'B'].flatMap((enclosure) => RESISTOR(enclosure)) }],
  },
  {
    rule: 'branch-terminator-midway', sheet: 'branches', severity: 'near', key: 'terminators', value: null, inStatus: true,
    sheets: { ...BRANCH({}, 10, 10), terminals: [...RESISTOR('A'), ...GOES_ON('A', 'W0'), ...GOES_ON('A', 'W1')] },
    message: 'Branch B1 goes on from the terminals A:R1, A:R2 by W0, W1, so their terminating resistor is not at an end of the line. Take it out, and fit one at each end.',
    silent: [
      { ...BRANCH({}, 10, 10), terminals: [...RESISTOR('A'), ...GOES_ON('A', 'W0'), ...GOES_ON('B', 'W1')] },
      { ...BRANCH({}, 10, 10), terminals: [...GOES_ON('A', 'W0'), ...GOES_ON('A', 'W1')] },
    ],
  },
  {
    rule: 'branch-terminator-half', sheet: 'branches', severity: 'near', key: 'terminators', value: null, inStatus: true,
    sheets: { ...BRANCH({}), terminals: RESISTOR('A').slice(0, 1) },
    message: 'Branch B1: the terminating resistor on A:R1 has one of its two ends on a terminal, so it does not stand between both conductors. Enter the terminal of its other end, R1 or R2.',
    silent: [{ ...BRANCH({}), terminals: RESISTOR('A') }, BRANCH({})],
  },
  {
    rule: 'branch-terminators-differ', sheet: 'branches', severity: 'near', key: 'terminators', value: 0, inStatus: true,
    sheets: { ...BRANCH({ terminators: 0 }), terminals: RESISTOR('A') },
    message: 'Branch B1 has 1 terminating resistor on terminals, and 0 of the whole line are entered. Correct one of them.',
    silent: [{ ...BRANCH({ terminators: 2 }), terminals: RESISTOR('A') }, { ...BRANCH({}), terminals: RESISTOR('A') }],
  },
  {
    rule: 'branch-width-missing', sheet: 'branches', severity: 'incomplete', key: 'width', value: null, inStatus: false,
    sheets: { ...BRANCH({ enclosure: 'E1' }), ...ENCLOSURE(60, {}) },
    message: 'Branch B1: the width of its coupler is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.',
    silent: [
      { ...BRANCH({ enclosure: 'E1', width: 36 }), ...ENCLOSURE(60, {}) }, BRANCH({ enclosure: 'E1' }),
      { ...BRANCH({}), ...ENCLOSURE(60, {}) },
    ],
  },
  ...([
    ['way', 'ways', 'Way F1: its width is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm, 0 for a channel in the housing of another.'],
    ['module', 'modules', 'Module F1: its width is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.'],
    ['feed', 'feeds', 'Feed F1: the width of its breaker is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.'],
  ] as const).map(([tag, sheet, message]): FindingCase => {
    const part = (cells: Cells, rails: number | null = 2) =>
      ({ ...ENCLOSURE(60, { rails }), [sheet]: [{ [tag]: 'F1', enclosure: 'E1', ...cells }] });
    return {
      rule: `${tag}-width-missing`, sheet, sheets: part({}), severity: 'incomplete', key: 'width', value: null,
      inStatus: false, message, silent: [part({ width: 12 }), part({ enclosure: null }), part({}, null)],
    };
  }),
];
