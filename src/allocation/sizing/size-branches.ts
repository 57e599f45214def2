import { leastBins, withRounding, type Steps, type Stop } from '../packing/index.ts';
import { classesOfPieces, piecesOf } from '../sharing/pieces.ts';
import { numberOf } from '../sharing/device-reader.ts';
import { readBranches } from '../sharing/read-branches.ts';
import { rowNames } from '../row-names.ts';
import type { LeftOut } from '../sharing/sharing-problem.ts';
import type { Words } from '../../words/index.ts';
import type { SizedSchedule, SizingRow } from './sizing.ts';

/** The bus branches that the devices need, each like the last one of the schedule whose limit is known. */
export function* sizeBranches(schedule: SizedSchedule, wholeRows: boolean, stop: Stop): Steps<SizingRow[]> {
  const { words } = schedule;
  const { groups, leftOut } = readBranches(schedule, { over: 'branches', wholeRows });
  const { rows, further } = groups[0]!;
  if (further === undefined) return withoutLimit(schedule, leftOut);
  const { capacity } = further;
  const pieces = piecesOf(rows);
  const fitting = pieces.filter(({ size }) => size <= withRounding(capacity));
  const tooLarge = pieces.filter(({ size }) => size > withRounding(capacity));
  const nodes = fitting.reduce((sum, { size, count }) => sum + size * count, 0);

  const result: SizingRow[] = [];
  if (fitting.length > 0) {
    const choice = { base: [], spare: [], more: withRounding(capacity) };
    const { fills, lowerBound } = (yield* leastBins(classesOfPieces(fitting), choice, stop))!;
    const values = { nodes: Math.round(nodes * 1000) / 1000, capacity, lowerBound };
    result.push({
      item: words.say('Bus branch, {capacity} nodes', { capacity }), quantity: fills.length,
      why: fills.length === lowerBound
        ? words.say(
          '{nodes} nodes at {capacity} a branch, its limit less the reserve; the least number, with whole devices on each.',
          values
        )
        : words.say(
          '{nodes} nodes at {capacity} a branch, its limit less the reserve; the fewest found, no fewer than {lowerBound}, with whole devices on each.',
          values
        ),
    });
  }
  if (tooLarge.length > 0) {
    result.push({
      item: words.say(
        'Bus branch, more than {capacity} nodes', { capacity }
      ), quantity: tooLarge.reduce((sum, { count }) => sum + count, 0),
      why: words.say('{rows} count more nodes in one piece than a branch may carry.', {
        rows: rowNames(tooLarge.flatMap(({ parts }) => parts.map(({ row }) => row)), words),
      }),
    });
  }
  return [...result, ...ofUnknownNodes(leftOut, words)];
}

/** What is said where no branch has a limit: how many nodes there are, but not how many branches they need. */
function withoutLimit(schedule: SizedSchedule, leftOut: readonly LeftOut[]): SizingRow[] {
  const { words } = schedule;
  const nodes = leftOut.filter(({ code }) => code === 'nothing-to-share-over')
    .reduce((sum, { id }) => sum + numberOf(schedule, 'devices', id, 'nodes')!, 0);
  const without: SizingRow[] = nodes === 0 ? [] : [{
    item: words.say('Nodes on bus branches without a limit'), quantity: Math.round(nodes * 1000) / 1000,
    why: words.say(
      'No branch has a known limit, so how many are needed is not known. Enter the most nodes that a branch may carry.'
    ),
  }];
  return [...without, ...ofUnknownNodes(leftOut, words)];
}

function ofUnknownNodes(leftOut: readonly LeftOut[], words: Words): SizingRow[] {
  const unknown = leftOut.filter(({ code }) => code === 'quantity-unknown' || code === 'size-unknown');
  return unknown.length === 0 ? [] : [{
    item: words.say('Devices of unknown nodes'), quantity: unknown.reduce((sum, { qty }) => sum + (qty ?? 0), 0),
    why: words.say('Not counted above: {rows}. Enter their quantity and a type that says how many nodes one counts.', {
      rows: rowNames(unknown, words),
    }),
  }];
}
