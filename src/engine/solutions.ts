import {
  findColumn, isNumeric, SHEET_NAMES, type CellValue, type ScheduleDocument, type SheetName, type Solved,
} from '../schedule/index.ts';
import { SOLUTIONS, type Argument, type PreparedSolution } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';

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
  readonly outcome: string | undefined;
}

/**
 * Works out the solutions of the schema. All that a row's solution reads is gathered in one pass over the rows that name it;
 * only rows for which any of it differs from the last time are solved again.
 */
export class Solutions {
  readonly #document: ScheduleDocument;
  readonly #columns: Columns;
  readonly #kept = new Map<SheetName, (Kept | undefined)[]>(SHEET_NAMES.map((sheet) => [sheet, []]));
  /** What was read of a whole sheet the last time, and how often that has changed. */
  readonly #wholes = new Map<SheetName, { readonly lines: CellValue[][]; readonly version: number }>();
  /** Rows that a solution has given figures, by the sheet that it is of. */
  readonly #given = new Map<SheetName, Set<number>>(SHEET_NAMES.map((sheet) => [sheet, new Set()]));

  constructor(document: ScheduleDocument, columns: Columns) {
    this.#document = document;
    this.#columns = columns;
  }

  /** Outcome of a row's solution that is no figure. */
  outcome(sheet: SheetName, id: number): string | undefined {
    return this.#kept.get(sheet)![id]?.outcome;
  }

  /** Solves what differs from the last time. @returns the figures that differ from what the columns held. */
  update(solution: PreparedSolution): ChangedFigure[] {
    const { sheet, from } = solution;
    const kept = this.#kept.get(sheet)!;
    const rows = this.#document.rows(sheet);
    for (const id of kept.keys()) if (this.#document.row(sheet, id) === undefined) kept[id] = undefined;
    const members = this.#members(solution);
    const readOwn = solution.of.map((argument) => this.#reader(sheet, argument));
    const readEach = solution.each.map((argument) => this.#reader(from, argument));
    const { lines: whole, version } = this.#whole(solution);
    const changed: ChangedFigure[] = [];
    const given = new Set<number>();
    for (const { id } of rows) {
      const own = readOwn.map((read) => read(id));
      const naming = members.get(id) ?? [];
      const each = naming.map((member) => readEach.map((read) => read(member)));
      for (const member of naming) given.add(member);
      const inputs = [version, ...own, ...naming, ...each.flat()];
      if (same(kept[id]?.inputs, inputs)) continue;
      const solved = solution.solve(own, each, whole);
      kept[id] = { inputs, outcome: solved.outcome };
      this.#take(solution, id, naming, solved, changed);
    }
    this.#clear(solution, given, changed);
    return changed;
  }

  #members({ sheet, from, by }: PreparedSolution): Map<number, number[]> {
    const targets = this.#columns[from].targets.get(by)!;
    const members = new Map<number, number[]>();
    if (this.#document.rows(sheet).length === 0) return members;
    for (const { id } of this.#document.rows(from)) {
      const target = targets[id]!;
      if (target < 0) continue;
      const naming = members.get(target);
      if (naming === undefined) members.set(target, [id]);
      else naming.push(id);
    }
    return members;
  }

  #whole({ sheet, whole }: PreparedSolution): { readonly lines: CellValue[][]; readonly version: number } {
    const readers = whole?.of.map((key) => this.#reader(whole.sheet, { path: key, sheet: whole.sheet, key })) ?? [];
    const rows = whole === undefined ? [] : this.#document.rows(whole.sheet);
    const lines = rows.map(({ id }) => readers.map((read) => read(id)));
    const before = this.#wholes.get(sheet);
    if (before !== undefined && same(before.lines.flat(), lines.flat())) return before;
    const read = { lines, version: (before?.version ?? 0) + 1 };
    this.#wholes.set(sheet, read);
    return read;
  }

  #take(solution: PreparedSolution, id: number, naming: readonly number[], solved: Solved, changed: ChangedFigure[]): void {
    for (const key of solution.gives) {
      if (this.#set(solution.sheet, id, key, solved.figures[key] ?? null)) changed.push({ sheet: solution.sheet, id, key });
      if (this.#setMissing(solution.sheet, id, key, solved.missing)) changed.push({ sheet: solution.sheet, id, key });
    }
    for (const key of solution.givesEach) {
      naming.forEach((member, place) => {
        if (this.#set(solution.from, member, key, solved.each?.[key]?.[place] ?? null)) changed.push({ sheet: solution.from, id: member, key });
      });
    }
  }

  /** Empties the figures of rows that no solution gives any more. */
  #clear(solution: PreparedSolution, given: Set<number>, changed: ChangedFigure[]): void {
    for (const id of this.#given.get(solution.sheet)!) {
      if (given.has(id)) continue;
      for (const key of solution.givesEach) {
        if (this.#set(solution.from, id, key, null)) changed.push({ sheet: solution.from, id, key });
      }
    }
    this.#given.set(solution.sheet, given);
  }

  #set(sheet: SheetName, id: number, key: string, value: number | string | null): boolean {
    const numbers = this.#columns[sheet].numbers.get(key);
    if (numbers === undefined) return this.#columns[sheet].setText(key, id, typeof value === 'string' ? value : null);
    const number = typeof value === 'number' && Number.isFinite(value) ? value : NaN;
    if (Object.is(numbers[id], number)) return false;
    numbers[id] = number;
    return true;
  }

  #setMissing(sheet: SheetName, id: number, key: string, missing: number): boolean {
    const partial = this.#columns[sheet].partial.get(key);
    if (partial === undefined || partial[id] === missing) return false;
    partial[id] = missing;
    return true;
  }

  #reader(own: SheetName, { by, sheet, key }: Argument): (id: number) => CellValue {
    const column = findColumn(sheet, key)!;
    const numbers = isNumeric(column) ? this.#columns[sheet].numbers.get(key) : undefined;
    const empty = column.role === 'input' ? column.default ?? null : null;
    const read = (id: number): CellValue => {
      if (numbers === undefined) return this.#document.row(sheet, id)?.cells[key] ?? empty;
      const value = numbers[id]!;
      return value !== value ? null : value;
    };
    if (by === undefined) return read;
    const targets = this.#columns[own].targets.get(by)!;
    return (id) => targets[id]! < 0 ? null : read(targets[id]!);
  }
}

function same(before: readonly CellValue[] | undefined, after: readonly CellValue[]): boolean {
  if (before === undefined || before.length !== after.length) return false;
  for (let place = 0; place < after.length; place += 1) if (before[place] !== after[place]) return false;
  return true;
}

/** Every solution of the schema whose figures a column belongs to. */
export function solutionOf(sheet: SheetName, key: string): PreparedSolution | undefined {
  return SOLUTIONS.find((each) => (each.sheet === sheet && each.gives.includes(key)) || (each.from === sheet && each.givesEach.includes(key)));
}

