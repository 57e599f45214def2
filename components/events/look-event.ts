import type { SheetLook } from '../../src/schedule/index.ts';

/** Asks, inside the element, to have the sheet that is shown looked at in another way. */
export class LookEvent extends Event {
  static readonly type = 'elv-look';

  readonly changed: Partial<SheetLook>;

  constructor(changed: Partial<SheetLook>) {
    super(LookEvent.type, { bubbles: true, composed: true });
    this.changed = changed;
  }
}
