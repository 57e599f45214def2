import { numberOf, taggedRows, textOf } from './device-reader.ts';
import type { Figures, FurtherBins } from './sharing-problem.ts';

/** Voltage of a supply where nothing says otherwise; the default of the sheet [V]. */
const DEFAULT_VOLTAGE = 24;

/** A supply as one that devices can be put on. */
export interface Rail {
  readonly id: number;
  readonly tag: string;
  readonly purpose: string | null;
  readonly voltage: number;
  /** Demand that it may carry [A]; `null` where its rating is not known. */
  readonly capacity: number | null;
}

/** The supplies that devices can be put on, in order. */
export function readRails(schedule: Figures): Rail[] {
  return taggedRows(schedule, 'supplies').map(({ id, tag }) => ({
    id, tag,
    purpose: textOf(schedule, 'supplies', id, 'purpose'),
    voltage: numberOf(schedule, 'supplies', id, 'voltage') ?? DEFAULT_VOLTAGE,
    capacity: capacityOf(schedule, id),
  }));
}

/** Demand that a supply may carry [A]: what may be used of it times its target, and no more than its fuse. */
function capacityOf(schedule: Figures, id: number): number | null {
  const [usable, target] = [numberOf(schedule, 'supplies', id, 'usable'), numberOf(schedule, 'supplies', id, 'target')];
  const fuse = numberOf(schedule, 'supplies', id, 'fuse');
  return usable === null || target === null ? null : Math.max(0, Math.min(usable * target, fuse ?? Infinity));
}

/** Voltage of devices of a purpose that are on no rail: that of the last supply which they could be put on. */
export function voltageFor(rails: readonly Rail[], purpose: string): number {
  const rail = rails.findLast((each) => each.purpose === purpose)
    ?? rails.findLast((each) => each.purpose === null) ?? rails.at(-1);
  return rail?.voltage ?? DEFAULT_VOLTAGE;
}

/**
 * Supplies like the last one of known rating: of this purpose and voltage, else without purpose, else of this
 * voltage, else any.
 */
export function furtherRails(rails: readonly Rail[], purpose: string, voltage: number): FurtherBins | undefined {
  const known = rails.filter(({ capacity }) => capacity !== null);
  const like = known.findLast((each) => each.voltage === voltage && each.purpose === purpose)
    ?? known.findLast((each) => each.voltage === voltage && each.purpose === null)
    ?? known.findLast((each) => each.voltage === voltage) ?? known.at(-1);
  if (like === undefined) return undefined;
  return {
    like: like.id, tag: like.tag, capacity: like.capacity!,
    cells: { ...(like.purpose === purpose ? {} : { purpose }), ...(like.voltage === voltage ? {} : { voltage }) },
  };
}
