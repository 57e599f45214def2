import { bestFill } from './best-fill.ts';
import type { Steps } from './decision.ts';
import type { BinKind, Pattern } from './pattern.ts';
import { Programme } from './programme.ts';
import type { SizeClasses } from './size-classes.ts';

/** What filling bins in parts comes to. */
export type Priced =
  /** Prices of the items prove that they do not fit. */
  | 'impossible'
  | 'unknown'
  /** Patterns with how often each is used, in fractions, that hold everything. */
  | { readonly patterns: readonly { readonly pattern: Pattern; readonly times: number }[] };

/** Size of the basis up to which a linear programme is set up at all. */
const MOST_ROWS = 400;
const MOST_PIVOTS = 6_000;
const PIVOTS_PER_STEP = 10;
const SMALL = 1e-9;

/**
 * Fills bins with fractions of patterns so that as little as possible stays outside, by generating patterns: the linear
 * programme prices the items, and the pattern that is worth most at these prices enters.
 *
 * A set of prices is a proof: if all items together are worth more than the dearest fill of every bin, they do not fit.
 * Only such a proof is reported as `impossible`, so that nothing depends on the rounding of the programme.
 *
 * @param pool patterns known already; new ones are added to it
 *
 * Source: P.C. Gilmore, R.E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9
 * (1961); the proof by prices is the bound of A.A. Farley (1990); both from memory.
 */
export function* priceFills(classes: SizeClasses, kinds: readonly BinKind[], pool: Pattern[]): Steps<Priced> {
  const { sizes, counts } = classes;
  const items = sizes.length;
  const rows = items + kinds.length;
  if (rows > MOST_ROWS) return 'unknown';
  const largest = kinds[0]!.capacity;
  const programme = new Programme([...counts, ...kinds.map(({ count }) => count)], sizes.map((size) => size / largest));
  const usable = pool.filter(({ fill }) => fill.every((count, item) => count <= counts[item]!));

  for (let pivot = 0; pivot < MOST_PIVOTS; pivot += 1) {
    if (pivot % PIVOTS_PER_STEP === 0) yield;
    if (programme.outside() < SMALL) return { patterns: programme.patterns() };
    const prices = programme.prices();
    if (programme.enterSlack(prices)) continue;
    const known = dearest(usable, prices, items);
    if (known !== undefined) {
      programme.enter(known);
      continue;
    }
    yield;
    const positive = prices.slice(0, items).map((price) => Math.max(0, price));
    const fills = kinds.map(({ capacity }, kind) => bestFill(classes, positive, capacity, -prices[items + kind]!));
    const asked = positive.reduce((sum, price, item) => sum + price * counts[item]!, 0);
    const given = fills.reduce((sum, { most }, kind) => sum + most * kinds[kind]!.count, 0);
    if (asked > given * (1 + SMALL) + SMALL) return 'impossible';
    const added = fills.flatMap(({ fill }, kind): Pattern[] => fill === undefined ? [] : [{ kind, fill }])
      .filter((pattern) => gain(pattern, prices, items) > SMALL);
    if (added.length === 0) return 'unknown';
    usable.push(...added);
    pool.push(...added);
  }
  return 'unknown';
}

/** How much a pattern is worth beyond the price of its bin. */
function gain({ kind, fill }: Pattern, prices: readonly number[], items: number): number {
  let worth = prices[items + kind]!;
  for (let item = 0; item < items; item += 1) if (fill[item]! > 0) worth += fill[item]! * prices[item]!;
  return worth;
}

function dearest(patterns: readonly Pattern[], prices: readonly number[], items: number): Pattern | undefined {
  let found: Pattern | undefined;
  let most = SMALL;
  for (const pattern of patterns) {
    const worth = gain(pattern, prices, items);
    if (worth > most) {
      most = worth;
      found = pattern;
    }
  }
  return found;
}
