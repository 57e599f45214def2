import { numberOf } from '../../engine/index.ts';
import { leastBins, withRounding, type Steps } from '../packing/index.ts';
import { gatherAreas } from '../sharing/gather-areas.ts';
import { classesOfPieces, piecesOf } from '../sharing/pieces.ts';
import { capacityOf, readBranches } from '../sharing/read-branches.ts';
import { placementsOf } from '../sharing/share-out.ts';
import { rowNames } from '../row-names.ts';
import type { FurtherBins, LeftOut, ShareRow } from '../sharing/sharing-problem.ts';
import type { Words } from '../../words/index.ts';
import type { SizedBin, SizedSchedule, SizingRow, SizingRules } from './sizing.ts';

/** What the bus branches of a job come to. */
interface SizedBranches {
  readonly rows: SizingRow[];
  readonly bins: SizedBin[];
}

/** The bus branches that the devices need, by panel, each like the last one of the schedule whose limit is known. */
export function* sizeBranches(schedule: SizedSchedule, rules: SizingRules): Steps<SizedBranches> {
  const { words } = schedule;
  const { wholeRows, extension } = rules;
  const problem = readBranches(schedule, { over: 'branches', wholeRows, acrossPanels: true, extension });
  const isWanted = ({ id }: { readonly id: number }) =>
    !rules.unplaced || schedule.target('devices', id, 'branch') < 0;
  const [{ rows, further }] = problem.groups as [typeof problem.groups[0] & object];
  const panelOf = ({ id }: { readonly id: number }) => rules.panelOf('devices', id);
  const leftOut = problem.leftOut.filter(isWanted);
  const wanted = rows.filter(isWanted);
  const sized: SizedBranches = { rows: [], bins: [] };
  for (const panel of new Set([...wanted, ...leftOut].map(panelOf))) {
    const left = leftOut.filter((each) => panelOf(each) === panel);
    if (further === undefined) {
      sized.rows.push(...withoutLimit(schedule, panel, left));
      continue;
    }
    const panelRows = wanted.filter((each) => panelOf(each) === panel);
    const { rows: lines, bins } = yield* sizePanelBranches(schedule, panel, panelRows, further, rules);
    sized.rows.push(...lines, ...ofUnknownNodes(panel, left, words));
    sized.bins.push(...bins);
  }
  return sized;
}

function* sizePanelBranches(
  schedule: SizedSchedule, panel: string | null, shareRows: readonly ShareRow[], further: FurtherBins,
  { extension, stop }: SizingRules,
): Steps<SizedBranches> {
  const { words } = schedule;
  const { capacity, like, tag } = further;
  const pieces = piecesOf(shareRows);
  const fitting = pieces.filter(({ size }) => size <= withRounding(capacity));
  const tooLarge = pieces.filter(({ size }) => size > withRounding(capacity));
  const nodes = fitting.reduce((sum, { size, count }) => sum + size * count, 0);
  const rows: SizingRow[] = [];
  const bins: SizedBin[] = [];
  if (fitting.length > 0) {
    const choice = { base: [], spare: [], more: withRounding(capacity) };
    const { fills, lowerBound } = (yield* leastBins(classesOfPieces(fitting), choice, stop))!;
    const rooms = fills.map(() => withRounding(capacity));
    const lots = yield* gatherAreas(fitting, rooms, fills, { whole: stop, all: stop });
    bins.push(...lots.map((held): SizedBin => ({
      over: 'branches', panel, like, after: tag, cells: panel === null ? {} : { enclosure: panel },
      placements: placementsOf(held, ''), ways: [],
    })));
    const values = { nodes: Math.round(nodes * 1000) / 1000, capacity, lowerBound };
    rows.push({
      panel, item: words.say('Bus branch, {capacity} nodes', { capacity: capacityOf(schedule, like)! }),
      quantity: fills.length,
      why: (fills.length === lowerBound
        ? words.say(
          '{nodes} nodes at {capacity} a branch, its limit less the reserve; the least number, with whole devices on each.',
          values
        )
        : words.say(
          '{nodes} nodes at {capacity} a branch, its limit less the reserve; the fewest found, no fewer than {lowerBound}, with whole devices on each.',
          values
        )) + (extension === 0 ? '' : ` ${words.say('It may grow by {percent} %.', { percent: Math.round(extension * 1000) / 10 })}`),
    });
  }
  if (tooLarge.length > 0) {
    rows.push({
      panel, item: words.say(
        'Bus branch, more than {capacity} nodes', { capacity }
      ), quantity: tooLarge.reduce((sum, { count }) => sum + count, 0),
      why: words.say('{rows} count more nodes in one piece than a branch may carry.', {
        rows: rowNames(tooLarge.flatMap(({ parts }) => parts.map(({ row }) => row)), words),
      }),
    });
  }
  return { rows, bins };
}

/** What is said where no branch has a limit: how many nodes there are, but not how many branches they need. */
function withoutLimit(schedule: SizedSchedule, panel: string | null, leftOut: readonly LeftOut[]): SizingRow[] {
  const { words } = schedule;
  const nodes = leftOut.filter(({ code }) => code === 'nothing-to-share-over')
    .reduce((sum, { id }) => sum + numberOf(schedule, 'devices', id, 'nodes')!, 0);
  const without: SizingRow[] = nodes === 0 ? [] : [{
    panel, item: words.say('Nodes on bus branches without a limit'), quantity: Math.round(nodes * 1000) / 1000,
    why: words.say(
      'No branch has a known limit, so how many are needed is not known. Enter the most nodes that a branch may carry.'
    ),
  }];
  return [...without, ...ofUnknownNodes(panel, leftOut, words)];
}

function ofUnknownNodes(panel: string | null, leftOut: readonly LeftOut[], words: Words): SizingRow[] {
  const unknown = leftOut.filter(({ code }) => code === 'quantity-unknown' || code === 'size-unknown');
  return unknown.length === 0 ? [] : [{
    panel, item: words.say('Devices of unknown nodes'), quantity: unknown.reduce((sum, { qty }) => sum + (qty ?? 0), 0),
    why: words.say('Not counted above: {rows}. Enter their quantity and a type that says how many nodes one counts.', {
      rows: rowNames(unknown, words),
    }),
  }];
}
