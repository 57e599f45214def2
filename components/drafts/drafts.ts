import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import type { DraftKeeper, DraftsHost } from './draft-keeper.ts';

/** The drafts of an element, whose part of the software is fetched where a page gives a key for them, and not before. */
export class Drafts implements ReactiveController {
  /** Settled as soon as it is known whether there is a draft. */
  ready: Promise<void> = Promise.resolve();
  keeper: DraftKeeper | undefined;
  readonly #host: DraftsHost & ReactiveControllerHost & Element;
  readonly #unfetched: () => void;
  #key = '';
  #takesPlace = false;

  /** @param unfetched called when that part cannot be fetched. */
  constructor(host: DraftsHost & ReactiveControllerHost & Element, unfetched: () => void) {
    this.#host = host;
    this.#unfetched = unfetched;
    host.addController(this);
  }

  /** Keeps drafts under a key from now on; none where it is empty. Those under the former key stay. */
  keepUnder(key: string): void {
    if (key === this.#key) return;
    this.#key = key;
    void this.keeper?.close();
    this.keeper = undefined;
    this.#takesPlace = false;
    if (key !== '') this.ready = this.#begin(key);
  }

  /** Whether a draft stands in the place of what the page is about to show first. Says so once: what comes later is meant. */
  takesPlace(): boolean {
    const takes = this.#takesPlace;
    this.#takesPlace = false;
    return takes;
  }

  follow(event: ScheduleEvent, byPerson: boolean): void {
    this.keeper?.follow(event, byPerson);
  }

  replaced(schedule: LoadSchedule): void {
    this.keeper?.replaced(schedule);
  }

  hostConnected(): void {
    document.addEventListener('visibilitychange', this.#onVisibility);
    window.addEventListener('pagehide', this.#pause);
    window.addEventListener('pageshow', this.#resume);
    this.#resume();
  }

  hostDisconnected(): void {
    document.removeEventListener('visibilitychange', this.#onVisibility);
    window.removeEventListener('pagehide', this.#pause);
    window.removeEventListener('pageshow', this.#resume);
    // An element that is moved is back on a page by then.
    queueMicrotask(() => { if (!this.#host.isConnected) this.#pause(); });
  }

  async #begin(key: string): Promise<void> {
    try {
      const { openKeeper } = await import('./open-keeper.ts');
      if (key !== this.#key) return;
      const keeper = this.keeper = openKeeper(key, this.#host);
      const isShown = await keeper.find();
      if (keeper === this.keeper) this.#takesPlace = isShown;
    } catch (error) {
      this.#unfetched();
      reportError(error);
    }
  }

  readonly #onVisibility = (): void => {
    if (document.visibilityState === 'hidden') void this.keeper?.flush();
  };

  readonly #pause = (): void => { void this.keeper?.pause(); };

  readonly #resume = (): void => { void this.keeper?.resume(); };
}
