import type { SizeClasses } from './size-classes.ts';

/**
 * Whether items cannot fit into bins, by bounds on areas.
 *
 * With `C` the largest capacity and each `α` up to `C ÷ 2`, sizes are replaced by `u(x)`: 0 below `α`, `C` above `C
 * − α`, else `x`. As `u(x) + u(y) ≤ u(x + y)`, what fits into a bin of capacity `c` comes to `u(c)` at most; so
 * items whose `u` exceeds that of all bins together do not fit. `α = 0` is the bound by total size, the others are
 * L2.
 *
 * @param classes the items
 * @param capacities of the bins, in any order
 * @returns whether it is proven that they do not fit; `false` says nothing
 *
 * Source: S. Martello, P. Toth, Lower bounds and reduction procedures for the bin packing problem, Discrete Applied
 * Mathematics 28 (1990); in the form of dual feasible functions S.P. Fekete, J. Schepers, Mathematical Programming
 * 91 (2001); both from memory.
 *
 * @example tooLarge({ sizes: [6], counts: [3] }, [10, 10]) // true
 */
export function tooLarge({ sizes, counts }: SizeClasses, capacities: readonly number[]): boolean {
  const largest = Math.max(0, ...capacities);
  if (sizes.length > 0 && sizes[0]! > largest) return true;
  const bins = gathered(capacities);
  // Between two sizes a greater α only raises more sizes to C, so that the sizes themselves are enough.
  const limits = [0, ...sizes.filter((size) => size <= largest / 2), largest / 2];
  return [...new Set(limits)].some((alpha) => {
    const worth = (size: number) => size < alpha ? 0 : size > largest - alpha ? largest : size;
    const room = bins.reduce((sum, [capacity, count]) => sum + count * worth(capacity), 0);
    const asked = sizes.reduce((sum, size, index) => sum + counts[index]! * worth(size), 0);
    // Sums of thousands of terms are rounded by far less than this; a bound must never claim too much.
    return asked > room * (1 + 1e-12);
  });
}

/** Different numbers, each with how often it occurs. */
export function gathered(numbers: readonly number[]): [value: number, count: number][] {
  const counts = new Map<number, number>();
  for (const value of numbers) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts];
}
