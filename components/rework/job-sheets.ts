import type { SheetName } from '../../src/schedule/index.ts';
import type { JobCommand } from '../schedule-toolbar/commands.ts';

/** The jobs that are offered on rows of a sheet, in their order. */
export const JOBS_OF: Partial<Record<SheetName, readonly JobCommand[]>> = {
  devices: ['duplicate', 'moveTo', 'swapType', 'splitRun'], types: ['swapType'], supplies: ['duplicate'],
  ways: ['duplicate', 'moveTo'], branches: ['duplicate'], runs: ['duplicate', 'moveTo', 'splitRun'], modules: ['duplicate'],
  outputs: ['duplicate'],
};
