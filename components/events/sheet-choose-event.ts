import type { SheetName } from '../../src/schedule/index.ts';

/** Asks, inside the element, to show another sheet. */
export class SheetChooseEvent extends Event {
  static readonly type = 'elv-sheet-choose';

  readonly sheet: SheetName;

  constructor(sheet: SheetName) {
    super(SheetChooseEvent.type, { bubbles: true, composed: true });
    this.sheet = sheet;
  }
}
