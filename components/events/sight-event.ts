import type { Sight } from '../grid/lines/sight-type.ts';

/** Asks, inside the element, for other rows of the sheet that is shown, or for another order of them. */
export class SightEvent extends Event {
  static readonly type = 'elv-sight';

  readonly changed: Partial<Sight>;

  constructor(changed: Partial<Sight>) {
    super(SightEvent.type, { bubbles: true, composed: true });
    this.changed = changed;
  }
}
