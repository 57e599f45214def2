import { exceeds } from '../electrical/index.ts';
import { PARTITION, type Band } from './mounted-parts.ts';

/** What is put on a mounting rail as a whole. */
export interface Item {
  /** Width [mm], above 0. */
  readonly width: number;
  readonly band: Band | undefined;
  /** Number of its rail, from 1, where that is given; one that is not there finds no rail. */
  readonly mountedOn?: number | undefined;
}

/**
 * Whether all that is given no rail finds one: it does; it is proven that it cannot; or neither was found within the
 * bounds of the search.
 */
export type Outcome = 'fits' | 'none' | 'unknown';

export interface Arrangement {
  readonly outcome: Outcome;
  /** Number of the rail of each item, from 1; 0 for one that finds none. */
  readonly rails: readonly number[];
}

/**
 * Steps of a search before it is given up: some milliseconds for a panel of fifty parts, as it is made again whenever
 * one of them changes.
 */
const MOST_STEPS = 10_000;

const NOTHING = 0;
const MASK: Readonly<Record<Band, number>> = { mains: 1, elv: 2 };
const BOTH = MASK.mains | MASK.elv;

/** Mounting rails of one length, as they fill. */
class Rails {
  readonly length: number;
  readonly widths: number[];
  readonly masks: number[];

  constructor(count: number, length: number) {
    this.length = length;
    this.widths = new Array<number>(count).fill(0);
    this.masks = new Array<number>(count).fill(NOTHING);
  }

  put({ width, band }: Item, rail: number): () => void {
    const [widths, masks] = [this.widths[rail]!, this.masks[rail]!];
    this.widths[rail] = widths + width;
    this.masks[rail] = masks | maskOf(band);
    return () => {
      this.widths[rail] = widths;
      this.masks[rail] = masks;
    };
  }

  /** @param mixes whether mains and extra-low voltage may come on one rail that has not both yet. */
  takes({ width, band }: Item, rail: number, mixes: boolean): boolean {
    const mask = this.masks[rail]! | maskOf(band);
    if (mask === BOTH && this.masks[rail] !== BOTH && !mixes) return false;
    return !exceeds(this.widths[rail]! + width + partitionOf(mask), this.length);
  }

  get free(): number {
    return this.widths.reduce((sum, width, rail) =>
      sum + Math.max(0, this.length - width - partitionOf(this.masks[rail]!)), 0);
  }
}

const maskOf = (band: Band | undefined): number => band === undefined ? NOTHING : MASK[band];
const partitionOf = (mask: number): number => mask === BOTH ? PARTITION : 0;

/** Width that items take of one rail [mm], with the partition where mains and extra-low voltage are among them. */
export function widthOnRail(items: readonly Pick<Item, 'width' | 'band'>[]): number {
  const mask = items.reduce((all, { band }) => all | maskOf(band), NOTHING);
  return items.reduce((sum, { width }) => sum + width, 0) + partitionOf(mask);
}

/**
 * Puts items whole on mounting rails. What has a rail keeps it. The others come in their order on the first rail with
 * room for them, mains and extra-low voltage on rails of their own; where that leaves one over, every way to arrange
 * them is searched, then the same with both on one rail, parted by a partition. The same items give the same
 * arrangement.
 *
 * @param items in order of their purpose
 * @param count of mounting rails, 0 or more
 * @param length of each [mm]
 * @returns the outcome says whether what has no rail finds one; a rail that is given more than it holds is not judged
 */
export function arrange(items: readonly Item[], count: number, length: number): Arrangement {
  const base = new Rails(count, length);
  const rails = items.map(({ mountedOn }) => mountedOn === undefined || mountedOn > count ? 0 : mountedOn);
  for (const [index, rail] of rails.entries()) if (rail > 0) base.put(items[index]!, rail - 1);
  const free = [...items.keys()].filter((index) => items[index]!.mountedOn === undefined);
  let outcome: Outcome = 'unknown';
  for (const mixes of [false, true]) {
    const inOrder = firstFit(items, free, copyOf(base), mixes);
    if (inOrder.every((rail) => rail > 0)) return { outcome: 'fits', rails: joined(rails, free, inOrder) };
    const found = search(items, free, copyOf(base), mixes);
    if (typeof found !== 'string') return { outcome: 'fits', rails: byPurpose(joined(rails, free, found), items, count) };
    outcome = found;
  }
  return { outcome, rails: joined(rails, free, firstFit(items, free, base, true)) };
}

function joined(rails: readonly number[], free: readonly number[], found: readonly number[]): number[] {
  const all = [...rails];
  for (const [place, index] of free.entries()) all[index] = found[place]!;
  return all;
}

/** Rails of the items in the first place with room for them; 0 where there is none. */
function firstFit(items: readonly Item[], free: readonly number[], rails: Rails, mixes: boolean): number[] {
  return free.map((index) => {
    const rail = rails.widths.findIndex((_width, each) => rails.takes(items[index]!, each, mixes));
    if (rail >= 0) rails.put(items[index]!, rail);
    return rail + 1;
  });
}

/**
 * Searches all ways to put items on rails, the widest item first. Of rails that are as full with the same only the
 * first is tried, and items alike stand in the order of rails: another arrangement is the same with names changed.
 * @returns the rail of each; `none` where it is proven that there is none
 */
function search(items: readonly Item[], free: readonly number[], rails: Rails, mixes: boolean): number[] | 'none' | 'unknown' {
  const order = [...free.keys()].sort((one, other) =>
    items[free[other]!]!.width - items[free[one]!]!.width
      || maskOf(items[free[one]!]!.band) - maskOf(items[free[other]!]!.band) || one - other);
  const sorted = order.map((place) => items[free[place]!]!);
  const left = sorted.map((_item, at) => sorted.slice(at).reduce((sum, { width }) => sum + width, 0));
  const chosen = new Array<number>(sorted.length).fill(0);
  let steps = 0;
  const visit = (at: number): boolean => {
    const item = sorted[at];
    if (item === undefined) return true;
    if (exceeds(left[at]!, rails.free)) return false;
    const before = sorted[at - 1];
    const isAlike = before?.width === item.width && before.band === item.band;
    const tried = new Set<string>();
    for (let rail = isAlike ? chosen[at - 1]! : 0; rail < rails.widths.length; rail += 1) {
      const state = `${rails.widths[rail]!} ${rails.masks[rail]!}`;
      if (tried.has(state) || !rails.takes(item, rail, mixes)) continue;
      tried.add(state);
      if ((steps += 1) > MOST_STEPS) return false;
      const takeBack = rails.put(item, rail);
      chosen[at] = rail;
      if (visit(at + 1)) return true;
      takeBack();
    }
    return false;
  };
  if (!visit(0)) return steps > MOST_STEPS ? 'unknown' : 'none';
  const found = new Array<number>(free.length).fill(0);
  for (const [at, place] of order.entries()) found[place] = chosen[at]! + 1;
  return found;
}

/** The same arrangement with rails that nobody gave anything in the order of the first that they hold. */
function byPurpose(rails: readonly number[], items: readonly Item[], count: number): number[] {
  const given = new Set(items.map(({ mountedOn }) => mountedOn));
  const open = Array.from({ length: count }, (_rail, place) => place + 1).filter((rail) => !given.has(rail));
  const first = (rail: number) => {
    const index = rails.indexOf(rail);
    return index < 0 ? Infinity : index;
  };
  const sorted = [...open].sort((one, other) => first(one) === first(other) ? one - other : first(one) - first(other));
  const names = new Map(sorted.map((rail, place) => [rail, open[place]!]));
  return rails.map((rail) => names.get(rail) ?? rail);
}

function copyOf(rails: Rails): Rails {
  const copy = new Rails(rails.widths.length, rails.length);
  copy.widths.splice(0, Infinity, ...rails.widths);
  copy.masks.splice(0, Infinity, ...rails.masks);
  return copy;
}
