import type { SheetName } from '../../src/schedule/index.ts';

/** What a problem of a file says to a page. */
export interface ElvProblem {
  readonly message: string;
  readonly line?: number;
  readonly column?: number;
}

/** A person changed the schedule, on whichever sheet; the schedule has its new figures already. */
export class ElvChangeEvent extends Event {
  static readonly type = 'elv-change';

  /** Name of the action: «Paste of 40 rows». */
  readonly label: string;
  /** Whether it was done, taken back, done again, or came with a file. */
  readonly cause: 'act' | 'undo' | 'redo' | 'load';

  constructor(label: string, cause: ElvChangeEvent['cause']) {
    super(ElvChangeEvent.type, { bubbles: true });
    this.label = label;
    this.cause = cause;
  }
}

/** A file was read: the one that `src` names, or one that a person opened. */
export class ElvLoadEvent extends Event {
  static readonly type = 'elv-load';

  /** Name of the file, or its address. */
  readonly name: string;
  /** The sheet that a CSV file gave; `undefined` for a whole schedule. */
  readonly sheet: SheetName | undefined;

  constructor(name: string, sheet?: SheetName) {
    super(ElvLoadEvent.type, { bubbles: true });
    this.name = name;
    this.sheet = sheet;
  }
}

/** A person saved the schedule as a file. Whether that was written cannot be known: downloads may be refused. */
export class ElvSaveEvent extends Event {
  static readonly type = 'elv-save';

  /** Name of the file. */
  readonly name: string;
  /** Its text. A page that takes it for kept gives it to `markSaved`. */
  readonly value: string;

  constructor(name: string, value: string) {
    super(ElvSaveEvent.type, { bubbles: true });
    this.name = name;
    this.value = value;
  }
}

/** A file could not be read; the schedule is as it was. */
export class ElvErrorEvent extends Event {
  static readonly type = 'elv-error';

  /** Name of the file, or its address. */
  readonly name: string;
  /** What is wrong with it, with line and column where there are any. */
  readonly problems: readonly ElvProblem[];

  constructor(name: string, problems: readonly ElvProblem[]) {
    super(ElvErrorEvent.type, { bubbles: true });
    this.name = name;
    this.problems = problems;
  }
}

/** A person chose a language, where the page offers several; the element's `lang` is that by then. */
export class ElvLanguageEvent extends Event {
  static readonly type = 'elv-language';

  /** Its language tag, as `languages` has it. */
  readonly language: string;

  constructor(language: string) {
    super(ElvLanguageEvent.type, { bubbles: true });
    this.language = language;
  }
}
