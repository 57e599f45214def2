/** Items of a packing gathered by size: the sizes from large to small, and how many items there are of each. */
export interface SizeClasses {
  /** Different sizes, all above 0, in descending order. */
  readonly sizes: readonly number[];
  /** Number of items of each size. */
  readonly counts: readonly number[];
}

/** What one bin holds: the number of items of each size class. */
export type Fill = readonly number[];

/** Gathers items by size. @param items sizes above 0, each with how many there are of it. */
export function classesOf(items: Iterable<readonly [size: number, count: number]>): SizeClasses {
  const bySize = new Map<number, number>();
  for (const [size, count] of items) bySize.set(size, (bySize.get(size) ?? 0) + count);
  const sorted = [...bySize].filter(([, count]) => count > 0).sort(([a], [b]) => b - a);
  return { sizes: sorted.map(([size]) => size), counts: sorted.map(([, count]) => count) };
}

/** Size of everything together. */
export function totalSize({ sizes, counts }: SizeClasses): number {
  return sizes.reduce((sum, size, index) => sum + size * counts[index]!, 0);
}

/** Number of items. */
export function totalCount({ counts }: SizeClasses): number {
  return counts.reduce((sum, count) => sum + count, 0);
}
