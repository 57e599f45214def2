import { connectedCurrent, demandCurrent, deviceNodes, drawFromPower, loadingRatio } from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import type { Sheet } from './column.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** Unit draw of the type, else worked out from its power at the voltage of the rail. */
function typeDraw(draw: number | null, power: number | null, voltage: number | null): number | null {
  if (draw !== null) return draw;
  return power !== null && voltage !== null ? drawFromPower(power, voltage) : null;
}

/** State of a device row that its list no longer has. */
export const GONE = 'gone';

/** One row for each group of like devices in one place. */
export const devices: Sheet = {
  name: 'devices',
  title: 'Devices',
  rowName: 'device row',
  help: 'One row for each group of like devices in one place: how many, of which type, on which rail and branch.',
  tag: 'ref',
  columns: [
    {
      role: 'input', key: 'ref', title: 'Ref', kind: 'text', tag: true,
      help: 'Reference of the row, as on the drawing.',
    },
    { role: 'input', key: 'area', title: 'Area', kind: 'text', help: 'Room, floor or zone.' },
    {
      role: 'input', key: 'type', title: 'Type', kind: 'reference', to: 'types',
      help: 'Device type; gives the unit draw, the nodes and the diversity where the row has none of its own.',
    },
    {
      role: 'input', key: 'qty', title: 'Qty', kind: 'integer', min: 0, metres: true,
      help: 'How many devices, or how many metres of what is counted by the metre: 12.5 m.',
    },
    {
      role: 'input', key: 'rail', title: 'Rail', kind: 'reference', to: 'supplies',
      help: 'Supply rail that feeds the devices; empty: that of their run.',
      derived: { of: ['run.rail'], by: (rail: string) => rail, words: '{run.rail}', source: ARITHMETIC },
    },
    {
      role: 'input', key: 'branch', title: 'Branch', kind: 'reference', to: 'branches',
      help: 'Bus branch that the devices are nodes on.',
    },
    {
      role: 'input', key: 'run', title: 'Run', kind: 'reference', to: 'runs',
      help: 'Field cable that feeds the devices.',
    },
    {
      role: 'input', key: 'distance', title: 'Distance', kind: 'number', unit: 'm', min: 0, decimals: 1,
      help: 'Distance along the run; empty: at its far end.',
    },
    {
      role: 'input', key: 'unitDraw', title: 'Unit draw', kind: 'number', unit: 'mA', min: 0, decimals: 1,
      help: 'Current of one device at the nominal voltage of the rail; 350 mA, 0.35 A or 8.4 W may be typed.',
      derived: {
        of: ['type.draw', 'type.power', 'rail.voltage'], by: typeDraw, takesUnknown: true,
        words: (draw) => draw === null ? '{type.power} ÷ {rail.voltage} × 1000' : '{type.draw}',
        source: 'P = U × I; the type’s draw where it has one',
      },
    },
    {
      role: 'input', key: 'diversity', title: 'Diversity', kind: 'ratio', min: 0, max: 1,
      help: 'Share of the connected load expected at the same time, 0 to 1 (0 % to 100 %).',
      derived: {
        of: ['type.diversity'], by: (own: number | null) => own ?? 1, takesUnknown: true,
        words: (own) => own === null
          ? message('1, as neither the row nor its type says otherwise') : '{type.diversity}',
        source: 'coincidence of loads as a share of 1; common practice, no source',
      },
    },
    {
      role: 'computed', key: 'connected', title: 'Connected', kind: 'number', unit: 'A', decimals: 2,
      help: 'Current of all the devices at the same time.',
      rule: { of: ['qty', 'unitDraw'], by: connectedCurrent, words: '{qty} × {unitDraw} ÷ 1000', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'demand', title: 'Demand', kind: 'number', unit: 'A', decimals: 2,
      help: 'Current expected at the same time, by the diversity of the row.',
      inCases: { share: 'connected' },
      rule: {
        of: ['connected', 'diversity'], by: demandCurrent, words: '{connected} × {diversity}',
        source: 'demand factor as in textbooks of power supply (maximum demand ÷ connected load)',
      },
    },
    {
      role: 'computed', key: 'share', title: 'Share of rail', kind: 'ratio', onDemand: true, whenPartial: '≥',
      help: 'Part of the usable current of the rail that this row takes.',
      rule: { of: ['demand', 'rail.usable'], by: loadingRatio, words: '{demand} ÷ {rail.usable}', source: ARITHMETIC },
    },
    {
      role: 'input', key: 'group', rare: true, title: 'Load group', kind: 'text',
      help: 'Group of loads that come on together, for the factors of cases; empty: that of their type.',
      derived: { of: ['type.group'], by: (group: string) => group, words: '{type.group}', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'nodes', title: 'Nodes', kind: 'number', decimals: 0,
      help: 'Bus participants that the row counts on its branch.',
      rule: { of: ['qty', 'type.nodes'], by: deviceNodes, words: '{qty} × {type.nodes}', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'busDemand', rare: true, title: 'Bus demand', kind: 'number', unit: 'A', decimals: 3,
      help: 'Current that the row takes from the supply of its bus branch.',
      rule: {
        of: ['qty', 'type.busDraw'], by: connectedCurrent, words: '{qty} × {type.busDraw} ÷ 1000', source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'terminalVoltage', title: 'Voltage at device', kind: 'number', unit: 'V',
      help: 'Voltage at the devices on their run.', whenPartial: '≤', inCases: 'lowest',
      solved: {
        of: ['rail.lowest', 'distance', 'run.length'],
        words: '{rail.lowest} − drop on the run up to {distance} (where that is not known, to its end at {run.length})',
        source: 'Ohm’s law along the cable',
      },
    },
    {
      role: 'computed', key: 'voltageMargin', title: 'Voltage margin', kind: 'number', unit: 'V', safeSide: 'down',
      whenPartial: '≤',
      help: 'What the devices have above the voltage that their type needs; below 0 they lack that much.',
      rule: {
        of: ['terminalVoltage', 'type.minVoltage', 'qty'],
        by: (volts: number, least: number, qty: number) => qty === 0 ? null : volts - least,
        words: '{terminalVoltage} − {type.minVoltage}', source: 'the makers’ data, as entered for the types',
      },
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'input', key: 'source', rare: true, title: 'Counted in', kind: 'text',
      help: 'The list that the devices were counted in: file, sheet where there are several, lines, and what it calls them.',
    },
    {
      role: 'input', key: 'state', rare: true, title: 'State', kind: 'choice', choices: [GONE],
      help: 'Gone: the list that the row was counted in no longer has it. It still counts until it is deleted.',
    },
  ],
};
