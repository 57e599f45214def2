import { vi } from 'vitest';

/** What fetches the formula engine, and schedules, as on a page that has not fetched it. */
export interface WithoutEngine {
  readonly LoadSchedule: typeof import('../../src/load-schedule.ts').LoadSchedule;
  readonly registry: typeof import('../../src/engine/engine-registry.ts');
}

/** Loads the software anew, without the formula engine, which every other test has at once. */
export async function withoutEngine(): Promise<WithoutEngine> {
  vi.resetModules();
  const [{ LoadSchedule }, registry] = await Promise.all([
    import('../../src/load-schedule.ts'), import('../../src/engine/engine-registry.ts'),
  ]);
  return { LoadSchedule, registry };
}
