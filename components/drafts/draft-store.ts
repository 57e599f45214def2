import type { LoggedAction, Snapshot, View } from '../../src/schedule/index.ts';

/** What is known of a draft without reading it. */
export interface DraftHead {
  readonly id: number;
  /** The key of the page under which it is kept. */
  readonly key: string;
  /** Version of the file format whose keys its cells have. */
  readonly version: number;
  /** When something was written to it last [ms since 1970-01-01 UTC]. */
  readonly at: number;
  /** Number of actions in it. */
  readonly count: number;
  /** What it holds is kept elsewhere, or not wanted any more: the next visit removes it. */
  readonly ended: boolean;
  /** Address of the page's file; empty where the page names none. Absent in drafts of before, as is what follows. */
  readonly source?: string;
  /** Digests of what the page gave: the one that it began from, and the last one that it is known to go on from. */
  readonly files?: readonly string[];
  /** Project and panel, by which a person knows it. */
  readonly title?: string;
  /** When it was handed out as a file [ms]; absent where it was not, or an action came after. */
  readonly savedAt?: number | undefined;
  /** How its schedule is looked at, which is no action; as its base says where it is absent. */
  readonly view?: View | undefined;
}

/** Where a draft belongs: no schedule of another key, or of another file of the page, may be shown in its place. */
export type DraftPlace = Required<Pick<DraftHead, 'key' | 'source'>>;

/** What is said of a draft beside what it holds. */
export type DraftMarks = Partial<Pick<DraftHead, 'ended' | 'files' | 'savedAt' | 'view'>>;

/** What a draft holds: how the schedule began, and every action since, so that all of them can be undone. */
export interface DraftBody {
  readonly base: Snapshot;
  readonly actions: readonly LoggedAction[];
}

/** An action and its number in the draft, from 1. */
export interface DraftLine {
  readonly number: number;
  readonly action: LoggedAction;
}

/**
 * Where drafts are kept. Everything that is done either happens wholly or not at all, and then the promise is rejected.
 * Once it has answered for the first time, what is asked for is under way when the call returns, and is done in order.
 */
export interface DraftStore {
  /** A number that no draft has. */
  newId(): number;
  /** The drafts under a key. */
  list(key: string): Promise<DraftHead[]>;
  create(head: DraftHead, body: DraftBody): Promise<void>;
  /**
   * Adds actions to a draft.
   * @param head what is known of it with them.
   * @throws DraftTaken when another wrote actions of these numbers, or removed it.
   */
  append(head: DraftHead, lines: readonly DraftLine[]): Promise<void>;
  /** What a draft holds, whatever that is; `undefined` where there is nothing. */
  read(id: number): Promise<DraftBody | undefined>;
  /**
   * Says something of a draft.
   * @param count number of actions for which it is true: nothing is said of a draft that has another by then.
   */
  mark(id: number, marks: DraftMarks, count?: number): Promise<void>;
  remove(id: number): Promise<void>;
  close(): void;
}

/** A draft is not as it was left: it goes on elsewhere, or is gone. */
export class DraftTaken extends Error {
  constructor() {
    super('The draft was changed by another page.');
  }
}
