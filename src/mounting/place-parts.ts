import { setCells, type CellEdit, type Change, type ScheduleDocument } from '../schedule/index.ts';
import type { Figures } from '../terminals/index.ts';
import type { MountedPart } from './mounted-parts.ts';
import { panelRails } from './panel-rails.ts';

/** A part that would be given a rail, or another one. */
export interface Placing {
  readonly enclosure: string;
  readonly part: MountedPart;
  /** Number of its rail, from 1. */
  readonly rail: number;
}

/** What placing comes to. */
export interface Placement {
  readonly placed: readonly Placing[];
  /** Parts that find no rail. */
  readonly left: readonly Pick<Placing, 'enclosure' | 'part'>[];
  /** Supplies whose units come on several rails, which one cell cannot say: they stay without one. */
  readonly parted: readonly Pick<Placing, 'enclosure' | 'part'>[];
}

/**
 * Gives every part the rail that it stands on.
 * @param options.anew what has a rail may get another one; without it, it stays there.
 */
export function placeParts(
  document: ScheduleDocument, figures: Figures, options: { readonly anew?: boolean } = {},
): Placement {
  const placed: Placing[] = [];
  const left: Pick<Placing, 'enclosure' | 'part'>[] = [];
  const parted: Pick<Placing, 'enclosure' | 'part'>[] = [];
  for (const { enclosure, rails, unplaced } of panelRails(document, figures, options)) {
    const railsOf = new Map<number, Set<number>>();
    for (const { number, parts } of rails) {
      for (const { sheet, ids: [id] } of parts) if (sheet === 'supplies') railsOf.set(id!, (railsOf.get(id!) ?? new Set()).add(number));
    }
    const isParted = ({ sheet, ids: [id] }: MountedPart) => sheet === 'supplies'
      && ((railsOf.get(id!)?.size ?? 0) > 1 || unplaced.some((other) => other.sheet === sheet && other.ids[0] === id));
    const isFirst = ({ sheet, piece }: MountedPart) => sheet !== 'supplies' || piece === undefined || piece.number === 1;
    for (const { number: rail, parts } of rails) {
      for (const part of parts) {
        if (isParted(part)) {
          if (isFirst(part)) parted.push({ enclosure, part });
        } else if (isFirst(part) && edits(document, { part, rail }).length > 0) placed.push({ enclosure, part, rail });
      }
    }
    left.push(...unplaced.map((part) => ({ enclosure, part })));
  }
  return { placed, left, parted };
}

/** Changes that make a placement true, as one action. */
export function placingChanges(document: ScheduleDocument, placement: Placement): Change[] {
  return setCells(document, [
    ...placement.placed.flatMap((each) => edits(document, each)),
    // A number that stood there would say that all units stand on one rail.
    ...placement.parted.flatMap(({ part }) => edits(document, { part, rail: null })),
  ]);
}

/** Cells that say something else by now. */
function edits(
  document: ScheduleDocument,
  { part: { sheet, ids }, rail }: { readonly part: MountedPart; readonly rail: number | null },
): CellEdit[] {
  return ids.filter((id) => (document.row(sheet, id)!.cells.mountedOn ?? null) !== rail)
    .map((id) => ({ sheet, id, key: 'mountedOn', value: rail }));
}
