import { tooLarge } from './area-bound.ts';
import { binCompletion } from './bin-completion.ts';
import type { Decision, Steps } from './decision.ts';
import { fitDecreasing } from './fit-decreasing.ts';
import { fitPairs } from './fit-pairs.ts';
import { priceDive } from './price-dive.ts';
import type { SizeClasses } from './size-classes.ts';

/** How long to look: `quick` tries what takes milliseconds, `thorough` everything. */
export type Effort = 'quick' | 'thorough';

const QUICK_NODES = 300;
const FIRST_NODES = 1_000;
const MOST_NODES = 2_000_000;

/**
 * Decides whether items fit into given bins: bounds and simple packings first, then search, each until one of them
 * knows.
 */
export function* decide(classes: SizeClasses, capacities: readonly number[], effort: Effort): Steps<Decision> {
  if (tooLarge(classes, capacities)) return 'impossible';
  const simple = fitDecreasing(classes, capacities, 'best') ?? fitDecreasing(classes, capacities, 'first')
    ?? fitPairs(classes, capacities);
  if (simple !== undefined) return { fits: simple };
  const searched = yield* binCompletion(classes, capacities, effort === 'quick' ? QUICK_NODES : FIRST_NODES);
  if (searched !== 'unknown' || effort === 'quick') return searched;
  const priced = yield* priceDive(classes, capacities);
  if (priced !== 'unknown') return priced;
  return yield* binCompletion(classes, capacities, MOST_NODES);
}
