import { boughtColumns } from './bought.ts';
import type { Sheet } from './column.ts';

/** The conductors that runs are made of. */
export const conductors: Sheet = {
  name: 'conductors',
  title: 'Conductors',
  rowName: 'conductor',
  help: 'One row for each conductor: its resistance and, where a source says so, the current that it carries and at which temperatures.',
  tag: 'conductor',
  columns: [
    { role: 'input', key: 'conductor', title: 'Conductor', kind: 'text', tag: true, help: 'Name, as runs give it.' },
    {
      role: 'input', key: 'size', title: 'Size', kind: 'number', unit: 'mm²', above: 0, decimals: 2,
      help: 'Cross-section.',
    },
    {
      role: 'input', key: 'resistance', title: 'Resistance', kind: 'number', unit: 'Ω/km', above: 0, decimals: 2,
      help: 'DC resistance of one conductor at 20 °C.',
    },
    {
      role: 'input', key: 'maxCurrent', title: 'Max. current', kind: 'number', unit: 'A', safeSide: 'down', above: 0,
      decimals: 2, optional: true, help: 'Current that one pair carries alone, at the reference temperature around it.',
    },
    {
      role: 'input', key: 'maxTemperature', rare: 'limits',
      title: 'Highest temperature', kind: 'number', unit: '°C', safeSide: 'down',
      above: 55, max: 250,
      default: 70, decimals: 0, help: 'Highest temperature of the conductor that its insulation allows.',
      source: 'PVC, IEC 60364-5-52, Table 52.1',
    },
    {
      role: 'input', key: 'baseTemperature', rare: 'limits',
      title: 'Reference temperature', kind: 'number', unit: '°C', min: 0,
      max: 55,
      default: 30, decimals: 0, help: 'Temperature around the cable at which it carries “Max. current”.',
      source: 'IEC 60364-5-52; EN 60204-1 takes 40 °C',
    },
    ...boughtColumns('metre of cable with one pair of it'),
    { role: 'input', key: 'source', title: 'Source', kind: 'text', help: 'Where the figures come from.' },
  ],
};
