import { fitDecreasing, leastBins, leastBesides, withRounding, type Steps, type Stop } from '../packing/index.ts';
import { gatherAreas, type GatherStops } from './gather-areas.ts';
import type { Lot } from './lots.ts';
import { classesOfPieces, piecesOf, type Piece } from './pieces.ts';
import type { ShareBin, ShareGroup } from './sharing-problem.ts';

/** When to end the search: that for the least number, and that for areas that stay together. */
export interface GroupStops extends GatherStops {
  readonly least: Stop;
}

/** The devices of one group, shared out. */
export interface SolvedGroup {
  /** What each bin is given, the bins in use first; `undefined` is a further one. */
  readonly bins: readonly { readonly bin: ShareBin | undefined; readonly lots: readonly Lot[] }[];
  /** What has no place, and whether one alone is larger than every bin. */
  readonly leftOut: readonly { readonly lot: Lot; readonly tooLarge: boolean }[];
  /**
   * No sharing of the group does with fewer bins, when it is given so many bins of the contended pool, from 0 to all.
   * One number where no other group takes bins of the pool: then none does with as few further ones, and fewer in all.
   */
  readonly leastWith: readonly number[];
  /** What the devices take that have a place. */
  readonly size: number;
  /** As many bins would do if they could be divided at will. */
  readonly byTotal: number;
}

/**
 * Shares out the devices of one group.
 * @param pool bins that the group may take besides its own
 * @param contended all bins of the pool, where other groups take bins of it too, or further ones may take the place of
 *   smaller ones that there are; else `null`
 * @param stops when to end the search for the least number, and that for areas that stay together
 */
export function* solveGroup(
  { rows, bins, further }: ShareGroup, pool: readonly ShareBin[], contended: readonly ShareBin[] | null,
  stops: GroupStops,
): Steps<SolvedGroup> {
  const capacityOf = ({ capacity }: ShareBin) => capacity ?? 0;
  const room = (bin: ShareBin) => Math.max(0, withRounding(capacityOf(bin)) - bin.kept);
  const inUse = bins.filter((bin) => bin.inUse);
  const spare = [...bins.filter((bin) => !bin.inUse), ...pool].filter((bin) => capacityOf(bin) > 0)
    .sort((a, b) => capacityOf(b) - capacityOf(a));
  const more = further === undefined ? undefined : withRounding(further.capacity);
  const choice = { base: inUse.map(room), spare: spare.map(room), more };

  const { fitting, leftOut } = withRoom(piecesOf(rows), [...choice.base, ...choice.spare], more ?? 0);
  const classes = classesOfPieces(fitting);
  // What is left of the pieces fits into the bins that there are, or each into a further one.
  const packed = (yield* leastBins(classes, choice, stops.least))!;
  const chosen = [...inUse, ...packed.besides.map((place) => spare[place])];
  const capacities = [...choice.base, ...packed.besides.map((place) => place < 0 ? more! : choice.spare[place]!)];
  const lots = yield* gatherAreas(fitting, capacities, packed.fills, stops);

  const own = bins.filter((bin) => !bin.inUse).map(room);
  const shared = (contended ?? []).map(room).sort((a, b) => b - a);
  const sizeless = fitting.filter(({ size }) => size === 0);
  const fewest = sizeless.length > 0 ? 1 : 0;
  const leastWith = (contended === null ? [packed.lowerBound] : Array.from({
    length: shared.length + 1,
  }, (_, given) =>
    leastBesides(classes, { ...choice, spare: [...own, ...shared.slice(0, given)] })))
    .map((least) => Math.max(fewest, inUse.length + least));
  const result = chosen.map((bin, place) => ({ bin, lots: lots[place]! }));
  const size = fitting.reduce((sum, piece) => sum + piece.size * piece.count, 0);
  const byTotal = Math.max(fewest, inUse.length + byTotalBesides(size, choice));
  const solved = { bins: result, leftOut, leastWith, size, byTotal };
  if (sizeless.length === 0) return solved;
  if (result.length === 0) result.push({ bin: spare[0], lots: [] });
  for (const piece of sizeless) {
    const beside = piece.area === null ? undefined
      : result.find((each) => each.lots.some((lot) => lot.piece.area === piece.area));
    (beside ?? result[0]!).lots.push({ piece, count: piece.count });
  }
  return solved;
}

/** Bins besides those in use that a total needs when it may be divided at will. */
function byTotalBesides(
  size: number,
  { base, spare, more = 0 }: { base: readonly number[]; spare: readonly number[]; more?: number | undefined },
): number {
  const larger = spare.filter((room) => room > more);
  let left = size - base.reduce((sum, room) => sum + room, 0);
  let count = 0;
  while (left > 0 && (count < larger.length || more > 0)) {
    left -= larger[count] ?? more;
    count += 1;
  }
  return count;
}

/**
 * Pieces that have a place for certain: in a further bin, or in a packing of the bins that there are. The largest
 * of the others are left out, as few as that takes.
 */
function withRoom(
  pieces: readonly Piece[], rooms: readonly number[], more: number,
): { fitting: Piece[]; leftOut: { lot: Lot; tooLarge: boolean }[] } {
  const largest = Math.max(more, 0, ...rooms);
  const leftOut = pieces.filter(({ size }) => size > largest)
    .map((piece) => ({ lot: { piece, count: piece.count }, tooLarge: true }));
  const certain = pieces.filter(({ size }) => size <= more);
  const others = pieces.filter(({ size }) => size > more && size <= largest).sort((a, b) => b.size - a.size);
  const total = others.reduce((sum, { count }) => sum + count, 0);

  let dropped = -1;
  let enough = total;
  while (enough - dropped > 1) {
    const count = dropped < 0 ? 0 : Math.floor((dropped + enough) / 2);
    if (fitDecreasing(classesOfPieces(without(others, count)), rooms, 'best') === undefined) dropped = count;
    else enough = count;
  }
  const kept = without(others, enough);
  others.forEach((piece, place) => {
    const count = piece.count - kept[place]!.count;
    if (count > 0) leftOut.push({ lot: { piece, count }, tooLarge: false });
  });
  return { fitting: [...certain, ...kept.filter(({ count }) => count > 0)], leftOut };
}

/** Pieces less the first `count` of them. */
function without(pieces: readonly Piece[], count: number): Piece[] {
  let left = count;
  return pieces.map((piece) => {
    const gone = Math.min(left, piece.count);
    left -= gone;
    return { ...piece, count: piece.count - gone };
  });
}
