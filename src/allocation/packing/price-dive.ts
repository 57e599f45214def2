import type { Decision, Steps } from './decision.ts';
import { priceFills } from './fill-prices.ts';
import { kindsOf, type BinKind, type Pattern } from './pattern.ts';
import { totalCount, type Fill, type SizeClasses } from './size-classes.ts';

/** How often a choice that led nowhere is replaced by the next one, in all. */
const MOST_DETOURS = 12;

/**
 * Decides by prices whether items fit into bins: proves that they do not, or looks for whole patterns that hold them by
 * keeping the pattern that is used most in fractions and pricing the rest again, bin after bin.
 *
 * @returns `unknown` where neither a proof nor a packing was found
 */
export function* priceDive(classes: SizeClasses, capacities: readonly number[]): Steps<Decision> {
  const kinds = kindsOf(capacities);
  const pool: Pattern[] = [];
  let detours = 0;

  function* dive(left: SizeClasses, bins: readonly BinKind[]): Steps<readonly Pattern[] | 'impossible' | 'unknown'> {
    if (totalCount(left) === 0) return [];
    const priced = yield* priceFills(left, bins, pool);
    if (typeof priced === 'string') return priced;
    const choices = [...priced.patterns].sort((a, b) => b.times - a.times);
    for (const { pattern, times } of choices) {
      const kept = Math.max(1, Math.floor(times + 1e-6));
      const rest = without(left, pattern, kept);
      if (rest !== undefined) {
        const { kind } = pattern;
        const fewer = bins.map((bin, place) => place === kind ? { ...bin, count: bin.count - kept } : bin);
        const found = yield* dive(rest, fewer);
        if (typeof found !== 'string') return [...new Array<Pattern>(kept).fill(pattern), ...found];
      }
      detours += 1;
      if (detours > MOST_DETOURS) break;
    }
    return 'unknown';
  }

  const found = yield* dive(classes, kinds);
  return typeof found === 'string' ? found : { fits: ofBins(found, kinds, capacities, classes.sizes.length) };
}

/** What is left when a pattern is used some times; `undefined` where it holds more than there is. */
function without({ sizes, counts }: SizeClasses, { fill }: Pattern, times: number): SizeClasses | undefined {
  const left = counts.map((count, item) => count - times * fill[item]!);
  return left.some((count) => count < 0) ? undefined : { sizes, counts: left };
}

function ofBins(
  patterns: readonly Pattern[], kinds: readonly BinKind[], capacities: readonly number[], width: number,
): Fill[] {
  const byCapacity = new Map(kinds.map(({ capacity }, kind) =>
    [capacity, patterns.filter((pattern) => pattern.kind === kind).map(({ fill }) => fill)]));
  return capacities.map((capacity) => byCapacity.get(capacity)!.pop() ?? new Array<number>(width).fill(0));
}
