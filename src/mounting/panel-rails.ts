import { exceeds } from '../electrical/index.ts';
import { grouped, isBlank, tagOf, type ScheduleDocument } from '../schedule/index.ts';
import type { Figures } from '../terminals/index.ts';
import { arrange, widthOnRail, type Outcome } from './arrange.ts';
import { MountedParts, type MountedPart } from './mounted-parts.ts';

/** A mounting rail and what stands on it, from the left: mains, what has both, extra-low voltage. */
export interface PanelRail {
  /** From 1 at the top. */
  readonly number: number;
  readonly parts: readonly MountedPart[];
  /** Width that is taken [mm], with end brackets and partitions. */
  readonly used: number;
  /** Mains and extra-low voltage stand on it, parted by a partition. */
  readonly isMixed: boolean;
  /** It is given more by hand than it is long. */
  readonly isOver: boolean;
}

/** The mounting rails of an enclosure. */
export interface PanelRails {
  /** Row of the enclosure. */
  readonly id: number;
  readonly enclosure: string;
  /** Usable length of one rail [mm]. */
  readonly length: number;
  readonly rails: readonly PanelRail[];
  /** Parts that find no rail, or were given one that is not there. */
  readonly unplaced: readonly MountedPart[];
  /** Whether all that has no rail by hand finds one. */
  readonly outcome: Outcome;
  /** The same if nothing stood by hand; absent where nothing does. */
  readonly anew?: Outcome;
  /** Width of all parts with end brackets [mm]; how many partitions there are hangs on the arrangement. */
  readonly used: number;
  /** Rows whose width is not known, so that they stand nowhere here. */
  readonly lacking: number;
}

/**
 * The rails of every enclosure of which number and length are known, in the order of the document.
 * @param options.anew nothing stands by hand.
 */
export function panelRails(
  document: ScheduleDocument, figures: Figures, { anew = false }: { readonly anew?: boolean } = {},
): PanelRails[] {
  const mounted = new MountedParts(document, figures);
  const rows = [...grouped(document.rows('enclosures').filter((row) => !isBlank(row)), (row) => tagOf('enclosures', row))];
  return rows.flatMap(([enclosure, [row]]): PanelRails[] => {
    const count = figures.value('enclosures', row!.id, 'rails');
    const length = figures.value('enclosures', row!.id, 'railLength');
    if (enclosure === '' || typeof count !== 'number' || typeof length !== 'number') return [];
    const { parts, lacking } = mounted.in(enclosure, length, { anew });
    const rails = Math.min(count, MOST_RAILS);
    const arrangement = arranged(parts, rails, length);
    const isByHand = parts.some(({ mountedOn }) => mountedOn !== undefined);
    const isLeft = arrangement.unplaced.length > 0 || arrangement.rails.some(({ isOver }) => isOver);
    const freely = () => arrange(mounted.in(enclosure, length, { anew: true }).parts, rails, length).outcome;
    return [{
      id: row!.id, enclosure, length, lacking, ...arrangement, ...isByHand && isLeft ? { anew: freely() } : {},
    }];
  });
}

/** More rails than any enclosure has: what goes beyond is not drawn, and no more memory is taken for it. */
const MOST_RAILS = 100;

function arranged(
  parts: readonly MountedPart[], count: number, length: number,
): Pick<PanelRails, 'rails' | 'unplaced' | 'outcome' | 'used'> {
  const { outcome, rails: places } = arrange(parts, count, length);
  const rails = Array.from({ length: count }, (_rail, place): PanelRail => {
    const those = fromLeft(parts.filter((_part, index) => places[index] === place + 1));
    const used = widthOnRail(those);
    return {
      number: place + 1, parts: those, used, isMixed: new Set(those.flatMap(({ band }) => band ?? [])).size > 1,
      isOver: exceeds(used, length),
    };
  });
  const unplaced = parts.filter((_part, index) => places[index] === 0);
  return { rails, unplaced, outcome, used: parts.reduce((sum, { width }) => sum + width, 0) };
}

/** Mains to the left and extra-low voltage to the right, so that one partition parts them; each in its order. */
function fromLeft(parts: readonly MountedPart[]): MountedPart[] {
  const place = ({ band }: MountedPart) => band === 'mains' ? 0 : band === undefined ? 1 : 2;
  return [...parts].sort((one, other) => place(one) - place(other));
}
