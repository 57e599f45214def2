import { effectiveArea, insideTemperature, temperatureRise } from '../../electrical/index.ts';
import type { Sheet } from './column.ts';

const SURFACE = 'surface factors of IEC TR 60890, Table 3';

/** The enclosures that the supplies stand in. */
export const enclosures: Sheet = {
  name: 'enclosures',
  title: 'Enclosures',
  rowName: 'enclosure',
  help: 'One row for each enclosure: its size and mounting, and how warm it may get inside.',
  tag: 'enclosure',
  columns: [
    {
      role: 'input', key: 'enclosure', title: 'Enclosure', kind: 'text', tag: true,
      help: 'Tag of the enclosure, as supplies give it.',
    },
    {
      role: 'input', key: 'height', title: 'Height', kind: 'number', unit: 'mm', above: 0, decimals: 0,
      help: 'Outside height.',
    },
    {
      role: 'input', key: 'width', title: 'Width', kind: 'number', unit: 'mm', above: 0, decimals: 0,
      help: 'Outside width.',
    },
    {
      role: 'input', key: 'depth', title: 'Depth', kind: 'number', unit: 'mm', above: 0, decimals: 0,
      help: 'Outside depth.',
    },
    {
      role: 'input', key: 'mounting', title: 'Mounting', kind: 'choice',
      choices: [
        'free', 'wall', 'row-end-free', 'row-end-wall', 'row-middle-free', 'row-middle-wall', 'row-middle-wall-covered',
      ],
      help: 'How it stands: which sides can give off heat.', source: 'IEC TR 60890',
    },
    {
      role: 'input', key: 'transfer', title: 'Transfer', kind: 'number', unit: 'W/(m²K)', above: 0, default: 5.5,
      decimals: 2, help: 'Heat that a square metre gives off for each kelvin.',
      source: '5.5 W/(m²K) for painted sheet steel, rule of thumb in several tables',
    },
    {
      role: 'input', key: 'otherLoss', rare: true, title: 'Other loss', kind: 'number', unit: 'W', min: 0, decimals: 1,
      help: 'Heat of everything else in it.',
    },
    {
      role: 'input', key: 'ambient', title: 'Ambient', kind: 'number', unit: '°C', min: -40, max: 70, decimals: 1,
      help: 'Highest temperature around it.',
    },
    {
      role: 'input', key: 'maxInside', title: 'Most inside', kind: 'number', unit: '°C', safeSide: 'down', min: -40,
      max: 120, decimals: 1, optional: true, help: 'Highest temperature allowed inside.',
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'supplyLoss', title: 'Loss of supplies', kind: 'number', unit: 'W', decimals: 1,
      whenPartial: '≥', help: 'Heat of the supplies in it.',
      total: {
        of: [{ from: 'supplies', by: 'enclosure', sum: 'loss' }], words: 'sum of loss over the supplies that name it',
        source: 'arithmetic of the load schedule',
      },
    },
    {
      role: 'computed', key: 'loss', title: 'Loss', kind: 'number', unit: 'W', decimals: 1, whenPartial: '≥',
      help: 'Heat given off inside.',
      rule: {
        of: ['supplyLoss', 'otherLoss'], by: (supplies: number, others: number) => supplies + others,
        words: '{supplyLoss} + {otherLoss}', source: 'arithmetic of the load schedule',
      },
    },
    {
      role: 'computed', key: 'area', title: 'Cooling surface', kind: 'number', unit: 'm²', decimals: 2,
      help: 'Effective cooling surface.',
      rule: {
        of: ['height', 'width', 'depth', 'mounting'], by: effectiveArea,
        words: 'surface of {height} × {width} × {depth}, each side weighed by its mounting ({mounting})',
        source: SURFACE,
      },
    },
    {
      role: 'computed', key: 'rise', title: 'Rise', kind: 'number', unit: 'K', decimals: 1, whenPartial: '≥',
      help: 'How much warmer it is inside.',
      rule: {
        of: ['loss', 'transfer', 'area'], by: temperatureRise, words: '{loss} ÷ ({transfer} × {area})',
        source: 'linear rule of thumb for closed enclosures; IEC TR 60890 gives a rise that grows a little slower',
      },
    },
    {
      role: 'computed', key: 'inside', title: 'Inside', kind: 'number', unit: '°C', decimals: 1, whenPartial: '≥',
      help: 'Temperature inside.',
      rule: {
        of: ['ambient', 'rise'], by: insideTemperature, words: '{ambient} + {rise}',
        source: 'arithmetic of the load schedule',
      },
    },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this enclosure say.',
    },
  ],
};
