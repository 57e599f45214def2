import type { LoggedAction, Snapshot } from '../../src/schedule/index.ts';

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
}

/** What a draft holds: how the schedule began, and every action since, so that all of them can be undone. */
export interface DraftBody {
  readonly base: Snapshot;
  readonly actions: readonly LoggedAction[];
}

/** Where drafts are kept. Everything that is done either happens wholly or not at all, and then the promise is rejected. */
export interface DraftStore {
  /** The drafts under a key. */
  list(key: string): Promise<DraftHead[]>;
  create(head: Omit<DraftHead, 'id' | 'count' | 'ended'>, body: DraftBody): Promise<DraftHead>;
  /**
   * Adds actions to a draft, which is no longer ended by that.
   * @param head the draft as it was written last.
   * @throws DraftTaken when another wrote to it or removed it since.
   */
  append(head: DraftHead, actions: readonly LoggedAction[], at: number): Promise<DraftHead>;
  /** What a draft holds, whatever that is; `undefined` where there is nothing. */
  read(id: number): Promise<DraftBody | undefined>;
  /** Says whether a draft is ended. */
  end(id: number, ended: boolean): Promise<void>;
  remove(id: number): Promise<void>;
  close(): void;
}

/** A draft is not as it was left: it goes on elsewhere, or is gone. */
export class DraftTaken extends Error {
  constructor() {
    super('The draft was changed by another page.');
  }
}
