import { amps, type Check } from '../check.ts';
import { missingInput, overLimit, overTarget, partialTotal } from './limit-checks.ts';

/** What mains feeds are held against. */
export const feedChecks: readonly Check[] = [
  overLimit({
    rule: 'feed-over-rated', sheet: 'feeds', key: 'demand', limit: (row) => row.number('rated'),
    message: (row, demand, rated) =>
      `${row.name} is asked for ${amps(demand, rated)} and is rated ${amps(rated, demand)}: ${amps(demand - rated, 0)} too much. Move outputs to another feed, or lower the diversity if not all are on at once.`,
  }),
  overTarget({
    rule: 'feed-over-target', sheet: 'feeds', current: 'demand', rating: 'rated',
    remedy: 'move outputs to another feed, or lower the diversity if not all are on at once.',
  }),
  missingInput('feed-rating-missing', 'feeds', 'rated', (row) => `${row.name} has no rated current, so nothing can be said of its loading. Enter the rating of its protection in A.`),
  partialTotal('feed-current-partial', 'feeds', 'connected', 'output', 'A'),
];
