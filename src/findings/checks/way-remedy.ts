import { discriminates, exceeds, mostProtection, operatingMultiple, type WayKind } from '../../electrical/index.ts';
import { amps } from '../../words/index.ts';
import type { Gathering } from '../facts.ts';
import type { RowReader } from '../row-reader.ts';

/** Ratings on the market [A]: from 6 A as IEC 60898-1 prefers, from memory; below common practice, no source. */
export const RATINGS: readonly number[] = [1, 2, 3, 4, 6, 8, 10, 13, 16, 20, 25, 32];

/**
 * What the cables behind a way leave to its rating: what the weakest carries, and the least current of a short circuit
 * at a far end [A]; NaN where it is not known of one. What both ways of a run that has two need together is not asked,
 * so of these it is not known.
 */
const LEAST: Gathering<{ readonly carries: number; readonly fault: number }> = {
  sheet: 'ways', reads: [['runs', 'way'], ['runs', 'secondWay'], ['runs', 'carries'], ['runs', 'faultCurrent']],
  gather: (document, book) => {
    const least = new Map<number, { carries: number; fault: number }>();
    const { numbers } = book.columns('runs');
    const [carries, faults] = [numbers.get('carries')!, numbers.get('faultCurrent')!];
    const [first, second] = [book.targets('runs', 'way'), book.targets('runs', 'secondWay')];
    for (const { id } of document.rows('runs')) {
      const ways = [first[id]!, second[id]!].filter((way) => way >= 0);
      const fault = ways.length === 2 ? NaN : faults[id]!;
      for (const way of ways) {
        const before = least.get(way) ?? { carries: Infinity, fault: Infinity };
        least.set(way, { carries: Math.min(before.carries, carries[id]!), fault: Math.min(before.fault, fault) });
      }
    }
    return least;
  },
};

/**
 * The smallest larger rating with which a way keeps to all that it is held against, protects the cables behind it and
 * acts on a short circuit at the end of each; empty where there is none.
 */
export function wayRemedy(row: RowReader): string {
  const own = (key: string) => row.number(key);
  const [rated, demand, connected, largest] = [own('rated'), own('demand'), own('connected'), own('largest')];
  const [target, trip, available, start] = [own('target'), own('trip'), own('available'), own('start')];
  const kind = row.value('kind') as WayKind | null;
  if (rated === null || demand === null || connected === null || target === null || trip === null) return '';
  const needed = Math.max(demand / target, connected, largest ?? 0, kind === 'electronic' ? start ?? 0 : 0);
  const { carries, fault } = row.fact(LEAST) ?? { carries: NaN, fault: NaN };
  if (available === null || kind === null || row.missing('demand') > 0 || Number.isNaN(fault)) return '';
  const [fuse, fuseKind] = [row.valueOf('rail', 'fuse'), row.valueOf('rail', 'fuseKind') as WayKind | null];
  const rating = RATINGS.find((each) => {
    if (!exceeds(each, rated) || exceeds(needed, each) || exceeds(trip * each, fault)) return false;
    const k2 = typeof row.own('k2') === 'number' ? row.number('k2') : operatingMultiple(kind, each);
    const most = k2 === null ? null : mostProtection(carries, k2);
    if (most === null || !(each <= carries && each <= most)) return false;
    return typeof fuse !== 'number' || (fuseKind !== null
      && discriminates({ kind: fuseKind, ratedAmps: fuse }, { kind, ratedAmps: each }, row.most('available')) === true);
  });
  return rating === undefined ? '' : row.say('One of {rating} would do, and the cables behind it carry that.', { rating: amps(rating) });
}
