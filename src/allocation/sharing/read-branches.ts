import { freeNodes } from '../../electrical/index.ts';
import { deviceRows, keptPlacement, leftOut, numberOf, shareRow, taggedRows, takenTags } from './device-reader.ts';
import type {
  Figures, FurtherBins, LeftOut, Placement, ShareBin, ShareRequest, ShareRow, SharingNote, SharingProblem,
} from './sharing-problem.ts';

/**
 * What there is to share out over the bus branches: the nodes of the devices, up to the limit of a branch less its
 * reserve. To a branch that keeps devices whose nodes are not known nothing is added, and nothing is shared out where
 * no branch has a known limit.
 */
export function readBranches(
  schedule: Figures, { wholeRows = false, keepPlaced = false }: ShareRequest,
): SharingProblem {
  const tagged = taggedRows(schedule, 'branches');
  const tags = new Map(tagged.map(({ id, tag }) => [id, tag]));
  const further = furtherOf(schedule, tagged);
  const carried = new Map<number, number>();
  const kept: Placement[] = [];
  const left: LeftOut[] = [];
  const rows: ShareRow[] = [];

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
    } else if (further === undefined) {
      left.push(leftOut(device, 'nothing-to-share-over'));
    } else {
      rows.push(shareRow(device, nodes, wholeRows, null));
    }
  }

  const notes: SharingNote[] = [];
  const bins = tagged.flatMap(({ id, tag }): ShareBin[] => {
    const capacity = capacityOf(schedule, id);
    if (capacity === null && further !== undefined) notes.push({ code: 'limit-unknown', tag });
    return [{ id, tag, capacity, kept: carried.get(id) ?? 0, inUse: carried.has(id) }];
  });
  for (const { tag, kept: nodes } of bins) {
    if (nodes === Infinity) notes.push({ code: 'nodes-unknown', tag });
  }
  return {
    over: 'branches', groups: [{ serves: null, pool: '', rows, bins, further }],
    pools: {}, kept, pinned: [], leftOut: left, takenTags: takenTags(schedule, 'branches', 'branch'), notes,
  };
}

/** Nodes that a branch may carry, its reserve kept free. */
export function capacityOf(schedule: Figures, id: number): number | null {
  const [limit, reserve] = [numberOf(schedule, 'branches', id, 'limit'), numberOf(schedule, 'branches', id, 'reserve')];
  return limit === null || reserve === null ? null : Math.max(0, freeNodes(limit, reserve, 0));
}

/** Branches like the last one whose limit is known; none where no limit is. */
function furtherOf(schedule: Figures, tagged: readonly { id: number; tag: string }[]): FurtherBins | undefined {
  const last = tagged.findLast(({ id }) => capacityOf(schedule, id) !== null);
  return last === undefined ? undefined
    : { like: last.id, tag: last.tag, capacity: capacityOf(schedule, last.id)!, cells: {} };
}
