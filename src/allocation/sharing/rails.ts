import { numberOf, panelOf, textOf } from '../../engine/index.ts';
import { taggedRows } from './device-reader.ts';
import type { CapacityLimit, Figures, FurtherBins } from './sharing-problem.ts';

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
  /** What sets it. */
  readonly limitedBy: CapacityLimit;
  /** The panel that it belongs to; `null` where it says none. */
  readonly panel: string | null;
}

/**
 * The supplies that devices can be put on, in order.
 * @param extension what may come later, as a share of what there is
 */
export function readRails(schedule: Figures, extension = 0): Rail[] {
  return taggedRows(schedule, 'supplies').map(({ id, tag }) => ({
    id, tag,
    purpose: textOf(schedule, 'supplies', id, 'purpose'),
    voltage: numberOf(schedule, 'supplies', id, 'voltage') ?? DEFAULT_VOLTAGE,
    ...carries(schedule, id, extension),
    panel: panelOf(schedule, 'supplies', id),
  }));
}

/** Demand that a supply may carry [A]: what may be used of it times its target, and no more than its fuse. */
function carries(schedule: Figures, id: number, extension: number): Pick<Rail, 'capacity' | 'limitedBy'> {
  const [usable, target] = [numberOf(schedule, 'supplies', id, 'usable'), numberOf(schedule, 'supplies', id, 'target')];
  const fuse = numberOf(schedule, 'supplies', id, 'fuse');
  const byTarget = usable === null || target === null ? null : Math.max(0, usable * target);
  return {
    capacity: byTarget === null ? null : Math.min(byTarget, fuse ?? Infinity) / (1 + extension),
    limitedBy: extension > 0 ? 'extension' : byTarget !== null && fuse !== null && fuse < byTarget ? 'fuse' : 'target',
  };
}

/** Voltage of devices of a purpose that are on no rail: that of the last supply which they could be put on. */
export function voltageFor(rails: readonly Rail[], purpose: string): number {
  const rail = rails.findLast((each) => each.purpose === purpose)
    ?? rails.findLast((each) => each.purpose === null) ?? rails.at(-1);
  return rail?.voltage ?? DEFAULT_VOLTAGE;
}

/**
 * Supplies like the last one of known rating: of this purpose and voltage, else without purpose, else of this
 * voltage, else any; of each, one of the same panel before others.
 */
export function furtherRails(
  rails: readonly Rail[], purpose: string, voltage: number, panel: string | null,
): FurtherBins | undefined {
  const known = rails.filter(({ capacity }) => capacity !== null);
  const last = (fits: (rail: Rail) => boolean) =>
    known.findLast((rail) => panel !== null && rail.panel === panel && fits(rail)) ?? known.findLast(fits);
  const like = last((each) => each.voltage === voltage && each.purpose === purpose)
    ?? last((each) => each.voltage === voltage && each.purpose === null)
    ?? last((each) => each.voltage === voltage) ?? last(() => true);
  if (like === undefined) return undefined;
  return {
    like: like.id, tag: like.tag, capacity: like.capacity!, limitedBy: like.limitedBy,
    cells: {
      ...(like.purpose === purpose ? {} : { purpose }), ...(like.voltage === voltage ? {} : { voltage }),
      // Mains ways are of one panel, too.
      ...(panel === null || like.panel === panel ? {} : { enclosure: panel, feed: null }),
    },
  };
}
