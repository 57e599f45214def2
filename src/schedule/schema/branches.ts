import { freeNodes, loadingRatio } from '../../electrical/index.ts';
import type { Sheet, Suggestion } from './column.ts';
import { mountedOnColumn } from './mounted.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** What open standards let one line or segment carry; the maker of the devices may allow fewer. */
const LIMITS: readonly Suggestion[] = [
  { label: 'TIA-485-A', value: 32, source: 'TIA-485-A (EIA RS-485), Table 1: 32 unit loads on a line' },
  { label: 'IEC 62386', value: 64, source: 'IEC 62386: 64 addresses of control gear on a line' },
  { label: 'EN 50090', value: 64, source: 'EN 50090 (ISO/IEC 14543-3-6): 64 devices in a segment' },
  { label: 'CiA 301', value: 127, source: 'CiA 301: 127 nodes in a network' },
  { label: 'EN 13757-2', value: 250, source: 'EN 13757-2: 250 meters in a segment, as the manual of a meter gives it' },
];

/** What open standards let the cable of a line measure in all; the maker of the devices may allow less. */
const CABLES: readonly Suggestion[] = [
  { label: 'IEC 62386', value: 300, source: 'IEC 62386: 300 m at 1.5 mm²; thinner conductors make it shorter' },
  { label: 'EN 50090', value: 1000, source: 'EN 50090 (ISO/IEC 14543-3-6): 1000 m in a segment, from memory' },
  { label: 'EN 13757-2', value: 350, source: 'EN 13757-2: 350 m at 29 Ω, as its documentation gives it' },
  { label: 'TIA-485-A', value: 1200, source: 'TIA-485-A: 1200 m at up to 100 kbit/s, from memory' },
  ...([[20, 2500], [50, 1000], [125, 500], [250, 250], [500, 100], [1000, 25]] as const).map(([rate, value]) =>
    ({ label: `CiA 301, ${rate} k`, value, source: 'CiA 301: length of a network by its bit rate' })),
];

/** What open standards let the supply of a bus give; the maker of the supply may state less. */
const BUS_CURRENTS: readonly Suggestion[] = [
  { label: 'IEC 62386', value: 0.25, source: 'IEC 62386: 250 mA at the most on a line' },
];

/** The branches of the field bus. */
export const branches: Sheet = {
  name: 'branches',
  title: 'Branches',
  rowName: 'bus branch',
  help: 'One row for each bus branch: how many nodes it may carry and how many it does.',
  tag: 'branch',
  columns: [
    {
      role: 'input', key: 'branch', title: 'Branch', kind: 'text', tag: true,
      help: 'Tag of the branch, as device rows give it.',
    },
    {
      role: 'input', key: 'limit', title: 'Limit', kind: 'integer', min: 1, suggestions: LIMITS,
      help: 'Most nodes that the branch may carry; the standard of the bus, such as TIA-485-A, may be typed.',
    },
    {
      role: 'input', key: 'reserve', title: 'Reserve', kind: 'ratio', min: 0, max: 1, default: 0,
      help: 'Share of the limit, and of the bus current, kept free for later.',
    },
    {
      role: 'input', key: 'terminated', title: 'Terminated', kind: 'boolean',
      help: 'Both ends of the line carry their terminating resistors.',
    },
    {
      role: 'input', key: 'terminators', rare: 'limits', title: 'Terminators', kind: 'integer', min: 0, optional: true,
      help: 'Terminating resistors that were counted or measured on the line; it goes before “Terminated”.',
    },
    {
      role: 'computed', key: 'nodes', title: 'Nodes', kind: 'number', decimals: 0, whenPartial: '≥',
      help: 'Nodes of its devices.',
      total: {
        of: [{ from: 'devices', by: 'branch', sum: 'nodes' }], words: 'sum of nodes over the device rows that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'free', title: 'Free after reserve', kind: 'number', safeSide: 'down', decimals: 0, whenPartial: '≤',
      help: 'Nodes left below the limit less the reserve.',
      rule: {
        of: ['limit', 'reserve', 'nodes'], by: freeNodes, words: '{limit} × (1 − {reserve}), rounded down, − {nodes}',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'used', title: 'Used', kind: 'ratio', whenPartial: '≥',
      help: 'Nodes as a share of the limit.',
      rule: { of: ['nodes', 'limit'], by: loadingRatio, words: '{nodes} ÷ {limit}', source: ARITHMETIC },
    },
    {
      role: 'input', key: 'busCurrent', rare: 'limits', title: 'Bus current', kind: 'number', unit: 'A', safeSide: 'down',
      above: 0, decimals: 3, optional: true, suggestions: BUS_CURRENTS,
      help: 'Current that the supply of the bus gives its devices; the standard of the bus, such as IEC 62386, may be typed.',
    },
    {
      role: 'computed', key: 'busDemand', rare: 'limits', title: 'Bus demand', kind: 'number', unit: 'A', decimals: 3,
      whenPartial: '≥', help: 'Current that its devices take from the supply of the bus.',
      total: {
        of: [{ from: 'devices', by: 'branch', sum: 'busDemand' }],
        words: 'sum of bus demand over the device rows that name it', source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'cables', title: 'Cables', kind: 'number', decimals: 0,
      help: 'Runs that belong to the branch.',
      total: { of: [{ from: 'runs', by: 'branch' }], words: 'number of runs that name it', source: ARITHMETIC },
    },
    {
      role: 'input', key: 'maxCable', rare: 'limits',
      title: 'Max. cable length', kind: 'number', unit: 'm', safeSide: 'down', above: 0,
      decimals: 0, optional: true, suggestions: CABLES,
      help: 'Longest that its cables may be together; the standard of the bus, such as TIA-485-A, may be typed.',
    },
    {
      role: 'computed', key: 'cableLength', title: 'Cable length', kind: 'number', unit: 'm', decimals: 1,
      whenPartial: '≥', help: 'Length of its cables together.',
      total: {
        of: [{ from: 'runs', by: 'branch', sum: 'length' }], words: 'sum of length over the runs that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'input', key: 'enclosure', title: 'Enclosure', kind: 'reference', to: 'enclosures', optional: true,
      help: 'Where its coupler is mounted.',
    },
    {
      role: 'input', key: 'width', rare: 'mounting',
      title: 'Width', kind: 'number', unit: 'mm', safeSide: 'up', above: 0, decimals: 1,
      optional: true, help: 'Width of its coupler on the mounting rail.',
    },
    mountedOnColumn('its coupler stands on', 'it finds'),
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this branch say.',
    },
  ],
};
