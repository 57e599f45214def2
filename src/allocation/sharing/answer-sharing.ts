import { shareOut, type SharingProgress } from './share-out.ts';
import type { Sharing, SharingProblem } from './sharing-problem.ts';

/** What is sent to a worker. */
export type SharingMessage =
  | { readonly do: 'share'; readonly job: number; readonly problem: SharingProblem; readonly milliseconds?: number }
  /** Ends a job, which answers with the best sharing so far. */
  | { readonly do: 'stop'; readonly job: number };

/** What a worker answers. */
export type SharingAnswer =
  | { readonly is: 'progress'; readonly job: number; readonly progress: SharingProgress }
  | { readonly is: 'shared'; readonly job: number; readonly sharing: Sharing }
  | { readonly is: 'failed'; readonly job: number; readonly message: string };

/** An end of a line of messages: the inside of a worker, or a port. */
export interface SharingPort {
  postMessage(answer: SharingAnswer): void;
  addEventListener(type: 'message', listener: (event: { readonly data: SharingMessage }) => void): void;
}

/** Answers messages that ask to share out. Several jobs may be under way. */
export function answerSharing(port: SharingPort): void {
  const jobs = new Map<number, AbortController>();
  const share = async ({ job, problem, milliseconds }: Extract<SharingMessage, { do: 'share' }>) => {
    const controller = new AbortController();
    jobs.set(job, controller);
    try {
      const sharing = await shareOut(problem, {
        signal: controller.signal,
        progress: (progress) => port.postMessage({ is: 'progress', job, progress }),
        ...(milliseconds === undefined ? {} : { milliseconds }),
      });
      port.postMessage({ is: 'shared', job, sharing });
    } catch (error) {
      port.postMessage({ is: 'failed', job, message: error instanceof Error ? error.message : String(error) });
    } finally {
      jobs.delete(job);
    }
  };
  port.addEventListener('message', ({ data }) => {
    if (data.do === 'stop') jobs.get(data.job)?.abort();
    else void share(data);
  });
}
