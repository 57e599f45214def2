import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import type { DraftKeeper, DraftsHost } from './draft-keeper.ts';
import type { DraftPlace } from './draft-store.ts';

/**
 * The drafts of an element, whose part of the software is fetched where a page gives a key for them, and not before.
 */
export class Drafts implements ReactiveController {
  /** Settled as soon as it is known whether there is a draft. */
  ready: Promise<void> = Promise.resolve();
  keeper: DraftKeeper | undefined;
  readonly #host: DraftsHost & ReactiveControllerHost & Element;
  readonly #unfetched: () => void;
  #place: DraftPlace = { key: '', source: '' };
  /** Keeps what is done to the schedule that is shown yet, while the page's file of another is on its way. */
  #former: DraftKeeper | undefined;

  /** @param unfetched called when that part cannot be fetched. */
  constructor(host: DraftsHost & ReactiveControllerHost & Element, unfetched: () => void) {
    this.#host = host;
    this.#unfetched = unfetched;
    host.addController(this);
  }

  /**
   * Keeps drafts under a key from now on; none where it is empty. Those of the former key or file stay.
   * @param source address of the page's file, empty where there is none.
   * @param isReadonly whether none is to begin or be shown; one that is being written goes on.
   */
  keepUnder(key: string, source: string, isReadonly: boolean): void {
    const place = { key, source };
    if (isReadonly && !(this.keeper?.isWriting && isSamePlace(place, this.#place))) place.key = '';
    if (isSamePlace(place, this.#place)) return;
    this.#place = place;
    this.#former ??= this.keeper;
    this.keeper = undefined;
    if (place.key === '') void this.#letGo();
    else this.ready = this.#begin(place);
  }

  /**
   * The page's file is about to be shown, or could not be had.
   * @returns whether a draft is shown in its place.
   */
  async given(content: Content | undefined, mayShow: boolean): Promise<boolean> {
    return await this.keeper?.given(content, mayShow) ?? false;
  }

  follow(event: ScheduleEvent, byPerson: boolean): void {
    if (event.cause === 'load') void this.#letGo();
    (this.#former ?? this.keeper)?.follow(event, byPerson);
  }

  replaced(schedule: LoadSchedule): void {
    void this.#letGo();
    this.keeper?.replaced(schedule);
  }

  hostConnected(): void {
    window.addEventListener('pagehide', this.#pause);
    window.addEventListener('pageshow', this.#resume);
    this.#resume();
  }

  hostDisconnected(): void {
    window.removeEventListener('pagehide', this.#pause);
    window.removeEventListener('pageshow', this.#resume);
    // An element that is moved is back on a page by then.
    queueMicrotask(() => { if (!this.#host.isConnected) this.#pause(); });
  }

  async #begin(place: DraftPlace): Promise<void> {
    try {
      const { openKeeper } = await import('./open-keeper.ts');
      if (place !== this.#place) return;
      const host = this.#host;
      const isFirst = this.#former === undefined;
      // What is shown is another schedule as long as the page's file is on its way, and stays with its own draft.
      if (!host.awaitsPage || isSamePlace(this.#former?.place, place)) await this.#letGo();
      const keeper = this.keeper = openKeeper(place, host);
      // What a former key has needs no second draft.
      if (isFirst) keeper.begin();
      await keeper.find();
      if (keeper === this.keeper && !host.awaitsPage) await keeper.given(host.pageContent, host.untouched);
    } catch (error) {
      this.#unfetched();
      reportError(error);
    }
  }

  async #letGo(): Promise<void> {
    const former = this.#former;
    this.#former = undefined;
    await former?.close();
  }

  readonly #pause = (): void => {
    void this.#former?.pause();
    void this.keeper?.pause();
  };

  readonly #resume = (): void => {
    void this.#former?.resume();
    void this.keeper?.resume();
  };
}

function isSamePlace(one: DraftPlace | undefined, other: DraftPlace): boolean {
  return one?.key === other.key && one.source === other.source;
}
