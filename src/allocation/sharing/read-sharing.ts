import type { LoadSchedule } from '../../load-schedule.ts';
import { readBranches } from './read-branches.ts';
import { readSupplies } from './read-supplies.ts';
import type { SharedSheet, SharingProblem } from './sharing-problem.ts';

/** What reading needs of a schedule. */
export type Figures = Pick<LoadSchedule, 'document' | 'rows' | 'value' | 'target'>;

export interface ShareRequest {
  readonly over: SharedSheet;
  /** Rows are not split. */
  readonly wholeRows?: boolean | undefined;
  /** Devices that have a place keep it. */
  readonly keepPlaced?: boolean | undefined;
}

/** What there is to share out in a schedule, as plain data. */
export function readSharing(schedule: Figures, request: ShareRequest): SharingProblem {
  return request.over === 'branches' ? readBranches(schedule, request) : readSupplies(schedule, request);
}
