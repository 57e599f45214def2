import { demandCurrent, loadingRatio, spareCurrent } from '../../electrical/index.ts';
import type { Sheet } from './column.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** The protected mains ways behind the relay outputs. */
export const feeds: Sheet = {
  name: 'feeds',
  title: 'Feeds',
  rowName: 'feed',
  help: 'One row for each protected mains way that supplies the common side of outputs.',
  tag: 'feed',
  columns: [
    {
      role: 'input', key: 'feed', title: 'Feed', kind: 'text', tag: true, help: 'Tag of the feed, as outputs give it.',
    },
    {
      role: 'input', key: 'voltage', title: 'Voltage', kind: 'number', unit: 'V', above: 0, max: 1000, default: 230,
      decimals: 0, help: 'Nominal voltage.', source: 'IEC 60038',
    },
    {
      role: 'input', key: 'rated', title: 'Rated', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 2,
      help: 'Rating of its protection.',
    },
    {
      role: 'input', key: 'diversity', title: 'Diversity', kind: 'ratio', min: 0, max: 1, default: 1,
      help: 'Share of its outputs’ current expected at the same time, 0 to 1.',
      source: 'rated diversity factor, IEC 61439-1',
    },
    {
      role: 'input', key: 'target', rare: true,
      title: 'Target', kind: 'ratio', safeSide: 'down', above: 0, max: 1, default: 0.8,
      help: 'Loading that the design aims to stay below.', source: '80 % as in NEC 210.20(A) for continuous loads',
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'connected', title: 'Connected', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current of all its outputs at once.',
      total: {
        of: [{ from: 'outputs', by: 'feed', sum: 'current' }], words: 'sum of current over the relay outputs that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'demand', title: 'Demand', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current expected of it at the same time.',
      rule: {
        of: ['connected', 'diversity'], by: demandCurrent, words: '{connected} × {diversity}',
        source: 'rated diversity factor, IEC 61439-1',
      },
    },
    {
      role: 'computed', key: 'loading', title: 'Loading', kind: 'ratio', whenPartial: '≥',
      help: 'Demand as a share of the rating.',
      rule: {
        of: ['demand', 'rated'], by: loadingRatio, words: '{demand} ÷ {rated}',
        source: 'Ib ≤ In, IEC 60364-4-43, 433.1',
      },
    },
    {
      role: 'computed', key: 'spare', title: 'Spare', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      whenPartial: '≤', help: 'What is left up to the target.',
      rule: {
        of: ['rated', 'target', 'demand'], by: spareCurrent, words: '{rated} × {target} − {demand}', source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this feed say.',
    },
  ],
};
