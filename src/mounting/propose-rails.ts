import { exceeds } from '../electrical/index.ts';
import { arrange } from './arrange.ts';
import type { MountedPart, MountedParts } from './mounted-parts.ts';

/** Width of a module [mm], DIN 43880. */
export const MODULE = 18;

/** Lengths of mounting rails that are tried [modules]: a few usual ones. Common practice, no source. */
export const MODULES = [12, 18, 24, 36] as const;

/** How many mounting rails of one length hold everything. */
export interface RailProposal {
  /** Usable length of one rail [mm]. */
  readonly length: number;
  /** Least number that was found, with the reserve; `null` where a part is longer than a rail. */
  readonly count: number | null;
}

/**
 * How many mounting rails hold all parts of an enclosure with its reserve, wherever they stand now.
 * @param reserve share of the rails that stays free, 0 to below 1; at 1 nothing fits.
 */
export function proposeRails(
  mounted: MountedParts, enclosure: string, reserve: number, lengths: readonly number[],
): RailProposal[] {
  return lengths.map((length) => {
    const { parts } = mounted.in(enclosure, length, { anew: true });
    return { length, count: railsFor(parts, length, reserve) };
  });
}

/** The least number of rails that parts are put whole on, with the reserve; `null` where none is enough. */
export function railsFor(parts: readonly MountedPart[], length: number, reserve: number): number | null {
  if (reserve >= 1 || parts.some(({ width }) => exceeds(width, length))) return null;
  const items = parts.map(({ width, band }) => ({ width, band }));
  const sum = items.reduce((all, { width }) => all + width, 0);
  let count = Math.max(1, Math.floor(sum / (length * (1 - reserve))));
  while (exceeds(sum, count * length * (1 - reserve)) || arrange(items, count, length).outcome !== 'fits') count += 1;
  return count;
}
