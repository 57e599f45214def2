import type { RememberedColumns } from '../../src/exchange/takeoff/index.ts';

/** A takeoff was taken: a page may keep what its columns hold, and give it back as `takeoffColumns` another day. */
export class ElvColumnsEvent extends Event {
  static readonly type = 'elv-columns';

  /** What each column holds, by its heading. */
  readonly columns: RememberedColumns;

  constructor(columns: RememberedColumns) {
    super(ElvColumnsEvent.type, { bubbles: true, composed: true });
    this.columns = columns;
  }
}
