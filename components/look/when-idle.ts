/** Where a browser does not tell when it is idle, the task is done this much later [ms]. */
const PAUSE_MILLISECONDS = 30;

/**
 * Does a task when the page has nothing more urgent to do.
 * @param latest [ms] after which it is done in any case.
 * @returns a function that calls it off.
 */
export function whenIdle(task: () => void, latest: number): () => void {
  if (typeof requestIdleCallback === 'function') {
    const handle = requestIdleCallback(task, { timeout: latest });
    return () => { cancelIdleCallback(handle); };
  }
  const handle = setTimeout(task, PAUSE_MILLISECONDS);
  return () => { clearTimeout(handle); };
}
