import type { SheetName } from '../../src/schedule/index.ts';
import { message } from '../../src/words/index.ts';
import type { JobCommand } from '../schedule-toolbar/commands.ts';

/** What the jobs are called, and the keys that open them. */
export const JOB_WORDS = {
  duplicate: { title: message('Duplicate'), keys: message('Alt+Shift+D'), changes: true },
  moveTo: { title: message('Move to a rail or branch'), keys: message('Alt+Shift+M'), changes: true },
  splitRun: { title: message('Part a run in two'), keys: message('Alt+Shift+X'), changes: true },
  swapType: { title: message('Swap a type'), keys: message('Alt+Shift+S'), changes: true },
} as const satisfies Record<JobCommand, object>;

/** The jobs that are offered on rows of a sheet, in their order. */
export const JOBS_OF: Partial<Record<SheetName, readonly JobCommand[]>> = {
  devices: ['duplicate', 'moveTo', 'swapType', 'splitRun'], types: ['swapType'], supplies: ['duplicate'],
  ways: ['duplicate', 'moveTo'], branches: ['duplicate'], runs: ['duplicate', 'moveTo', 'splitRun'], modules: ['duplicate'],
  outputs: ['duplicate'],
};
