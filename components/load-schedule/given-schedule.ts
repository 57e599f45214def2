import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import type { Drafts } from '../drafts/index.ts';
import type { ScheduleFiles } from './schedule-files.ts';

/** What the page gives an element. */
export interface GivenHost {
  readonly schedule: LoadSchedule;
  /** Address of the page's file. */
  readonly src: string | null;
}

/**
 * Shows what the page gives an element, its file or a schedule, and knows what takes its place: a draft, or what the browser
 * brings back.
 */
export class GivenSchedule {
  readonly #host: GivenHost;
  readonly #files: ScheduleFiles;
  readonly #drafts: Drafts;
  #isShown = false;
  /** Whether the browser brought something back before the page's file was asked for. */
  #isOutdated = false;
  /** What the page had put in when a draft took its place. */
  #content: Content | undefined;

  constructor(host: GivenHost, files: ScheduleFiles, drafts: Drafts) {
    this.#host = host;
    this.#files = files;
    this.#drafts = drafts;
  }

  /** Whether the schedule that is shown was put in by the page. */
  get isShown(): boolean {
    return this.#isShown;
  }

  /** Has the page put a schedule in. @param put says whether it could be read. */
  put(put: () => boolean): void {
    if (!put()) return;
    this.#isShown = true;
    this.#content = undefined;
  }

  /** Another schedule is shown, whoever put it in. */
  replaced(): void {
    this.#isShown = false;
  }

  /** A draft is about to take the place of what is shown. */
  makeWay(): void {
    if (this.#isShown) this.#content = this.#host.schedule.content();
  }

  /** The browser brought back what is newer than the page's file. @param isFirst nothing was asked for yet. */
  outdate(isFirst: boolean): void {
    this.#files.cancel();
    this.#isOutdated = isFirst;
  }

  /** Shows what the page gave in the place of a draft. */
  async bringBack(): Promise<void> {
    const { src } = this.#host;
    const content = this.#content;
    if (content !== undefined) this.put(() => this.#files.start(content).length === 0);
    else if (src !== null && src !== '') await this.#files.startFrom(src);
    else this.#files.start({ details: {}, sheets: {} });
  }

  /** Shows the page's file, unless something newer takes its place. */
  async showSource(): Promise<void> {
    const { src } = this.#host;
    if (src === null || src === '') return;
    await this.#drafts.ready;
    const isOutdated = this.#isOutdated;
    this.#isOutdated = false;
    if (isOutdated || src !== this.#host.src || this.#drafts.takesPlace()) return;
    this.#content = undefined;
    await this.#files.startFrom(src);
  }
}
