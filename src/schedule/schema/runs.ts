import { carriedCurrent, loadingRatio } from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import type { Sheet } from './column.ts';
import { measuredColumns } from './measured.ts';
import { runSolution } from './run-solution.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** Loop resistance of one metre [Ω/m]. */
const LOOP = '2 × {conductor.resistance} ÷ 1000 × (1 + 0.00393 × ({temperature} − 20\u00a0°C)) ÷ {pairs}';
const LIMITS = 'a drop of {maxDrop} of {rail.voltage}, {minVoltage} at the devices, {way.trip} × {way.rated} into a short circuit at the end';
const CIRCUIT =
  'Ohm’s law along the cable (moment method); resistances at 20 °C as IEC 60228, 0.393 % more for each kelvin';

/** The outgoing field cables. */
export const runs: Sheet = {
  name: 'runs',
  title: 'Runs',
  rowName: 'run',
  help: 'One row for each outgoing field cable: which rail feeds it, its conductor, its length.',
  tag: 'run',
  solutions: [runSolution],
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
      role: 'input', key: 'grouped', title: 'Grouped circuits', kind: 'integer', min: 1,
      help: 'Loaded circuits in its bunch, its own pairs among them; those below 30 % of what they may carry there need not count.',
      derived: {
        of: ['pairs'], by: (pairs: number) => pairs, words: '{pairs}',
        source: 'each pair warms the others; the 30 % of BS 7671, 523.5',
      },
    },
    {
      role: 'input', key: 'temperature', title: 'Temperature', kind: 'number', unit: '°C', min: -40, max: 120,
      default: 20, decimals: 0, help: 'Temperature of the conductor.', source: 'IEC 60228 gives resistances at 20 °C',
    },
    {
      role: 'input', key: 'basis', title: 'Basis', kind: 'choice', choices: ['connected', 'demand'],
      default: 'connected', help: 'Whether the run is reckoned with all devices at once or with their diversity.',
    },
    {
      role: 'input', key: 'maxDrop', title: 'Most drop', kind: 'ratio', safeSide: 'down', above: 0, max: 1,
      default: 0.05, help: 'Share of the voltage that may be lost on the run.',
      source: '5 % as BS 7671, appendix 12, for uses other than lighting',
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    ...measuredColumns('at its start, with its devices on', 'at its far end, with its devices on'),
    {
      role: 'computed', key: 'connected', title: 'Connected', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current of all its devices at once.',
      total: {
        of: [{ from: 'devices', by: 'run', sum: 'connected' }], words: 'sum of connected over the device rows that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'demand', title: 'Demand', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current expected of it at the same time.',
      total: {
        of: [{ from: 'devices', by: 'run', sum: 'demand' }], words: 'sum of demand over the device rows that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'current', title: 'Current', kind: 'number', unit: 'A', decimals: 2,
      help: 'Current at the start of the run.', whenPartial: '≥',
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
      role: 'computed', key: 'drop', title: 'Drop', kind: 'number', unit: 'V', decimals: 2,
      help: 'Largest volt drop on the run.', whenPartial: '≥',
      solved: {
        of: ['conductor.resistance', 'temperature', 'pairs'],
        words: `${LOOP} × sum of current × distance of its devices, where that is largest`, source: CIRCUIT,
      },
    },
    {
      role: 'computed', key: 'dropRatio', title: 'Drop share', kind: 'ratio', decimals: 1, whenPartial: '≥',
      help: 'Drop as a share of the voltage of the rail.',
      rule: {
        of: ['drop', 'rail.voltage'], by: loadingRatio, words: '{drop} ÷ {rail.voltage}',
        source: 'definition of the relative volt drop',
      },
    },
    {
      role: 'computed', key: 'endVoltage', title: 'End voltage', kind: 'number', unit: 'V', decimals: 2,
      help: 'Lowest voltage on the run.', whenPartial: '≤',
      solved: { of: ['rail.voltage', 'drop'], words: '{rail.voltage} − {drop}', source: CIRCUIT },
    },
    {
      role: 'computed', key: 'minVoltage', title: 'Needed voltage', kind: 'number', unit: 'V', safeSide: 'up',
      decimals: 1, help: 'Highest voltage that a device on it needs.',
      solved: {
        of: [], words: 'highest of the least voltages of its devices’ types',
        source: 'the makers’ data, as entered for the types',
      },
    },
    {
      role: 'computed', key: 'faultCurrent', title: 'Fault current', kind: 'number', unit: 'A', decimals: 2,
      help: 'Current of a short circuit at the far end.',
      solved: {
        of: [
          'rail.voltage', 'conductor.resistance', 'temperature', 'pairs', 'length', 'rail.rated', 'rail.units',
          'rail.peak',
        ],
        words: `the less of {rail.voltage} ÷ (${LOOP} × {length}) and {rail.rated} × {rail.units} × {rail.peak}`,
        source: 'Ohm’s law; a supply that limits its output gives no more than its peak: common practice, no source',
      },
    },
    {
      role: 'computed', key: 'maxLength', title: 'Longest', kind: 'number', unit: 'm', safeSide: 'down', decimals: 1,
      help: 'Longest that the run may be.', whenPartial: '≤',
      solved: {
        of: ['length', 'maxDrop', 'rail.voltage', 'minVoltage', 'way.trip', 'way.rated'],
        words: `{length} scaled with all distances until one is just met: ${LIMITS}; none where the conductor does not carry current and protection`,
        source: `${CIRCUIT}; Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1`,
      },
    },
    {
      role: 'computed', key: 'smallestConductor', title: 'Smallest conductor', kind: 'text',
      help: 'Conductor of highest resistance with which the run does not fail.',
      solved: {
        of: ['maxDrop', 'rail.voltage', 'minVoltage', 'way.trip', 'way.rated'],
        words: `highest resistance on the sheet Conductors that keeps to: ${LIMITS}; and that carries current and protection`,
        source: 'Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1; else as the drop',
      },
    },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this run say.',
    },
  ],
};
