import type { Sheet } from './column.ts';

/** The conductors that runs are made of. */
export const conductors: Sheet = {
  name: 'conductors',
  title: 'Conductors',
  rowName: 'conductor',
  help: 'One row for each conductor: its resistance and, where a source says so, the current that it carries.',
  tag: 'conductor',
  columns: [
    { role: 'input', key: 'conductor', title: 'Conductor', kind: 'text', tag: true, help: 'Name, as runs give it.' },
    { role: 'input', key: 'size', title: 'Size', kind: 'number', unit: 'mm²', above: 0, decimals: 2, help: 'Cross-section.' },
    { role: 'input', key: 'resistance', title: 'Resistance', kind: 'number', unit: 'Ω/km', above: 0, decimals: 2, help: 'DC resistance of one conductor at 20 °C.' },
    { role: 'input', key: 'maxCurrent', title: 'Most current', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 2, optional: true, help: 'Current that it carries as installed.' },
    { role: 'input', key: 'source', title: 'Source', kind: 'text', help: 'Where the figures come from.' },
  ],
};
