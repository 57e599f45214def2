import type { LoadSchedule } from '../../src/load-schedule.ts';

/** The last action of a schedule that is kept nowhere, however far it is taken back. */
const NONE = {};

/** Knows whether a person changed a schedule since it was the same as what is kept elsewhere. */
export class DirtyMark {
  #clean: object | undefined;
  #dirty = false;

  get isDirty(): boolean {
    return this.#dirty;
  }

  /**
   * What the schedule held is kept elsewhere: it was just read, or saved.
   * @param after the action after which it held that.
   */
  clean(schedule: LoadSchedule, after = schedule.lastAction): void {
    this.#clean = after;
    this.#dirty = schedule.lastAction !== after;
  }

  /** What the schedule holds is kept nowhere else, whatever is taken back. */
  soil(): void {
    this.#clean = NONE;
    this.#dirty = true;
  }

  /** After an action. @param byPage it is a new one of the page, which leaves a clean schedule clean. */
  follow(schedule: LoadSchedule, byPage: boolean): void {
    if (byPage && !this.#dirty) this.clean(schedule);
    else this.#dirty = schedule.lastAction !== this.#clean;
  }
}
