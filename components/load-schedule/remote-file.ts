import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Words } from '../../src/words/index.ts';
import { engineFor } from './engine-for.ts';
import { fetchText } from './files.ts';

/** A wait shorter than this is not announced. */
const PATIENCE_MILLISECONDS = 300;

/** Why a wait was ended by a person. */
const STOPPED = 'stopped';

/** What the fetching of files needs of an element. */
export interface RemoteFileHost extends ReactiveControllerHost, Element {
  /** Begins or ends being busy. */
  busy(task: 'file', isRunning: boolean): void;
}

/** Fetches the files that an element's attributes name; a later request ends an earlier one. */
export class RemoteFile implements ReactiveController {
  /** Address that is being waited for, once the wait is long enough to mention. */
  waitingFor = '';
  /** Address whose wait ended because the element was taken off its page. */
  interrupted = '';
  readonly #host: RemoteFileHost;
  #address = '';
  #abort: AbortController | undefined;

  constructor(host: RemoteFileHost) {
    this.#host = host;
    host.addController(this);
  }

  /**
   * @returns what the address gave, or that a person waited no longer; `undefined` when another request or the
   * element's removal ended the wait.
   */
  async fetch(address: string, words: Words): Promise<Awaited<ReturnType<typeof fetchText>> | undefined> {
    this.cancel();
    this.#address = address;
    const abort = this.#abort = new AbortController();
    this.#host.busy('file', true);
    const patience = setTimeout(() => { this.#wait(address); }, PATIENCE_MILLISECONDS);
    try {
      const fetched = await fetchText(address, abort.signal, words);
      if (fetched.ok) await Promise.race([engineFor(fetched.text), aborted(abort.signal)]);
      return fetched;
    } catch (error) {
      if (abort.signal.reason === STOPPED) {
        return { ok: false, problem: words.say('Reading it was cancelled. Open a file, or load the page again.') };
      }
      if (abort.signal.aborted) return undefined;
      throw error;
    } finally {
      clearTimeout(patience);
      if (this.#abort === abort) {
        this.#abort = undefined;
        this.#end();
      }
    }
  }

  /** Ends the wait. @param byPerson whoever waits for the file is told of it as of one that could not be had. */
  cancel(byPerson = false): void {
    this.interrupted = '';
    this.#abort?.abort(byPerson ? STOPPED : undefined);
    this.#abort = undefined;
    this.#end();
  }

  hostDisconnected(): void {
    // An element that is moved is back on a page by then, and waits on.
    queueMicrotask(() => {
      if (this.#host.isConnected || this.#abort === undefined) return;
      this.cancel();
      this.interrupted = this.#address;
    });
  }

  #end(): void {
    this.#wait('');
    this.#host.busy('file', false);
  }

  #wait(address: string): void {
    if (address === this.waitingFor) return;
    this.waitingFor = address;
    this.#host.requestUpdate();
  }
}

/** Rejects as soon as a wait is ended. */
function aborted(signal: AbortSignal): Promise<never> {
  return new Promise((_resolve, reject) => {
    signal.addEventListener('abort', () => { reject(signal.reason as Error); });
  });
}
