import { gathered } from './area-bound.ts';
import type { Fill } from './size-classes.ts';

/** A way to fill a bin of one of the kinds. */
export interface Pattern {
  /** Place of its kind among the kinds of bins. */
  readonly kind: number;
  readonly fill: Fill;
}

/** Bins of one capacity. */
export interface BinKind {
  readonly capacity: number;
  readonly count: number;
}

/** Kinds of bins, the largest first. */
export function kindsOf(capacities: readonly number[]): BinKind[] {
  return gathered(capacities).map(([capacity, count]) => ({ capacity, count })).sort((a, b) => b.capacity - a.capacity);
}
