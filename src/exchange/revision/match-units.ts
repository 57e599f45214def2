import { grouped, type Cells } from '../../schedule/index.ts';
import { listsOf, type CountedList } from '../takeoff/index.ts';
import { plainKey } from '../takeoff/plain-words.ts';
import { sheetOf } from '../takeoff/source-text.ts';
import { identityOf, isGone, type Identity, type Unit } from './units.ts';

/** By what rows are the same where ref and place tell different things. */
export type Matched = 'ref' | 'place';

/** A row of a list and the device rows that it is about; none where it is new. */
export interface Match {
  readonly row: Cells;
  readonly units: readonly Unit[];
}

/** The rows of a list held against device rows. */
export interface Matches {
  /** In the order of the list. */
  readonly matches: readonly Match[];
  readonly left: readonly Unit[];
  /** By what they were matched where ref and place disagree; absent where they never do. */
  readonly by?: Matched;
}

export interface MatchOptions {
  /** Decides where ref and place disagree; found out from the list by default. */
  readonly by?: Matched | undefined;
  /** Ids of device rows that rows of the list are, by the number of the row in it, from 0; `null` for a new row. */
  readonly same?: ReadonlyMap<number, number | null>;
  /** Device rows that the list is about; others are the same only by ref and type. */
  readonly isMeant?: (unit: Unit) => boolean;
}

interface Line extends Identity {
  readonly index: number;
  readonly row: Cells;
}

/** The name under which a line and a unit are the same; `undefined` for one that has none. */
type Naming = (each: Identity) => string | undefined;

const NAMINGS = {
  all: named('ref', 'area', 'type'),
  ref: named('ref', 'type'),
  place: ({ area, type }: Identity) => JSON.stringify([area, type]),
  refAlone: named('ref'),
  type: ({ ref, type }: Identity) => JSON.stringify([ref === '', type]),
} satisfies Record<string, Naming>;

/** What a unit is told by: what its list called it goes before what it is called by now. */
const TOLD = ['called', 'identities'] as const;

/**
 * Finds the device rows that each row of a list is about: by ref, area and type; by ref and type; by area and type; by
 * ref alone, as when another type came in its place. A row that says no area is one of its type. Each time by what the
 * list of before called a device row, whatever a person calls it by now, and then by that.
 *
 * Where the ref of a row names one device row and its place another, the ref goes first, unless the list was numbered
 * anew: refs that went to other types, or more of them that went to other places than stayed.
 */
export function matchUnits(
  { rows }: Pick<CountedList, 'rows'>, units: readonly Unit[],
  { by, same = new Map(), isMeant = () => true }: MatchOptions = {},
): Matches {
  const matching = new Matching(rows, units, isMeant);
  matching.decided(same);
  matching.pass(NAMINGS.all);
  const disagree = matching.disagreement();
  const first = by ?? disagree ?? 'ref';
  const passes = first === 'ref' ? [NAMINGS.ref, NAMINGS.place] : [NAMINGS.place, NAMINGS.ref];
  for (const naming of passes) matching.pass(naming);
  matching.pass(NAMINGS.refAlone);
  matching.pass(NAMINGS.type);
  return { ...matching.result, ...(disagree === undefined ? {} : { by: first }) };
}

function named(...keys: (keyof Identity)[]): Naming {
  return (each) => each.ref === '' ? undefined : JSON.stringify(keys.map((key) => each[key]));
}

class Matching {
  readonly #lines: readonly Line[];
  readonly #matched = new Map<number, readonly Unit[]>();
  readonly #left: Set<Unit>;
  readonly #isMeant: (unit: Unit) => boolean;
  #agreed = 0;

  constructor(rows: readonly Cells[], units: readonly Unit[], isMeant: (unit: Unit) => boolean) {
    this.#isMeant = isMeant;
    this.#lines = rows.map((row, index) => ({ ...identityOf(row), index, row }));
    this.#left = new Set(units);
  }

  get result(): Pick<Matches, 'matches' | 'left'> {
    return {
      matches: this.#lines.map(({ index, row }) => ({ row, units: this.#matched.get(index) ?? [] })),
      left: [...this.#left],
    };
  }

  get #open(): Line[] {
    return this.#lines.filter(({ index }) => !this.#matched.has(index));
  }

  decided(same: ReadonlyMap<number, number | null>): void {
    for (const line of this.#lines) {
      const id = same.get(line.index);
      if (id === null) this.#match(line, []);
      const unit = [...this.#left].find(({ parts }) => parts.some(({ row }) => row.id === id));
      if (unit !== undefined) this.#match(line, [unit]);
    }
  }

  pass(naming: Naming): void {
    const holdsForAll = naming === NAMINGS.all || naming === NAMINGS.ref;
    // A row that says no area is no more of one place than of another.
    const takes = ({ area }: Line) => (naming !== NAMINGS.place || area !== '') && (naming !== NAMINGS.type || area === '');
    for (const told of TOLD) {
      const named = this.#named(naming, [...this.#left].filter((unit) => holdsForAll || this.#isMeant(unit)), told);
      const lines = this.#open.filter((line) => naming(line) !== undefined && takes(line));
      for (const [name, group] of grouped(lines, naming)) this.#pair(group, named.get(name) ?? [], naming);
    }
    if (naming === NAMINGS.all) this.#agreed = this.#matched.size;
  }

  /** What tells better which rows are the same, where refs name other rows than places do. */
  disagreement(): Matched | undefined {
    const left = [...this.#left].filter(this.#isMeant);
    const [byRef, byPlace] = [this.#named(NAMINGS.refAlone, left), this.#named(NAMINGS.place, left)];
    const doubtful = this.#open.filter((line) =>
      line.area !== '' && byRef.has(NAMINGS.refAlone(line)) && byPlace.has(NAMINGS.place(line)));
    if (doubtful.length === 0) return undefined;
    const isRenumbered = doubtful.length > this.#agreed
      || doubtful.some((line) => byRef.get(NAMINGS.refAlone(line))!.every(({ type }) => type !== line.type));
    return isRenumbered ? 'place' : 'ref';
  }

  /** Pairs lines and units of one name: a single line with all parts of its row, several with what is most like. */
  #pair(lines: readonly Line[], units: readonly Unit[], naming: Naming): void {
    // A unit whose parts are in several places bears several names, under one of which it may be matched already.
    const free = new Set(units.filter((unit) => this.#left.has(unit)));
    const closest = lines.flatMap((line) => units.map((unit) => ({ line, unit, points: likeness(line, unit) })))
      .sort((one, other) => other.points - one.points);
    for (const { line, unit } of closest) {
      if (!free.has(unit) || this.#matched.has(line.index)) continue;
      const parts = lines.length > 1 ? [unit]
        : [...free].filter((other) => other === unit || isGone(other) === isGone(unit) && (naming === NAMINGS.place
          ? hasNoRef(other) && hasNoRef(unit) : other.source === '' && unit.source === ''));
      for (const part of parts) free.delete(part);
      this.#match(line, parts);
    }
  }

  #named(naming: Naming, units: readonly Unit[], told: typeof TOLD[number] = 'called'): Map<string | undefined, Unit[]> {
    const named = units.flatMap((unit) => [...new Set(unit[told].map(naming))].map((name) => ({ name, unit })));
    return new Map([...grouped(named.filter(({ name }) => name !== undefined), ({ name }) => name)]
      .map(([name, of]) => [name, of.map(({ unit }) => unit)]));
  }

  #match({ index }: Line, units: readonly Unit[]): void {
    for (const unit of units) this.#left.delete(unit);
    this.#matched.set(index, units);
  }
}

function hasNoRef({ called }: Unit): boolean {
  return called.every(({ ref }) => ref === '');
}

/** How much speaks for a unit among several of the same name: rail and branch as the list says, list, quantity. */
function likeness({ row }: Line, unit: Unit): number {
  const { parts, lists } = unit;
  const says = (['rail', 'branch'] as const).filter((key) => plainKey(row[key]) !== '');
  const stands = parts.some((part) => says.every((key) => plainKey(part.row.cells[key]) === plainKey(row[key])));
  const qty = parts.reduce((sum, part) => sum + (part.qty ?? 0), 0);
  const own = listsOf(String(row.source));
  const isOfList = lists.some((list) => own.some((each) => each === list || sheetOf(each) !== '' && sheetOf(each) === sheetOf(list)));
  return (isGone(unit) ? -8 : 0) + (says.length > 0 && stands ? 4 : 0) + (isOfList ? 2 : 0) + (qty === row.qty ? 1 : 0);
}
