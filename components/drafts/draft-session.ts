import { VERSION } from '../../src/exchange/index.ts';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import { fileDigest } from '../../src/report/digest/index.ts';
import { ScheduleDocument, toContent } from '../../src/schedule/index.ts';
import { holdDraft } from './draft-lock.ts';
import { logged, NO_DEPTH, type Depth } from './draft-log.ts';
import {
  DraftTaken, type DraftHead, type DraftLine, type DraftMarks, type DraftPlace, type DraftStore,
} from './draft-store.ts';

/** Why the last actions could not be written; they are tried again with the next one. */
export type DraftTrouble = 'full' | 'failed';

/** An earlier draft that goes on. */
export interface OpenDraft {
  readonly head: DraftHead;
  readonly depth: Depth;
  /** Lets others have it. */
  readonly release: () => void;
}

/** The draft that is being written. */
interface Draft {
  /** What is known of it with all that is being written. */
  head: DraftHead;
  release: (() => void) | undefined;
}

/** An action that is not known to be written. */
interface Line extends DraftLine {
  readonly event: ScheduleEvent;
  isOnItsWay: boolean;
}

/** Keeps the draft of one schedule: begins to write each action before anything else can happen. */
export class DraftSession {
  readonly schedule: LoadSchedule;
  trouble: DraftTrouble | undefined;
  /** Digests of what the page gave; where they are not known, a draft that begins takes what it begins with for it. */
  files: readonly string[] | undefined;
  readonly #place: DraftPlace;
  readonly #store: DraftStore;
  readonly #told: (news: 'trouble' | 'taken') => void;
  #draft: Draft | undefined;
  #depth = NO_DEPTH;
  #lines: Line[] = [];
  /** Whether a draft is to begin even without an action. */
  #isDue = false;
  /** Everything that is being written; never rejected. */
  #work: Promise<unknown> = Promise.resolve();
  /** While the session is paused: the last action before. */
  #pause: { readonly after: object | undefined } | undefined;

  /**
   * @param told called when trouble came or went, and when others went on with the draft, so that it has become two.
   * @param open the draft whose schedule this is; without one a draft begins with the first action of a person.
   */
  constructor(
    schedule: LoadSchedule, place: DraftPlace, store: DraftStore, told: (news: 'trouble' | 'taken') => void,
    open?: OpenDraft,
  ) {
    this.schedule = schedule;
    this.#place = place;
    this.#store = store;
    this.#told = told;
    if (open === undefined) {
      if (schedule.lastAction === undefined) return;
      // The page gave what there was before the first action, or has kept what there is.
      const given = [schedule.contentAtStart(), schedule.content()];
      this.files = [...new Set(given.map((content) => fileDigest(content)))];
      return;
    }
    this.#draft = { head: { ...open.head, ...place }, release: open.release };
    this.files = open.head.files;
    this.#depth = open.depth;
  }

  /** What is known of the draft; absent while there is none. */
  get head(): DraftHead | undefined {
    return this.#draft?.head;
  }

  /** Begins a draft with what there is, as when actions were done before this. */
  begin(): void {
    this.#isDue = true;
    this.#write();
  }

  /** Takes down an action. What a page does before the first action of a person needs no draft. */
  follow(event: ScheduleEvent, byPerson: boolean): void {
    if (!byPerson && this.#draft === undefined && this.#lines.length === 0) return;
    const { actions: [action], depth } = logged([event], this.#depth);
    this.#depth = depth;
    const number = Math.max(this.#lines.at(-1)?.number ?? 0, this.#draft?.head.count ?? 0) + 1;
    this.#lines.push({ number, action: action!, event, isOnItsWay: false });
    this.#write();
  }

  /** Tries again what could not be written. @returns settled when nothing is on its way any more. */
  async flush(): Promise<void> {
    this.#write();
    for (let work; work !== this.#work;) await (work = this.#work);
  }

  /** Says something of the draft as it is now; of none where an action comes before that is written. */
  async mark(marks: DraftMarks): Promise<void> {
    this.#write();
    const draft = this.#draft;
    if (draft === undefined) return;
    draft.head = { ...draft.head, ...marks };
    await this.#store.mark(draft.head.id, marks, draft.head.count);
  }

  /** Writes down everything, and lets others have the draft. */
  async pause(): Promise<void> {
    const pause = this.#pause = { after: this.schedule.lastAction };
    await this.flush();
    if (this.#pause === pause) this.#letGo();
  }

  /**
   * Goes on after a pause. When others have the draft by then, or the schedule was changed, it becomes one of its own.
   */
  async resume(): Promise<void> {
    const pause = this.#pause;
    if (pause === undefined) return;
    this.#pause = undefined;
    const isChanged = this.schedule.lastAction !== pause.after;
    await this.#work;
    const draft = this.#draft;
    if (draft === undefined || draft.release !== undefined) return;
    draft.release = await holdDraft(draft.head.id);
    if (draft.release === undefined) this.#part('taken');
    else if (isChanged) this.#part();
  }

  /** Begins to write what is not on its way yet. */
  #write(): void {
    const lines = this.#lines.filter((line) => !line.isOnItsWay);
    if (lines.length === 0 && !this.#isDue) return;
    for (const line of lines) line.isOnItsWay = true;
    this.#isDue = false;
    const isNew = this.#draft === undefined;
    const before = isNew ? documentBefore(this.schedule, lines.map(({ event }) => event)) : undefined;
    if (before !== undefined) this.files ??= [fileDigest(toContent(before))];
    const draft = this.#draft ??= this.#newDraft();
    draft.head = {
      ...draft.head, at: Date.now(), count: Math.max(draft.head.count, lines.at(-1)?.number ?? 0), ended: false,
      files: this.files!, title: titleOf(this.schedule), savedAt: undefined,
      view: this.schedule.document.view,
    };
    const written = before === undefined ? this.#store.append(draft.head, lines) : this.#create(draft, before, lines);
    const ended = written.then(
      () => { this.#kept(draft, lines); }, (error: unknown) => { this.#failed(draft, isNew, lines, error); },
    );
    this.#work = Promise.all([this.#work, ended]);
  }

  #newDraft(): Draft {
    const head = { id: this.#store.newId(), ...this.#place, version: VERSION, at: 0, count: 0, ended: false };
    return { head, release: undefined };
  }

  async #create(draft: Draft, before: ScheduleDocument, lines: readonly Line[]): Promise<void> {
    await this.#store.create(draft.head, { base: before.snapshot(), actions: lines.map(({ action }) => action) });
    const release = await holdDraft(draft.head.id);
    if (draft === this.#draft) draft.release = release;
    else release?.();
  }

  #kept(draft: Draft, lines: readonly Line[]): void {
    this.#lines = this.#lines.filter((line) => !lines.includes(line));
    if (draft !== this.#draft) return;
    // What failed before leaves a gap, which is closed as soon as writing works again.
    if (this.#lines.some((line) => !line.isOnItsWay)) this.#write();
    else this.#tell(undefined);
  }

  #failed(draft: Draft, wasNew: boolean, lines: readonly Line[], error: unknown): void {
    if (draft !== this.#draft) return;
    if (error instanceof DraftTaken) {
      this.#part('taken');
      return;
    }
    if (wasNew) {
      // What was to follow it fails with it.
      this.#draft = undefined;
      this.#isDue = this.#lines.length === 0;
      this.#renumber();
    } else for (const line of lines) line.isOnItsWay = false;
    this.#tell(isFull(error) ? 'full' : 'failed');
  }

  /** Has everything begin anew, in another draft. */
  #renumber(): void {
    const { actions, depth } = logged(this.#lines.map(({ event }) => event), NO_DEPTH);
    this.#lines = this.#lines.map(({ event }, index) =>
      ({ number: index + 1, action: actions[index]!, event, isOnItsWay: false }));
    this.#depth = depth;
  }

  /** Leaves the draft to those who have it, and goes on with one of its own, which begins with all that there is. */
  #part(news?: 'taken'): void {
    this.#letGo();
    this.#draft = undefined;
    this.#lines = [];
    this.#depth = NO_DEPTH;
    this.begin();
    if (news !== undefined) this.#told(news);
  }

  #letGo(): void {
    this.#draft?.release?.();
    if (this.#draft !== undefined) this.#draft.release = undefined;
  }

  #tell(trouble: DraftTrouble | undefined): void {
    if (trouble === this.trouble) return;
    this.trouble = trouble;
    this.#told('trouble');
  }
}

/** A schedule's document before some events. */
function documentBefore(schedule: LoadSchedule, events: readonly ScheduleEvent[]): ScheduleDocument {
  const document = new ScheduleDocument(schedule.document.snapshot());
  for (const { inverse } of [...events].reverse()) document.perform(inverse);
  return document;
}

function titleOf({ document: { details } }: LoadSchedule): string {
  return [details.project, details.panel].filter((text) => text !== undefined && text !== '').join(', ');
}

function isFull(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'QuotaExceededError';
}
