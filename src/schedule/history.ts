import type { Change } from './change.ts';
import type { ScheduleDocument } from './document.ts';

/** Changes that were carried out, and those that take them back. */
export interface Step {
  readonly changes: readonly Change[];
  readonly inverse: readonly Change[];
}

interface Action extends Step {
  readonly label: string;
}

/** What a log keeps of a session: an action with its changes, or that the last one was taken back or done again. */
export type LoggedAction =
  | { readonly cause: 'act'; readonly label: string; readonly changes: readonly Change[] }
  | { readonly cause: 'undo' | 'redo' };

/**
 * The actions of a session on one document, to be taken back and done again one at a time, across sheets and without
 * a limit in number.
 */
export class History {
  readonly #document: ScheduleDocument;
  #done: Action[] = [];
  #undone: Action[] = [];

  constructor(document: ScheduleDocument) {
    this.#document = document;
  }

  /**
   * Carries out changes as one action.
   * @param label names it for a person: «Paste of 40 rows».
   * @returns the changes that take it back.
   */
  act(label: string, changes: readonly Change[]): readonly Change[] {
    const inverse = this.#document.perform(changes);
    this.#done.push({ label, changes, inverse });
    this.#undone = [];
    return inverse;
  }

  /**
   * Carries out again what a log kept.
   * @throws RangeError when it does not fit what is there: the log belongs to another document.
   */
  repeat(logged: LoggedAction): void {
    if (logged.cause === 'act') this.act(logged.label, logged.changes);
    else if (this[logged.cause]() === undefined) throw new RangeError(`The log has no action to ${logged.cause}.`);
  }

  /**
   * The action that `undo` would take back: the same object again whenever the document is as it was right after it.
   */
  get last(): object | undefined {
    return this.#done.at(-1);
  }

  /** What takes all actions back, in the order in which it is carried out. */
  get inverse(): Change[] {
    return [...this.#done].reverse().flatMap(({ inverse }) => inverse);
  }

  /** Label of the action that `undo` would take back. */
  get undoLabel(): string | undefined {
    return this.#done.at(-1)?.label;
  }

  /** Label of the action that `redo` would do again. */
  get redoLabel(): string | undefined {
    return this.#undone.at(-1)?.label;
  }

  /** Takes back the last action. @returns what was done for it; `undefined` when there is nothing to take back. */
  undo(): Step | undefined {
    const action = this.#done.pop();
    if (action === undefined) return undefined;
    this.#document.perform(action.inverse);
    this.#undone.push(action);
    return { changes: action.inverse, inverse: action.changes };
  }

  /** Does the last action that was taken back again. @returns what was done for it. */
  redo(): Step | undefined {
    const action = this.#undone.pop();
    if (action === undefined) return undefined;
    this.#document.perform(action.changes);
    this.#done.push(action);
    return { changes: action.changes, inverse: action.inverse };
  }
}
