import type { Fill, SizeClasses } from '../packing/index.ts';
import type { Piece } from './pieces.ts';

/** Some of the pieces alike, in one bin. */
export interface Lot {
  readonly piece: Piece;
  count: number;
}

/**
 * Says which pieces make up fills that are known by size only. Of pieces of one size, a bin is given those whose
 * area is in it already, then what is left of those begun elsewhere, then the next ones in order.
 * @returns the lots of each bin
 */
export function lotsOf(pieces: readonly Piece[], { sizes }: SizeClasses, fills: readonly Fill[]): Lot[][] {
  const waiting = new Map(sizes.map((size) =>
    [size, pieces.filter((piece) => piece.size === size).map((piece): Lot => ({ piece, count: piece.count }))]));
  const bins = fills.map((): Lot[] => []);
  const open = fills.map((fill) => [...fill]);
  const areas = fills.map(() => new Set<string>());

  const take = (bin: number, place: number, lot: Lot) => {
    const count = Math.min(open[bin]![place]!, lot.count);
    open[bin]![place]! -= count;
    lot.count -= count;
    bins[bin]!.push({ piece: lot.piece, count });
    if (lot.piece.area !== null) areas[bin]!.add(lot.piece.area);
  };
  const choose = (bin: number, lots: readonly Lot[]): Lot => {
    const left = lots.filter(({ count }) => count > 0);
    return left.find(({ piece }) => piece.area !== null && areas[bin]!.has(piece.area))
      ?? left.find(({ piece, count }) => count < piece.count) ?? left[0]!;
  };
  // What consists of most comes first: whole areas draw what is left of the same size after them.
  for (let bin = 0; bin < fills.length; bin += 1) {
    for (const [place, size] of sizes.entries()) {
      while (open[bin]![place]! > 0) take(bin, place, choose(bin, waiting.get(size)!));
    }
  }
  return bins;
}
