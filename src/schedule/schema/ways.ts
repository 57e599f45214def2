import {
  availableCurrent, loadingRatio, operatingMultiple, tripMultiple, WAY_KINDS, type WayKind,
} from '../../electrical/index.ts';
import { boughtColumns } from './bought.ts';
import { togetherDemand, worstCase } from './case-columns.ts';
import type { Sheet, TotalPart } from './column.ts';
import { mountedOnColumn } from './mounted.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** What runs take through a way: with their extra, and of those that have two ways their share. */
function throughWay(sum: string, first: string, second: string): TotalPart[] {
  const only = (filled: boolean) => ({ only: { key: 'secondWay', filled } });
  return [
    { from: 'runs', by: 'way', sum, ...only(false) }, { from: 'runs', by: 'way', sum: 'extra', ...only(false) },
    { from: 'runs', by: 'way', sum: first, ...only(true) }, { from: 'runs', by: 'secondWay', sum: second },
  ];
}

/** The protected ways behind the supplies, each of which feeds one or several runs. */
export const ways: Sheet = {
  name: 'ways',
  title: 'Ways',
  rowName: 'way',
  help: 'One row for each fuse, breaker or electronic channel behind a supply: its kind, its rating, the runs that it feeds.',
  tag: 'way',
  columns: [
    { role: 'input', key: 'way', title: 'Way', kind: 'text', tag: true, help: 'Tag of the way, as runs give it.' },
    {
      role: 'input', key: 'rail', title: 'Rail', kind: 'reference', to: 'supplies', help: 'Supply rail behind it.',
    },
    {
      role: 'input', key: 'kind', title: 'Kind of protection', kind: 'choice', choices: WAY_KINDS,
      help: 'Breaker by its curve (B, C, D), fuse (gG, fast, slow), or electronic channel.',
      source: 'IEC 60898-1, IEC 60269-1, IEC 60127-2',
    },
    {
      role: 'input', key: 'rated', title: 'Rated', kind: 'number', unit: 'A', safeSide: 'down', above: 0, decimals: 2,
      help: 'Rating of the fuse or breaker, or the setting of the channel.',
    },
    {
      role: 'input', key: 'trip', title: 'Trip multiple', kind: 'number', min: 1, max: 100, decimals: 1,
      help: 'Multiple of the rating that makes it trip instantaneously on direct current; empty: that of its kind.',
      derived: {
        of: ['kind'], by: (kind: WayKind) => tripMultiple(kind), words: 'the multiple of {kind} on direct current',
        source: 'IEC 60898-1 × 1.5 on direct current; BS 7671, Table 41.2; IEC 60127-2; common practice',
      },
    },
    {
      role: 'input', key: 'k2', rare: 'limits', title: 'Operating multiple', kind: 'number', min: 1, max: 5, decimals: 2,
      help: 'Multiple of the rating at which it acts on overload within its conventional time; empty: that of its kind.',
      derived: {
        of: ['kind', 'rated'], by: (kind: WayKind, rated: number) => operatingMultiple(kind, rated),
        words: 'the conventional operating current of {kind} {rated} over its rating',
        source: 'IEC 60898-1, 1.45; IEC 60269-1; IEC 60127-2',
      },
    },
    {
      role: 'input', key: 'target', title: 'Target', kind: 'ratio', safeSide: 'down', above: 0, max: 1, default: 0.8,
      help: 'Loading that the design aims to stay below.', source: '80 % as in NEC 210.20(A) for continuous loads',
    },
    {
      role: 'computed', key: 'connected', title: 'Connected', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current of everything on its runs at the same time.',
      total: {
        of: throughWay('connected', 'firstConnected', 'secondConnected'),
        words: 'sum of connected and extra over the runs that name it, of those with two ways what comes through this one', source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'demand', title: 'Demand', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current expected of it at the same time; with cases, in the worst of them.', inCases: 'highest',
      total: {
        of: throughWay('demand', 'firstDemand', 'secondDemand'),
        words: 'sum of demand and extra over the runs that name it, of those with two ways what comes through this one', source: ARITHMETIC,
      },
    },
    worstCase,
    togetherDemand,
    {
      role: 'computed', key: 'loading', title: 'Loading', kind: 'ratio', whenPartial: '≥',
      help: 'Demand as a share of the rating.',
      rule: {
        of: ['demand', 'rated'], by: loadingRatio, words: '{demand} ÷ {rated}', source: 'Ib ≤ In, IEC 60364-4-43, 433.1',
      },
    },
    {
      role: 'computed', key: 'available', title: 'Available', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      whenPartial: '≤', help: 'What the supply still has for a short circuit on it.', inCases: 'lowest',
      rule: {
        of: ['rail.usable', 'rail.peak', 'rail.demand', 'demand'],
        by: (usable: number, peak: number, all: number, own: number) =>
          availableCurrent(usable, peak, Math.max(0, all - own)),
        words: '{rail.usable} × {rail.peak} − ({rail.demand} − {demand})',
        source: 'currents at a node add up, Kirchhoff; that the other loads hold: common practice, no source',
      },
    },
    {
      role: 'computed', key: 'largest', title: 'Largest device', kind: 'number', unit: 'A', decimals: 2,
      whenPartial: '≥', help: 'Current of the one device that draws most, at the nominal voltage.',
      total: {
        // Either way may have to carry one device, or to start all of them, alone.
        of: [{ from: 'runs', by: 'way', sum: 'largest' }, { from: 'runs', by: 'secondWay', sum: 'largest' }],
        greatest: true,
        words: 'highest of the largest devices of its runs', source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'start', title: 'Start current', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current of everything on its runs when all start at the same time, as far as their inrush is known.',
      total: {
        of: [{ from: 'runs', by: 'way', sum: 'start' }, { from: 'runs', by: 'secondWay', sum: 'start' }], words: 'sum of start current over the runs that name it',
        source: ARITHMETIC,
      },
    },
    {
      role: 'input', key: 'enclosure', rare: 'mounting',
      title: 'Enclosure', kind: 'reference', to: 'enclosures', optional: true,
      help: 'Where it is mounted; empty: where its supply is.',
      derived: {
        of: ['rail.enclosure'], by: (enclosure: string) => enclosure, words: '{rail.enclosure}', source: ARITHMETIC,
      },
    },
    {
      role: 'input', key: 'width', rare: 'mounting', title: 'Width', kind: 'number', unit: 'mm', safeSide: 'up', min: 0,
      decimals: 1, optional: true, help: 'Width that it takes of a mounting rail; 0 for a channel in the housing of another.',
    },
    mountedOnColumn('it stands on', 'it finds'),
    ...boughtColumns('way'),
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this way say.',
    },
  ],
};
