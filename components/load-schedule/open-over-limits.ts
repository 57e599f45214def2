import type { LoadSchedule } from '../../src/load-schedule.ts';
import { SHEET_NAMES } from '../../src/schedule/index.ts';

/** Number of findings over a limit that nobody has accepted. */
export function openOverLimits(schedule: LoadSchedule): number {
  const { over } = schedule.findingCounts;
  // To count is cheap; the findings themselves are put in order for it.
  const isAnyAccepted = () =>
    SHEET_NAMES.some((sheet) => schedule.rows(sheet).some(({ accepted }) => accepted !== undefined));
  if (over === 0 || !isAnyAccepted()) return over;
  return schedule.findings.filter(({ severity, accepted }) => severity === 'over' && accepted === undefined).length;
}
