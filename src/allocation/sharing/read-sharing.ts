import { readBranches } from './read-branches.ts';
import { readSupplies } from './read-supplies.ts';
import type { Figures, ShareRequest, SharingProblem } from './sharing-problem.ts';

/** What there is to share out in a schedule, as plain data. */
export function readSharing(schedule: Figures, request: ShareRequest): SharingProblem {
  return request.over === 'branches' ? readBranches(schedule, request) : readSupplies(schedule, request);
}
