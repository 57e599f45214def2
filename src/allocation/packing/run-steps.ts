import type { Steps } from './decision.ts';

/** How long work may go on without letting others have their turn, below one frame of a screen at 60 Hz [ms]. */
const SLICE_MILLISECONDS = 12;

/** Carries out work in slices, between which the page or the worker answers whatever came in. */
export async function runSteps<Result>(steps: Steps<Result>, atBreath?: () => void): Promise<Result> {
  for (;;) {
    const end = performance.now() + SLICE_MILLISECONDS;
    do {
      const { done, value } = steps.next();
      if (done === true) return value;
    } while (performance.now() < end);
    atBreath?.();
    await new Promise<void>((resume) => { setTimeout(resume, 0); });
  }
}

/** When to stop: at a wish, or when time is up. */
export function stopAt(signal: AbortSignal | undefined, milliseconds: number): () => boolean {
  const end = performance.now() + milliseconds;
  return () => signal?.aborted === true || performance.now() > end;
}
