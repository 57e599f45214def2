import { leastBins, withRounding, type Steps, type Stop } from '../packing/index.ts';
import { classesOfPieces, piecesOf } from '../sharing/pieces.ts';
import { readBranches } from '../sharing/read-branches.ts';
import type { Figures } from '../sharing/read-sharing.ts';
import type { SizingRow } from './sizing.ts';
import { listed } from './wording.ts';

/** The bus branches that the devices need, each like the last one of the schedule. */
export function* sizeBranches(schedule: Figures, wholeRows: boolean, stop: Stop): Steps<SizingRow[]> {
  const { groups, leftOut } = readBranches(schedule, { over: 'branches', wholeRows });
  const { rows, further } = groups[0]!;
  const capacity = further!.capacity;
  const pieces = piecesOf(rows);
  const fitting = pieces.filter(({ size }) => size <= withRounding(capacity));
  const tooLarge = pieces.filter(({ size }) => size > withRounding(capacity));
  const unknown = leftOut.filter(({ code }) => code !== 'takes-none');
  const points = fitting.reduce((sum, { size, count }) => sum + size * count, 0);

  const result: SizingRow[] = [];
  if (fitting.length > 0) {
    const choice = { base: [], spare: [], more: withRounding(capacity) };
    const { fills, lowerBound } = (yield* leastBins(classesOfPieces(fitting), choice, stop))!;
    const claim = fills.length === lowerBound ? 'the least number' : `the fewest found, no fewer than ${lowerBound}`;
    result.push({
      item: `Bus branch, ${capacity} points`, quantity: fills.length,
      why: `${Math.round(points * 1000) / 1000} points at ${capacity} a branch, its limit less the reserve; ${claim}, with whole devices on each.`,
    });
  }
  if (tooLarge.length > 0) {
    result.push({
      item: `Bus branch, more than ${capacity} points`, quantity: tooLarge.reduce((sum, { count }) => sum + count, 0),
      why: `${listed(tooLarge.flatMap(({ parts }) => parts.map(({ row }) => row)))} take more points in one piece than a branch may carry.`,
    });
  }
  if (unknown.length > 0) {
    result.push({
      item: 'Devices of unknown points', quantity: unknown.reduce((sum, { qty }) => sum + (qty ?? 0), 0),
      why: `Not counted above: ${listed(unknown)}. Enter their quantity and a type that says how many points one takes.`,
    });
  }
  return result;
}
