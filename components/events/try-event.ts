import type { Trial } from '../variants/trial.ts';

/**
 * Asks, inside the element, to show what is tried out in the place of the schedule, or without it the schedule again.
 */
export class TryEvent extends Event {
  static readonly type = 'elv-try';

  readonly trial: Trial | undefined;

  constructor(trial?: Trial) {
    super(TryEvent.type, { bubbles: true, composed: true });
    this.trial = trial;
  }
}
