import { BREAKER_CURVES, demandCurrent, feedInrush, loadingRatio, spareCurrent } from '../../electrical/index.ts';
import { worstCase } from './case-columns.ts';
import type { Sheet } from './column.ts';
import { mountedOnColumn } from './mounted.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** The protected mains ways behind the relay outputs and the supplies. */
export const feeds: Sheet = {
  name: 'feeds',
  title: 'Feeds',
  rowName: 'feed',
  help: 'One row for each protected mains way that feeds the common side of outputs, or supplies.',
  tag: 'feed',
  columns: [
    {
      role: 'input', key: 'feed', title: 'Feed', kind: 'text', tag: true,
      help: 'Tag of the feed, as outputs and supplies give it.',
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
      role: 'input', key: 'curve', title: 'Curve', kind: 'choice', choices: BREAKER_CURVES, optional: true,
      help: 'Curve of its breaker; with it the inrush is checked.', source: 'IEC 60898-1',
    },
    {
      role: 'input', key: 'diversity', title: 'Diversity', kind: 'ratio', min: 0, max: 1, default: 1,
      help: 'Share of its current expected at the same time, 0 to 1.',
      source: 'rated diversity factor, IEC 61439-1',
    },
    {
      role: 'input', key: 'target', rare: 'limits',
      title: 'Target', kind: 'ratio', safeSide: 'down', above: 0, max: 1, default: 0.8,
      help: 'Loading that the design aims to stay below.', source: '80 % as in NEC 210.20(A) for continuous loads',
    },
    {
      role: 'computed', key: 'connected', title: 'Connected', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current of all its outputs and supplies at the same time.',
      total: {
        of: [{ from: 'outputs', by: 'feed', sum: 'current' }, { from: 'supplies', by: 'feed', sum: 'inputCurrent' }],
        words: 'sum of current over the relay outputs, and of input current over the supplies, that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'demand', title: 'Demand', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current expected of it at the same time; with cases, in the worst of them. A case with a factor for every group on it takes the place of its diversity.',
      inCases: 'highest',
      rule: {
        of: ['drawn', 'diversity'], by: demandCurrent, words: '{drawn} × {diversity}', inCoveringCase: { diversity: 1 },
        source: 'rated diversity factor, IEC 61439-1',
      },
    },
    worstCase,
    {
      role: 'computed', key: 'drawn', rare: 'mains', title: 'Drawn', kind: 'number', unit: 'A', decimals: 2,
      whenPartial: '≥', inCases: 'highest',
      help: 'Current of its outputs and supplies at the same time, before its diversity; with cases, in the worst of them.',
      total: {
        of: [{ from: 'outputs', by: 'feed', sum: 'demand' }, { from: 'supplies', by: 'feed', sum: 'inputCurrent' }],
        words: 'sum of demand over the relay outputs, and of input current over the supplies, that name it',
        source: ARITHMETIC,
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
      role: 'input', key: 'pulseFactor', rare: 'mains', title: 'Pulse factor', kind: 'number', min: 1, max: 20, default: 1,
      decimals: 2, help: 'How much more the breaker stands of a pulse as short as this inrush, by its maker’s curve.',
      source: '1 where the curve is not known',
    },
    {
      role: 'computed', key: 'supplySurge', rare: 'mains',
      title: 'Surge of supplies', kind: 'number', unit: 'A', decimals: 2,
      whenPartial: '≥', help: 'By how much the start of all its supplies at power return goes beyond their current.',
      total: {
        of: [{ from: 'supplies', by: 'feed', sum: 'surge' }], words: 'sum of surge over the supplies that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'outputSurge', rare: 'mains',
      title: 'Surge of an output', kind: 'number', unit: 'A', decimals: 2,
      whenPartial: '≥', help: 'By how much the start of one of its outputs goes beyond its current, at the most.',
      total: {
        of: [{ from: 'outputs', by: 'feed', sum: 'surge' }], greatest: true,
        words: 'greatest surge of the relay outputs that name it', source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'inrush', title: 'Inrush', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Peak current when the largest that starts together starts while the rest runs.',
      rule: {
        of: ['connected', 'supplySurge', 'outputSurge'], by: feedInrush,
        words: '{connected} + the larger of {supplySurge} and {outputSurge}',
        source: 'supplies all start at power return, outputs one by one; common practice, no source',
      },
    },
    {
      role: 'input', key: 'enclosure', rare: 'mounting',
      title: 'Enclosure', kind: 'reference', to: 'enclosures', optional: true,
      help: 'Where its breaker is mounted.',
    },
    {
      role: 'input', key: 'width', rare: 'mounting',
      title: 'Width', kind: 'number', unit: 'mm', safeSide: 'up', above: 0, decimals: 1, optional: true,
      help: 'Width of its breaker on the mounting rail.',
    },
    mountedOnColumn('its breaker stands on', 'it finds'),
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this feed say.',
    },
  ],
};
