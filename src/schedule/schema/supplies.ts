import {
  batteryHours, batteryNeeded, deratingAt, highestVoltage, inputCurrent, inrushTotal, limitDiversity, loadingRatio,
  lowestVoltage, spareCurrent, startSurge, supplyLoss, usableCurrent, WAY_KINDS, type BreakerCurve,
} from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import { boughtColumns } from './bought.ts';
import { togetherDemand, worstCase } from './case-columns.ts';
import type { CellValue, Sheet } from './column.ts';
import { mountedOnColumn } from './mounted.ts';
import { measuredColumns } from './measured.ts';
import { supplySolution } from './supply-solution.ts';
import { PURPOSES } from './types.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** What may be used, in words: with a spare unit, in the warmth of an enclosure, and both. */
const REDUNDANT = message('{rated} × ({units} − 1 as redundant) × {derating}');
const WARM = message(
  '{rated} × {units} × {derating} × (1 − {lessPerKelvin} for each kelvin of {enclosure.top} above {fullUpTo})');
const REDUNDANT_AND_WARM = message(
  '{rated} × ({units} − 1 as redundant) × {derating} × (1 − {lessPerKelvin} for each kelvin of {enclosure.top} above {fullUpTo})');

/** Current that may be used; with a limit of temperature it depends on how warm the enclosure of the supply gets. */
function usable(
  rated: number | null, units: number | null, redundant: boolean, derating: number | null,
  fullUpTo: number | null, lessPerKelvin: number | null, top: number | null,
): number | null {
  if (rated === null || units === null || derating === null) return null;
  if (fullUpTo === null) return usableCurrent(rated, units, redundant, derating);
  if (lessPerKelvin === null || top === null) return null;
  return usableCurrent(
    rated, units, redundant, derating * deratingAt({ fullUpTo, percentPerKelvin: lessPerKelvin * 100 }, top)
  );
}

/** Whether a battery stands behind it: one that bridges a standby does, though its capacity is not known yet. */
const isBuffered = (battery: CellValue, standbyHours: CellValue) =>
  battery !== null || (standbyHours !== null && standbyHours !== 0);

/** Lowest voltage [V]; what decouples redundant units is asked for, and is nothing where there is one unit. */
function lowest(
  voltage: number | null, tolerance: number | null, seriesDrop: number | null, redundant: boolean,
  battery: number | null, standbyHours: number | null,
): number | null {
  if (voltage === null || tolerance === null || (seriesDrop === null && redundant)) return null;
  const volts = lowestVoltage(voltage, tolerance, seriesDrop ?? 0, isBuffered(battery, standbyHours));
  return volts > 0 ? volts : null;
}

const highest = (
  voltage: number | null, tolerance: number | null, battery: number | null, standbyHours: number | null,
): number | null => voltage === null || tolerance === null ? null
  : highestVoltage(voltage, tolerance, isBuffered(battery, standbyHours));

/** What a battery is discharged to and charged with, in words. */
const DISCHARGED = message('{voltage} × the lesser of 1 − {tolerance} and 0.875, to which its battery is discharged');
const DISCHARGED_WITH_DROP = message('{voltage} × the lesser of 1 − {tolerance} and 0.875, to which its battery is discharged, − {seriesDrop}');
const CHARGED = message('{voltage} × the greater of 1 + {tolerance} and 1.15, with which its battery is charged');

/** Capacity that bridges the standby; of a battery that is not known as of one that is discharged fast. */
function batteryFor(demand: number | null, hours: number | null, battery: number | null): number | null {
  return demand === null || hours === null ? null : batteryNeeded(0, 0, demand, hours, battery);
}

/** How long the battery bears what hangs on it while the mains fail. */
const lasts = (demand: number | null, battery: number | null): number | null =>
  demand === null || battery === null ? null : batteryHours(demand, battery);

const isSlow = (demand: CellValue, battery: CellValue) =>
  typeof demand === 'number' && typeof battery === 'number' && demand <= battery / 20;

/** Loads that a relay switches on the rail have no diversity of their own. */
const OF_OUTPUTS = { from: 'outputs', by: 'rail', sum: 'current' } as const;

const BY_NUMBER = message(
  '{units} of the {maxOnB16} that a breaker B 16 stands, as a peak on the breaker {feed.curve} of {feed.rated}, − {inputCurrent}');

/** What the start of its units, the redundant one too, adds to the feed. */
function surge(
  units: number | null, inrush: number | null, ...breaker: [
    number | null, number | null, number | null, BreakerCurve | null, number | null,
  ]
): number | null {
  return startSurge(units, units === null || inrush === null ? null : inrushTotal(units, inrush), ...breaker);
}

/** The ELV supplies and the rails that they feed. */
export const supplies: Sheet = {
  name: 'supplies',
  title: 'Supplies',
  rowName: 'supply',
  help: 'One row for each supply rail: its rating, its usable current, and the demand of the device rows.',
  tag: 'rail',
  solutions: [supplySolution],
  columns: [
    {
      role: 'input', key: 'rail', title: 'Rail', kind: 'text', tag: true,
      help: 'Tag of the rail, as device rows give it.',
    },
    {
      role: 'input', key: 'purpose', title: 'Purpose', kind: 'choice', choices: PURPOSES,
      help: 'What the rail is kept for.',
    },
    {
      role: 'input', key: 'voltage', title: 'Voltage', kind: 'number', unit: 'V', above: 0, max: 120, default: 24,
      help: 'Nominal DC voltage.', source: 'SELV limit of 120 V ripple-free DC, IEC 61558-1:2005, 3.7.16',
    },
    {
      role: 'input', key: 'rated', title: 'Rated', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 2,
      help: 'Rated output current of one unit.',
    },
    { role: 'input', key: 'units', title: 'Units', kind: 'integer', min: 1, default: 1, help: 'Units in parallel.' },
    {
      role: 'input', key: 'redundant', title: 'Redundant', kind: 'boolean', default: false,
      help: 'One unit is a spare and carries nothing in the calculation.',
    },
    {
      role: 'input', key: 'target', title: 'Target', kind: 'ratio', safeSide: 'down', above: 0, max: 1, default: 0.8,
      help: 'Loading that the design aims to stay below.',
      source: '80 % as in NEC 210.20(A) for continuous loads; common practice for supplies',
    },
    {
      role: 'computed', key: 'usable', title: 'Usable', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      whenPartial: '≤',
      help: 'Usable current: the rating of the units that count, derated.',
      rule: {
        of: ['rated', 'units', 'redundant', 'derating', 'fullUpTo', 'lessPerKelvin', 'enclosure.top'],
        by: usable, takesUnknown: true, onlyWith: { 'enclosure.top': 'fullUpTo' },
        words: (_rated, _units, redundant, _derating, fullUpTo) => {
          if (fullUpTo === null) return redundant === true ? REDUNDANT : '{rated} × {units} × {derating}';
          return redundant === true ? REDUNDANT_AND_WARM : WARM;
        },
        source: 'parallel units with one in reserve (N + 1), derated as data sheets say; common practice, no source',
      },
    },
    {
      role: 'computed', key: 'connected', title: 'Connected', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current of all its devices, and of outputs on it, at the same time.',
      total: {
        of: [{ from: 'devices', by: 'rail', sum: 'connected' }, { from: 'runs', by: 'rail', sum: 'extra' }, OF_OUTPUTS],
        words: 'sum of connected over the device rows, of extra over the runs, and of current over the relay outputs, that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'demand', title: 'Demand', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current expected of it at the same time; with cases, in the worst of them.', inCases: 'highest',
      total: {
        of: [
          { from: 'devices', by: 'rail', sum: 'demand' }, { from: 'runs', by: 'rail', sum: 'extra' },
          { from: 'outputs', by: 'rail', sum: 'demand' },
        ],
        words: 'sum of demand over the device rows, of extra over the runs, and of demand over the relay outputs, that name it',
        source: ARITHMETIC,
      },
    },
    worstCase,
    {
      role: 'computed', key: 'loading', title: 'Loading', kind: 'ratio', whenPartial: '≥',
      help: 'Demand as a share of the usable current.',
      rule: { of: ['demand', 'usable'], by: loadingRatio, words: '{demand} ÷ {usable}', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'spare', title: 'Spare', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      whenPartial: '≤', help: 'What is left up to the target.',
      rule: {
        of: ['usable', 'target', 'demand'], by: spareCurrent, words: '{usable} × {target} − {demand}',
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'limitDiversity', title: 'Limit diversity', kind: 'number', safeSide: 'down', decimals: 2,
      whenPartial: '≤',
      help: 'The common diversity at which the target is just met; above 1 even everything at the same time stays below it.',
      rule: {
        of: ['usable', 'target', 'connected'], by: limitDiversity, words: '{usable} × {target} ÷ {connected}',
        source: ARITHMETIC,
      },
    },
    {
      role: 'input', key: 'derating', rare: 'heat', title: 'Derating', kind: 'ratio', above: 0, max: 1, default: 1,
      help: 'Share of the rating that may be used where the supply is mounted.',
    },
    {
      role: 'input', key: 'fullUpTo', rare: 'heat',
      title: 'Full output to', kind: 'number', unit: '°C', safeSide: 'down', min: -40,
      max: 120, decimals: 0, optional: true,
      help: 'Temperature at the top of its enclosure up to which the derating above holds; with “Derating per K” the supply gives less above it.',
      source: 'the form in which data sheets give it; common practice, no source',
    },
    {
      role: 'input', key: 'lessPerKelvin', rare: 'heat',
      title: 'Derating per K', kind: 'ratio', min: 0, max: 1, decimals: 1,
      optional: true, help: 'Share of the rating that is lost for each kelvin above “Full output to”.',
      source: 'the form in which data sheets give it; common practice, no source',
    },
    {
      role: 'input', key: 'tolerance', rare: 'limits',
      title: 'Tolerance', kind: 'ratio', min: 0, max: 0.5, decimals: 1, default: 0,
      help: 'Share by which its voltage may be more or less than the nominal one.', source: 'a regulated supply; common practice, no source',
    },
    {
      role: 'input', key: 'seriesDrop', rare: 'limits',
      title: 'Series drop', kind: 'number', unit: 'V', min: 0, max: 5,
      optional: true,
      help: 'What a diode or module that decouples redundant units drops; 0 for none.',
      source: 'a diode drops 0.5 V at 5 A, Design Note 363',
    },
    {
      role: 'computed', key: 'lowest', title: 'Lowest voltage', kind: 'number', unit: 'V', safeSide: 'down',
      help: 'Lowest voltage at its output.',
      rule: {
        of: ['voltage', 'tolerance', 'seriesDrop', 'redundant', 'battery', 'standbyHours'], by: lowest, takesUnknown: true,
        words: (_voltage, _tolerance, seriesDrop, _redundant, battery, standbyHours) => {
          if (isBuffered(battery, standbyHours)) return seriesDrop === null ? DISCHARGED : DISCHARGED_WITH_DROP;
          return seriesDrop === null ? '{voltage} × (1 − {tolerance})' : '{voltage} × (1 − {tolerance}) − {seriesDrop}';
        },
        source: 'the form in which data sheets give it, common practice; a lead-acid battery is empty at 1.75 V a cell, from memory',
      },
    },
    {
      role: 'computed', key: 'highest', title: 'Highest voltage', kind: 'number', unit: 'V', safeSide: 'up',
      help: 'Highest voltage at its output.',
      rule: {
        of: ['voltage', 'tolerance', 'battery', 'standbyHours'], by: highest, takesUnknown: true,
        words: (_voltage, _tolerance, battery, standbyHours) =>
          isBuffered(battery, standbyHours) ? CHARGED : '{voltage} × (1 + {tolerance})',
        source: 'the form in which data sheets give it, common practice; a lead-acid battery is charged at 2.3 V a cell, from memory',
      },
    },
    {
      role: 'input', key: 'fuse', title: 'Fuse', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 2,
      optional: true, help: 'Rating of the fuse or breaker at the output.',
    },
    {
      role: 'input', key: 'fuseKind', title: 'Fuse kind', kind: 'choice', choices: WAY_KINDS, optional: true,
      help: 'Breaker by its curve (B, C, D), fuse (gG, fast, slow), or electronic channel at the output.',
      source: 'IEC 60898-1, IEC 60269-1, IEC 60127-2',
    },
    {
      role: 'computed', key: 'fuseLoading', title: 'Fuse loading', kind: 'ratio', whenPartial: '≥',
      help: 'Demand over the rating of the fuse.',
      rule: {
        of: ['demand', 'fuse'], by: loadingRatio, words: '{demand} ÷ {fuse}', source: 'Ib ≤ In, IEC 60364-4-43, 433.1',
      },
    },
    {
      role: 'computed', key: 'leastTrip', title: 'Min. trip current', kind: 'number', unit: 'A', decimals: 2,
      help: 'Current that the first of its ways needs to trip instantaneously.',
      solved: {
        of: [], words: 'least of rating × trip multiple over the ways that name it',
        source: 'trip multiples as the sheet Ways gives them',
      },
    },
    {
      role: 'input', key: 'peak', title: 'Peak', kind: 'number', min: 1, max: 10, default: 1, decimals: 2,
      help: 'Multiple of the usable current that the supply holds long enough to clear a short circuit; 1 unless its data sheet says more.',
      source: 'on the safe side; common practice, no source',
    },
    {
      role: 'input', key: 'maxOutput', rare: 'limits',
      title: 'Max. output', kind: 'number', min: 1, max: 10, default: 1.5, decimals: 2,
      help: 'Multiple of the rating that the supply never gives more than for ever.',
      source: 'common practice, no source',
    },
    {
      role: 'input', key: 'innerResistance', rare: 'limits',
      title: 'Inner resistance', kind: 'number', unit: 'Ω', min: 0, max: 10,
      default: 0.3, decimals: 2, help: 'Resistance of supply, protection and wiring before the runs.',
      source: 'a short circuit behind it meets 24 V ÷ 0.3 Ω = 80 A at most; common practice, no source',
    },
    {
      role: 'input', key: 'efficiency', title: 'Efficiency', kind: 'ratio', above: 0, max: 1, optional: true,
      help: 'Output power over input power, for the losses; its enclosure needs it.',
    },
    {
      role: 'input', key: 'enclosure', title: 'Enclosure', kind: 'reference', to: 'enclosures', optional: true,
      help: 'Where the supply is mounted.',
    },
    {
      role: 'computed', key: 'loss', title: 'Loss', kind: 'number', unit: 'W', decimals: 1, whenPartial: '≥',
      help: 'Heat that the supply gives off at this demand.', inCases: 'highest',
      rule: {
        of: ['voltage', 'demand', 'efficiency'], by: supplyLoss, words: '{voltage} × {demand} × (1 ÷ {efficiency} − 1)',
        source: 'loss = output × (1 ÷ efficiency − 1), from the definition of efficiency',
      },
    },
    {
      role: 'input', key: 'offAt', rare: 'heat',
      title: 'Off at', kind: 'number', unit: '°C', safeSide: 'down', min: -40, max: 120,
      decimals: 0, optional: true, help: 'Temperature around it at which it switches itself off.',
      source: 'as data sheets give it; common practice, no source',
    },
    {
      role: 'input', key: 'width', rare: 'mounting',
      title: 'Width', kind: 'number', unit: 'mm', safeSide: 'up', above: 0, decimals: 1,
      optional: true, help: 'Width of one unit on its mounting rail, with the clearance that it asks for.',
    },
    mountedOnColumn('its units stand on', 'they find'),
    {
      role: 'input', key: 'standbyHours', rare: 'battery',
      title: 'Standby', kind: 'number', unit: 'h', safeSide: 'up', min: 0, max: 1000,
      decimals: 1, optional: true, help: 'How long its battery has to bridge a failure of the mains.',
    },
    {
      role: 'input', key: 'battery', rare: 'battery',
      title: 'Battery', kind: 'number', unit: 'Ah', safeSide: 'down', above: 0,
      decimals: 1, optional: true, help: 'Capacity of its lead-acid battery at the 20-hour rate.',
    },
    {
      role: 'computed', key: 'standbyDemand', rare: 'battery',
      title: 'Standby demand', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current that its battery has to give: the demand in the case marked standby, or without one the highest.',
      inMarkedCase: {
        of: 'demand', marked: 'standby', words: message('{demand} in the case marked standby, the highest of several; without one in the worst case'),
        source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'batteryNeeded', rare: 'battery',
      title: 'Battery needed', kind: 'number', unit: 'Ah', safeSide: 'up',
      decimals: 1, whenPartial: '≥', help: 'Capacity that bridges the standby at this demand.',
      rule: {
        of: ['standbyDemand', 'standbyHours', 'battery'], takesUnknown: true,
        onlyWith: { standbyDemand: 'standbyHours' },
        by: batteryFor, words: (demand, _hours, battery) => isSlow(demand, battery)
          ? message('1.25 for ageing × {standbyDemand} × {standbyHours}')
          : message('1.25 for ageing × 1.75 for fast discharge × {standbyDemand} × {standbyHours}'),
        source: 'BS 5839-1, Annex E, as read in print: 1.25 for ageing, and 1.75 where it is discharged faster than in 20 hours',
      },
    },
    {
      role: 'computed', key: 'batteryLasts', rare: 'battery',
      title: 'Battery lasts', kind: 'number', unit: 'h', safeSide: 'down', decimals: 1, whenPartial: '≤',
      help: 'How long its battery bears the standby demand at the end of its life; it gives less where it is discharged within an hour.',
      rule: {
        of: ['standbyDemand', 'battery'], takesUnknown: true, onlyWith: { standbyDemand: 'battery' }, by: lasts,
        words: (demand, battery) => isSlow(demand, battery) ? message('{battery} ÷ (1.25 for ageing × {standbyDemand})')
          : message('{battery} ÷ (1.25 for ageing × 1.75 for fast discharge × {standbyDemand})'),
        source: 'BS 5839-1, Annex E, solved for the time',
      },
    },
    {
      role: 'input', key: 'overload', rare: 'limits',
      title: 'On overload', kind: 'choice', choices: ['holds', 'retries'], optional: true,
      help: 'Whether it holds its current on overload, or switches off and tries again and again.',
    },
    {
      role: 'input', key: 'feed', rare: 'mains', title: 'Feed', kind: 'reference', to: 'feeds', optional: true,
      help: 'Protected mains way that feeds it.',
    },
    {
      role: 'input', key: 'inputPowerFactor', rare: 'mains', title: 'Input power factor', kind: 'number', above: 0, max: 1,
      decimals: 2, optional: true, help: 'Power factor at its input, at full load.',
    },
    {
      role: 'input', key: 'inputInrush', rare: 'mains', title: 'Input inrush', kind: 'number', unit: 'A', min: 0, decimals: 2,
      optional: true, help: 'Peak current that one unit takes from its feed when the mains return.',
    },
    {
      role: 'input', key: 'maxOnB16', rare: 'mains', title: 'Max. on B16', kind: 'integer', min: 1, safeSide: 'down', optional: true,
      help: 'How many units its maker allows on a breaker B 16; it comes before the inrush on the feed.',
    },
    {
      role: 'computed', key: 'inputCurrent', rare: 'mains', title: 'Input current', kind: 'number', unit: 'A', decimals: 2,
      whenPartial: '≥', help: 'Current that it takes from its feed at this demand.', inCases: 'highest',
      rule: {
        of: ['voltage', 'demand', 'efficiency', 'feed.voltage', 'inputPowerFactor'], by: inputCurrent,
        words: '{voltage} × {demand} ÷ ({efficiency} × {feed.voltage} × {inputPowerFactor})',
        source: 'P = U × I × λ, IEC 60050-131; input = output ÷ efficiency',
      },
    },
    {
      role: 'computed', key: 'power', rare: 'mains', title: 'Power', kind: 'number', unit: 'W', decimals: 0,
      whenPartial: '≥', help: 'Power that it gives at this demand.', inCases: 'highest',
      rule: { of: ['voltage', 'demand'], by: (volts: number, amps: number) => volts * amps, words: '{voltage} × {demand}', source: 'P = U × I' },
    },
    togetherDemand,
    {
      role: 'computed', key: 'surge', rare: 'mains', title: 'Surge', kind: 'number', unit: 'A', decimals: 2,
      help: 'By how much the start of its units at power return goes beyond their input current.',
      rule: {
        of: [
          'units', 'inputInrush', 'inputCurrent', 'maxOnB16', 'feed.rated', 'feed.curve', 'feed.pulseFactor',
        ], by: surge, takesUnknown: true,
        words: (_units, _inrush, _current, most, rated, curve) =>
          most !== null && rated !== null && curve !== null ? BY_NUMBER : '{units} × {inputInrush} − {inputCurrent}',
        source: 'arithmetic; numbers on a breaker: bands of IEC 60898-1',
      },
    },
    ...boughtColumns('unit'),
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    ...measuredColumns('at its output, with its devices on', 'at its output, with its devices on'),
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this supply say.',
    },
  ],
};
