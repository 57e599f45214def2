import type { LoadSchedule } from '../../src/load-schedule.ts';
import { whenIdle } from '../look/when-idle.ts';

/** A step that the page never found time for is taken this much later [ms]. */
const LATEST_MILLISECONDS = 1000;

/** Makes a schedule ready for edits while the page is idle, a step at a time, so that the first formula need not wait. */
export class IdlePreparation {
  readonly #told: (isRunning: boolean) => void;
  #cancel: (() => void) | undefined;

  /** @param told called when the preparation begins, and when it ends. */
  constructor(told: (isRunning: boolean) => void) {
    this.#told = told;
  }

  start(schedule: LoadSchedule): void {
    this.#cancel?.();
    this.#told(true);
    this.#next(schedule);
  }

  stop(): void {
    this.#cancel?.();
    this.#cancel = undefined;
    this.#told(false);
  }

  #next(schedule: LoadSchedule): void {
    this.#cancel = whenIdle(() => {
      if (schedule.prepareStep()) this.stop();
      else this.#next(schedule);
    }, LATEST_MILLISECONDS);
  }
}
