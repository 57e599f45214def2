import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import type { Drafts } from '../drafts/index.ts';
import type { ScheduleFiles } from './schedule-files.ts';

/** What the page gives an element. */
export interface GivenHost {
  readonly schedule: LoadSchedule;
  /** Address of the page's file. */
  readonly src: string | null;
  requestUpdate(): void;
}

/** Why nobody can know what the page's file holds: it is on its way, or could not be had. */
export type Missing = 'loading' | 'failed';

/**
 * Shows what the page gives an element, its file or a schedule, and knows what takes its place: a draft, or what the
 * browser brings back.
 */
export class GivenSchedule {
  readonly #host: GivenHost;
  readonly #files: ScheduleFiles;
  readonly #drafts: Drafts;
  #isShown = false;
  /** What the page had put in when a draft took its place. */
  #content: Content | undefined;
  /** The turn of the page's file. */
  #turn = 0;
  #missing: Missing | undefined;
  /** The last action before the page's file was asked for. */
  #before: object | undefined;

  constructor(host: GivenHost, files: ScheduleFiles, drafts: Drafts) {
    this.#host = host;
    this.#files = files;
    this.#drafts = drafts;
  }

  /** Whether the schedule that is shown was put in by the page. */
  get isShown(): boolean {
    return this.#isShown;
  }

  /**
   * Why what is shown must not be taken for the page's file; `undefined` where the file is shown, or something else
   * that a person opened, or began once the file could not be had.
   */
  get missing(): Missing | undefined {
    return this.#missing === 'failed' && this.#host.schedule.lastAction !== this.#before ? undefined : this.#missing;
  }

  /** Has the page put a schedule in. @param put says whether it could be read. */
  put(put: () => boolean): void {
    if (!put()) return;
    this.#isShown = true;
    this.#content = undefined;
  }

  /** Another content is shown, whoever put it in. */
  replaced(): void {
    this.#missing = undefined;
  }

  /** Another schedule is shown, whoever put it in. */
  exchanged(): void {
    this.#isShown = false;
    this.replaced();
  }

  /** A draft is about to take the place of what is shown. */
  makeWay(): void {
    if (this.#isShown) this.#content = this.#host.schedule.content();
  }

  /** Shows what the page gave in the place of a draft. */
  async bringBack(): Promise<void> {
    const content = this.#content;
    if (content !== undefined) this.put(() => this.#files.start(content).length === 0);
    else if (this.#hasSource) {
      this.askSource();
      await this.#fetchSource(false);
    } else this.#files.start({ details: {}, sheets: {} });
  }

  /** The page names another file, which is to be shown: what was asked for before it gives way. */
  askSource(): void {
    this.#turn = this.#files.next();
    this.#before = this.#host.schedule.lastAction;
    this.#missing = this.#hasSource ? 'loading' : undefined;
    this.#files.cancel();
  }

  /** Shows the page's file, or the draft that goes on from it, unless something newer takes its place. */
  async showSource(): Promise<void> {
    const turn = this.#turn;
    if (!this.#hasSource) return;
    await this.#drafts.ready;
    if (turn !== this.#turn || this.#missing === undefined) return;
    this.#content = undefined;
    await this.#fetchSource();
  }

  /** Fetches again what was being fetched when the element was taken off its page. */
  async resume(): Promise<void> {
    if (this.#missing === 'loading' && this.#files.isInterrupted) await this.#fetchSource();
  }

  get #hasSource(): boolean {
    return (this.#host.src ?? '') !== '';
  }

  /** @param mayGiveWay whether a draft may take the place of the file. */
  async #fetchSource(mayGiveWay = true): Promise<void> {
    const turn = this.#turn;
    const isDraftShown = (content: Content | undefined) =>
      this.#drafts.given(content, mayGiveWay && this.#host.schedule.lastAction === this.#before);
    const isShown = await this.#files.startFrom(this.#host.src!, isDraftShown, turn);
    if (isShown !== false || turn !== this.#turn || this.#missing === undefined) return;
    this.#missing = 'failed';
    this.#host.requestUpdate();
  }
}
