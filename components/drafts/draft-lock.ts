/** A page that is being left may still hold what its successor asks for [ms]. */
const PATIENCE_MILLISECONDS = 200;

const holdsNothing = () => { /* there is nothing to let go of */ };

/**
 * Holds a draft against all other pages and tabs of the site; a tab that is gone, however it went, holds nothing.
 * @returns a function that lets go of it; `undefined` when another holds it. Where a page may not use locks, as by
 * plain HTTP, everyone is let in, and the count of actions in the store tells who comes second.
 */
export async function holdDraft(id: number): Promise<(() => void) | undefined> {
  const locks = (globalThis as { navigator?: { locks?: LockManager } }).navigator?.locks;
  if (locks === undefined) return holdsNothing;
  const take = (options: LockOptions) => new Promise<(() => void) | undefined>((resolve) => {
    locks.request(`elv-load-schedule draft ${id}`, options, (lock) => {
      if (lock !== null) return new Promise<void>((release) => { resolve(release); });
      resolve(undefined);
      return undefined;
    }).catch(() => { resolve(options.signal?.aborted === true ? undefined : holdsNothing); });
  });
  // First without a limit of time: a browser that is just starting takes long to answer, though nobody holds anything.
  return await take({ ifAvailable: true }) ?? take({ signal: AbortSignal.timeout(PATIENCE_MILLISECONDS) });
}
