import { numberOf, textOf } from '../../engine/index.ts';
import { leastBins, withRounding, type Steps } from '../packing/index.ts';
import { lotsOf, type Lot } from '../sharing/lots.ts';
import { bundle, classesOfPieces, type Piece } from '../sharing/pieces.ts';
import type { Cells } from '../../schedule/index.ts';
import type { SizedSchedule, SizedWay, SizingRules } from './sizing.ts';

/** What a way is like where no row of the schedule says so. */
const DEFAULT_KIND = 'electronic';
/** Its target where it is not said; the default of the sheet. */
const DEFAULT_TARGET = 0.8;
/** Cells of a way that are true of that one alone. */
const OWN_KEYS: readonly string[] = ['way', 'rail', 'note', 'enclosure'];

/** The way that those of a sizing are made like. */
export interface WayLike {
  readonly rated: number;
  /** Current that it is loaded with at most [A]. */
  readonly capacity: number;
  readonly cells: Cells;
}

/** The last way behind such a supply whose kind and rating are known; else that of the office. */
export function wayLike(schedule: SizedSchedule, rules: SizingRules, purpose: string, voltage: number): WayLike {
  const like = schedule.rows('ways').findLast(({ id }) => {
    const rail = schedule.target('ways', id, 'rail');
    return rail >= 0 && numberOf(schedule, 'supplies', rail, 'voltage') === voltage
      && textOf(schedule, 'supplies', rail, 'purpose') === purpose
      && textOf(schedule, 'ways', id, 'kind') !== null && (numberOf(schedule, 'ways', id, 'rated') ?? 0) > 0;
  });
  const rated = like === undefined ? rules.lists.wayRating ?? 4 : numberOf(schedule, 'ways', like.id, 'rated')!;
  const target = like === undefined ? DEFAULT_TARGET : numberOf(schedule, 'ways', like.id, 'target') ?? DEFAULT_TARGET;
  const cells = like === undefined ? { kind: DEFAULT_KIND, rated }
    : Object.fromEntries(Object.entries(like.cells).filter(([key]) => !OWN_KEYS.includes(key)));
  return { rated, cells, capacity: withRounding(rated * target) };
}

/**
 * The least number of ways for what is on one supply, with whole devices and runs on each; what asks for more than one
 * may carry has one of its own. For extension there are so many more without anything on them.
 */
export function* waysOf(lots: readonly Lot[], like: WayLike, rules: SizingRules): Steps<SizedWay[]> {
  const pieces = lots.flatMap(({ piece, count }) => piecesIn(piece, count));
  const fitting = pieces.filter(({ size }) => size <= like.capacity);
  const tooLarge = pieces.filter(({ size }) => size > like.capacity);
  const classes = classesOfPieces(fitting);
  const packed = (yield* leastBins(classes, { base: [], spare: [], more: like.capacity }, rules.stop))!;
  const filled = lotsOf(fitting, classes, packed.fills);
  const alone = tooLarge.flatMap((piece) => Array.from({ length: piece.count }, () => [{ piece, count: 1 }]));
  // What asks for nothing, by its diversity, hangs on the first way; there is one in any case.
  const [first = [], ...others] = [...filled, ...alone];
  const idle = fitting.filter(({ size }) => size === 0).map((piece): Lot => ({ piece, count: piece.count }));
  const runsOf = (on: readonly Lot[]) =>
    [...new Set(on.flatMap(({ piece }) => piece.parts.flatMap(({ row }) => row.run ?? [])))];
  const ways = [[...first, ...idle], ...others].map((on) => ({ cells: like.cells, runs: runsOf(on) }));
  const spare = Math.ceil(ways.length * rules.extension - 1e-9);
  return [...ways, ...Array.from({ length: spare }, () => ({ cells: like.cells, runs: [] }))];
}

/** What need not stay on one way of a piece that keeps an area together: a run does, and single devices do not. */
function piecesIn(piece: Piece, count: number): Piece[] {
  const runs = new Map<number, Piece['parts'][number][]>();
  const loose: Piece[] = [];
  for (const part of piece.parts) {
    const { row, qty } = part;
    if (row.run !== null) runs.set(row.run, [...runs.get(row.run) ?? [], part]);
    else if (row.whole) loose.push(bundle([part]));
    else loose.push({ size: row.each, count: qty, area: row.area, parts: [{ row, qty: 1 }] });
  }
  const bundles = [...runs.values()].map((parts) => bundle(parts));
  return [...loose, ...bundles].map((each) => ({ ...each, count: each.count * count }));
}
