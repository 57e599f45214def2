import { wholeTags, type Cells, type CellValue } from '../../schedule/index.ts';
import { cellsOf, type JointRow, type Sides } from './joint-rows.ts';

const SIDES = ['base', 'mine', 'theirs'] as const;
type Side = (typeof SIDES)[number];

/**
 * The device rows that were one row of a list and stand in several by now, unit by unit, of which both sides changed
 * the quantities or the number of parts, each in its own way, so that no row of them may be joined by itself: a
 * quantity would be lost or doubled. Parts have the same source, or a ref that was made of that of another row
 * (`L1-004/2`); of rows with neither, those of one type and area, where their number is another one than it was.
 */
export function partedUnits<Each extends JointRow>(sides: Sides, rows: readonly Each[]): (readonly Each[])[] {
  const groups = new Groups(rows);
  const loose = new Set<Each>();
  for (const side of SIDES) {
    const refs = new Set(rows.map((row) => cellsOf(sides, row, side)?.ref ?? null));
    for (const row of rows) {
      const cells = cellsOf(sides, row, side);
      if (cells === undefined) continue;
      const [name, isLoose] = unitName(cells, refs, sides.base !== undefined);
      if (name !== undefined) groups.join(`${side} ${name}`, row);
      if (isLoose) loose.add(row);
    }
  }
  return groups.all.filter((unit) => {
    const [base, mine, theirs] = SIDES.map((side) => quantities(sides, unit, side));
    if (same(mine!, theirs!) || Math.max(base!.length, mine!.length, theirs!.length) < 2) return false;
    if (sides.base === undefined) return true;
    const isParted = mine!.length !== base!.length || theirs!.length !== base!.length;
    return !same(mine!, base!) && !same(theirs!, base!) && (isParted || !unit.some((row) => loose.has(row)));
  });
}

/** What parts of one unit have in common; and whether only their kind says so. */
function unitName(
  { source = null, ref = null, type = null, area = null }: Cells, refs: ReadonlySet<CellValue>, hasBase: boolean,
): readonly [name: string | undefined, isLoose: boolean] {
  if (source !== null) return [JSON.stringify(['source', source, type]), false];
  if (typeof ref === 'string') {
    const whole = wholeTags(ref).findLast((tag) => refs.has(tag)) ?? ref;
    return [JSON.stringify(['ref', whole, type]), false];
  }
  return hasBase && type !== null ? [JSON.stringify(['kind', area, type]), true] : [undefined, false];
}

/** The quantities of the parts that a side has, in order of size. */
function quantities(sides: Sides, unit: readonly JointRow[], side: Side): string[] {
  return unit.flatMap((row) => {
    const cells = cellsOf(sides, row, side);
    return cells === undefined ? [] : [JSON.stringify(cells.qty ?? null)];
  }).sort();
}

const same = (one: readonly string[], other: readonly string[]) =>
  one.length === other.length && one.every((each, at) => each === other[at]);

/** Rows in groups, which become one where a row is in two of them. */
class Groups<Each> {
  readonly #ofRow: Map<Each, Each[]>;
  readonly #named = new Map<string, Each>();

  constructor(rows: readonly Each[]) {
    this.#ofRow = new Map(rows.map((row) => [row, [row]]));
  }

  get all(): (readonly Each[])[] {
    return [...new Set(this.#ofRow.values())];
  }

  join(name: string, row: Each): void {
    const other = this.#named.get(name);
    this.#named.set(name, row);
    if (other === undefined) return;
    const [one, two] = [this.#ofRow.get(other)!, this.#ofRow.get(row)!];
    if (one === two) return;
    one.push(...two);
    for (const each of two) this.#ofRow.set(each, one);
  }
}
