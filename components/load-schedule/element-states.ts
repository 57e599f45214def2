import type { Task } from '../events/index.ts';

/**
 * The states of an element that styles of a page can tell: `:state(dirty)`, `:state(invalid)`, `:state(computing)`,
 * `:state(saving)`, `:state(failed)`.
 */
export class ElementStates {
  readonly #states: CustomStateSet;
  readonly #tasks = new Set<Task>();

  constructor(internals: ElementInternals) {
    this.#states = internals.states;
  }

  set(state: 'dirty' | 'invalid' | 'saving' | 'failed', holds: boolean): void {
    this.#put(state, holds);
  }

  /** Begins or ends a task; the element is computing as long as one is going on. */
  busy(task: Task, isRunning: boolean): void {
    if (isRunning) this.#tasks.add(task);
    else this.#tasks.delete(task);
    this.#put('computing', this.#tasks.size > 0);
  }

  #put(state: string, holds: boolean): void {
    if (holds) this.#states.add(state);
    else this.#states.delete(state);
  }
}
