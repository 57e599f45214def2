import {
  shareOut, type Sharing, type SharingAnswer, type SharingMessage, type SharingProblem, type SharingProgress,
} from '../../src/allocation/index.ts';
// Under the name by which the build finds the file of a worker.
import { TrustedWorker as Worker } from './trusted-worker.ts';

/** What is told of a search. */
export interface SharingListener {
  readonly progress: (progress: SharingProgress) => void;
  readonly shared: (sharing: Sharing) => void;
  readonly failed: (message: string) => void;
}

/**
 * One search for a sharing, in a worker, so that the page answers meanwhile. Where a worker cannot start, as when the
 * script comes from another server, it runs on the page in short steps.
 */
export class SharingRun {
  readonly #problem: SharingProblem;
  readonly #listener: SharingListener;
  readonly #controller = new AbortController();
  #worker: globalThis.Worker | undefined;
  #over = false;

  constructor(problem: SharingProblem, listener: SharingListener) {
    this.#problem = problem;
    this.#listener = listener;
    try {
      this.#worker = new Worker(new URL('../../src/allocation/sharing-worker.ts', import.meta.url), { type: 'module' });
    } catch {
      void this.#onPage();
      return;
    }
    this.#worker.addEventListener('message', ({ data }: MessageEvent<SharingAnswer>) => { this.#take(data); });
    // A policy of the page that forbids it, or a file that is missing, is told in this way.
    this.#worker.addEventListener('error', () => {
      if (this.#over) return;
      this.#worker?.terminate();
      this.#worker = undefined;
      void this.#onPage();
    });
    this.#send({ do: 'share', job: 1, problem });
  }

  /** Ends the search; the best that was found is told. */
  stop(): void {
    this.#controller.abort();
    if (this.#worker !== undefined) this.#send({ do: 'stop', job: 1 });
  }

  /** Ends the search; nothing is told any more. */
  drop(): void {
    this.#over = true;
    this.#controller.abort();
    this.#worker?.terminate();
  }

  #send(message: SharingMessage): void {
    this.#worker!.postMessage(message);
  }

  async #onPage(): Promise<void> {
    try {
      const { signal } = this.#controller;
      const progress = (progress: SharingProgress) => { this.#take({ is: 'progress', job: 1, progress }); };
      this.#take({ is: 'shared', job: 1, sharing: await shareOut(this.#problem, { signal, progress }) });
    } catch (error) {
      this.#take({ is: 'failed', job: 1, message: error instanceof Error ? error.message : String(error) });
    }
  }

  #take(answer: SharingAnswer): void {
    if (this.#over) return;
    if (answer.is === 'progress') {
      this.#listener.progress(answer.progress);
      return;
    }
    this.drop();
    if (answer.is === 'shared') this.#listener.shared(answer.sharing);
    else this.#listener.failed(answer.message);
  }
}
