import { effectiveArea, freeWidth, insideTemperature, temperatureRise, topTemperature } from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import { boughtColumns } from './bought.ts';
import type { Sheet, Suggestion } from './column.ts';

const SURFACE = 'surface factors of IEC TR 60890, Table 3; let into a wall an allowance, common practice, no source';

/** What walls give off. */
const TRANSFERS: readonly Suggestion[] = [
  {
    label: message('painted steel'), value: 5.5,
    source: '5.5 W/(m²K) for painted sheet steel, rule of thumb in several tables',
  },
  {
    label: message('plastic'), value: 3.5,
    source: '3.5 W/(m²K) for plastic walls, common practice, no source',
  },
];

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
      role: 'input', key: 'mounting', title: 'Mounting', kind: 'choice', default: 'wall',
      choices: [
        'free', 'wall', 'row-end-free', 'row-end-wall', 'row-middle-free', 'row-middle-wall', 'row-middle-wall-covered',
        'flush',
      ],
      help: 'How it stands: which sides can give off heat. Let into a wall, its front alone counts.',
      source: 'IEC TR 60890; let into a wall an allowance, common practice, no source',
    },
    {
      role: 'input', key: 'transfer', title: 'Transfer', kind: 'number', unit: 'W/(m²K)', above: 0, default: 5.5,
      decimals: 2, suggestions: TRANSFERS,
      help: 'Heat that a square metre gives off for each kelvin; the wall, such as “plastic”, may be typed.',
      source: '5.5 W/(m²K) for painted sheet steel, rule of thumb in several tables',
    },
    {
      role: 'input', key: 'topFactor', rare: 'heat', title: 'Top factor', kind: 'number', min: 1, max: 3, default: 1.3,
      decimals: 2,
      help: 'Rise at the top, where supplies sit, over the mean rise.',
      source: '1.3 is common practice, no source; the form is that of IEC TR 60890, from memory',
    },
    {
      role: 'input', key: 'otherLoss', rare: 'heat', title: 'Other loss', kind: 'number', unit: 'W', min: 0, decimals: 1,
      default: 20, help: 'Heat of everything else in it.',
      source: '20 W for couplers, terminals and relays of a small panel; common practice, no source',
    },
    {
      role: 'input', key: 'ambient', title: 'Ambient', kind: 'number', unit: '°C', min: -40, max: 70, decimals: 1,
      default: 30, help: 'Highest temperature around it.', source: 'air of 30 °C, as around cables, IEC 60364-5-52',
    },
    {
      role: 'input', key: 'maxInside', title: 'Max. inside', kind: 'number', unit: '°C', safeSide: 'down', min: -40,
      max: 120, decimals: 1, help: 'Highest temperature that its contents bear; the top is held against it.',
    },
    {
      role: 'computed', key: 'supplyLoss', title: 'Loss of supplies', kind: 'number', unit: 'W', decimals: 1,
      whenPartial: '≥', help: 'Heat of the supplies in it.', inCases: 'highest',
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
        words: (_height, _width, _depth, mounting) => mounting === 'flush'
          ? message('0.9 × {height} × {width}, its front alone, as it is let into a wall: an allowance on the safe side')
          : message('surface of {height} × {width} × {depth}, each side weighed by its mounting ({mounting})'),
        source: SURFACE,
      },
    },
    {
      role: 'computed', key: 'rise', title: 'Rise', kind: 'number', unit: 'K', decimals: 1, whenPartial: '≥',
      help: 'How much warmer it is inside, in the mean.',
      rule: {
        of: ['loss', 'transfer', 'area'], by: temperatureRise, words: '{loss} ÷ ({transfer} × {area})',
        source: 'linear rule of thumb for closed enclosures; IEC TR 60890 gives a rise that grows a little slower',
      },
    },
    {
      role: 'computed', key: 'inside', title: 'Inside', kind: 'number', unit: '°C', decimals: 1, whenPartial: '≥',
      help: 'Mean temperature inside.',
      rule: {
        of: ['ambient', 'rise'], by: insideTemperature, words: '{ambient} + {rise}',
        source: 'arithmetic of the load schedule',
      },
    },
    {
      role: 'computed', key: 'top', title: 'Temperature at the top', kind: 'number', unit: '°C', decimals: 1, whenPartial: '≥',
      help: 'Temperature at the top, which limits are held against.',
      rule: {
        of: ['ambient', 'rise', 'topFactor'], by: topTemperature, words: '{ambient} + {rise} × {topFactor}',
        source: 'rise at the top as a multiple of the mean rise, the form of IEC TR 60890, from memory',
      },
    },
    {
      role: 'input', key: 'rails', title: 'Mounting rails', kind: 'integer', min: 1, optional: true,
      help: 'Mounting rails in it, all of one length.',
    },
    {
      role: 'input', key: 'railLength', title: 'Length of a mounting rail', kind: 'number', unit: 'mm', safeSide: 'down',
      above: 0, decimals: 0, optional: true, help: 'Usable length of one mounting rail.',
    },
    {
      role: 'input', key: 'reserve', title: 'Reserve', kind: 'ratio', min: 0, max: 1, default: 0.2,
      help: 'Share of the mounting rails kept free for later.', source: 'spare of 20 %, common practice in print',
    },
    {
      role: 'computed', key: 'usedWidth', title: 'Used width', kind: 'number', unit: 'mm', decimals: 0,
      whenPartial: '≥', help: 'Width of all that is mounted on its rails.',
      total: {
        of: [
          { from: 'supplies', by: 'enclosure', sum: 'width', times: 'units' },
          ...(['ways', 'branches', 'modules', 'feeds', 'terminals'] as const)
            .map((from) => ({ from, by: 'enclosure', sum: 'width' })),
        ],
        words: 'sum of width × units over the supplies, and of width over the ways, branches, modules, feeds and terminals, that name it',
        source: 'arithmetic of the load schedule',
      },
    },
    {
      role: 'computed', key: 'freeWidth', title: 'Free width', kind: 'number', unit: 'mm', safeSide: 'down', decimals: 0,
      whenPartial: '≤', help: 'What is left of its rails less the reserve, in sum; whether each part finds room on one of them is checked by itself.',
      rule: {
        of: ['rails', 'railLength', 'reserve', 'usedWidth'], by: freeWidth,
        words: '{rails} × {railLength} × (1 − {reserve}) − {usedWidth}', source: 'arithmetic of the load schedule',
      },
    },
    ...boughtColumns('enclosure'),
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this enclosure say.',
    },
  ],
};
