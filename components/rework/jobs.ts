import { message } from '../../src/words/index.ts';
import type { JobCommand } from '../schedule-toolbar/commands.ts';
import type { Job, JobHost } from './job.ts';
import { DuplicateJob } from './duplicate-job.ts';
import { MoveJob } from './move-job.ts';
import { SplitJob } from './split-job.ts';
import { SwapJob } from './swap-job.ts';

/** A job as it is offered. */
export interface OfferedJob {
  /** English message: what it is called. */
  readonly title: string;
  readonly make: (host: JobHost) => Job;
}

/** The jobs by name; whoever adds one adds it to `JOB_COMMANDS`, `JOBS_OF`, the keys of the grid and the menu. */
export const JOBS: Readonly<Record<JobCommand, OfferedJob>> = {
  duplicate: { title: message('Duplicate'), make: (host) => new DuplicateJob(host) },
  moveTo: { title: message('Move to a rail or branch'), make: (host) => new MoveJob(host) },
  swapType: { title: message('Swap a type'), make: (host) => new SwapJob(host) },
  splitRun: { title: message('Part a run in two'), make: (host) => new SplitJob(host) },
};
