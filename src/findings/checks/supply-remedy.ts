import supplyRatings from '../../../data/supply-ratings.json' with { type: 'json' };
import { exceeds } from '../../electrical/index.ts';
import { amps } from '../../words/index.ts';
import { OVERSIZED } from '../oversized.ts';
import type { RowReader } from '../row-reader.ts';
import { WITHOUT_WAY } from '../waiting.ts';
import { inTheWay } from './in-the-way.ts';
import { RATINGS } from './way-remedy.ts';

/** Voltage for which the ratings on the market are listed [V]. */
const LISTED_AT = 24;
/** Larger fuses behind supplies than ways have [A]: IEC 60898-1, from memory. */
const LARGE = [40, 50, 63];
/** What a larger rating puts right, which is asked for by the draw of the largest device. */
const OF_DEVICES: ReadonlySet<string> = new Set(['supply-devices-over-usable', 'supply-devices-over-usable-elsewhere']);
const NONE: ReadonlySet<string> = new Set();

/** Of ratings from the smallest, the first with which nothing counts against the row; else what does with the first. */
function tried(
  row: RowReader, ratings: readonly number[], numbers: (rating: number) => Record<string, number>,
  but: ReadonlySet<string>,
): { readonly rating: number; readonly others: string } | undefined {
  const [first] = ratings;
  if (first === undefined) return undefined;
  const against = (rating: number) => row.against(numbers(rating), but);
  const rating = ratings.find((each) => against(each).length === 0);
  return rating === undefined ? { rating: first, others: inTheWay(row, against(first)) } : { rating, others: '' };
}

/**
 * The smallest rating on the market with which a supply keeps to all that it is held against, or what is in the way of
 * that. Empty where none carries its load, or more current would leave a run without protection.
 */
export function supplyRemedy(row: RowReader): string {
  const [rated, usable, target, voltage] = [
    row.number('rated'), row.number('usable'), row.number('target'), row.number('voltage'),
  ];
  const [demand, connected] = [row.number('demand'), row.number('connected')];
  if (rated === null || !usable || target === null || demand === null || connected === null) return '';
  if (voltage !== LISTED_AT || row.missing('connected') > 0 || row.waiting(WITHOUT_WAY) > 0) return '';
  const needed = Math.max(demand / target, connected, row.fact(OVERSIZED.rail.rows)?.draw ?? 0) * rated / usable;
  const ratings = supplyRatings.ratings.filter((each) => exceeds(each, rated) && !exceeds(needed, each));
  const found = tried(row, ratings, (each) => {
    const most = usable * each / rated;
    return { rated: each, usable: most, loading: demand / most };
  }, OF_DEVICES);
  if (found === undefined) return '';
  const { rating, others } = found;
  return others === '' ? row.say('{units, plural, one {One} other {Units}} of {rating} would do.', {
    units: row.number('units') ?? 1, rating: amps(rating),
  }) : row.say('A larger supply alone does not put it right. Still in the way: {others}.', { others });
}

/** The smallest larger fuse that bears everything at once and acts, or what is in the way of it. */
export function fuseRemedy(row: RowReader): string {
  const [fuse, connected] = [row.number('fuse'), row.number('connected')];
  if (fuse === null || connected === null || row.missing('connected') > 0 || row.waiting(WITHOUT_WAY) > 0) return '';
  const ratings = [...RATINGS, ...LARGE].filter((each) => exceeds(each, fuse) && !exceeds(connected, each));
  const found = tried(row, ratings, (each) => ({ fuse: each }), NONE);
  if (found === undefined) return '';
  return found.others === '' ? row.say('One of {rating} would do.', { rating: amps(found.rating) })
    : otherFuse(row, found.others);
}

/** A fuse of what the supply gives at the most, or what is in the way of it. */
export function actingFuse(row: RowReader, most: number): string {
  const others = inTheWay(row, row.against({ fuse: most }, NONE));
  return others === '' ? row.say('Use a fuse of no more than that.') : otherFuse(row, others);
}

const otherFuse = (row: RowReader, others: string): string =>
  row.say('Another fuse alone does not put it right. Still in the way: {others}.', { others });
