import { path, rounded } from './path.ts';
import type { RunPlace } from './run-places.ts';
import { label, shape, type Shape } from './shape.ts';
import { spread } from './spread.ts';
import { shortened } from './words.ts';

/** Distance of two labels along the run, so that slanted lines of text stay clear of each other [units]. */
const APART = 18;
const MOST_SIGNS = 13;

/** The names of places, slanted above the plot, each with a thin line down to its place. */
export interface PlaceLabels {
  readonly shapes: readonly Shape[];
  /** How many places have their name there. */
  readonly count: number;
}

/**
 * Names as many places as there is room for: the last, evenly spread ones, and as many again that lack voltage.
 * @param at where a place is in the picture
 * @param left and right: ends of the plot
 * @param top upper edge of the plot
 */
export function placeLabels(
  places: readonly RunPlace[], at: (place: RunPlace) => { x: number; y: number },
  left: number, right: number, top: number,
): PlaceLabels {
  const named = chosen(places, Math.floor((right - left) / APART) + 1);
  const spots = spread(named.map((place) => at(place).x), APART, left, right);
  const shapes = named.flatMap((place, index) => {
    const { x, y } = at(place);
    const spot = spots[index]!;
    return [
      shape('path', { class: 'leader', d: path([[x, y], [x, top], [spot, top - 12]]) }),
      shape('g', { transform: `rotate(-45 ${rounded(spot + 3)} ${rounded(top - 15)})` },
        label(place.isLacking ? 'strong over' : 'name', spot + 3, top - 15, nameOf(place))),
    ];
  });
  return { shapes, count: named.length };
}

function nameOf({ devices: [first, ...others] }: RunPlace): string {
  return shortened(first!.name, MOST_SIGNS) + (others.length === 0 ? '' : ` +${others.length}`);
}

function chosen(places: readonly RunPlace[], most: number): RunPlace[] {
  if (places.length <= most) return [...places];
  const lacking = evenly(places.filter(({ isLacking }) => isLacking), Math.floor(most / 2));
  const kept = new Set([...lacking, ...evenly(places, most - lacking.length)]);
  return places.filter((place) => kept.has(place));
}

/** So many of a list, the first and the last among them. */
function evenly(places: readonly RunPlace[], many: number): RunPlace[] {
  if (places.length <= many) return [...places];
  return Array.from({ length: many }, (_, index) => places[Math.round((index * (places.length - 1)) / (many - 1))]!);
}
