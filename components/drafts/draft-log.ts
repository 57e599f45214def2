import type { ScheduleEvent } from '../../src/load-schedule.ts';
import type { LoggedAction } from '../../src/schedule/index.ts';

/** How many actions of a log can be taken back, and done again. */
export interface Depth {
  readonly done: number;
  readonly undone: number;
}

export const NO_DEPTH: Depth = { done: 0, undone: 0 };

/** The depth of a log after one more entry. */
export function depthAfter({ cause }: LoggedAction, { done, undone }: Depth): Depth {
  if (cause === 'act') return { done: done + 1, undone: 0 };
  return cause === 'undo' ? { done: done - 1, undone: undone + 1 } : { done: done + 1, undone: undone - 1 };
}

/**
 * What a log of a depth is to keep of events. Taking back what was done before the log began is an action to it.
 */
export function logged(events: readonly ScheduleEvent[], depth: Depth): { actions: LoggedAction[]; depth: Depth } {
  const actions: LoggedAction[] = [];
  let at = depth;
  for (const { cause, label, changes } of events) {
    const known = (cause === 'undo' && at.done > 0) || (cause === 'redo' && at.undone > 0);
    const action: LoggedAction = known ? { cause } : { cause: 'act', label, changes };
    actions.push(action);
    at = depthAfter(action, at);
  }
  return { actions, depth: at };
}
