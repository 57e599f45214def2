/**
 * Least number of bins of groups that share a pool, each bin of which one of them may take.
 *
 * @param leastWith for each group, the least number of its bins when it is given so many bins of the pool, from 0 to
 * all
 * @returns the least sum over all ways to give the bins of the pool out; 0 without groups
 *
 * @example leastTogether([[3, 2, 2], [5, 4, 3]]) // 6
 */
export function leastTogether(leastWith: readonly (readonly number[])[]): number {
  const [first = [0], ...others] = leastWith;
  const sums = others.reduce<readonly number[]>((sum, least) => sum.map((_, given) =>
    Math.min(...sum.slice(0, given + 1).map((before, place) => before + least[given - place]!))), first);
  return sums.at(-1)!;
}
