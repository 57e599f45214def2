import type { LoadSchedule } from '../../src/load-schedule.ts';

/** Where a browser does not tell when it is idle, a step is taken this much later [ms]. */
const PAUSE = 30;

/** Makes a schedule ready for edits while the page is idle, a step at a time, so that the first edit need not wait. */
export class IdlePreparation {
  #cancel: (() => void) | undefined;

  start(schedule: LoadSchedule): void {
    this.stop();
    this.#later(() => {
      if (!schedule.prepareStep()) this.start(schedule);
    });
  }

  stop(): void {
    this.#cancel?.();
    this.#cancel = undefined;
  }

  #later(step: () => void): void {
    if (typeof requestIdleCallback === 'function') {
      const handle = requestIdleCallback(step, { timeout: 1000 });
      this.#cancel = () => { cancelIdleCallback(handle); };
    } else {
      const handle = setTimeout(step, PAUSE);
      this.#cancel = () => { clearTimeout(handle); };
    }
  }
}
