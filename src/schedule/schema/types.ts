import { boughtColumns } from './bought.ts';
import type { Sheet, Suggestion } from './column.ts';

export const PURPOSES = ['lighting', 'field', 'control', 'other'] as const;

/** What open standards let one device take from its bus; the maker may state less or more. */
const BUS_DRAWS: readonly Suggestion[] = [
  { label: 'IEC 62386', value: 2, source: 'IEC 62386: 2 mA for each control gear' },
  { label: 'EN 13757-2', value: 1.5, source: 'EN 13757-2: a unit load of 1.5 mA, as the manual of a meter gives it' },
];

/** The kinds of device that the schedule counts. */
export const types: Sheet = {
  name: 'types',
  title: 'Types',
  rowName: 'device type',
  help: 'One row for each kind of device: what one draws and how many nodes it counts on a bus branch.',
  tag: 'type',
  columns: [
    {
      role: 'input', key: 'type', title: 'Type', kind: 'text', tag: true,
      help: 'Name of the type, as device rows give it.',
    },
    { role: 'input', key: 'description', title: 'Description', kind: 'text', help: 'What it is.' },
    {
      role: 'input', key: 'purpose', title: 'Purpose', kind: 'choice', choices: PURPOSES,
      help: 'Which kind of supply it belongs on.',
    },
    {
      role: 'input', key: 'voltage', title: 'Voltage', kind: 'number', unit: 'V', above: 0, max: 120, default: 24,
      help: 'Nominal voltage of the device.', source: '24 V, the usual extra-low voltage of panels; common practice, no source',
    },
    {
      role: 'input', key: 'draw', title: 'Draw', kind: 'number', unit: 'mA', min: 0, decimals: 1,
      help: 'Current of one device at nominal voltage.',
    },
    {
      role: 'input', key: 'power', title: 'Power', kind: 'number', unit: 'W', min: 0, decimals: 2,
      help: 'Power of one device; used where no draw is given.',
    },
    {
      role: 'input', key: 'load', title: 'Load', kind: 'choice', choices: ['current', 'power'], default: 'current',
      help: 'Whether the device draws a constant current or, as a converter does, a constant power.',
    },
    {
      role: 'input', key: 'inrush', title: 'Inrush', kind: 'number', unit: 'A', min: 0, decimals: 2, optional: true,
      help: 'What one draws when it starts, as far as that lasts above 50 ms; 0 if no more than its draw.',
      source: 'shorter peaks come from the capacitors of supplies; common practice, no source',
    },
    {
      role: 'input', key: 'nodes', title: 'Nodes', kind: 'number', min: 0, decimals: 0,
      help: 'Bus participants that one device counts on its branch; 0 for one that is none.',
    },
    {
      role: 'input', key: 'busDraw', rare: true, title: 'Bus draw', kind: 'number', unit: 'mA', min: 0, decimals: 1,
      optional: true, suggestions: BUS_DRAWS,
      help: 'Current that one device takes from the supply of its bus; 0 where it takes none.',
    },
    {
      role: 'input', key: 'diversity', title: 'Diversity', kind: 'ratio', min: 0, max: 1,
      help: 'Share expected at the same time, 0 to 1, for rows that give none of their own.',
    },
    {
      role: 'input', key: 'group', rare: true, title: 'Load group', kind: 'text',
      help: 'Group of loads that come on together, such as blinds or lamps; cases give each a factor.',
    },
    {
      role: 'input', key: 'minVoltage', title: 'Min. voltage', kind: 'number', unit: 'V', safeSide: 'up', min: 0,
      optional: true, help: 'Lowest voltage at which the device works.',
    },
    {
      role: 'input', key: 'maxVoltage', title: 'Max. voltage', kind: 'number', unit: 'V', safeSide: 'down', above: 0,
      optional: true, help: 'Highest voltage that the device stands.',
    },
    ...boughtColumns('device'),
    {
      role: 'input', key: 'note', title: 'Note', kind: 'text',
      help: 'Anything worth saying, the source of the figures first.',
    },
    {
      role: 'input', key: 'aliases', title: 'Aliases', kind: 'text',
      help: 'Other names of the type, as takeoffs give them, with a semicolon between them.',
    },
  ],
};
