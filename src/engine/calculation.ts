import { computedColumns, SHEET_NAMES, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import type { CellContents } from './cell-contents.ts';
import type { CellLayout } from './cell-layout.ts';
import { errorOf, type CellResult, type CellWrite, type FormulaEngine, type FormulaFault } from './formula-engine.ts';
import { columnsReadBy, SOLUTIONS, TOTALS, type PreparedSolution, type PreparedTotal } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { Solutions } from './solutions.ts';
import { regroup } from './total-groups.ts';
import type { Touched } from './touched.ts';

/**
 * Carries figures between the formula engine and the typed columns: results of cells are taken over from it, totals and
 * solutions are gathered over the columns and given to it as values.
 */
export class Calculation {
  readonly #document: ScheduleDocument;
  readonly #columns: Readonly<Record<SheetName, SheetColumns>>;
  readonly #layout: CellLayout;
  readonly #contents: CellContents;
  readonly #solutions: Solutions;
  readonly #faults = new Map<string, FormulaFault>();

  constructor(
    document: ScheduleDocument, columns: Readonly<Record<SheetName, SheetColumns>>, layout: CellLayout, contents: CellContents,
    solutions: Solutions,
  ) {
    this.#document = document;
    this.#columns = columns;
    this.#layout = layout;
    this.#contents = contents;
    this.#solutions = solutions;
  }

  /** Why a formula has no result, as the formula engine says. */
  fault(sheet: SheetName, id: number, key: string): FormulaFault | undefined {
    return this.#faults.get(`${sheet}#${id}.${key}`);
  }

  /** No formula of a person is left. */
  forgetFaults(): void {
    this.#faults.clear();
  }

  /** Takes over everything that the cells came to, as after changes whose results were passed over. */
  takeAll(engine: FormulaEngine, touched: Touched): void {
    for (const sheet of SHEET_NAMES) {
      const lines = engine.values(sheet);
      for (const { id } of this.#document.rows(sheet)) {
        this.#layout.keys(sheet).forEach((key, place) => {
          if (this.#keep(sheet, id, key, lines[id]?.[place])) touched.cell(sheet, id, key);
        });
      }
    }
  }

  /**
   * Writes cells, then gathers totals until none changes. Adds to `touched` whatever is worth something else
   * afterwards.
   */
  run(engine: FormulaEngine, writes: readonly CellWrite[], touched: Touched): void {
    let dirty = new Set<string>();
    for (const { sheet, keys } of touched.cells()) {
      for (const key of keys ?? ['*']) dirty.add(`${sheet}.${key}`);
    }
    this.#take(engine.write(writes), touched, dirty);
    for (;;) {
      const due = TOTALS.filter(({ sheet, from, by, sum }) =>
        [`${from}.${by}`, `${from}.${sum}`, `${from}.*`, `${sheet}.*`].some((name) => dirty.has(name)));
      const toSolve = SOLUTIONS.filter((solution) => columnsReadBy(solution)
        .some(({ sheet, key }) => dirty.has(`${sheet}.${key}`) || dirty.has(`${sheet}.*`)) || dirty.has(`${solution.sheet}.*`));
      dirty = new Set();
      const next: CellWrite[] = [];
      for (const total of due) next.push(...this.#regroup(total, touched, dirty));
      for (const solution of toSolve) next.push(...this.#solve(solution, touched, dirty));
      if (next.length === 0 && dirty.size === 0) return;
      this.#take(engine.write(next), touched, dirty);
    }
  }

  /** Takes results over into the columns. */
  #take(results: readonly CellResult[], touched: Touched, dirty: Set<string>): void {
    for (const { sheet, place, id, value } of results) {
      const key = this.#layout.keys(sheet)[place];
      if (key === undefined) continue;
      this.#keep(sheet, id, key, value);
      dirty.add(`${sheet}.${key}`);
      touched.cell(sheet, id, key);
    }
  }

  /** @returns whether the number differs from before. */
  #keep(sheet: SheetName, id: number, key: string, value: unknown): boolean {
    const fault = errorOf(value);
    if (fault !== undefined) this.#faults.set(`${sheet}#${id}.${key}`, fault);
    else if (this.#faults.size > 0) this.#faults.delete(`${sheet}#${id}.${key}`);
    const numbers = this.#columns[sheet].numbers.get(key);
    if (numbers === undefined) return false;
    const before = numbers[id];
    numbers[id] = typeof value === 'number' ? value : NaN;
    return !Object.is(numbers[id], before);
  }

  #regroup(total: PreparedTotal, touched: Touched, dirty: Set<string>): CellWrite[] {
    const { sheet, key } = total;
    const { changed, partialChanged } = regroup(total, this.#document, this.#columns);
    for (const id of partialChanged) touched.cell(sheet, id, key);
    if (partialChanged.length > 0) {
      for (const column of computedColumns(sheet)) if (column.whenPartial !== undefined) dirty.add(`${sheet}.${column.key}`);
    }
    const place = this.#layout.place(sheet, key)!;
    const numbers = this.#columns[sheet].numbers.get(key)!;
    for (const { id, value } of changed) {
      numbers[id] = value;
      touched.cell(sheet, id, key);
    }
    if (changed.length > 0) dirty.add(`${sheet}.${key}`);
    return changed.map(({ id, value }) => ({ sheet, place, id, content: value }));
  }

  #solve(solution: PreparedSolution, touched: Touched, dirty: Set<string>): CellWrite[] {
    const writes: CellWrite[] = [];
    for (const { sheet, id, key } of this.#solutions.update(solution, touched)) {
      touched.cell(sheet, id, key);
      dirty.add(`${sheet}.${key}`);
      const place = this.#layout.place(sheet, key);
      if (place !== undefined) writes.push({ sheet, place, id, content: this.#contents.of(sheet, id, key) });
    }
    return writes;
  }
}
