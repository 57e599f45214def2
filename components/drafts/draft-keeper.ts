import { VERSION } from '../../src/exchange/index.ts';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import type { LoggedAction } from '../../src/schedule/index.ts';
import { writeDraftFile } from './draft-file.ts';
import { holdDraft } from './draft-lock.ts';
import { depthAfter, NO_DEPTH } from './draft-log.ts';
import type { DraftNotice } from './draft-notice.ts';
import { DraftSession } from './draft-session.ts';
import type { DraftHead, DraftStore } from './draft-store.ts';
import { readDraft } from './read-draft.ts';

/** A database that has not answered by then is not waited for [ms]: the page's file is to be shown. */
const PATIENCE_MILLISECONDS = 3000;

/** A draft with more changes than this begins anew with the next visit, which would take long to repeat all of them. */
const MOST_CHANGES = 200_000;

/** What the keeping of drafts needs of the element. */
export interface DraftsHost {
  readonly schedule: LoadSchedule;
  /** Whether it shows nothing but what the page's file or nothing gave, so that a draft may take its place. */
  readonly untouched: boolean;
  /** Whether a person changed something that is kept nowhere yet. */
  readonly dirty: boolean;
  showDraft(schedule: LoadSchedule): void;
  /** Shows what the page gave in the place of a draft. */
  showPage(): Promise<void>;
  /** Hands a text to the person as a file. */
  saveText(name: string, text: string): void;
  requestUpdate(): void;
}

/** Keeps what a person does under one key of the page: finds what earlier visits left, and writes down what is done now. */
export class DraftKeeper {
  readonly #key: string;
  readonly #host: DraftsHost;
  readonly #store: DraftStore;
  #session: DraftSession;
  #notices: readonly DraftNotice[] = [];
  #dismissed: DraftNotice['kind'] | undefined;
  /** Whether the browser keeps nothing. */
  #isOff = false;

  constructor(key: string, host: DraftsHost, store: DraftStore) {
    this.#key = key;
    this.#host = host;
    this.#store = store;
    this.#session = this.#sessionOf(host.schedule);
    if (host.dirty) this.#session.begin();
  }

  /** What a person is to know. */
  get notices(): readonly DraftNotice[] {
    const { trouble } = this.#session;
    return trouble === undefined || trouble === this.#dismissed ? this.#notices : [{ kind: trouble }, ...this.#notices];
  }

  /**
   * Looks for what earlier visits left. The newest is shown where nothing else is, unless one of them is open elsewhere: then
   * a person chooses. Where the browser keeps nothing, a person is told, and that is all.
   * @returns whether a draft is shown.
   */
  async find(): Promise<boolean> {
    try {
      return await this.#find();
    } catch (error) {
      this.#isOff = true;
      this.#note({ kind: 'unavailable' });
      console.warn('elv-load-schedule keeps no drafts:', error);
      return false;
    }
  }

  /** Takes down an action. Whoever goes on with a draft has accepted it. */
  follow(event: ScheduleEvent, byPerson: boolean): void {
    if (this.#isOff) return;
    this.#session.follow(event, byPerson);
    if (byPerson) this.#forget(({ kind }) => kind === 'restored');
  }

  /** Follows another schedule from now on, which the page put in. The draft of the former is kept. */
  replaced(schedule: LoadSchedule): void {
    if (schedule !== this.#session.schedule) void this.#follow(this.#sessionOf(schedule));
  }

  /** What there is, is kept elsewhere: the draft is not needed any more. */
  async saved(): Promise<void> {
    await this.#tried(() => this.#session.mark({ ended: true }));
    this.#forget(({ kind }) => kind === 'restored');
  }

  /** Shows a draft in the place of what there is, whose own draft is kept. */
  async show(id: number): Promise<void> {
    await this.#tried(async () => {
      const head = (await this.#store.list(this.#key)).find((each) => each.id === id);
      this.#forget((notice) => 'id' in notice && notice.id === id);
      const release = head === undefined ? undefined : await holdDraft(id);
      if (head === undefined || release === undefined) this.#note({ kind: 'elsewhere' });
      else if (await this.#open(head, release)) await this.#store.mark(id, { ended: false });
    });
  }

  /** Does without a draft, which can be had back as long as the page is not left. The one that is shown gives way to the page's. */
  async discard(id: number): Promise<void> {
    await this.#tried(async () => {
      const isShown = id === this.#session.head?.id;
      if (isShown) await this.#session.mark({ ended: true });
      else await this.#store.mark(id, { ended: true });
      const head = (await this.#store.list(this.#key)).find((each) => each.id === id);
      this.#forget((notice) => 'id' in notice && notice.id === id);
      if (isShown) {
        await this.#session.pause();
        this.#session = this.#sessionOf(this.#host.schedule);
        await this.#host.showPage();
      }
      if (head !== undefined) this.#note({ kind: 'discarded', id, at: head.at });
    });
  }

  /** Hands a draft that cannot be shown to the person as a file. */
  async saveAsFile(id: number): Promise<void> {
    await this.#tried(async () => {
      const head = (await this.#store.list(this.#key)).find((each) => each.id === id);
      this.#host.saveText(`draft-${id}.json`, writeDraftFile(head, await this.#store.read(id)));
    });
  }

  /** Puts a notice away. */
  dismiss(notice: DraftNotice): void {
    this.#dismissed = notice.kind;
    this.#forget((each) => each === notice);
  }

  flush(): Promise<void> {
    return this.#session.flush();
  }

  /** Writes down everything, and lets others have the draft while the element is off its page. */
  pause(): Promise<void> {
    return this.#session.pause();
  }

  resume(): Promise<void> {
    return this.#session.resume();
  }

  /** Ends the keeping. The draft stays. */
  async close(): Promise<void> {
    await this.#session.pause();
    this.#store.close();
  }

  async #find(): Promise<boolean> {
    const heads = await withinPatience(this.#store.list(this.#key));
    const held = await Promise.all(heads.filter(({ id }) => id !== this.#session.head?.id)
      .map(async (head) => ({ head, release: await holdDraft(head.id) })));
    const isElsewhere = held.some(({ release }) => release === undefined);
    if (isElsewhere) this.#note({ kind: 'elsewhere' });
    let isShown = false;
    for (const { head, release } of held.sort((one, other) => other.head.at - one.head.at)) {
      if (release === undefined) continue;
      if (head.ended) {
        await this.#store.remove(head.id);
        release();
      } else if (isElsewhere || isShown || !this.#host.untouched) {
        this.#note({ kind: head.version === VERSION ? 'kept' : 'foreign', id: head.id, at: head.at });
        release();
      } else isShown = await this.#open(head, release);
    }
    return isShown;
  }

  /** @returns whether the draft is shown now; else it is let go of, and a person is told. */
  async #open(head: DraftHead, release: () => void): Promise<boolean> {
    const { id, at } = head;
    const refuse = (kind: 'foreign' | 'damaged') => {
      release();
      this.#note({ kind, id, at });
      return false;
    };
    if (head.version !== VERSION) return refuse('foreign');
    const body = await this.#store.read(id);
    const schedule = body?.actions.length === head.count ? readDraft(body) : undefined;
    if (body === undefined || schedule === undefined) return refuse('damaged');
    const depth = body.actions.reduce((sum, action) => depthAfter(action, sum), NO_DEPTH);
    const isLong = body.actions.reduce((sum, action) => sum + sizeOf(action), 0) > MOST_CHANGES;
    const session = new DraftSession(schedule, this.#key, this.#store, this.#told, isLong ? undefined : { head, depth, release });
    if (isLong) await this.#shorten(session, id, release);
    const left = this.#follow(session);
    this.#host.showDraft(schedule);
    this.#note({ kind: 'restored', id: session.head?.id ?? id, at });
    await left;
    return true;
  }

  /** Puts a draft that begins with what there is in the place of a long one, as soon as it is written. */
  async #shorten(session: DraftSession, id: number, release: () => void): Promise<void> {
    session.begin();
    await session.flush();
    if (session.head !== undefined) await this.#store.remove(id);
    release();
  }

  /** Keeps the draft of another session from now on; that of the former is offered. */
  async #follow(session: DraftSession): Promise<void> {
    const left = this.#session;
    this.#session = session;
    await left.pause();
    const { head } = left;
    if (head === undefined) return;
    if (head.ended) this.#forget((notice) => 'id' in notice && notice.id === head.id);
    else this.#note({ kind: 'kept', id: head.id, at: head.at });
  }

  #sessionOf(schedule: LoadSchedule): DraftSession {
    return new DraftSession(schedule, this.#key, this.#store, this.#told);
  }

  readonly #told = (news: 'trouble' | 'taken'): void => {
    this.#dismissed = undefined;
    if (news === 'taken') this.#note({ kind: 'taken' });
    this.#host.requestUpdate();
  };

  async #tried(task: () => Promise<void>): Promise<void> {
    try {
      await task();
    } catch (error) {
      this.#note({ kind: 'failed' });
      reportError(error);
    }
  }

  #note(notice: DraftNotice): void {
    const id = 'id' in notice ? notice.id : undefined;
    const others = this.#notices.filter((each) => ('id' in each ? each.id !== id : each.kind !== notice.kind));
    this.#notices = [notice, ...others];
    this.#host.requestUpdate();
  }

  #forget(which: (notice: DraftNotice) => boolean): void {
    const left = this.#notices.filter((each) => !which(each));
    if (left.length === this.#notices.length) return;
    this.#notices = left;
    this.#host.requestUpdate();
  }
}

/** How many cells, rows and other things an action changes, more or less. */
function sizeOf(action: LoggedAction): number {
  return action.cause === 'act' ? action.changes.reduce((sum, change) => sum + (change.op === 'insert' ? change.rows.length : 1), 0) : 1;
}

async function withinPatience<Result>(answer: Promise<Result>): Promise<Result> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => { reject(new Error('The database of the browser does not answer.')); }, PATIENCE_MILLISECONDS);
  });
  return Promise.race([answer, late]).finally(() => { clearTimeout(timer); });
}
