/**
 * The heaviest of some places that stand in ascending order.
 * @param places from 0, each of them once.
 * @param weights how much each of them counts, above 0.
 * @returns indices into `places`.
 */
export function inOrder(places: readonly number[], weights: readonly number[]): Set<number> {
  // A tree over prefixes of places (P. M. Fenwick, 1994) has the index that ends the heaviest order within each.
  const size = places.reduce((most, place) => Math.max(most, place + 1), 0);
  const ends = new Int32Array(size + 1).fill(-1);
  const previous: number[] = [];
  const sums: number[] = [];
  const heavier = (one: number, other: number) => other >= 0 && (one < 0 || sums[other]! > sums[one]!) ? other : one;
  places.forEach((place, index) => {
    let before = -1;
    for (let node = place; node > 0; node -= node & -node) before = heavier(before, ends[node]!);
    previous[index] = before;
    sums[index] = weights[index]! + (sums[before] ?? 0);
    for (let node = place + 1; node <= size; node += node & -node) ends[node] = heavier(ends[node]!, index);
  });
  const kept = new Set<number>();
  const last = ends.reduce((best, each) => heavier(best, each), -1);
  for (let index = last; index >= 0; index = previous[index]!) kept.add(index);
  return kept;
}
