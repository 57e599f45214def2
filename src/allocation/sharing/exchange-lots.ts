import type { Steps, Stop } from '../packing/index.ts';
import type { Lot } from './lots.ts';

/** How often all lots are looked at. */
const MOST_ROUNDS = 20;

/**
 * Moves lots to bins that hold devices of the same area, where there is room, or exchanges them for others there,
 * as long as areas come to lie in fewer bins by that.
 *
 * @param bins lots of each bin; they are changed
 * @param capacities of the bins
 */
export function* exchangeLots(bins: Lot[][], capacities: readonly number[], stop: Stop): Steps<void> {
  const present = bins.map((lots) => {
    const counts = new Map<string, number>();
    for (const lot of lots) change(counts, lot, 1);
    return counts;
  });
  const free = capacities.map((capacity, bin) => capacity - bins[bin]!.reduce((sum, lot) => sum + sizeOf(lot), 0));

  /** How many fewer bins the areas lie in when a lot goes from one bin to another, and maybe one comes back for it. */
  const gain = (from: number, lot: Lot, to: number, back: Lot | undefined): number =>
    leaves(present[from]!, lot, back) + leaves(present[to]!, back, lot);
  const fits = (from: number, lot: Lot, to: number, back: Lot | undefined): boolean => {
    const more = sizeOf(lot) - (back === undefined ? 0 : sizeOf(back));
    return more <= free[to]! && -more <= free[from]!;
  };
  const move = (from: number, lot: Lot, to: number) => {
    bins[from]!.splice(bins[from]!.indexOf(lot), 1);
    bins[to]!.push(lot);
    change(present[from]!, lot, -1);
    change(present[to]!, lot, 1);
    free[from]! += sizeOf(lot);
    free[to]! -= sizeOf(lot);
  };

  for (let round = 0, changed = true; round < MOST_ROUNDS && changed; round += 1) {
    changed = false;
    for (const from of bins.keys()) {
      if (stop()) return;
      yield;
      for (const lot of [...bins[from]!]) {
        const area = lot.piece.area;
        if (area === null) continue;
        const targets = [...bins.keys()].filter((to) => to !== from && present[to]!.has(area));
        for (const to of targets) {
          const back = [undefined, ...bins[to]!].find((each) =>
            each?.piece.area !== area && fits(from, lot, to, each) && gain(from, lot, to, each) > 0);
          if (back === undefined && !(fits(from, lot, to, undefined) && gain(from, lot, to, undefined) > 0)) continue;
          move(from, lot, to);
          if (back !== undefined) move(to, back, from);
          changed = true;
          break;
        }
      }
    }
  }
}

function sizeOf({ piece, count }: Lot): number {
  return piece.size * count;
}

function change(counts: Map<string, number>, { piece: { area } }: Lot, by: 1 | -1): void {
  if (area === null) return;
  const count = (counts.get(area) ?? 0) + by;
  if (count === 0) counts.delete(area);
  else counts.set(area, count);
}

/** How many areas a bin holds fewer when one lot goes and another comes. */
function leaves(counts: ReadonlyMap<string, number>, going: Lot | undefined, coming: Lot | undefined): number {
  const lost = hasArea(going) && counts.get(going.piece.area) === 1 ? 1 : 0;
  const gained = hasArea(coming) && !counts.has(coming.piece.area) ? 1 : 0;
  return lost - gained;
}

function hasArea(lot: Lot | undefined): lot is Lot & { readonly piece: { readonly area: string } } {
  return typeof lot?.piece.area === 'string';
}
