import { leastBins, withRounding, type Steps, type Stop } from '../packing/index.ts';
import { classesOfPieces, piecesOf } from '../sharing/pieces.ts';
import { readBranches } from '../sharing/read-branches.ts';
import { rowNames } from '../row-names.ts';
import type { SizedSchedule, SizingRow } from './sizing.ts';

/** The bus branches that the devices need, each like the last one of the schedule. */
export function* sizeBranches(schedule: SizedSchedule, wholeRows: boolean, stop: Stop): Steps<SizingRow[]> {
  const { words } = schedule;
  const { groups, leftOut } = readBranches(schedule, { over: 'branches', wholeRows });
  const { rows, further } = groups[0]!;
  const capacity = further!.capacity;
  const pieces = piecesOf(rows);
  const fitting = pieces.filter(({ size }) => size <= withRounding(capacity));
  const tooLarge = pieces.filter(({ size }) => size > withRounding(capacity));
  const unknown = leftOut.filter(({ code }) => code !== 'takes-none');
  const nodes = fitting.reduce((sum, { size, count }) => sum + size * count, 0);

  const result: SizingRow[] = [];
  if (fitting.length > 0) {
    const choice = { base: [], spare: [], more: withRounding(capacity) };
    const { fills, lowerBound } = (yield* leastBins(classesOfPieces(fitting), choice, stop))!;
    const values = { nodes: Math.round(nodes * 1000) / 1000, capacity, lowerBound };
    result.push({
      item: words.say('Bus branch, {capacity} nodes', { capacity }), quantity: fills.length,
      why: fills.length === lowerBound
        ? words.say('{nodes} nodes at {capacity} a branch, its limit less the reserve; the least number, with whole devices on each.', values)
        : words.say('{nodes} nodes at {capacity} a branch, its limit less the reserve; the fewest found, no fewer than {lowerBound}, with whole devices on each.', values),
    });
  }
  if (tooLarge.length > 0) {
    result.push({
      item: words.say('Bus branch, more than {capacity} nodes', { capacity }), quantity: tooLarge.reduce((sum, { count }) => sum + count, 0),
      why: words.say('{rows} count more nodes in one piece than a branch may carry.', {
        rows: rowNames(tooLarge.flatMap(({ parts }) => parts.map(({ row }) => row)), words),
      }),
    });
  }
  if (unknown.length > 0) {
    result.push({
      item: words.say('Devices of unknown nodes'), quantity: unknown.reduce((sum, { qty }) => sum + (qty ?? 0), 0),
      why: words.say('Not counted above: {rows}. Enter their quantity and a type that says how many nodes one counts.', {
        rows: rowNames(unknown, words),
      }),
    });
  }
  return result;
}
