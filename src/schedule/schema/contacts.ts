import type { Sheet } from './column.ts';

/** The kinds of relay contact. */
export const contacts: Sheet = {
  name: 'contacts',
  title: 'Contacts',
  rowName: 'contact',
  help: 'One row for each kind of relay contact: what it may switch of each kind of load.',
  tag: 'contact',
  columns: [
    { role: 'input', key: 'contact', title: 'Contact', kind: 'text', tag: true, help: 'Name, as outputs give it.' },
    {
      role: 'input', key: 'resistive', title: 'Resistive', kind: 'number', unit: 'A', safeSide: 'down', above: 0,
      decimals: 2, help: 'Rating for resistive loads.', source: 'category AC-1, IEC 60947-4-1',
    },
    {
      role: 'input', key: 'lamp', title: 'Lamp', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 2,
      help: 'Rating for lamps and drivers.', source: 'categories AC-5a and AC-5b, IEC 60947-4-1',
    },
    {
      role: 'input', key: 'motor', title: 'Motor', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 2,
      help: 'Rating for motors.', source: 'category AC-3, IEC 60947-4-1',
    },
    {
      role: 'input', key: 'coil', title: 'Coil', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 2,
      help: 'Rating for coils of contactors and valves.', source: 'category AC-15, IEC 60947-5-1',
    },
    {
      role: 'input', key: 'dc', rare: true,
      title: 'DC', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 2,
      optional: true, help: 'Rating for direct current, at “Highest DC voltage”.',
      source: 'categories DC-1, IEC 60947-4-1, and DC-12, IEC 60947-5-1',
    },
    {
      role: 'input', key: 'dcCoil', rare: true, title: 'DC coil', kind: 'number', unit: 'A', safeSide: 'down', above: 0,
      decimals: 2, optional: true, help: 'Rating for coils on direct current, at “Highest DC voltage”.',
      source: 'category DC-13, IEC 60947-5-1',
    },
    {
      role: 'input', key: 'maxVoltage', title: 'Highest voltage', kind: 'number', unit: 'V', safeSide: 'down', above: 0,
      max: 1000, default: 250, decimals: 0, help: 'Highest alternating voltage that it switches.',
      source: 'rated voltage of relays for 230 V; common practice, no source',
    },
    {
      role: 'input', key: 'maxDcVoltage', rare: true,
      title: 'Highest DC voltage', kind: 'number', unit: 'V', safeSide: 'down',
      above: 0, max: 1500, decimals: 0, optional: true, help: 'Highest direct voltage at which its DC ratings hold.',
    },
    {
      role: 'input', key: 'inrush', title: 'Inrush', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 1,
      optional: true, help: 'Its making capacity: the peak current that it can switch on.',
    },
    { role: 'input', key: 'source', title: 'Source', kind: 'text', help: 'Where the figures come from.' },
  ],
};
