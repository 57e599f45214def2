import {
  alternatingCurrent, contactRating, headroom, inrushHeadroom, inrushTotal, loadingRatio,
} from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import type { Sheet } from './column.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** The relay outputs and what they switch. */
export const outputs: Sheet = {
  name: 'outputs',
  title: 'Outputs',
  rowName: 'relay output',
  help: 'One row for each relay output: its contact, the load that it switches, the feed behind it.',
  tag: 'output',
  columns: [
    { role: 'input', key: 'output', title: 'Output', kind: 'text', tag: true, help: 'Tag of the output.' },
    { role: 'input', key: 'module', title: 'Module', kind: 'text', help: 'Relay module that it belongs to.' },
    {
      role: 'input', key: 'contact', title: 'Contact', kind: 'reference', to: 'contacts',
      help: 'Kind of contact; gives the rating.',
    },
    { role: 'input', key: 'load', title: 'Load', kind: 'text', help: 'What is switched.' },
    { role: 'input', key: 'area', title: 'Area', kind: 'text', help: 'Room, floor or zone.' },
    {
      role: 'input', key: 'kind', title: 'Kind', kind: 'choice', choices: ['resistive', 'lamp', 'motor', 'coil'],
      help: 'Kind of load; a contact is rated for each.', source: 'utilization categories of IEC 60947',
    },
    {
      role: 'input', key: 'qty', title: 'Qty', kind: 'integer', min: 0, default: 1,
      help: 'How many such loads the output switches.',
    },
    {
      role: 'input', key: 'power', title: 'Power', kind: 'number', unit: 'W', min: 0, decimals: 1,
      help: 'Power of one load.',
    },
    {
      role: 'input', key: 'voltage', title: 'Voltage', kind: 'number', unit: 'V', above: 0, max: 1000, default: 230,
      decimals: 0, help: 'Voltage of the load.', source: 'IEC 60038',
    },
    {
      role: 'input', key: 'powerFactor', title: 'Power factor', kind: 'number', above: 0, max: 1, default: 1,
      decimals: 2, help: 'Power factor of the load.',
    },
    {
      role: 'input', key: 'inrush', title: 'Inrush', kind: 'number', unit: 'A', min: 0, decimals: 1, optional: true,
      help: 'Peak current of one load at switching on.',
    },
    {
      role: 'input', key: 'feed', title: 'Feed', kind: 'reference', to: 'feeds', optional: true,
      help: 'Protected mains way behind the contact.',
    },
    {
      role: 'input', key: 'target', rare: true,
      title: 'Target', kind: 'ratio', safeSide: 'down', above: 0, max: 1, default: 0.8,
      help: 'Loading of the contact that the design aims to stay below.', source: 'common practice, no source',
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'current', title: 'Current', kind: 'number', unit: 'A', decimals: 2,
      help: 'Steady current through the contact.',
      rule: {
        of: ['qty', 'power', 'voltage', 'powerFactor'], by: alternatingCurrent,
        words: '{qty} × {power} ÷ ({voltage} × {powerFactor})', source: 'I = P ÷ (U × cos φ), single phase',
      },
    },
    {
      role: 'computed', key: 'rating', title: 'Rating', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      help: 'Rating of the contact for this kind of load.',
      rule: {
        of: [
          'kind', 'contact.resistive', 'contact.lamp', 'contact.motor', 'contact.coil',
        ], by: contactRating, takesUnknown: true,
        words: (kind) => typeof kind === 'string'
          ? `{contact.${kind}}` : message('the contact’s rating for the kind of load'),
        source: 'a contact is rated by utilization category, IEC 60947-4-1 and IEC 60947-5-1',
      },
    },
    {
      role: 'computed', key: 'loading', title: 'Loading', kind: 'ratio', help: 'Current as a share of the rating.',
      rule: { of: ['current', 'rating'], by: loadingRatio, words: '{current} ÷ {rating}', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'headroom', title: 'Headroom', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      help: 'What is left before the rating.',
      rule: { of: ['rating', 'current'], by: headroom, words: '{rating} − {current}', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'inrushTotal', title: 'Inrush in all', kind: 'number', unit: 'A', decimals: 1,
      help: 'Peak current when all its loads switch on together.',
      rule: { of: ['qty', 'inrush'], by: inrushTotal, words: '{qty} × {inrush}', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'inrushHeadroom', title: 'Inrush headroom', kind: 'number', unit: 'A', safeSide: 'down',
      decimals: 1, help: 'What is left before the making capacity of the contact.',
      rule: {
        of: ['contact.inrush', 'inrushTotal'], by: inrushHeadroom, words: '{contact.inrush} − {inrushTotal}',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this output say.',
    },
  ],
};
