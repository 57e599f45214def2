import { sha256 } from '../../src/report/digest/sha-256.ts';
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

/**
 * A person saves the schedule. A page that keeps it takes it over by `respondWith`; one that cancels the event saves it
 * in its own way, and says so by `markSaved`. Else it is handed out as a file, of which nobody can know whether it was
 * written: downloads may be refused.
 */
export class ElvSaveEvent extends Event {
  static readonly type = 'elv-save';

  /** Name of the file. */
  readonly name: string;
  /** Its text. A page that takes it for kept gives it to `markSaved`. */
  readonly value: string;
  readonly #began: string | undefined;
  #answer: Promise<unknown> | undefined;

  /** @param began the text of the file with which the schedule began, or that was kept last. */
  constructor(name: string, value: string, began?: string) {
    super(ElvSaveEvent.type, { bubbles: true, cancelable: true });
    this.name = name;
    this.value = value;
    this.#began = began;
  }

  /** SHA-256 of the text, as 64 hexadecimal digits. */
  get digest(): string {
    return digestOf(this.value);
  }

  /**
   * SHA-256 of the text with which the schedule began or that was kept last, as `value` gave it then; `undefined` where
   * it began with none. A page whose copy has another digest holds what somebody else changed since.
   */
  get base(): string | undefined {
    return this.#began === undefined ? undefined : digestOf(this.#began);
  }

  /**
   * Takes the schedule over: no file is handed out. The element says that it is being saved until the promise is
   * settled, then that it is saved, or why not, in the words of the error, and that it is to be saved again. To be
   * called while the event is dispatched, and once.
   * @param kept settled when the page has kept the value, refused with an error that says why not where it could not.
   */
  respondWith(kept: Promise<unknown>): void {
    if (this.#answer !== undefined || this.eventPhase === Event.NONE) {
      throw new DOMException('respondWith is called once, while elv-save is dispatched.', 'InvalidStateError');
    }
    this.#answer = kept;
    this.preventDefault();
  }

  /** @ignore The promise of the page that took it over. */
  get answer(): Promise<unknown> | undefined {
    return this.#answer;
  }
}

const digestOf = (text: string): string => sha256(new TextEncoder().encode(text));

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
