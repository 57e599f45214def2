import { identityOf, isBlank } from '../document.ts';
import { inputColumns, type SheetName } from '../schema/index.ts';
import type { Row } from '../snapshot.ts';
import { inOrder } from './in-order.ts';

/** A row before and the same one after. */
export interface RowPair<Before extends Row = Row, After extends Row = Row> {
  readonly before: Before;
  readonly after: After;
  /** Places of both in their sheets, from 0. */
  readonly was: number;
  readonly is: number;
  /** Whether it stands in another order among the others; as few rows as can be do. */
  readonly isMoved: boolean;
}

/** The rows of one sheet of two schedules, matched. */
export interface MatchedRows<Before extends Row = Row, After extends Row = Row> {
  /** In the order of the rows after. */
  readonly pairs: readonly RowPair<Before, After>[];
  readonly removed: readonly Before[];
  readonly added: readonly After[];
}

/** What a row that is certainly the same counts in the order of rows; one that keeps its number counts 1 more. */
const CERTAIN = 1_000_000;

/**
 * Matches the rows of a sheet of two schedules: by tag; what is left by equal content, as when only the tag is another;
 * rows without a tag that are left, in order, when more than half of their cells agree. Where a tag or a content stands
 * more than once, or only the content tells, rows are the same only where they keep their order: what came and went is
 * no move.
 * Blank rows are left out.
 */
export function matchRows<Before extends Row, After extends Row>(
  sheet: SheetName, before: readonly Before[], after: readonly After[],
): MatchedRows<Before, After> {
  const keys = inputColumns(sheet).filter(({ tag }) => tag !== true).map(({ key }) => key);
  const contents = new Map<Row, string>();
  const content = ({ row }: Placed) => {
    const text = contents.get(row) ?? JSON.stringify(keys.map((key) => row.cells[key] ?? null));
    contents.set(row, text);
    return text;
  };
  const tag = ({ row }: Placed) => identityOf(sheet, row);
  const whole = (each: Placed) => `${tag(each) ?? ''} ${content(each)}`;
  const [olds, news] = [placed(before), placed(after)];
  const matching = new Matching(olds, news);
  for (const name of [whole, tag]) matching.pairEqual(onceIn([olds, news], name));
  const certain = new Set(matching.pairs.map(([old]) => old));
  const gap = gapsBetween(matching.pairs);
  const inGap = (name: Naming): Naming => (each, side) => name(each, side) && `${gap(each, side)} ${name(each, side)}`;
  for (const name of [whole, tag, content]) for (const each of [inGap(name), name]) matching.pairEqual(each);
  matching.pairAlike((old, present) => {
    const filled = keys.filter((key) => (old.row.cells[key] ?? present.row.cells[key] ?? null) !== null);
    const equal = filled.filter((key) => old.row.cells[key] === present.row.cells[key]);
    return tag(old) === undefined && tag(present) === undefined && equal.length * 2 > filled.length;
  });

  const pairs = inNewOrder(matching.pairs);
  const kept = inOrder(pairs.map(([{ place }]) => place),
    pairs.map(([old, present]) => (certain.has(old) ? CERTAIN : 1) + (old.place === present.place ? 1 : 0)));
  const same = pairs.flatMap(([old, present], index) => {
    const isMoved = !kept.has(index);
    if (isMoved && !certain.has(old)) return [];
    return [{ before: old.row, after: present.row, was: old.place, is: present.place, isMoved }];
  });
  const [stayed, found] = [new Set(same.map(({ was }) => was)), new Set(same.map(({ is }) => is))];
  return {
    pairs: same,
    removed: olds.filter(({ place }) => !stayed.has(place)).map(({ row }) => row),
    added: news.filter(({ place }) => !found.has(place)).map(({ row }) => row),
  };
}

/**
 * Pairs rows by names alone: whatever has the first name in common, what is left by the second, and so on; of those
 * that share one, the first goes with the first. Blank rows are left out.
 * @param names each gives the name of a row, `undefined` for one that has none.
 */
export function pairRows<Each extends Row>(
  before: readonly Each[], after: readonly Each[], names: readonly ((row: Each) => string | undefined)[],
): (readonly [before: Each, after: Each])[] {
  const matching = new Matching(placed(before), placed(after));
  for (const name of names) matching.pairEqual(({ row }) => name(row as Each));
  return matching.pairs.map(([old, present]) => [old.row, present.row]);
}

/** A row that is not blank, and its place in its sheet. */
interface Placed<Each extends Row = Row> {
  readonly row: Each;
  readonly place: number;
}

type Side = 'old' | 'new';
/** The name by which rows are the same; `undefined` for a row that has none. */
type Naming = (each: Placed, side: Side) => string | undefined;
type Pairs<Before extends Row, After extends Row> = readonly (readonly [old: Placed<Before>, present: Placed<After>])[];

function placed<Each extends Row>(rows: readonly Each[]): Placed<Each>[] {
  return rows.map((row, place) => ({ row, place })).filter(({ row }) => !isBlank(row));
}

function inNewOrder<Before extends Row, After extends Row>(pairs: Pairs<Before, After>): Pairs<Before, After> {
  return [...pairs].sort(([, one], [, other]) => one.place - other.place);
}

/** Names that stand at most once on each side. */
function onceIn(sides: readonly (readonly Placed[])[], naming: (each: Placed) => string | undefined): Naming {
  const twice = new Set(sides.flatMap((rows) => {
    const seen = new Set<string | undefined>();
    return rows.map(naming).filter((name) => seen.size === seen.add(name).size);
  }));
  return (each) => twice.has(naming(each)) ? undefined : naming(each);
}

/** Tells how many of the rows that keep their order stand above a row. */
function gapsBetween(pairs: Pairs<Row, Row>): (each: Placed, side: Side) => number {
  const ordered = inNewOrder(pairs);
  const kept = inOrder(ordered.map(([{ place }]) => place), ordered.map(() => 1));
  const stay = ordered.filter((_pair, index) => kept.has(index));
  const places = { old: stay.map(([{ place }]) => place), new: stay.map(([, { place }]) => place) };
  return ({ place }, side) => {
    let [low, high] = [0, stay.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (places[side][middle]! < place) low = middle + 1;
      else high = middle;
    }
    return low;
  };
}

/** Rows that are not matched yet, and those that are. */
class Matching<Before extends Row, After extends Row> {
  readonly pairs: (readonly [Placed<Before>, Placed<After>])[] = [];
  readonly #olds: Set<Placed<Before>>;
  readonly #news: Set<Placed<After>>;

  constructor(olds: readonly Placed<Before>[], news: readonly Placed<After>[]) {
    this.#olds = new Set(olds);
    this.#news = new Set(news);
  }

  /** Pairs rows with the same name, those that share one in their order. */
  pairEqual(naming: Naming): void {
    const waiting = new Map<string, Placed<After>[]>();
    for (const present of this.#news) {
      const name = naming(present, 'new');
      if (name === undefined) continue;
      const others = waiting.get(name);
      if (others === undefined) waiting.set(name, [present]);
      else others.push(present);
    }
    // What waits first is taken last from the end.
    for (const others of waiting.values()) others.reverse();
    for (const old of this.#olds) {
      const present = waiting.get(naming(old, 'old') ?? '')?.pop();
      if (present !== undefined) this.#pair(old, present);
    }
  }

  pairAlike(areAlike: (old: Placed<Before>, present: Placed<After>) => boolean): void {
    for (const old of this.#olds) {
      for (const present of this.#news) {
        if (!areAlike(old, present)) continue;
        this.#pair(old, present);
        break;
      }
    }
  }

  #pair(old: Placed<Before>, present: Placed<After>): void {
    this.#olds.delete(old);
    this.#news.delete(present);
    this.pairs.push([old, present]);
  }
}
