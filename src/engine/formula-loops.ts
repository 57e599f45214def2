import { findColumn, type Reference, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import { keysBetween, span } from './named-ranges.ts';
import type { Calculation } from './calculation.ts';
import {
  columnsGivenBy, dependentsOf, isShare, ruleOf, SOLUTIONS, totalOf, type Argument, type PreparedSolution,
} from './schema-rules.ts';

/** A cell of a schedule. */
export interface CellName {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
}

interface Formula extends CellName {
  readonly references: readonly (Reference | undefined)[];
}

type Formulas = ReadonlyMap<string, Formula>;

/**
 * Finds the formulas that depend on themselves, by other formulas, rules, totals or solutions. Columns are followed
 * first, which costs nothing to speak of; cells only where columns go round.
 * @param formulas by name of their cell.
 * @returns for each formula that goes round, the cells of the way, each of which is worked out from the next.
 */
export function findLoops(formulas: Formulas, calculation: Calculation): Map<string, readonly CellName[]> {
  const loops = new Map<string, readonly CellName[]>();
  for (const columns of circlesOfColumns(formulas)) new CellWalk(columns, formulas, calculation).find(loops);
  return loops;
}

/** Groups of columns that depend on one another, formulas taken in. */
function circlesOfColumns(formulas: Formulas): Set<string>[] {
  const next = new Map<string, Set<string>>();
  const link = (from: string, into: string) => {
    const links = next.get(from);
    if (links === undefined) next.set(from, new Set([into]));
    else links.add(into);
  };
  for (const { sheet, key, references } of formulas.values()) {
    for (const reference of references) {
      if (reference !== undefined) {
        for (const read of keysBetween(reference)) link(`${reference.sheet}.${read}`, `${sheet}.${key}`);
      }
    }
  }
  const following = (column: string): string[] => {
    const [sheet, key] = column.split('.') as [SheetName, string];
    return [...next.get(column) ?? [], ...dependentsOf(sheet, key).map((each) => `${each.sheet}.${each.key}`)];
  };
  return circles([...next.keys()], following).map((circle) => new Set(circle));
}

/** Nodes that can be reached from one another (Tarjan, Depth-first search and linear graph algorithms, 1972). */
function circles<Node>(
  roots: Iterable<Node>, following: (node: Node) => Iterable<Node>, done?: (node: Node) => void
): Node[][] {
  const found: Node[][] = [];
  const order = new Map<Node, number>();
  const lowest = new Map<Node, number>();
  const open: Node[] = [];
  const isOpen = new Set<Node>();
  const itself = new Set<Node>();
  for (const root of roots) {
    if (order.has(root)) continue;
    const path: { node: Node; rest: Iterator<Node> }[] = [];
    const enter = (node: Node) => {
      order.set(node, order.size);
      lowest.set(node, order.get(node)!);
      open.push(node);
      isOpen.add(node);
      path.push({ node, rest: following(node)[Symbol.iterator]() });
    };
    enter(root);
    for (let step = path.at(-1); step !== undefined; step = path.at(-1)) {
      const { node, rest } = step;
      const next = rest.next();
      if (next.done !== true) {
        if (next.value === node) itself.add(node);
        if (!order.has(next.value)) enter(next.value);
        else if (isOpen.has(next.value)) lowest.set(node, Math.min(lowest.get(node)!, order.get(next.value)!));
        continue;
      }
      path.pop();
      const above = path.at(-1)?.node;
      if (above !== undefined) lowest.set(above, Math.min(lowest.get(above)!, lowest.get(node)!));
      if (lowest.get(node) !== order.get(node)) continue;
      const circle = open.splice(open.lastIndexOf(node));
      for (const each of circle) {
        isOpen.delete(each);
        done?.(each);
      }
      if (circle.length > 1 || itself.has(node)) found.push(circle);
    }
  }
  return found;
}

/** Cells that are kept of a way round. */
export const LONGEST_WAY = 12;
/** Most cells that are looked at to find a shorter way round than the one found first. */
const MOST_LOOKED_AT = 1_000;

/** Follows the cells of columns that go round. A cell is a number: its column’s first, and its row id. */
class CellWalk {
  readonly #document: ScheduleDocument;
  readonly #calculation: Calculation;
  readonly #formulas: Formulas;
  readonly #columns: { sheet: SheetName; key: string; first: number }[] = [];
  readonly #firsts = new Map<string, number>();
  /** For each column, the next position whose cell is not done with yet; so that no range is gone through twice. */
  readonly #next = new Map<number, Int32Array>();
  readonly #members = new Map<string, Map<number, number[]>>();

  constructor(columns: ReadonlySet<string>, formulas: Formulas, calculation: Calculation) {
    this.#calculation = calculation;
    this.#document = calculation.document;
    this.#formulas = formulas;
    let first = 0;
    for (const name of columns) {
      const [sheet, key] = name.split('.') as [SheetName, string];
      this.#columns.push({ sheet, key, first });
      this.#firsts.set(name, first);
      first += this.#document.capacity(sheet);
    }
  }

  find(loops: Map<string, readonly CellName[]>): void {
    const roots: number[] = [];
    for (const { sheet, key, id } of this.#formulas.values()) {
      const first = this.#firsts.get(`${sheet}.${key}`);
      if (first !== undefined) roots.push(first + id);
    }
    const done = (node: number) => {
      const { sheet, id, first } = this.#at(node);
      const position = this.#document.position(sheet, id);
      if (position >= 0) this.#nextOf(first, this.#document.rows(sheet).length)[position] = position + 1;
    };
    for (const circle of circles(roots, (node) => this.#reads(node, true), done)) {
      const within = new Set(circle);
      let shared: readonly CellName[] | undefined;
      for (const node of circle) {
        const cell = this.#at(node);
        const name = `${cell.sheet}#${cell.id}.${cell.key}`;
        if (!this.#formulas.has(name) || loops.has(name)) continue;
        const way = this.#wayRound(node, within, shared === undefined ? Infinity : MOST_LOOKED_AT) ?? shared!;
        shared ??= way;
        this.#tell(way, loops);
        if (!loops.has(name)) loops.set(name, way);
      }
    }
  }

  /** Gives each formula on a way round the way as it begins with that formula. */
  #tell(way: readonly CellName[], loops: Map<string, readonly CellName[]>): void {
    way.forEach(({ sheet, id, key }, place) => {
      const name = `${sheet}#${id}.${key}`;
      if (!this.#formulas.has(name) || loops.has(name)) return;
      loops.set(name, [...way.slice(place, place + LONGEST_WAY), ...way.slice(0, place)].slice(0, LONGEST_WAY));
    });
  }

  /** The shortest way from a cell back to itself; `undefined` when it was not found among `most` cells. */
  #wayRound(start: number, within: ReadonlySet<number>, most: number): readonly CellName[] | undefined {
    const from = new Map<number, number>();
    const waiting = [start];
    for (let place = 0; place < waiting.length && place < most; place += 1) {
      const node = waiting[place]!;
      for (const read of this.#reads(node, false)) {
        if (read === start) {
          const way = [node];
          while (way[0] !== start) way.unshift(from.get(way[0]!)!);
          return way.map((each) => this.#name(each));
        }
        if (!within.has(read) || from.has(read)) continue;
        from.set(read, node);
        waiting.push(read);
      }
    }
    return undefined;
  }

  #name(node: number): CellName {
    const { sheet, key, id } = this.#at(node);
    return { sheet, key, id };
  }

  #at(node: number): CellName & { first: number } {
    const column = this.#columns.findLast(({ first }) => first <= node)!;
    return { ...column, id: node - column.first };
  }

  /** The cells that a cell is worked out from, as far as their columns go round. */
  * #reads(node: number, onlyOpen: boolean): Iterable<number> {
    const { sheet, key, id } = this.#at(node);
    const row = this.#document.row(sheet, id);
    if (row === undefined) return;
    const formula = this.#formulas.get(`${sheet}#${id}.${key}`);
    if (formula !== undefined) {
      for (const reference of formula.references) {
        if (reference !== undefined) yield* this.#covered(reference, onlyOpen);
      }
      return;
    }
    const column = findColumn(sheet, key)!;
    if (column.role === 'input' && (row.cells[key] ?? null) !== null) return;
    const rule = ruleOf(sheet, key);
    const total = totalOf(sheet, key);
    if (rule !== undefined) {
      for (const arg of rule.args) {
        const needed = rule.rule.onlyWith?.[arg.path];
        if (needed === undefined || (row.cells[needed] ?? null) !== null) yield* this.#argument(arg, sheet, id);
      }
    } else if (total !== undefined) {
      for (const part of total.of) {
        const { from, by, sum, times } = part;
        const members = this.#membersOf(from, by, id);
        for (const key of [sum, times].filter((each) => each !== undefined)) {
          for (const member of members) yield* this.#cell(from, key, member);
        }
        if (isShare(part)) yield* this.#factorsOf(from, members);
      }
    } else if (column.role === 'computed') {
      const { solved, caseTotal, inMarkedCase } = column;
      if (solved !== undefined) yield* this.#solution(sheet, key, id);
      if (inMarkedCase !== undefined) yield* this.#cell(sheet, inMarkedCase.of, id);
      for (const { id: of } of caseTotal === undefined ? [] : this.#document.rows(caseTotal.from)) {
        yield* this.#cell(caseTotal!.from, caseTotal!.sum, of);
      }
    }
  }

  * #solution(sheet: SheetName, key: string, id: number): Iterable<number> {
    const solution =
      SOLUTIONS.find((each) => columnsGivenBy(each).some((given) => given.sheet === sheet && given.key === key))!;
    const own = sheet === solution.sheet ? id : this.#calculation.columns[sheet].target(solution.by, id);
    if (own >= 0) yield* this.#solved(solution, own);
  }

  * #solved({ sheet, from, by, of, each, whole, diversity }: PreparedSolution, id: number): Iterable<number> {
    for (const arg of of) yield* this.#argument(arg, sheet, id);
    const members = this.#membersOf(from, by, id);
    for (const member of members) {
      for (const arg of each) yield* this.#argument(arg, from, member);
    }
    if (diversity !== undefined) yield* this.#factorsOf(from, members);
    for (const key of whole?.of ?? []) {
      for (const row of this.#document.rows(whole!.sheet)) yield* this.#cell(whole!.sheet, key, row.id);
    }
  }

  /** The factors that cases give the groups of some rows. */
  * #factorsOf(sheet: SheetName, ids: readonly number[]): Iterable<number> {
    if (!this.#firsts.has('factors.factor')) return;
    const types = this.#calculation.columns[sheet].targets.get('type');
    const groups = new Set(ids.map((id) =>
      this.#document.row(sheet, id)?.cells.group ?? this.#document.row('types', types?.[id] ?? -1)?.cells.group ?? null));
    for (const { id, cells } of this.#document.rows('factors')) {
      if (typeof cells.group === 'string' && groups.has(cells.group)) yield* this.#cell('factors', 'factor', id);
    }
  }

  * #argument({ by, sheet, key }: Argument, own: SheetName, id: number): Iterable<number> {
    const holder = by === undefined ? id : this.#calculation.columns[own].target(by, id);
    if (holder >= 0) yield* this.#cell(sheet, key, holder);
  }

  * #cell(sheet: SheetName, key: string, id: number): Iterable<number> {
    const first = this.#firsts.get(`${sheet}.${key}`);
    if (first !== undefined) yield first + id;
  }

  * #covered(reference: Reference, onlyOpen: boolean): Iterable<number> {
    const { sheet, from, to = from } = reference;
    const rows = this.#document.rows(sheet);
    const [begin, end] = span(this.#document, sheet, from.id, to.id);
    if (begin < 0) return;
    for (const key of keysBetween(reference)) {
      const first = this.#firsts.get(`${sheet}.${key}`);
      if (first === undefined) continue;
      const next = onlyOpen ? this.#nextOf(first, rows.length) : undefined;
      for (let position = ahead(next, begin); position <= end; position = ahead(next, position + 1)) {
        yield first + rows[position]!.id;
      }
    }
  }

  #nextOf(first: number, count: number): Int32Array {
    let next = this.#next.get(first);
    if (next === undefined) {
      next = Int32Array.from({ length: count + 1 }, (_, position) => position);
      this.#next.set(first, next);
    }
    return next;
  }

  #membersOf(sheet: SheetName, by: string, target: number): readonly number[] {
    const name = `${sheet}.${by}`;
    let members = this.#members.get(name);
    if (members === undefined) {
      members = new Map();
      for (const { id } of this.#document.rows(sheet)) {
        const named = this.#calculation.columns[sheet].target(by, id);
        const ids = members.get(named);
        if (ids === undefined) members.set(named, [id]);
        else ids.push(id);
      }
      this.#members.set(name, members);
    }
    return members.get(target) ?? [];
  }
}

/**
 * The first position from `position` on that is not done with; what is passed over on the way is shortened for the next
 * time.
 */
function ahead(next: Int32Array | undefined, position: number): number {
  if (next === undefined || position >= next.length) return position;
  let found = position;
  while (next[found] !== found) found = next[found]!;
  for (let at = position; at < found;) {
    const after = next[at]!;
    next[at] = found;
    at = after;
  }
  return found;
}
