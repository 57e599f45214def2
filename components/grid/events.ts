import type { SheetName } from '../../src/schedule/index.ts';
import type { SelectionStatistics } from './selection-statistics.ts';

/** The selected cell, or what the selected cells come to, changed. */
export class CellSelectEvent extends Event {
  static readonly type = 'elv-cell-select';

  readonly sheet: SheetName;
  /** Id of the row; -1 on a line that is no row. */
  readonly id: number;
  readonly key: string;
  readonly statistics: SelectionStatistics;

  constructor(sheet: SheetName, id: number, key: string, statistics: SelectionStatistics) {
    super(CellSelectEvent.type, { bubbles: true, composed: true });
    this.sheet = sheet;
    this.id = id;
    this.key = key;
    this.statistics = statistics;
  }
}

/** How many rows of a sheet are in sight, and how many there are. */
export class RowsInSightEvent extends Event {
  static readonly type = 'elv-rows-in-sight';

  readonly seen: number;
  readonly all: number;

  constructor(seen: number, all: number) {
    super(RowsInSightEvent.type, { bubbles: true, composed: true });
    this.seen = seen;
    this.all = all;
  }
}

/** Asks for what can be done with a column: sort by it, pick rows by it. */
export class HeadingOpenEvent extends Event {
  static readonly type = 'elv-heading-open';

  readonly sheet: SheetName;
  readonly key: string;
  /** Where its heading stands in the window. */
  readonly box: DOMRect;

  constructor(sheet: SheetName, key: string, box: DOMRect) {
    super(HeadingOpenEvent.type, { bubbles: true, composed: true });
    this.sheet = sheet;
    this.key = key;
    this.box = box;
  }
}

/** What a person is to be told about what just happened in the grid. */
export interface GridMessage {
  readonly text: string;
  /** `refused` when something that was entered was not taken. */
  readonly tone: 'info' | 'refused';
  /** The action can be taken back. */
  readonly undoable: boolean;
  /** One line for each thing that was refused, when there are several. */
  readonly details: readonly string[];
  /** A list of devices that was not pasted, which a takeoff can read. */
  readonly list?: string | undefined;
}

export class MessageEvent extends Event implements GridMessage {
  static readonly type = 'elv-message';

  readonly text: string;
  readonly tone: 'info' | 'refused';
  readonly undoable: boolean;
  readonly details: readonly string[];
  readonly list: string | undefined;

  constructor({ text, tone, undoable, details, list }: GridMessage) {
    super(MessageEvent.type, { bubbles: true, composed: true });
    this.text = text;
    this.tone = tone;
    this.undoable = undoable;
    this.details = details;
    this.list = list;
  }
}

declare global {
  interface HTMLElementEventMap {
    'elv-cell-select': CellSelectEvent;
    'elv-heading-open': HeadingOpenEvent;
    'elv-message': MessageEvent;
    'elv-rows-in-sight': RowsInSightEvent;
  }
}
