import { amps, message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { missingInput, overLimit, overTarget, partialTotal } from './limit-checks.ts';

/** What mains feeds are held against. */
export const feedChecks: readonly Check[] = [
  overLimit({
    rule: 'feed-over-rated', sheet: 'feeds', key: 'demand', limit: (row) => row.number('rated'),
    message: message(
      '{name} is asked for {value} and is rated {limit}: {excess} too much. Move outputs to another feed, or lower the diversity if not all are on at once.'
    ),
  }),
  overTarget({
    rule: 'feed-over-target', sheet: 'feeds', current: 'demand', rating: 'rated',
    message: message(
      '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: move outputs to another feed, or lower the diversity if not all are on at once.'
    ),
  }),
  missingInput(
    'feed-rating-missing', 'feeds', 'rated',
    message(
      '{name} has no rated current, so nothing can be said of its loading. Enter the rating of its protection in A.'
    )
  ),
  partialTotal(
    'feed-current-partial', 'feeds', 'connected',
    message(
      '{name} carries at least {value}: {missing, plural, one {# output on it is not wholly known. Complete it} other {# outputs on it are not wholly known. Complete them}} to know the rest.'
    ),
    amps
  ),
];
