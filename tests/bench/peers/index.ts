import type { Candidate } from '../operation.ts';
import type { Workload } from '../workload.ts';
import { ScheduleCandidate } from './load-schedule.ts';
import { SumifsWorkbook } from './sumifs-workbook.ts';
import { TypedLoop } from './typed-loop.ts';

export const CANDIDATES = ['schedule', 'workbook', 'loop'] as const;
export type CandidateName = (typeof CANDIDATES)[number];

/** Builds a candidate from a workload, all figures worked out. */
export const BUILD: Readonly<Record<CandidateName, (sheets: Workload) => Candidate>> = {
  schedule: (sheets) => new ScheduleCandidate(sheets),
  workbook: (sheets) => new SumifsWorkbook(sheets),
  loop: (sheets) => new TypedLoop(sheets),
};
