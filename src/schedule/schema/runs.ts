import {
  availableCurrent, carriedCurrent, FAULT_TEMPERATURE, faultCurrent, loadingRatio, loopResistancePerMetre,
} from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import { worstCase } from './case-columns.ts';
import type { ComputedColumn, Sheet, Suggestion } from './column.ts';
import { measuredColumns } from './measured.ts';
import { runChoices } from './run-choices.ts';
import { runCircuit } from './run-circuit.ts';
import { temperatureByLoad } from './run-temperature.ts';

/** Loop resistance of one metre [Ω/m]. */
const LOOP = '2 × {conductor.resistance} ÷ 1000 × (1 + 0.00393 × ({temperature} − 20\u00a0°C)) ÷ {pairs}';
const LIMITS = 'a drop of {maxDrop} of {rail.voltage}, what each device needs at its place from {rail.lowest}, {way.trip} × {way.rated} into a short circuit at the end, with a second way as far from either as may be';
type Cable = [
  maxAmps: number | null, pairs: number | null, ambient: number | null, grouped: number | null,
  highest: number | null, base: number | null,
];
const AS_WARM_AS_IT_MAY = message('as warm as the conductor may get, 70 °C if that is not known, since it is not known what it carries');
const BY_DEMAND = message('{conductor.maxTemperature} − (Ca² × Cg² − ({demand} ÷ ({conductor.maxCurrent} × {pairs}))²) × ({conductor.maxTemperature} − {conductor.baseTemperature}), Ca the factor for {ambient} around it and Cg that for {grouped} bunched circuits; at least {ambient}, at most {conductor.maxTemperature}');
const BY_CONNECTED = message('{conductor.maxTemperature} − (Ca² × Cg² − ({connected} ÷ ({conductor.maxCurrent} × {pairs}))²) × ({conductor.maxTemperature} − {conductor.baseTemperature}), Ca the factor for {ambient} around it and Cg that for {grouped} bunched circuits; at least {ambient}, at most {conductor.maxTemperature}');
const ARITHMETIC = 'arithmetic of the load schedule';
/** Beside the default, which is that for ELV lighting. */
const DROPS: readonly Suggestion[] = [{
  label: message('mains lighting'), value: 0.03,
  source: 'BS 7671:2018, Appendix 4, Table 4Ab: lighting 3 %, other uses 5 % from a public supply; limits for mains',
}];
const CIRCUIT =
  'Ohm’s law along the cable (moment method); resistances at 20 °C as IEC 60228, 0.393 % more for each kelvin';

/**
 * What the supply has for a short circuit on a run [A]: what it has for its way, or without one all that is not asked
 * of it elsewhere. What the run asks for beyond its devices is in the demand of the rail only where it is known.
 */
function availableToRun(
  way: string | null, availableToWay: number | null, usable: number | null, peak: number | null,
  railDemand: number | null, demand: number | null, extra: number | null, secondWay: string | null,
  availableToSecond: number | null,
): number | null {
  if (secondWay !== null) {
    return availableToWay === null || availableToSecond === null ? null : Math.min(availableToWay, availableToSecond);
  }
  if (way !== null) return availableToWay;
  if (usable === null || peak === null || railDemand === null || demand === null) return null;
  return availableCurrent(usable, peak, railDemand - demand - (extra ?? 0));
}

/** Length of the cable of a run with two ways; `null` where they are one, or of two rails, which must not be joined. */
function fromWayToWay(
  length: number, behind: number, way: string, secondWay: string, rail: string, secondRail: string,
): number | null {
  return way === secondWay || rail !== secondRail ? null : length + behind;
}

/**
 * Current of a short circuit at the far end [A], with the conductors as warm as they may get; with a second way, of one
 * as far from a way as may be, behind the other when that has opened.
 */
function faultAtEnd(
  lowest: number | null, ohmPerKm: number | null, pairs: number | null, length: number | null, innerOhm: number | null,
  available: number | null, secondWay: string | null, wholeLength: number | null,
): number | null {
  const farthest = secondWay === null ? length : wholeLength;
  if (lowest === null || ohmPerKm === null || pairs === null || farthest === null) return null;
  const loop = loopResistancePerMetre(ohmPerKm, FAULT_TEMPERATURE, pairs);
  if (loop === null || innerOhm === null || available === null) return null;
  return faultCurrent(lowest, loop, farthest, innerOhm, available);
}

const AT_THE_END = message('the less of {rail.lowest} ÷ (2 × {conductor.resistance} ÷ 1000 × (1 + 0.00393 × (70 − 20)) ÷ {pairs} × {length} + {rail.innerResistance}) and {available}');
const BEHIND_THE_OTHER = message('the less of {rail.lowest} ÷ (2 × {conductor.resistance} ÷ 1000 × (1 + 0.00393 × (70 − 20)) ÷ {pairs} × {wholeLength} + {rail.innerResistance}) and {available}, as far from a way as may be');

/** The outgoing field cables. */
export const runs: Sheet = {
  name: 'runs',
  title: 'Runs',
  rowName: 'run',
  help: 'One row for each outgoing field cable: which rail feeds it, its conductor, its length.',
  tag: 'run',
  solutions: [runCircuit, runChoices],
  columns: [
    {
      role: 'input', key: 'run', title: 'Run', kind: 'text', tag: true,
      help: 'Tag of the cable, as device rows give it.',
    },
    {
      role: 'input', key: 'rail', title: 'Rail', kind: 'reference', to: 'supplies',
      help: 'Supply rail that feeds it; empty: that of its way.',
      derived: { of: ['way.rail'], by: (rail: string) => rail, words: '{way.rail}', source: ARITHMETIC },
    },
    {
      role: 'input', key: 'way', title: 'Way', kind: 'reference', to: 'ways', optional: true,
      help: 'Fuse, breaker or channel that protects it; kind and rating, such as B 4, make one.',
    },
    {
      role: 'input', key: 'branch', title: 'Branch', kind: 'reference', to: 'branches',
      help: 'Bus branch that it belongs to.',
    },
    {
      role: 'input', key: 'conductor', title: 'Conductor', kind: 'reference', to: 'conductors',
      help: 'Conductor of the pair.',
    },
    { role: 'input', key: 'pairs', title: 'Pairs', kind: 'integer', min: 1, default: 1, help: 'Pairs in parallel.' },
    {
      role: 'input', key: 'length', title: 'Length', kind: 'number', unit: 'm', above: 0, decimals: 1,
      help: 'Length of the cable, one way.',
    },
    {
      role: 'input', key: 'ambient', title: 'Ambient', kind: 'number', unit: '°C', min: -40, max: 120, default: 30,
      decimals: 0,
      help: 'Highest temperature around the cable.', source: 'air of 30 °C, IEC 60364-5-52',
    },
    {
      role: 'input', key: 'maxDrop', title: 'Max. voltage drop', kind: 'ratio', safeSide: 'down', above: 0, max: 1,
      default: 0.05, suggestions: DROPS,
      help: 'Share of the voltage that may be lost on the run; 3 % as for “mains lighting” may be typed by that name.',
      source: '5 % for ELV lighting, IEC 60364-7-715, 525',
    },
    {
      role: 'computed', key: 'current', title: 'Current', kind: 'number', unit: 'A', decimals: 2,
      help: 'Current at the start of the run; through both of its ways where it has two.', whenPartial: '≥',
      inCases: 'highest',
      solved: {
        of: [], words: 'sum of the currents of its devices, each at its own voltage where it draws constant power',
        source: CIRCUIT,
      },
    },
    {
      role: 'computed', key: 'carries', title: 'Carries', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      help: 'Current that the cable carries where it lies.',
      rule: {
        of: [
          'conductor.maxCurrent', 'pairs', 'ambient', 'grouped', 'conductor.maxTemperature',
          'conductor.baseTemperature',
        ],
        by: carriedCurrent,
        words: message(
          '{conductor.maxCurrent} × {pairs} × the factor for {ambient} around a conductor of {conductor.maxTemperature} rated at {conductor.baseTemperature} × the factor for {grouped} bunched circuits'
        ),
        source: 'IEC 60364-5-52, Tables B.52.14 and B.52.17',
      },
    },
    {
      role: 'computed', key: 'drop', title: 'Voltage drop', kind: 'number', unit: 'V',
      help: 'Largest volt drop on the run.', whenPartial: '≥', inCases: 'highest',
      solved: {
        of: ['conductor.resistance', 'temperature', 'pairs'],
        words: `${LOOP} × sum of current × distance of its devices, where that is largest`, source: CIRCUIT,
      },
    },
    {
      role: 'computed', key: 'dropRatio', title: 'Voltage drop %', kind: 'ratio', decimals: 1, whenPartial: '≥',
      help: 'Drop as a share of the voltage of the rail.',
      rule: {
        of: ['drop', 'rail.voltage'], by: loadingRatio, words: '{drop} ÷ {rail.voltage}',
        source: 'definition of the relative volt drop',
      },
    },
    {
      role: 'computed', key: 'endVoltage', title: 'End voltage', kind: 'number', unit: 'V',
      help: 'Lowest voltage on the run, when its supply gives the least.', whenPartial: '≤', inCases: 'lowest',
      solved: {
        of: ['rail.lowest', 'rail.voltage', 'drop'],
        words: '{rail.lowest} − what the run drops from there ({drop} from {rail.voltage})', source: CIRCUIT,
      },
    },
    {
      role: 'computed', key: 'minVoltage', title: 'Needed voltage', kind: 'number', unit: 'V', safeSide: 'up',
      help: 'Highest voltage that a device on it needs.',
      solved: {
        of: [], words: 'highest of the minimum voltages of its devices’ types',
        source: 'the makers’ data, as entered for the types',
      },
    },
    {
      role: 'computed', key: 'voltageMargin', title: 'Voltage margin', kind: 'number', unit: 'V', safeSide: 'down',
      whenPartial: '≤', inCases: 'lowest',
      help: 'Least that a device on it has, at its own place, above what it needs; below 0 it lacks that much.',
      solved: {
        of: [], words: 'least of the voltage margins of its device rows', source: 'the makers’ data, as entered for the types',
      },
    },
    {
      role: 'computed', key: 'available', title: 'Available', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      whenPartial: '≤', help: 'What its supply still has for a short circuit on it.', inCases: 'lowest',
      rule: {
        of: [
          'way', 'way.available', 'rail.usable', 'rail.peak', 'rail.demand', 'demand', 'extra', 'secondWay',
          'secondWay.available',
        ],
        by: availableToRun, takesUnknown: true,
        words: (...values) => values[7] !== null ? message('the less of {way.available} and {secondWay.available}')
          : values[0] === null ? '{rail.usable} × {rail.peak} − ({rail.demand} − {demand} − {extra})'
          : '{way.available}',
        source: 'what other loads draw is lost for the fault, and a redundant unit counts for nothing; common practice, no source',
      },
    },
    {
      role: 'computed', key: 'faultCurrent', title: 'Fault current', kind: 'number', unit: 'A', safeSide: 'down',
      decimals: 2, whenPartial: '≤', help: 'Current of a short circuit at the far end; with two ways as far from one as may be.',
      rule: {
        of: [
          'rail.lowest', 'conductor.resistance', 'pairs', 'length', 'rail.innerResistance', 'available', 'secondWay',
          'wholeLength',
        ],
        by: faultAtEnd, takesUnknown: true,
        words: (...values) => values[6] === null ? AT_THE_END : BEHIND_THE_OTHER,
        source: 'Ohm’s law, with conductors of 70 °C; a supply that limits its output gives no more than it has: common practice, no source',
      },
    },
    {
      role: 'computed', key: 'maxLength', title: 'Longest', kind: 'number', unit: 'm', safeSide: 'down', decimals: 1,
      help: 'Longest that the run may be.', whenPartial: '≤',
      solved: {
        of: ['length', 'maxDrop', 'rail.voltage', 'rail.lowest', 'way.trip', 'way.rated', 'way.k2'],
        words: `{length} scaled with all distances until one is just met: ${LIMITS}; none where the conductor does not carry current and protection`,
        source: `${CIRCUIT}; Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1`,
      },
    },
    {
      role: 'computed', key: 'smallestConductor', title: 'Smallest conductor', kind: 'text',
      help: 'Conductor of highest resistance with which the run does not fail.',
      solved: {
        of: ['maxDrop', 'rail.voltage', 'rail.lowest', 'way.trip', 'way.rated', 'way.k2'],
        words: `highest resistance on the sheet Conductors that keeps to: ${LIMITS}; and that carries current and protection`,
        source: 'Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1; else as the drop',
      },
    },
    {
      role: 'input', key: 'to', rare: 'laying', title: 'Goes to', kind: 'text', help: 'Where the cable goes: room, zone or device.',
    },
    {
      role: 'input', key: 'cable', rare: 'laying', title: 'Type of cable', kind: 'text', help: 'Type of cable, as it is ordered.',
    },
    {
      role: 'input', key: 'cores', rare: 'laying', title: 'Cores', kind: 'integer', min: 1, optional: true,
      help: 'Cores in the cable: two for each pair, two for the bus where it takes that along, and spare ones.',
    },
    {
      role: 'input', key: 'gland', rare: 'laying', title: 'Gland', kind: 'text', help: 'Gland through which it enters the enclosure.',
    },
    {
      role: 'input', key: 'grouped', rare: 'laying', title: 'Grouped circuits', kind: 'integer', min: 1,
      help: 'Loaded circuits in its bunch, its own pairs among them; those below 30 % of what they may carry there need not count.',
      derived: {
        of: ['pairs'], by: (pairs: number) => pairs, words: '{pairs}',
        source: 'each pair warms the others; the 30 % of BS 7671, 523.5',
      },
    },
    {
      role: 'input', key: 'temperature', rare: 'laying', title: 'Temperature', kind: 'number', unit: '°C', min: -40, max: 120,
      decimals: 0, help: 'Temperature of the conductors, loaded as they are.',
      derived: {
        of: [
          'basis', 'connected', 'demand', 'conductor.maxCurrent', 'pairs', 'ambient', 'grouped',
          'conductor.maxTemperature', 'conductor.baseTemperature',
        ],
        by: (basis: string, connected: number | null, demand: number | null, ...cable: Cable) =>
          temperatureByLoad(basis === 'demand' ? demand : connected, ...cable),
        takesUnknown: true,
        words: (basis, _connected, _demand, maxCurrent) => maxCurrent === null ? AS_WARM_AS_IT_MAY
          : basis === 'demand' ? BY_DEMAND : BY_CONNECTED,
        source: 'BS 7671, Appendix 4, 6.1',
      },
    },
    {
      role: 'input', key: 'basis', rare: 'laying', title: 'Basis', kind: 'choice', choices: ['connected', 'demand'],
      default: 'connected', help: 'Whether the run is calculated with all devices at the same time or with their diversity.',
    },
    {
      role: 'computed', key: 'connected', title: 'Connected', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current of all its devices at the same time, at the nominal voltage.',
      total: {
        of: [{ from: 'devices', by: 'run', sum: 'connected' }],
        words: 'sum of connected over the device rows that name it', source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'demand', title: 'Demand', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current expected of its devices at the same time, at the nominal voltage; with cases, in the worst of them.',
      inCases: 'highest',
      total: {
        of: [{ from: 'devices', by: 'run', sum: 'demand' }], words: 'sum of demand over the device rows that name it',
        source: ARITHMETIC,
      },
    },
    worstCase,
    {
      role: 'computed', key: 'extra', title: 'Extra', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current that its devices of constant power draw more because the cable drops their voltage, at their demand.',
      inCases: 'highest',
      solved: {
        of: ['demand'], words: 'current at the diversity of its devices, each at its own voltage, − {demand}; never below 0',
        source: CIRCUIT,
      },
    },
    {
      role: 'computed', key: 'largest', title: 'Largest device', kind: 'number', unit: 'A', decimals: 2,
      whenPartial: '≥', help: 'Current of the one device that draws most, at the nominal voltage.',
      solved: { of: [], words: 'highest unit draw of its devices', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'start', title: 'Start current', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current of all its devices when they start at the same time, as far as their inrush is known.',
      solved: {
        of: [], words: 'sum of quantity × the larger of draw and inrush over the device rows that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'input', key: 'secondWay', rare: 'second', title: 'Second way', kind: 'reference', to: 'ways', optional: true,
      help: 'Another way of the same rail, which feeds it from behind its far end too; either protects all of it.',
    },
    {
      role: 'input', key: 'secondLength', rare: 'second', title: 'Length to second way', kind: 'number', unit: 'm', above: 0,
      decimals: 1, optional: true,
      help: 'Length of the cable from its far end on to the second way, of the same conductor; no bus goes along.',
    },
    {
      role: 'computed', key: 'wholeLength', rare: 'second', title: 'Length from way to way', kind: 'number', unit: 'm',
      decimals: 1, help: 'Length of the cable from its way to its second way.',
      rule: {
        of: ['length', 'secondLength', 'way', 'secondWay', 'way.rail', 'secondWay.rail'], by: fromWayToWay,
        onlyWith: { 'way.rail': 'secondWay', 'secondWay.rail': 'secondWay' },
        // Words of a function make no formula of a spreadsheet, in which it would be one without two ways too.
        words: () => message('{length} + {secondLength}'), source: ARITHMETIC,
      },
    },
    ...([
      [
        'firstConnected', 'Connected by first way', 'What it takes through its way, everything at the same time.', 'connected',
        '{connected} + {extra} − what it takes through its second way',
      ], [
        'secondConnected', 'Connected by second way', 'What it takes through its second way, everything at the same time.', 'connected',
        '({connected} + {extra}) × sum of current × distance of its devices ÷ (sum of their currents × {wholeLength})',
      ], [
        'firstDemand', 'Demand by first way', 'What it takes through its way at the diversity of its devices.', 'demand',
        '{demand} + {extra} − what it takes through its second way',
      ], [
        'secondDemand', 'Demand by second way', 'What it takes through its second way at the diversity of its devices.', 'demand',
        '({demand} + {extra}) × sum of current × distance of its devices, each at its own voltage, ÷ (sum of their currents × {wholeLength})',
      ],
    ] as const).map(([key, title, help, of, words]): ComputedColumn => ({
      role: 'computed', key, rare: 'second', title, kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥', help,
      inCases: 'highest',
      solved: { of: [of, 'extra', 'wholeLength'], words, source: CIRCUIT },
    })),
    {
      role: 'computed', key: 'openMargin', rare: 'second', title: 'Margin with one way open', kind: 'number', unit: 'V',
      safeSide: 'down', whenPartial: '≤', inCases: 'lowest',
      help: 'Least that a device on it has above what it needs while one of its two ways is open; below 0 it lacks that much.',
      solved: {
        of: [], words: 'least of the voltage margins of its device rows, fed from either way alone',
        source: 'the makers’ data, as entered for the types',
      },
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    ...measuredColumns(
      'at its start, with its devices on; of one with two ways, both added',
      'at its far end, with its devices on; of one with two ways, where it is lowest'
    ),
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this run say.',
    },
  ],
};
