import supplyRatings from '../../../data/supply-ratings.json' with { type: 'json' };
import { exceeds } from '../../electrical/index.ts';
import { amps } from '../../words/index.ts';
import { OVERSIZED } from '../oversized.ts';
import type { RowReader } from '../row-reader.ts';
import { WITHOUT_WAY } from '../waiting.ts';

/** Voltage for which the ratings on the market are listed [V]. */
const LISTED_AT = 24;

/**
 * The smallest rating on the market with which a supply keeps to its target, and to what everything at once takes.
 * Empty where none does, something else is in the way, or more current would leave a run without protection.
 */
export function supplyRemedy(row: RowReader): string {
  const [rated, usable, target, voltage] = [
    row.number('rated'), row.number('usable'), row.number('target'), row.number('voltage'),
  ];
  const [demand, connected] = [row.number('demand'), row.number('connected')];
  if (rated === null || !usable || target === null || demand === null || connected === null) return '';
  const [fuse, battery, batteryNeeded] = [row.value('fuse'), row.value('battery'), row.value('batteryNeeded')];
  const isInTheWay = [[connected, fuse], [batteryNeeded, battery]].some(([needed, most]) =>
    typeof needed === 'number' && typeof most === 'number' && exceeds(needed, most));
  if (voltage !== LISTED_AT || isInTheWay || row.missing('connected') > 0 || row.waiting(WITHOUT_WAY) > 0) return '';
  const needed = Math.max(demand / target, connected, row.fact(OVERSIZED.rail.rows)?.draw ?? 0) * rated / usable;
  const rating = supplyRatings.ratings.find((each) => exceeds(each, rated) && !exceeds(needed, each));
  return rating === undefined ? '' : row.say('{units, plural, one {One} other {Units}} of {rating} would do.', {
    units: row.number('units') ?? 1, rating: amps(rating),
  });
}
