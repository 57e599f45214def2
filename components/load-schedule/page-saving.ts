/** What became of the schedule that was given to the page to be kept. */
export type Saving =
  | { readonly state: 'saving' }
  | { readonly state: 'saved'; readonly at: number }
  | { readonly state: 'failed'; readonly reason: string };

/** What the element does while the page keeps its schedule. */
interface PageSavingHost {
  /** The page has kept a value. */
  markSaved(value: string): Promise<void>;
  /** Hands the schedule to the page once more, where a person pressed Save meanwhile. */
  again(): void;
  changed(now: Saving | undefined): void;
}

/** What a page says of why it could not keep something; empty where it does not say. */
const reasonOf = (error: unknown): string =>
  error instanceof Error ? error.message : typeof error === 'string' ? error : '';

/** Follows the promise of a page that it keeps the schedule; one at a time, so that an older one is never kept last. */
export class PageSaving {
  readonly #host: PageSavingHost;
  #now: Saving | undefined;
  #isAsked = false;
  /** Counts schedules: what became of one says nothing of another that is shown by then. */
  #turn = 0;

  constructor(host: PageSavingHost) {
    this.#host = host;
  }

  get now(): Saving | undefined {
    return this.#now;
  }

  /** Whether the page is still keeping what it was given; then it is given what there is as soon as it is done. */
  waits(): boolean {
    const isBusy = this.#now?.state === 'saving';
    this.#isAsked ||= isBusy;
    return isBusy;
  }

  async follow(answer: Promise<unknown>, value: string): Promise<void> {
    const turn = this.#turn;
    this.#put({ state: 'saving' });
    const reason = await answer.then(() => undefined, reasonOf);
    if (turn !== this.#turn) return;
    if (reason === undefined) await this.#host.markSaved(value);
    this.#put(reason === undefined ? { state: 'saved', at: Date.now() } : { state: 'failed', reason });
    if (!this.#isAsked) return;
    this.#isAsked = false;
    this.#host.again();
  }

  /** Another schedule is shown, of which nothing was kept. */
  forget(): void {
    this.#turn += 1;
    this.#isAsked = false;
    this.#put(undefined);
  }

  #put(now: Saving | undefined): void {
    if (now === this.#now) return;
    this.#now = now;
    this.#host.changed(now);
  }
}
