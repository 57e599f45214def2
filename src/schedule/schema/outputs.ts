import {
  contactRating, headroom, inrushHeadroom, inrushTotal, isDirect, loadCurrent, loadingRatio, loadVoltage, startSurge,
  usualEfficiency, usualInrush, usualPowerFactor, type BreakerCurve, type LoadKind,
} from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import type { Sheet } from './column.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** What a number of loads on a breaker means on this one, in words. */
const BY_NUMBER = message(
  '{qty} of the {maxOnB16} that a breaker B 16 stands, as a peak on the breaker {feed.curve} of {feed.rated}, − {current}');

/** What the start of an output adds to its feed; a load without an inrush of its own has that of its kind. */
function surge(
  kind: LoadKind | null, qty: number | null, current: number | null, inrush: number | null,
  ...breaker: [number | null, number | null, BreakerCurve | null, number | null]
): number | null {
  const peak = inrush === null || qty === null ? usualInrush(kind, current) : inrushTotal(qty, inrush);
  return startSurge(qty, peak, current, ...breaker);
}

/** The relay outputs and what they switch. */
export const outputs: Sheet = {
  name: 'outputs',
  title: 'Outputs',
  rowName: 'relay output',
  help: 'One row for each relay output: its contact, the load that it switches, the feed behind it.',
  tag: 'output',
  columns: [
    { role: 'input', key: 'output', title: 'Output', kind: 'text', tag: true, help: 'Tag of the output.' },
    {
      role: 'input', key: 'module', title: 'Module', kind: 'reference', to: 'modules', optional: true,
      help: 'Relay module that it belongs to.',
    },
    {
      role: 'input', key: 'contact', title: 'Contact', kind: 'reference', to: 'contacts',
      help: 'Kind of contact; gives the rating.',
    },
    { role: 'input', key: 'load', title: 'Load', kind: 'text', help: 'What is switched.' },
    {
      role: 'input', key: 'kind', title: 'Kind', kind: 'choice',
      choices: ['resistive', 'lamp', 'motor', 'coil', 'dc', 'dcCoil'],
      help: 'Kind of load; a contact is rated for each.', source: 'utilization categories of IEC 60947',
    },
    {
      role: 'input', key: 'qty', title: 'Qty', kind: 'integer', min: 0, default: 1,
      help: 'How many such loads the output switches.',
    },
    {
      role: 'input', key: 'power', title: 'Power', kind: 'number', unit: 'W', min: 0, decimals: 1,
      help: 'Power of one load: what it takes in, or what it gives where its efficiency is entered.',
    },
    {
      role: 'input', key: 'voltage', title: 'Voltage', kind: 'number', unit: 'V', above: 0, max: 1000, decimals: 0,
      help: 'Voltage of the load; that of its rail or feed where nothing is entered.',
      derived: {
        of: ['kind', 'rail', 'rail.voltage', 'feed.voltage'], by: loadVoltage, takesUnknown: true,
        words: (kind, rail, _volts, feedVolts) => {
          if (rail !== null || isDirect(kind as string | null)) return '{rail.voltage}';
          return feedVolts === null ? message('230 V, as it names no feed') : '{feed.voltage}';
        },
        source: 'IEC 60038',
      },
    },
    {
      role: 'input', key: 'powerFactor', title: 'Power factor', kind: 'number', above: 0, max: 1, decimals: 2,
      help: 'Power factor of the load; asked for of motors.',
      derived: {
        of: ['kind', 'power'], by: usualPowerFactor, takesUnknown: true,
        words: (kind) => kind === 'lamp'
          ? message('0.9 for lamps above 25 W, 0.7 above 10 W, else 0.5, by their {power}')
          : message('1, as the load is no lamp or motor'),
        source: 'EU 2019/2020 for lamps; 1 for coils: common practice, no source',
      },
    },
    {
      role: 'input', key: 'efficiency', title: 'Efficiency', kind: 'ratio', above: 0, max: 1,
      help: 'What the load gives over what it takes in; asked for of motors, 1 where the plate says what they take in.',
      derived: {
        of: ['kind'], by: usualEfficiency, takesUnknown: true,
        words: '1, as the power of all but motors is what they take in',
        source: 'the plate of a motor gives the power at its shaft, IEC 60034-1',
      },
    },
    {
      role: 'input', key: 'ratedCurrent', rare: 'limits',
      title: 'Rated current', kind: 'number', unit: 'A', above: 0, decimals: 2,
      optional: true, help: 'Current on the plate of one load; it comes before its power.',
    },
    {
      role: 'computed', key: 'current', title: 'Current', kind: 'number', unit: 'A', decimals: 2,
      help: 'Steady current through the contact.',
      rule: {
        of: ['qty', 'power', 'voltage', 'powerFactor', 'efficiency', 'ratedCurrent'], by: loadCurrent,
        takesUnknown: true,
        words: (_qty, _power, _voltage, _powerFactor, _efficiency, rated) => rated === null
          ? '{qty} × {power} ÷ ({voltage} × {powerFactor} × {efficiency})' : '{qty} × {ratedCurrent}',
        source: 'I = P ÷ (U × cos φ × η), single phase',
      },
    },
    {
      role: 'computed', key: 'demand', rare: 'mains', title: 'Demand', kind: 'number', unit: 'A', decimals: 2,
      help: 'Current expected of it at the same time: all of it, and in a case the factor of its group.',
      inCases: { share: 'current' },
      rule: { of: ['current'], by: (amps: number) => amps, words: '{current}', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'rating', title: 'Rating', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      help: 'Rating of the contact for this kind of load.',
      rule: {
        of: [
          'kind', 'contact.resistive', 'contact.lamp', 'contact.motor', 'contact.coil', 'contact.dc', 'contact.dcCoil',
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
      help: 'What is left up to the rating.',
      rule: { of: ['rating', 'current'], by: headroom, words: '{rating} − {current}', source: ARITHMETIC },
    },
    {
      role: 'input', key: 'inrush', title: 'Inrush', kind: 'number', unit: 'A', min: 0, decimals: 2, optional: true,
      help: 'Peak current of one load at switching on; asked for of lamps and motors.',
    },
    {
      role: 'input', key: 'maxOnB16', rare: 'mains',
      title: 'Max. on B16', kind: 'integer', min: 1, safeSide: 'down', optional: true,
      help: 'How many of these loads their maker allows on a breaker B 16; it comes before the inrush on the feed.',
    },
    {
      role: 'computed', key: 'inrushTotal', title: 'Total inrush', kind: 'number', unit: 'A', decimals: 2,
      help: 'Peak current when all its loads switch on together.',
      rule: { of: ['qty', 'inrush'], by: inrushTotal, words: '{qty} × {inrush}', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'inrushHeadroom', title: 'Inrush headroom', kind: 'number', unit: 'A', safeSide: 'down',
      decimals: 2, help: 'What is left up to the making capacity of the contact.',
      rule: {
        of: ['contact.inrush', 'inrushTotal'], by: inrushHeadroom, words: '{contact.inrush} − {inrushTotal}',
        source: ARITHMETIC,
      },
    },
    {
      role: 'input', key: 'feed', title: 'Feed', kind: 'reference', to: 'feeds', optional: true,
      help: 'Protected mains way behind the contact.',
    },
    {
      role: 'input', key: 'group', rare: true, title: 'Load group', kind: 'text',
      help: 'Group of loads that come on together, for the factors of cases.',
    },
    {
      role: 'computed', key: 'surge', rare: 'mains', title: 'Surge', kind: 'number', unit: 'A', decimals: 2,
      help: 'By how much its start goes beyond its steady current on the feed.',
      rule: {
        of: ['kind', 'qty', 'current', 'inrush', 'maxOnB16', 'feed.rated', 'feed.curve', 'feed.pulseFactor'],
        by: surge, takesUnknown: true,
        words: (kind, _qty, _current, inrush, most, rated, curve) => {
          if (most !== null && rated !== null && curve !== null) return BY_NUMBER;
          if (inrush !== null || kind === null || kind === 'lamp' || kind === 'motor') {
            return '{qty} × {inrush} − {current}';
          }
          return kind === 'coil' ? '10 × {current} − {current}' : message('0, as such loads start with their current');
        },
        source: 'coils: AC-15, IEC 60947-5-1; numbers on a breaker: bands of IEC 60898-1',
      },
    },
    {
      role: 'input', key: 'rail', rare: true, title: 'Rail', kind: 'reference', to: 'supplies', optional: true,
      help: 'Rail behind the contact, where the load is one of direct current: it counts there.',
    },
    {
      role: 'input', key: 'target', rare: 'limits',
      title: 'Target', kind: 'ratio', safeSide: 'down', above: 0, max: 1, default: 0.8,
      help: 'Loading of the contact that the design aims to stay below.', source: 'common practice, no source',
    },
    { role: 'input', key: 'area', title: 'Area', kind: 'text', help: 'Room, floor or zone.' },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this output say.',
    },
  ],
};
