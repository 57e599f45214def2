import { afterEach, expect, test, vi } from 'vitest';
import { holdDraft } from '../../components/drafts/draft-lock.ts';

afterEach(() => { vi.unstubAllGlobals(); });

type Granted = (lock: Lock | null) => unknown;

/** A lock manager that takes its time [ms], as that of a browser does which is just starting. */
function slowLocks(milliseconds: number, isHeld: boolean) {
  return {
    request: (name: string, { signal, ifAvailable = false }: LockOptions, granted: Granted) =>
      new Promise((resolve, reject) => {
        signal?.addEventListener('abort', () => { reject(signal.reason as Error); });
        setTimeout(() => {
          if (!isHeld) resolve(granted({ name, mode: 'exclusive' }));
          else if (ifAvailable) resolve(granted(null));
        }, milliseconds);
      }),
  };
}

test('a draft that nobody holds is held, however long the browser takes to say so', async () => {
  vi.stubGlobal('navigator', { locks: slowLocks(600, false) });
  expect(await holdDraft(1)).toBeTypeOf('function');
});

test('a draft that another page holds is waited for a little, and not held', async () => {
  vi.stubGlobal('navigator', { locks: slowLocks(20, true) });
  expect(await holdDraft(1)).toBeUndefined();
});
