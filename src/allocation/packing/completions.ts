import { howMany } from './fit-decreasing.ts';
import type { Fill } from './size-classes.ts';

/** Ways in which one bin can be filled. */
export interface Completions {
  /** From the least waste to the most. */
  readonly fills: readonly { readonly fill: Fill; readonly waste: number }[];
  /** Whether these are all the ways that need to be tried. */
  readonly complete: boolean;
}

interface Task {
  readonly sizes: readonly number[];
  /** How many of each size are still to be packed. */
  readonly left: readonly number[];
  readonly capacity: number;
  /** Waste beyond which the rest cannot fit into the other bins. */
  readonly mostWaste: number;
  /** Place of a size of which the bin must hold one; -1 for none. */
  readonly forced: number;
  /** Where to give up. */
  readonly mostSteps: number;
}

/**
 * The fills of one bin that no other fill dominates: nothing more fits in, and no item in it, nor any two, can be
 * put out for a larger one that is still outside. A fill that is dominated need not be tried, as what it holds
 * could always be exchanged for the items of the other.
 *
 * Source: R.E. Korf, A new algorithm for optimal bin packing, AAAI 2002; the criterion is Martello and Toth's of
 * 1990; from memory.
 */
export function completions({ sizes, left, capacity, mostWaste, forced, mostSteps }: Task): Completions {
  const found: { fill: number[]; waste: number }[] = [];
  const fill = new Array<number>(sizes.length).fill(0);
  const rest = restFrom(sizes, left);
  let steps = 0;

  const visit = (from: number, room: number): void => {
    steps += 1;
    if (steps > mostSteps) return;
    let item = from;
    while (item < sizes.length && (left[item] === fill[item] || sizes[item]! > room)) item += 1;
    if (room - (rest[item] ?? 0) > mostWaste) return;
    if (item === sizes.length) {
      if (room > mostWaste || dominated(sizes, left, fill, room, forced)) return;
      found.push({ fill: [...fill], waste: room });
      return;
    }
    const before = fill[item]!;
    for (let count = Math.min(left[item]! - before, howMany(room, sizes[item]!)); count >= 0; count -= 1) {
      fill[item] = before + count;
      visit(item + 1, room - count * sizes[item]!);
    }
    fill[item] = before;
  };

  if (forced >= 0) fill[forced] = 1;
  visit(0, forced >= 0 ? capacity - sizes[forced]! : capacity);
  return { fills: found.sort((a, b) => a.waste - b.waste), complete: steps <= mostSteps };
}

/** Total size of what is left from each place on; 0 after the last. */
function restFrom(sizes: readonly number[], left: readonly number[]): number[] {
  const rest = new Array<number>(sizes.length + 1).fill(0);
  for (let item = sizes.length - 1; item >= 0; item -= 1) rest[item] = rest[item + 1]! + sizes[item]! * left[item]!;
  return rest;
}

function dominated(
  sizes: readonly number[], left: readonly number[], fill: readonly number[], waste: number, forced: number,
): boolean {
  // The forced item is in every fill, so that it is not one to exchange.
  const loose = (item: number) => fill[item]! - (item === forced ? 1 : 0);
  const held: number[] = [];
  for (let item = 0; item < sizes.length; item += 1) if (loose(item) > 0) held.push(item);
  for (let outside = sizes.length - 1; outside >= 0; outside -= 1) {
    if (left[outside]! <= fill[outside]!) continue;
    const size = sizes[outside]!;
    if (size <= waste) return true;
    for (const [place, item] of held.entries()) {
      if (item > outside && size - sizes[item]! <= waste) return true;
      const others = loose(item) > 1 ? held.slice(place) : held.slice(place + 1);
      for (const other of others) {
        const two = sizes[item]! + sizes[other]!;
        if (two <= size && size - two <= waste) return true;
      }
    }
  }
  return false;
}
