import type { Fill } from './size-classes.ts';

/** Whether items fit into given bins: how, that they cannot, or that the search was given up. */
export type Decision = { readonly fits: readonly Fill[] } | 'impossible' | 'unknown';

/** Work in short steps, so that the caller can look at the clock, at a wish to stop, or let others have their turn. */
export type Steps<Result> = Generator<void, Result>;

/** Says that work must come to its end with what it has: time is up, or a person wants no more of it. */
export type Stop = () => boolean;

/** Work that ends as `unknown` once it is to stop. */
export function* unlessStopped(steps: Steps<Decision>, stop: Stop): Steps<Decision> {
  while (!stop()) {
    const { done, value } = steps.next();
    if (done === true) return value;
    yield;
  }
  return 'unknown';
}
