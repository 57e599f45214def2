import { classesOf, decide, fitDecreasing, unlessStopped, type Fill, type Steps, type Stop } from '../packing/index.ts';
import { exchangeLots } from './exchange-lots.ts';
import { lotsOf, type Lot } from './lots.ts';
import { bundle, classesOfPieces, type Part, type Piece } from './pieces.ts';

/** When to end the search. */
export interface GatherStops {
  /** That for areas as a whole. */
  readonly whole: Stop;
  /** All of it. */
  readonly all: Stop;
}

/** An area with what it is made of, loose and gathered. */
interface Area {
  readonly size: number;
  readonly loose: readonly Piece[];
  /** The same as one piece, or, where it is larger than any bin, as few as its size allows. */
  readonly blocks: readonly Piece[];
}

/**
 * Finds which pieces make up the bins of a packing, so that as many areas as it can stay together without one bin
 * more.
 *
 * Every area is made one piece and all are packed anew into the same bins. Where that does not succeed, the largest
 * areas are broken up, as few as possible; then each of them is tried again as one piece beside what else is
 * broken. What is still scattered then is gathered by exchange.
 *
 * @param capacities of the bins
 * @param fills a packing of the loose pieces into them, which holds where the search finds nothing better
 * @returns the lots of each bin
 */
export function* gatherAreas(
  pieces: readonly Piece[], capacities: readonly number[], fills: readonly Fill[], stops: GatherStops,
): Steps<Lot[][]> {
  const { areas, others } = areasOf(pieces.filter(({ size }) => size > 0), Math.max(0, ...capacities));

  function* attempt(broken: ReadonlySet<Area>): Steps<Lot[][] | undefined> {
    const all = [...others, ...areas.flatMap((area) => broken.has(area) ? area.loose : area.blocks)];
    const classes = classesOfPieces(all);
    const decision = yield* unlessStopped(decide(classes, capacities, 'quick'), stops.whole);
    return typeof decision === 'string' ? undefined : lotsOf(all, classes, decision.fits);
  }

  let fewest = areas.length;
  let best: Lot[][] | undefined;
  for (let known = -1; fewest - known > 1;) {
    // The whole first: most often it succeeds.
    const count = known < 0 ? 0 : Math.floor((known + fewest) / 2);
    const found = yield* attempt(new Set(areas.slice(0, count)));
    if (found === undefined) known = count;
    else [best, fewest] = [found, count];
  }
  const broken = new Set(areas.slice(0, fewest));
  for (const area of [...broken].reverse()) {
    if (stops.whole() || broken.size === 1) break;
    const fewer = new Set(broken);
    fewer.delete(area);
    const found = yield* attempt(fewer);
    if (found === undefined) continue;
    best = found;
    broken.delete(area);
  }
  best ??= lotsOf(pieces, classesOfPieces(pieces), fills);
  yield* exchangeLots(best, capacities, stops.all);
  return best;
}

/** Areas that have more than one piece, the largest first, and the pieces that belong to none of them. */
function areasOf(pieces: readonly Piece[], capacity: number): { areas: Area[]; others: Piece[] } {
  const byArea = new Map<string, Piece[]>();
  const others: Piece[] = [];
  for (const piece of pieces) {
    if (piece.area === null) others.push(piece);
    else if (byArea.has(piece.area)) byArea.get(piece.area)!.push(piece);
    else byArea.set(piece.area, [piece]);
  }
  const areas: Area[] = [];
  for (const loose of byArea.values()) {
    const size = loose.reduce((sum, piece) => sum + piece.size * piece.count, 0);
    if (loose.length === 1 && loose[0]!.count === 1) others.push(...loose);
    else areas.push({ size, loose, blocks: blocksOf(loose, size, capacity) });
  }
  return { areas: areas.sort((a, b) => b.size - a.size), others };
}

function blocksOf(loose: readonly Piece[], size: number, capacity: number): Piece[] {
  if (size <= capacity) return [block(loose.map((piece) => ({ piece, count: piece.count })))];
  const classes = classesOf(loose.map((piece) => [piece.size, piece.count]));
  const count = loose.reduce((sum, piece) => sum + piece.count, 0);
  const fills = fitDecreasing(classes, new Array<number>(count).fill(capacity), 'best') ?? [];
  return lotsOf(loose, classes, fills.filter((fill) => fill.some((each) => each > 0))).map(block);
}

/** One piece of lots, with one part for each row. */
function block(lots: readonly Lot[]): Piece {
  const parts = lots.flatMap(({ piece, count }) =>
    piece.parts.map(({ row, qty }): Part => ({ row, qty: qty * count })));
  return { ...bundle(parts), area: lots[0]!.piece.area };
}
