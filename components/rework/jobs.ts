import type { JobCommand } from '../schedule-toolbar/commands.ts';
import type { Job, JobHost } from './job.ts';
import { DuplicateJob } from './duplicate-job.ts';
import { MoveJob } from './move-job.ts';
import { SplitJob } from './split-job.ts';
import { SwapJob } from './swap-job.ts';

/** What makes each job; whoever adds one adds it to `JOB_COMMANDS`, `JOB_WORDS`, `JOBS_OF` and the keys of the grid. */
export const JOBS: Readonly<Record<JobCommand, (host: JobHost) => Job>> = {
  duplicate: (host) => new DuplicateJob(host), moveTo: (host) => new MoveJob(host),
  swapType: (host) => new SwapJob(host), splitRun: (host) => new SplitJob(host),
};
