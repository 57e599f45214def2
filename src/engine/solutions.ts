import {
  findColumn, type CellValue, type ScheduleDocument, type SheetName, type Solved,
} from '../schedule/index.ts';
import { argumentReader, partialReader, type ArgumentReader } from './argument-reader.ts';
import { coverOf, COVER } from './cases/case-figures.ts';
import { countedIn, type CaseTable } from './cases/case-table.ts';
import { rowsReading } from './rows-reading.ts';
import { inCasesOf, type Argument, type PreparedSolution } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { TagIndex } from './tag-index.ts';
import type { Touched } from './touched.ts';

type Columns = Readonly<Record<SheetName, SheetColumns>>;

/** A figure that a solution gave and that differs from before. */
export interface ChangedFigure {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
}

/** What the last solution of a row was worked out from, and what it came to. */
interface Kept {
  readonly inputs: readonly CellValue[];
  /** By the diversity of rows, and in each case where it hangs on that. */
  readonly solutions: readonly Solved[];
  /** How far each case covers it. */
  readonly covers: readonly number[];
  readonly outcome: string | undefined;
}

/** What was read of a whole sheet, and how often that has changed. */
interface Whole {
  readonly lines: CellValue[][];
  readonly version: number;
}

/** What is remembered from one update of a solution to the next. */
interface Memory {
  readonly kept: (Kept | undefined)[];
  /** The row that each row of `from` named, by id. */
  targets: Int32Array;
  whole: Whole;
}

/**
 * Works out the solutions of the schema. Only rows that a change may concern are looked at, and of these only those are
 * solved again for which something that is read differs from the last time.
 */
export class Solutions {
  readonly #document: ScheduleDocument;
  readonly #columns: Columns;
  readonly #tags: TagIndex;
  readonly #cases: CaseTable;
  readonly #memories = new Map<PreparedSolution, Memory>();

  constructor(document: ScheduleDocument, columns: Columns, tags: TagIndex, cases: CaseTable) {
    this.#cases = cases;
    this.#document = document;
    this.#columns = columns;
    this.#tags = tags;
  }

  /** Outcome of a row's solution that is no figure. */
  outcome(sheet: SheetName, id: number): string | undefined {
    for (const [solution, { kept }] of this.#memories) {
      const outcome = solution.sheet === sheet ? kept[id]?.outcome : undefined;
      if (outcome !== undefined) return outcome;
    }
    return undefined;
  }

  /**
   * Solves what differs from the last time.
   * @param touched what changed since; everything when it is absent.
   * @param isOther whether cases or factors are others than before.
   * @returns the figures that differ from what the columns held.
   */
  update(solution: PreparedSolution, touched: Touched | undefined, isOther: boolean): ChangedFigure[] {
    const { sheet, from, by } = solution;
    const memory = this.#memory(solution);
    const whole = this.#whole(solution, memory.whole);
    const all = touched === undefined || whole !== memory.whole || (isOther && solution.diversity !== undefined);
    memory.whole = whole;
    const isEmpty = this.#document.rows(sheet).length === 0;
    const concerned = isEmpty || all ? undefined : this.#concerned(solution, touched, memory.targets);
    const changed: ChangedFigure[] = [];
    if (touched?.concerns(from, by) !== false) {
      this.#clear(solution, touched?.having(from, [by]) ?? [], changed);
      memory.targets = this.#columns[from].targets.get(by)!.slice();
    }
    if (isEmpty) memory.kept.length = 0;
    if (isEmpty || concerned?.size === 0) return changed;
    const members = this.#members(solution, concerned);
    const readOwn = solution.of.map((argument) => this.#reader(sheet, argument));
    const readEach = solution.each.map((argument) => this.#reader(from, argument));
    const isPartialOwn = this.#partialReader(solution.of, sheet);
    const isPartialEach = this.#partialReader(solution.each, from);
    for (const id of concerned ?? this.#document.rows(sheet).map((row) => row.id)) {
      if (this.#document.row(sheet, id) === undefined) {
        memory.kept[id] = undefined;
        continue;
      }
      const read = readOwn.map((reader) => reader(id));
      const own = solution.heed?.(read) ?? read;
      const naming = members.get(id) ?? [];
      const each = naming.map((member) => readEach.map((reader) => reader(member)));
      const shares = this.#sharesInCases(solution, own, naming, each);
      const isUnsure = shares.length > 0 && naming.some((member) => this.#cases.isUnsure('devices', member));
      const isPartial = isUnsure || isPartialOwn(id) || naming.some(isPartialEach);
      const covers = this.#covers(solution, naming);
      const countsOwn = covers.some((cover) => cover !== COVER.all);
      const inputs = [whole.version, isPartial, countsOwn, ...own, ...naming, ...each.flat(), ...shares.flat()];
      const before = memory.kept[id];
      const isSolved = same(before?.inputs, inputs);
      if (isSolved && same(before!.covers, covers)) continue;
      const solutions = isSolved ? before!.solutions
        : solveInCases(solution, own, each, shares, countsOwn, whole.lines);
      const solved = covers.length === 0 ? solutions[0]!
        : this.#worst(solution, id, naming, solutions, covers, changed);
      // What is told of it may be another though no figure is known before or after.
      if (solved.outcome !== before?.outcome) changed.push({ sheet, id, key: solution.gives[0]! });
      memory.kept[id] = { inputs, solutions, covers, outcome: solved.outcome };
      this.#take(solution, id, naming, solved, isPartial, changed);
    }
    return changed;
  }

  /**
   * What takes the place of the diversity of each row that names a row, in each case; nothing where what is solved does
   * not hang on it.
   */
  #sharesInCases(
    { diversity, each: args }: PreparedSolution, own: readonly CellValue[], naming: readonly number[],
    each: readonly CellValue[][],
  ): CellValue[][] {
    if (diversity === undefined || this.#cases.cases.length === 0 || !diversity.matters(own, each)) return [];
    const place = args.findIndex(({ path }) => path === diversity.key);
    const groupOf = this.#cases.groupOf('devices');
    return this.#cases.cases.map((_case, at) => naming.map((id, member) => {
      const [factor, left] = [this.#cases.factor(at, groupOf[id]!), each[member]![place] as number | null];
      const share = countedIn(factor, 1, left ?? NaN);
      return Number.isNaN(share) ? null : share;
    }));
  }

  /** Keeps what a solution came to in each case, and tells the worst of those that count. */
  #worst(
    { sheet, from, gives, givesEach }: PreparedSolution, id: number, naming: readonly number[],
    solutions: readonly Solved[], covers: readonly number[], changed: ChangedFigure[],
  ): Solved {
    const count = covers.length;
    const solvedIn = (at: number) => solutions[at] ?? solutions[0]!;
    const countsOwn = covers.some((cover) => cover !== COVER.all);
    const counting = [...Array(count + 1).keys()].filter((at) => at > 0 || countsOwn).map(solvedIn);
    const keeper = (on: SheetName, key: string) => {
      const figures = this.#columns[on].caseFigures(key, count, this.#document.capacity(on));
      const isHighest = inCasesOf(on, key) === 'highest';
      return (row: number, valueIn: (solved: Solved) => unknown): number | null => {
        const differs = figures.set(row, covers, (at) => {
          const value = valueIn(solvedIn(at));
          return typeof value === 'number' ? value : NaN;
        });
        // One that is not the worst counts in what is added up by case.
        if (differs) changed.push({ sheet: on, id: row, key });
        const { value } = figures.worst(row, isHighest);
        return Number.isNaN(value) ? null : value;
      };
    };
    const figures = Object.fromEntries(gives.map((key) => [key, inCasesOf(sheet, key) === undefined
      ? solutions[0]!.figures[key] ?? null : keeper(sheet, key)(id, (solved) => solved.figures[key])]));
    const each = Object.fromEntries(givesEach.map((key) => {
      const keep = keeper(from, key);
      return [key, naming.map((member, place) => keep(member, (solved) => solved.each?.[key]?.[place]))];
    }));
    const outcome = counting.find((solved) => solved.outcome !== undefined)?.outcome;
    return {
      figures, each, missing: Math.max(...counting.map(({ missing }) => missing)),
      sure: (solutions[0]!.sure ?? []).filter((key) => counting.every(({ sure }) => sure?.includes(key))),
      ...outcome === undefined ? {} : { outcome },
    };
  }

  /** How far each case has factors for the groups of device rows that name a row; none for what knows no diversity. */
  #covers({ diversity }: PreparedSolution, ids: readonly number[]): number[] {
    if (diversity === undefined) return [];
    const groupOf = this.#cases.groupOf('devices');
    return this.#cases.cases.map((_case, at) => ids.reduce((cover: number, id) =>
      coverOf(cover, this.#cases.factor(at, groupOf[id]!) === undefined ? COVER.some : COVER.all), COVER.nothing));
  }

  #memory(solution: PreparedSolution): Memory {
    let memory = this.#memories.get(solution);
    if (memory === undefined) {
      memory = { kept: [], targets: new Int32Array(0), whole: { lines: [], version: 0 } };
      this.#memories.set(solution, memory);
    }
    return memory;
  }

  /**
   * Ids of the rows that a change may concern: by their own cells, through references, or by rows that name or named
   * them.
   */
  #concerned(
    { sheet, from, by, of, each, gives, diversity }: PreparedSolution, touched: Touched, before: Int32Array,
  ): Set<number> {
    const targets = this.#columns[from].targets.get(by)!;
    // Its own cell stands for a row that came or went, of which the solution may read nothing else.
    const own = [{ path: gives[0]!, sheet, key: gives[0]! }, ...of];
    const concerned = new Set(rowsReading(sheet, own, touched, this.#document, this.#columns));
    const beside = diversity === undefined ? [by] : [by, 'group'];
    const read = [...each, ...beside.map((key) => ({ path: key, sheet: from, key }))];
    for (const id of rowsReading(from, read, touched, this.#document, this.#columns)) {
      for (const target of [before[id], targets[id]]) if (target !== undefined && target >= 0) concerned.add(target);
    }
    return concerned;
  }

  /** The rows that name each row concerned, in the order of their ids. */
  #members({ from, by }: PreparedSolution, concerned: ReadonlySet<number> | undefined): Map<number, number[]> {
    const targets = this.#columns[from].targets.get(by)!;
    const members = new Map<number, number[]>();
    const count = this.#document.capacity(from);
    for (let id = 0; id < count; id += 1) {
      const target = targets[id]!;
      if (target < 0 || concerned?.has(target) === false) continue;
      const naming = members.get(target);
      if (naming === undefined) members.set(target, [id]);
      else naming.push(id);
    }
    return members;
  }

  #whole({ whole }: PreparedSolution, before: Whole): Whole {
    const readers = whole?.of.map((key) => this.#reader(whole.sheet, { path: key, sheet: whole.sheet, key })) ?? [];
    const rows = whole === undefined ? [] : this.#document.rows(whole.sheet);
    const lines = rows.map(({ id }) => readers.map((read) => read(id)));
    return same(before.lines.flat(), lines.flat()) ? before : { lines, version: before.version + 1 };
  }

  #take(
    solution: PreparedSolution, id: number, naming: readonly number[], solved: Solved, isPartial: boolean,
    changed: ChangedFigure[],
  ): void {
    const { sheet, from } = solution;
    for (const key of solution.gives) {
      const differs = this.#set(sheet, id, key, solved.figures[key] ?? null);
      const lacking = lacksRows(sheet, key) ? solved.missing : 0;
      const isLess = lacking || (isPartial ? -1 : 0);
      if (this.#columns[sheet].setPartial(key, id, solved.sure?.includes(key) === true ? 0 : isLess) || differs) {
        changed.push({ sheet, id, key });
      }
    }
    for (const key of solution.givesEach) {
      const lacking = isPartial || (lacksRows(from, key) && solved.missing > 0) ? -1 : 0;
      naming.forEach((member, place) => {
        const differs = this.#set(from, member, key, solved.each?.[key]?.[place] ?? null);
        if (this.#columns[from].setPartial(key, member, lacking) || differs) {
          changed.push({ sheet: from, id: member, key });
        }
      });
    }
  }

  /** Empties the figures of rows that name nothing any more. */
  #clear({ from, by, givesEach }: PreparedSolution, ids: readonly number[], changed: ChangedFigure[]): void {
    const targets = this.#columns[from].targets.get(by)!;
    for (const id of ids) {
      if ((targets[id] ?? -1) >= 0) continue;
      for (const key of givesEach) {
        const differs = this.#set(from, id, key, null);
        this.#columns[from].inCases.get(key)?.forget(id);
        if (this.#columns[from].setPartial(key, id, 0) || differs) changed.push({ sheet: from, id, key });
      }
    }
  }

  #set(sheet: SheetName, id: number, key: string, value: number | string | null): boolean {
    if (!this.#columns[sheet].numbers.has(key)) {
      return this.#columns[sheet].setText(key, id, typeof value === 'string' ? value : null);
    }
    return this.#columns[sheet].setNumber(key, id, typeof value === 'number' && Number.isFinite(value) ? value : NaN);
  }

  #reader(own: SheetName, argument: Argument): ArgumentReader {
    return argumentReader(argument, own, this.#document, this.#columns);
  }

  #partialReader(args: readonly Argument[], own: SheetName): (id: number) => boolean {
    const readers = args.map((argument) => partialReader(argument, own, this.#columns, this.#tags))
      .filter((each) => each !== undefined);
    return (id) => readers.some((isPartial) => isPartial(id));
  }
}

/**
 * Solves it by the diversity of rows, and for each case; cases with the same shares are solved once.
 * @returns one for each, first by the diversity of rows; one alone where it hangs on none of them, or gives what holds
 * in all that count.
 */
function solveInCases(
  { diversity, each: args, solve }: PreparedSolution, own: readonly CellValue[], each: CellValue[][],
  shares: readonly CellValue[][], countsOwn: boolean, whole: CellValue[][],
): readonly Solved[] {
  if (diversity === undefined || shares.length === 0) return [solve(own, each, whole)];
  const place = args.findIndex(({ path }) => path === diversity.key);
  const ofRows = each.map((cells) => cells[place]!);
  const unlike: (readonly CellValue[])[] = [];
  const places = (diversity.once === true && !countsOwn ? shares : [ofRows, ...shares]).map((inCase) => {
    const known = unlike.findIndex((other) => same(other, inCase));
    return known >= 0 ? known : unlike.push(inCase) - 1;
  });
  const solved = diversity.inCases(own, each, unlike, whole);
  return diversity.once === true ? solved : places.map((at) => solved[at]!);
}

/** Whether a figure is less than the whole where rows cannot be reckoned with. */
function lacksRows(sheet: SheetName, key: string): boolean {
  const column = findColumn(sheet, key);
  return column?.role === 'computed' && column.whenPartial !== undefined;
}

function same(before: readonly CellValue[] | undefined, after: readonly CellValue[]): boolean {
  return before?.length === after.length && after.every((value, place) => Object.is(value, before[place]));
}
