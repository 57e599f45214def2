import { freeNodes } from '../../electrical/index.ts';
import { numberOf, panelOf } from '../../engine/index.ts';
import { withRounding } from '../packing/index.ts';
import { groupsByPanel, panelsBind, type BoundRow } from './by-panel.ts';
import { deviceRows, keptPlacement, leftOut, shareRow, taggedRows, takenTags } from './device-reader.ts';
import type {
  CapacityLimit, Figures, FurtherBins, LeftOut, Placement, ShareBin, ShareRequest, SharingNote, SharingProblem,
} from './sharing-problem.ts';

/**
 * What there is to share out over the bus branches: the nodes of the devices, up to the limit of a branch less its
 * reserve. To a branch that keeps devices whose nodes are not known nothing is added, and nothing is shared out where
 * no branch has a known limit. Where branches say their enclosure, devices stay in the panel that they belong to.
 */
export function readBranches(
  schedule: Figures, { wholeRows = false, keepPlaced = false, acrossPanels = false, extension = 0 }: ShareRequest,
): SharingProblem {
  const tagged = taggedRows(schedule, 'branches')
    .map((branch) => ({ ...branch, panel: panelOf(schedule, 'branches', branch.id) }));
  const binds = panelsBind(tagged, acrossPanels);
  const tags = new Map(tagged.map(({ id, tag }) => [id, tag]));
  const further = (panel: string | null) => furtherOf(schedule, tagged, panel, extension);
  const isNowhere = further(null) === undefined;
  const carried = new Map<number, number>();
  const kept: Placement[] = [];
  const left: LeftOut[] = [];
  const rows: BoundRow[] = [];

  for (const device of deviceRows(schedule, 'branch')) {
    const nodes = numberOf(schedule, 'devices', device.id, 'nodes');
    const tag = tags.get(device.on);
    if (keepPlaced && tag !== undefined) {
      kept.push(keptPlacement(device, tag));
      carried.set(device.on, (carried.get(device.on) ?? 0) + (nodes ?? Infinity));
    } else if (device.qty === null) {
      left.push(leftOut(device, 'quantity-unknown'));
    } else if (nodes === null) {
      left.push(leftOut(device, 'size-unknown'));
    } else if (nodes === 0) {
      left.push(leftOut(device, 'takes-none'));
    } else if (isNowhere) {
      left.push(leftOut(device, 'nothing-to-share-over'));
    } else {
      rows.push({ row: shareRow(device, nodes, wholeRows, null), panel: binds ? device.panel : null });
    }
  }

  const notes: SharingNote[] = [];
  const bins = tagged.map(({ id, tag, panel }): ShareBin => {
    const { capacity, limitedBy } = carries(schedule, id, extension);
    if (capacity === null && !isNowhere) notes.push({ code: 'limit-unknown', tag });
    else if (numberOf(schedule, 'branches', id, 'busCurrent') !== null) notes.push({ code: 'bus-current-unheeded', tag });
    return { id, tag, panel, capacity, limitedBy, kept: carried.get(id) ?? 0, inUse: carried.has(id) };
  });
  for (const { tag, kept: nodes } of bins) {
    if (nodes === Infinity) notes.push({ code: 'nodes-unknown', tag });
  }
  return {
    over: 'branches', groups: groupsByPanel(null, rows, bins, further).map((group) => ({ ...group, pool: '' })),
    pools: {}, kept, pinned: [], leftOut: left, takenTags: takenTags(schedule, 'branches', 'branch'), notes,
  };
}

/** Nodes that a branch may carry, its reserve kept free. */
export function capacityOf(schedule: Figures, id: number): number | null {
  const [limit, reserve] = [numberOf(schedule, 'branches', id, 'limit'), numberOf(schedule, 'branches', id, 'reserve')];
  return limit === null || reserve === null ? null : Math.max(0, freeNodes(limit, reserve, 0));
}

/** What is put on a branch at most, and what sets that. */
function carries(
  schedule: Figures, id: number, extension: number,
): { capacity: number | null; limitedBy: CapacityLimit } {
  const capacity = capacityOf(schedule, id);
  if (capacity !== null && extension > 0) {
    return { capacity: Math.floor(withRounding(capacity / (1 + extension))), limitedBy: 'extension' };
  }
  return { capacity, limitedBy: numberOf(schedule, 'branches', id, 'reserve') === 0 ? 'limit' : 'reserve' };
}

/** Branches like the last one whose limit is known, of the same panel where it has one; none where no limit is. */
function furtherOf(
  schedule: Figures, tagged: readonly { id: number; tag: string; panel: string | null }[], panel: string | null,
  extension: number,
): FurtherBins | undefined {
  const known = tagged.filter(({ id }) => capacityOf(schedule, id) !== null);
  const like = known.findLast((branch) => panel !== null && branch.panel === panel) ?? known.at(-1);
  if (like === undefined) return undefined;
  const { capacity, limitedBy } = carries(schedule, like.id, extension);
  return {
    like: like.id, tag: like.tag, capacity: capacity!, limitedBy,
    cells: panel === null || like.panel === panel ? {} : { enclosure: panel },
  };
}
