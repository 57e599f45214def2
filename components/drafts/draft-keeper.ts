import type { TemplateResult } from 'lit';
import { VERSION } from '../../src/exchange/index.ts';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import { fileDigest, sha256 } from '../../src/report/digest/index.ts';
import { toContent, type Content, type LoggedAction } from '../../src/schedule/index.ts';
import { writeDraftFile } from './draft-file.ts';
import { holdDraft } from './draft-lock.ts';
import { depthAfter, NO_DEPTH } from './draft-log.ts';
import type { DraftNotice } from './draft-notice.ts';
import { DraftSession, type OpenDraft } from './draft-session.ts';
import type { DraftBody, DraftHead, DraftPlace, DraftStore } from './draft-store.ts';
import { readDraft, renewDraft, repeatDraft } from './read-draft.ts';
import { isView } from './sound-draft.ts';

/** A database that has not answered by then is not waited for [ms]: the page's file is to be shown. */
const PATIENCE_MILLISECONDS = 3000;

/** A draft with more changes than this begins anew with the next visit, which would take long to repeat all of them. */
const MOST_CHANGES = 200_000;

/** What the keeping of drafts needs of the element. */
export interface DraftsHost {
  readonly schedule: LoadSchedule;
  /** Whether it shows nothing but what the page's file or nothing gave, so that a draft may take its place. */
  readonly untouched: boolean;
  /** Whether the page's file is on its way, so that nobody can know yet what a draft would take the place of. */
  readonly awaitsPage: boolean;
  /** What the page gave; `undefined` where it could not be had, or was changed since. */
  readonly pageContent: Content | undefined;
  /** Whether a person changed something that is kept nowhere yet. */
  readonly dirty: boolean;
  showDraft(schedule: LoadSchedule): void;
  /** Shows what the page gave in the place of a draft. */
  showPage(): Promise<void>;
  /** A person has what is shown as a file. */
  markSaved(): Promise<void>;
  /** Hands a text to the person as a file. */
  saveText(name: string, text: string): void;
  requestUpdate(): void;
}

/** A draft that no other page may write to. */
interface HeldDraft {
  readonly head: DraftHead;
  readonly release: () => void;
}

/**
 * Keeps what a person does to one schedule of the page, under its key: finds what earlier visits left, and writes down
 * what is done now.
 */
export class DraftKeeper {
  readonly place: DraftPlace;
  readonly #host: DraftsHost;
  readonly #store: DraftStore;
  #session: DraftSession;
  /** The draft that is shown as soon as it is known that the page still gives what it began from. */
  #found: HeldDraft | undefined;
  /** Digest of what the page gave last. */
  #page: string | undefined;
  /** The same in a list, until the page's file that has it is shown. */
  #coming: readonly string[] | undefined;
  #notices: readonly DraftNotice[] = [];
  #dismissed: DraftNotice['kind'] | undefined;
  /** Whether the browser keeps nothing. */
  #isOff = false;
  /** Whether the element is off its page. */
  #isAway = false;

  constructor(place: DraftPlace, host: DraftsHost, store: DraftStore) {
    this.place = place;
    this.#host = host;
    this.#store = store;
    this.#session = this.#sessionOf(host.schedule);
  }

  /** Whether a draft of what is shown is being written. */
  get isWriting(): boolean {
    return this.#session.head !== undefined;
  }

  /** What a person is to know. */
  get notices(): readonly DraftNotice[] {
    const { trouble } = this.#session;
    return trouble === undefined || trouble === this.#dismissed ? this.#notices : [{ kind: trouble }, ...this.#notices];
  }

  /**
   * Looks for what earlier visits left. The newest is to be shown where nothing else is, unless one of them is open
   * elsewhere: then a person chooses. Where the browser keeps nothing, a person is told, and that is all.
   * @returns settled when it is known what there is, or when the page's file can wait for that no longer. What is found
   * later takes its place as long as nobody has changed anything.
   */
  async find(): Promise<void> {
    const finding = this.#find().catch((error: unknown) => {
      this.#isOff = true;
      this.#note({ kind: 'unavailable' });
      console.warn('elv-load-schedule keeps no drafts:', error);
    });
    if (await isWithinPatience(finding)) return;
    this.#note({ kind: 'unavailable' });
    void finding.then(() => this.#foundLate());
  }

  /** Begins a draft with what a person did before this, if anything. */
  begin(): void {
    if (this.#host.dirty && !this.#host.awaitsPage) this.#session.begin();
  }

  /**
   * Takes down what the page gives, and shows the draft that was found in its place where that began from the same.
   * Where the page gives something else by now, both are kept and a person chooses.
   * @param content `undefined` where the page's file could not be had.
   * @param mayShow whether nothing would be hidden by the draft but what the page gives.
   * @returns whether a draft is shown.
   */
  given(content: Content | undefined, mayShow: boolean): Promise<boolean> {
    const digest = content && fileDigest(content);
    this.#page = digest;
    if (this.#host.awaitsPage) this.#coming = digest === undefined ? undefined : [digest];
    return this.#showFound(mayShow);
  }

  /** Takes down an action. Whoever goes on with a draft has accepted it. */
  follow(event: ScheduleEvent, byPerson: boolean): void {
    if (this.#isOff) return;
    if (event.cause === 'load') this.#session.files = this.#comes() ?? this.#session.files;
    this.#session.follow(event, byPerson);
    if (byPerson) this.#accept();
  }

  /** Follows another schedule from now on, which the page put in. The draft of the former is kept. */
  replaced(schedule: LoadSchedule): void {
    const files = this.#comes();
    if (schedule === this.#session.schedule) return;
    const session = this.#sessionOf(schedule);
    session.files = files;
    void this.#follow(session);
  }

  /**
   * The page has kept a value.
   * @param text the text of its file.
   * @param isAll whether nothing was done since: then the draft is not needed any more.
   */
  async saved(text: string, isAll: boolean): Promise<void> {
    const session = this.#session;
    const files = session.files = goingOnFrom(session.files, sha256(new TextEncoder().encode(text)));
    await this.#tried(() => session.mark(isAll ? { files, ended: true } : { files }));
    if (isAll) this.#accept();
  }

  /** What there is was handed to the person as a file. Whether that was written cannot be known, so the draft stays. */
  async handedOut(): Promise<void> {
    const at = Date.now();
    if (this.#session.head === undefined) return;
    this.#note({ kind: 'saved', at });
    await this.#tried(() => this.#session.mark({ savedAt: at }));
  }

  /** The schedule is looked at in another way: a draft that there is goes on with it. */
  async looked(): Promise<void> {
    if (this.#session.head === undefined) return;
    await this.#tried(() => this.#session.mark({ view: this.#session.schedule.document.view }));
  }

  /** The person has the file that was handed out. */
  confirmSaved(): Promise<void> {
    return this.#host.markSaved();
  }

  /** Shows a draft in the place of what there is, whose own draft is kept. */
  async show(id: number): Promise<void> {
    await this.#tried(async () => {
      const head = await this.#headOf(id);
      this.#forget((notice) => 'head' in notice && notice.head.id === id);
      const release = head === undefined ? undefined : await holdDraft(id);
      if (head !== undefined && !this.#isOwn(head)) {
        release?.();
        await this.#store.mark(id, { ended: false });
        this.#note({ kind: 'other', head });
      } else if (head === undefined || release === undefined) this.#note({ kind: 'elsewhere' });
      else if (await this.#open({ head, release }, 'restored')) {
        // Who chose it over what the page gives now has seen that.
        const session = this.#session;
        if (this.#page !== undefined) session.files = goingOnFrom(session.files, this.#page);
        await session.mark({ ended: false, files: session.files! });
      }
    });
  }

  /**
   * Does without a draft, which can be had back as long as the page is not left. The one that is shown gives way to the
   * page's.
   */
  async discard(id: number): Promise<void> {
    await this.#tried(async () => {
      const isShown = id === this.#session.head?.id;
      if (isShown) await this.#session.mark({ ended: true });
      else await this.#store.mark(id, { ended: true });
      const head = await this.#headOf(id);
      this.#forget((notice) => 'head' in notice && notice.head.id === id);
      if (isShown) {
        await this.#follow(this.#sessionOf(this.#host.schedule));
        await this.#host.showPage();
      }
      if (head !== undefined) this.#note({ kind: 'discarded', head });
    });
  }

  /** What became of the page's schedule since a draft began, and what the draft does to it; none if damaged. */
  async compare(id: number): Promise<TemplateResult | undefined> {
    let differences: TemplateResult | undefined;
    await this.#tried(async () => {
      const [head, { changesSince }] = await Promise.all([this.#headOf(id), import('./changes-since.ts')]);
      const body = head && await this.#bodyOf(head);
      differences = body && changesSince(body, this.#host.schedule);
    });
    return differences;
  }

  /** Hands a draft that cannot be shown to the person as a file. */
  async saveAsFile(id: number): Promise<void> {
    await this.#tried(async () => {
      const head = await this.#headOf(id);
      this.#host.saveText(`draft-${id}.json`, writeDraftFile(head, await this.#store.read(id)));
    });
  }

  /** Puts a notice away. */
  dismiss(notice: DraftNotice): void {
    this.#dismissed = notice.kind;
    this.#forget((each) => each === notice);
  }

  /** Writes down everything, and lets others have the draft while the element is off its page. */
  async pause(): Promise<void> {
    this.#isAway = true;
    this.#offerFound();
    await this.#session.pause();
  }

  resume(): Promise<void> {
    this.#isAway = false;
    return this.#session.resume();
  }

  /** Ends the keeping. The draft stays. */
  async close(): Promise<void> {
    await isWithinPatience(this.pause());
    this.#store.close();
  }

  async #find(): Promise<void> {
    const heads = await this.#store.list(this.place.key);
    for (const head of heads.filter((each) => !this.#isOwn(each))) {
      if (head.ended) void this.#tried(() => this.#removeFree(head.id));
      else this.#note({ kind: 'other', head });
    }
    const held = await Promise.all(heads.filter((head) => this.#isOwn(head) && head.id !== this.#session.head?.id)
      .map(async (head) => ({ head, release: await holdDraft(head.id) })));
    const isElsewhere = held.some(({ release }) => release === undefined);
    if (isElsewhere) this.#note({ kind: 'elsewhere' });
    for (const { head, release } of held.sort((one, other) => other.head.at - one.head.at)) {
      if (release === undefined) continue;
      if (head.ended) {
        await this.#store.remove(head.id);
        release();
      } else if (isElsewhere || this.#found !== undefined) this.#offer({ head, release }, 'kept');
      else this.#found = { head, release };
    }
    if (this.#isAway) this.#offerFound();
  }

  /** Nobody looks at the element: others may have what was found for it. */
  #offerFound(): void {
    if (this.#found !== undefined) this.#offer(this.#found, 'kept');
    this.#found = undefined;
  }

  /** The database has answered at last: what it has is shown or offered, and it keeps what is done. */
  async #foundLate(): Promise<void> {
    if (this.#isOff) return;
    this.#forget(({ kind }) => kind === 'unavailable');
    if (!this.#host.awaitsPage) await this.#showFound(this.#host.untouched);
  }

  /** @returns whether the draft that was found is shown; else a person is told of it. */
  async #showFound(mayShow: boolean): Promise<boolean> {
    const [found, page] = [this.#found, this.#page];
    this.#found = undefined;
    let isShown = false;
    if (found !== undefined) {
      await this.#tried(async () => {
        const isSame = page === undefined || (await this.#filesOf(found.head)).includes(page);
        if (isSame && mayShow) isShown = await this.#open(found, page === undefined ? 'unchecked' : 'restored');
        else this.#offer(found, isSame ? 'kept' : 'changed');
      });
    }
    return isShown;
  }

  /** Whether a draft is one of this schedule. Those of before do not say it. */
  #isOwn({ source = this.place.source }: DraftHead): boolean {
    return source === this.place.source;
  }

  /** Removes a draft that nobody has. */
  async #removeFree(id: number): Promise<void> {
    const release = await holdDraft(id);
    if (release !== undefined) await this.#store.remove(id);
    release?.();
  }

  /** Lets go of a draft, and tells that it is there. */
  #offer({ head, release }: HeldDraft, kind: 'kept' | 'changed'): void {
    release();
    this.#note({ kind: head.version <= VERSION ? kind : 'foreign', head });
  }

  async #headOf(id: number): Promise<DraftHead | undefined> {
    return (await this.#store.list(this.place.key)).find((each) => each.id === id);
  }

  /** What a draft holds, as this version keeps it; `undefined` where an older one is damaged. */
  async #bodyOf({ id, version }: DraftHead): Promise<DraftBody | undefined> {
    const body = await this.#store.read(id);
    return body && renewDraft(body, version);
  }

  /** Digests of what the page gave when a draft began. Where it does not say, what it began with stands for that. */
  async #filesOf(head: DraftHead): Promise<readonly string[]> {
    const { version, files } = head;
    // The same schedule has another digest in another version of the file.
    if (files !== undefined && version === VERSION) return files;
    const body = await this.#bodyOf(head);
    const began = body && repeatDraft({ base: body.base, actions: [] });
    return began === undefined ? [] : [fileDigest(toContent(began))];
  }

  /** @returns whether the draft is shown now; else it is let go of, and a person is told. */
  async #open(found: HeldDraft, kind: 'restored' | 'unchecked'): Promise<boolean> {
    const refuse = (why: 'foreign' | 'damaged') => {
      found.release();
      this.#note({ kind: why, head: found.head });
      return false;
    };
    if (found.head.version > VERSION) return refuse('foreign');
    const body = await this.#bodyOf(found.head);
    const schedule = body?.actions.length === found.head.count ? readDraft(body) : undefined;
    if (body === undefined || schedule === undefined) return refuse('damaged');
    const { view } = found.head;
    if (view !== undefined && isView(view)) schedule.document.view = view;
    // It is shown with its figures.
    await schedule.formulasReady();
    const files = await this.#filesOf(found.head);
    const { head, release } = found.head.version === VERSION ? found : await this.#renew(found, body);
    const depth = body.actions.reduce((sum, action) => depthAfter(action, sum), NO_DEPTH);
    const isLong = body.actions.reduce((sum, action) => sum + sizeOf(action), 0) > MOST_CHANGES;
    const session = this.#sessionOf(schedule, isLong ? undefined : { head: { ...head, files }, depth, release });
    if (isLong) {
      session.files = files;
      await this.#shorten(session, head.id, release);
    }
    const left = this.#follow(session);
    this.#host.showDraft(schedule);
    this.#note({ kind, head: session.head ?? head });
    await left;
    return true;
  }

  /** Puts a draft as this version keeps it in the place of an older one. */
  async #renew({ head, release }: HeldDraft, body: DraftBody): Promise<HeldDraft> {
    const made = { ...head, id: this.#store.newId(), version: VERSION };
    await this.#store.create(made, body);
    await this.#store.remove(head.id);
    release();
    return { head: made, release: await holdDraft(made.id) ?? (() => undefined) };
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
    this.#forget(({ kind }) => kind === 'saved');
    await left.pause();
    const { head } = left;
    if (head === undefined) return;
    if (head.ended) this.#forget((notice) => 'head' in notice && notice.head.id === head.id);
    else this.#note({ kind: 'kept', head });
  }

  /** What comes is shown: only that is it. */
  #comes(): readonly string[] | undefined {
    const files = this.#coming;
    this.#coming = undefined;
    return files;
  }

  #sessionOf(schedule: LoadSchedule, open?: OpenDraft): DraftSession {
    return new DraftSession(schedule, this.place, this.#store, this.#told, open);
  }

  /** What is shown is as the person wants it. */
  #accept(): void {
    this.#forget(({ kind }) => kind === 'restored' || kind === 'unchecked' || kind === 'saved');
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
    const others = this.#notices.filter((each) =>
      ('head' in each && 'head' in notice ? each.head.id !== notice.head.id : each.kind !== notice.kind));
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

/** Digests of what a draft goes on from, which are the first and this one. */
function goingOnFrom(files: readonly string[] = [], digest: string): readonly string[] {
  return [...new Set([...files.slice(0, 1), digest])];
}

/** How many cells, rows and other things an action changes, more or less. */
function sizeOf(action: LoggedAction): number {
  return action.cause === 'act'
    ? action.changes.reduce((sum, change) => sum + (change.op === 'insert' ? change.rows.length : 1), 0)
    : 1;
}

/** Waits for something, but not longer than the page's file can wait. @returns whether it has come by then. */
async function isWithinPatience(coming: Promise<void>): Promise<boolean> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<false>((resolve) => { timer = setTimeout(resolve, PATIENCE_MILLISECONDS, false); });
  return Promise.race([coming.then(() => true), late]).finally(() => { clearTimeout(timer); });
}
