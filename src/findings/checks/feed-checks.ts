import { exceeds, inrushLimit, type BreakerCurve } from '../../electrical/index.ts';
import { amps, message, roundedDown, roundedUp } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { WORST_IN } from '../worst-in.ts';
import { livesOnDiversity, missingInput, overLimit, overTarget, partialTotal, unknown } from './limit-checks.ts';
import { railAbsent } from './rail-checks.ts';
import { widthMissing } from './width-checks.ts';

/** What the breaker of a feed stands with a curve; `null` where its rating or its pulse factor is not known. */
function standing(row: RowReader, curve: BreakerCurve): number | null {
  const [rated, pulseFactor] = [row.number('rated'), row.number('pulseFactor')];
  return rated === null || pulseFactor === null ? null : inrushLimit(rated, curve, pulseFactor);
}

/**
 * A breaker of curve C where it would stand the inrush; D is not proposed, as what makers allow on a B 16 says nothing
 * of it.
 */
function remedy(row: RowReader, curve: BreakerCurve, inrush: number): string {
  return curve === 'B' && !exceeds(inrush, standing(row, 'C') ?? 0)
    ? row.say('Use a breaker of curve C, which would stand it, where the fault loop allows; else share it over more feeds.')
    : row.say('Share it over more feeds, let it start one after the other, or limit the inrush.');
}

/** Diversity of a feed is entered for itself, so that this is no more than a note. */
const { inStatus: _inStatus, ...onDiversity } = livesOnDiversity({
  rule: 'feed-lives-on-diversity', sheet: 'feeds', limit: (row) => row.number('rated'),
  message: message(
    '{name} is rated {limit}, and everything on it at the same time takes {value}: it lives on diversity, and where all of it is on together, as at power return, its breaker opens. Move outputs or supplies to another feed, or lock some of them against each other.'
  ),
});

/** What mains feeds are held against. */
export const feedChecks: readonly Check[] = [
  overLimit({
    rule: 'feed-over-rated', sheet: 'feeds', key: 'demand', limit: (row) => row.number('rated'),
    message: message(
      '{name}: demand {value} exceeds the rating {limit} by {excess}. Move outputs or supplies to another feed, or lower the diversity if not all are on at the same time.'
    ),
    worst: WORST_IN.demand.feeds,
  }),
  overTarget({
    rule: 'feed-over-target', sheet: 'feeds', current: 'demand', rating: 'rated',
    message: message(
      '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: move outputs or supplies to another feed, or lower the diversity if not all are on at the same time.'
    ),
    worst: WORST_IN.demand.feeds,
  }),
  { ...onDiversity, severity: 'note' },
  {
    rule: 'feed-over-inrush', sheet: 'feeds', key: 'inrush', severity: 'near', inStatus: true, needs: 'curve',
    find: (row) => {
      const curve = row.value('curve') as BreakerCurve;
      const [inrush, limit] = [row.number('inrush'), standing(row, curve)];
      const [supplies, output] = [row.number('supplySurge'), row.number('outputSurge')];
      if (inrush === null || limit === null || !exceeds(inrush, limit)) return undefined;
      return {
        value: inrush, limit,
        message: `${row.say('{name} takes up to {inrush} when {first, select, supplies {all its supplies start at power return} other {one of its outputs starts}} while the rest runs, and its breaker {curve} stands {limit} for sure: {excess} too much. It may trip.', {
          inrush: amps(inrush, limit), limit: roundedDown(amps(limit, inrush)),
          excess: roundedUp(amps(inrush - limit, 0)), curve, first: (supplies ?? 0) >= (output ?? 0) ? 'supplies' : 'output',
        })} ${remedy(row, curve, inrush)}`,
      };
    },
  },
  missingInput(
    'feed-rating-missing', 'feeds', 'rated',
    message(
      '{name} has no rated current, so nothing can be said of its loading. Enter the rating of its protection in A.'
    )
  ),
  partialTotal(
    'feed-current-partial', 'feeds', 'connected',
    message(
      '{name} carries at least {value}: {missing, plural, one {# output or supply on it is not wholly known. Complete it} other {# outputs or supplies on it are not wholly known. Complete them}} to know the rest.'
    ),
    amps
  ),
  {
    rule: 'feed-inrush-partial', sheet: 'feeds', key: 'inrush', severity: 'incomplete', inStatus: true, elsewhere: true,
    needs: 'curve',
    find: (row) => row.missing('supplySurge') + row.missing('outputSurge') === 0 ? undefined : unknown(row, message(
      '{name}: the inrush of what hangs on it is not wholly known, so it is at least what is shown. Complete it.'
    )),
  },
  railAbsent('feed-rail-absent', 'feeds'),
  widthMissing('feed-width-missing', 'feeds', message(
    '{name}: the width of its breaker is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.'
  )),
];
