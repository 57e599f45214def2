import { VERSION } from '../../src/exchange/index.ts';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import { ScheduleDocument, type Snapshot } from '../../src/schedule/index.ts';
import { whenIdle } from '../look/when-idle.ts';
import { holdDraft } from './draft-lock.ts';
import { logged, NO_DEPTH, type Depth } from './draft-log.ts';
import { DraftTaken, type DraftHead, type DraftStore } from './draft-store.ts';

/** An action is written this much later at the latest [ms]. */
const LATEST_MILLISECONDS = 300;

/** Why the last actions could not be written; they are tried again with the next one. */
export type DraftTrouble = 'full' | 'failed';

/** An earlier draft that goes on. */
export interface OpenDraft {
  readonly head: DraftHead;
  readonly depth: Depth;
  /** Lets others have it. */
  readonly release: () => void;
}

/** Keeps the draft of one schedule: writes down each action soon after it was done. */
export class DraftSession {
  readonly schedule: LoadSchedule;
  trouble: DraftTrouble | undefined;
  readonly #key: string;
  readonly #store: DraftStore;
  readonly #told: (news: 'trouble' | 'taken') => void;
  #head: DraftHead | undefined;
  #release: (() => void) | undefined;
  #depth = NO_DEPTH;
  /** What is not written yet. */
  #events: ScheduleEvent[] = [];
  /** Whether there is something to write even without an event. */
  #due = false;
  #work: Promise<void> = Promise.resolve();
  #cancel: (() => void) | undefined;
  /** While the session is paused: the last action before. */
  #pause: { readonly after: object | undefined } | undefined;

  /**
   * @param told called when trouble came or went, and when others went on with the draft, so that it has become two.
   * @param open the draft whose schedule this is; without one a draft begins with the first action of a person.
   */
  constructor(schedule: LoadSchedule, key: string, store: DraftStore, told: (news: 'trouble' | 'taken') => void, open?: OpenDraft) {
    this.schedule = schedule;
    this.#key = key;
    this.#store = store;
    this.#told = told;
    if (open === undefined) return;
    this.#head = open.head;
    this.#depth = open.depth;
    this.#release = open.release;
  }

  /** The draft as it was written last; absent while there is none. */
  get head(): DraftHead | undefined {
    return this.#head;
  }

  /** Begins a draft with what there is, as when actions were done before this. */
  begin(): void {
    this.#due = true;
    this.#soon();
  }

  /** Takes down an action. What a page does before the first action of a person needs no draft. */
  follow(event: ScheduleEvent, byPerson: boolean): void {
    if (!byPerson && this.#head === undefined && this.#events.length === 0) return;
    this.#events.push(event);
    this.#soon();
  }

  /** Writes down everything now. @returns settled when it is tried. */
  flush(): Promise<void> {
    this.#cancel?.();
    this.#cancel = undefined;
    return this.#work = this.#work.then(() => this.#write());
  }

  /** Writes down everything and marks the draft as one that is not needed any more. The next action needs it again. */
  async end(): Promise<void> {
    await this.flush();
    if (this.#head === undefined) return;
    await this.#store.end(this.#head.id, true);
    this.#head = { ...this.#head, ended: true };
  }

  /** Writes down everything, and lets others have the draft. */
  async pause(): Promise<void> {
    const pause = this.#pause = { after: this.schedule.lastAction };
    await this.flush();
    if (this.#pause !== pause) return;
    this.#release?.();
    this.#release = undefined;
  }

  /** Goes on after a pause. When others have the draft by then, or the schedule was changed, it becomes one of its own. */
  async resume(): Promise<void> {
    const pause = this.#pause;
    if (pause === undefined) return;
    this.#pause = undefined;
    const isChanged = this.schedule.lastAction !== pause.after;
    await this.#work;
    if (this.#head === undefined || this.#release !== undefined) return;
    this.#release = await holdDraft(this.#head.id);
    if (this.#release === undefined) this.#part('taken');
    else if (isChanged) this.#part();
  }

  #soon(): void {
    this.#cancel ??= whenIdle(() => { void this.flush(); }, LATEST_MILLISECONDS);
  }

  async #write(): Promise<void> {
    if (this.#events.length === 0 && !this.#due) return;
    const events = [...this.#events];
    try {
      if (this.#head === undefined) await this.#create(events);
      else await this.#append(this.#head, events);
    } catch (error) {
      if (error instanceof DraftTaken) {
        this.#part('taken');
        await this.#write();
      } else this.#tell(isFull(error) ? 'full' : 'failed');
      return;
    }
    this.#events.splice(0, events.length);
    this.#due = false;
    this.#tell(undefined);
  }

  async #create(events: readonly ScheduleEvent[]): Promise<void> {
    const { actions, depth } = logged(events, NO_DEPTH);
    const head = { key: this.#key, version: VERSION, at: Date.now() };
    this.#head = await this.#store.create(head, { base: before(this.schedule, events), actions });
    this.#depth = depth;
    this.#release = await holdDraft(this.#head.id);
  }

  async #append(head: DraftHead, events: readonly ScheduleEvent[]): Promise<void> {
    const { actions, depth } = logged(events, this.#depth);
    this.#head = await this.#store.append(head, actions, Date.now());
    this.#depth = depth;
  }

  /** Leaves the draft to those who have it, and goes on with one of its own, which begins with all that there is. */
  #part(news?: 'taken'): void {
    this.#release?.();
    this.#release = this.#head = undefined;
    this.begin();
    if (news !== undefined) this.#told(news);
  }

  #tell(trouble: DraftTrouble | undefined): void {
    if (trouble === this.trouble) return;
    this.trouble = trouble;
    this.#told('trouble');
  }
}

/** How a schedule was before some events. */
function before(schedule: LoadSchedule, events: readonly ScheduleEvent[]): Snapshot {
  const now = schedule.document.snapshot();
  if (events.length === 0) return now;
  const document = new ScheduleDocument(now);
  for (const { inverse } of [...events].reverse()) document.perform(inverse);
  return document.snapshot();
}

function isFull(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'QuotaExceededError';
}
