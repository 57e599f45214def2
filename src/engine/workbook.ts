import type { RawCellContent } from 'hyperformula';
import {
  computedColumns, findColumn, isBlank, isFormula, isNumeric, SCHEMA, SHEET_NAMES,
  type CellValue, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import { ruleFormula } from './cell-formulas.ts';
import { CellLayout } from './cell-layout.ts';
import { errorOf, FormulaEngine, type CellResult, type CellWrite } from './formula-engine.ts';
import { REFERRED_SHEETS, References } from './references.ts';
import { RULES, ruleOf, TOTALS } from './schema-rules.ts';
import { SheetColumns } from './sheet-columns.ts';
import { regroup } from './total-groups.ts';
import { Touched } from './touched.ts';
import { TypedFormulas } from './typed-formulas.ts';

/** Why a formula of a person has no result. */
export interface FormulaFault {
  readonly type: string;
  readonly message: string;
}

/**
 * Works out a document: cells and row formulas in the formula engine, totals gathered beside it in one pass over typed
 * columns and given to it as values. It reads the document and never changes it.
 */
export class Workbook {
  readonly #document: ScheduleDocument;
  readonly #licenseKey: string;
  #columns!: Record<SheetName, SheetColumns>;
  #layout!: CellLayout;
  #references!: References;
  #typed!: TypedFormulas;
  #engine!: FormulaEngine;
  #faults = new Map<string, FormulaFault>();

  /** @param licenseKey key of the formula engine; see the README on its licence. */
  constructor(document: ScheduleDocument, licenseKey: string) {
    this.#document = document;
    this.#licenseKey = licenseKey;
    this.#build();
  }

  /**
   * What a cell is worth: what was entered, else its default, else what was worked out; `null` when that is unknown.
   * A status is not known here.
   */
  value(sheet: SheetName, id: number, key: string): CellValue {
    const column = findColumn(sheet, key);
    const row = this.#document.row(sheet, id);
    if (column === undefined || row === undefined) return null;
    if (column.role === 'computed') return isBlank(row) ? null : this.#columns[sheet].number(key, id);
    const own = row.cells[key] ?? null;
    if (isNumeric(column)) return own === null && isBlank(row) ? null : this.#columns[sheet].number(key, id);
    return own ?? (isBlank(row) ? null : column.default ?? null);
  }

  /** The number in a cell; NaN when it is unknown. */
  number(sheet: SheetName, id: number, key: string): number {
    return this.#columns[sheet].numbers.get(key)?.[id] ?? NaN;
  }

  /** Id of the row that a reference names; -1 when it names none. */
  target(sheet: SheetName, id: number, key: string): number {
    return this.#columns[sheet].target(key, id);
  }

  /** Ids of the rows whose reference `by` names a row, in order of the document. */
  members(sheet: SheetName, by: string, target: number): number[] {
    const targets = this.#columns[sheet].targets.get(by);
    return this.#document.rows(sheet).filter(({ id }) => targets?.[id] === target).map(({ id }) => id);
  }

  /** How many rows a total lacks because their value is unknown. */
  missing(sheet: SheetName, id: number, key: string): number {
    return this.#columns[sheet].partial.get(key)?.[id] ?? 0;
  }

  /** Whether a figure follows from a total that lacks a row whose value is unknown. */
  isPartial(sheet: SheetName, id: number, key: string): boolean {
    const column = findColumn(sheet, key);
    if (column?.role !== 'computed' || column.whenPartial === undefined) return false;
    if (column.total !== undefined) return this.missing(sheet, id, key) > 0;
    return column.rule?.of.some((path) => this.isPartial(sheet, id, path)) === true;
  }

  /** Why the formula in a cell has no result, if it has none. */
  fault(sheet: SheetName, id: number, key: string): FormulaFault | undefined {
    if (this.#typed.size === 0) return undefined;
    if (this.#typed.loops(sheet, id, key)) return { type: 'LOOP', message: '' };
    return this.#faults.get(`${sheet}#${id}.${key}`);
  }

  /** What is wrong with a formula, in the form that documents keep; `undefined` when it can stand in the column. */
  problemOf(sheet: SheetName, key: string, formula: string): string | undefined {
    if (!this.#engine.isFormula(formula.replaceAll(/⟦[^⟧]*⟧/g, '$A$1'))) {
      return 'this is not a formula. Arguments are parted by ; and decimals by a point, as in =ROUND(2.5*3;0).';
    }
    this.#hold(formula);
    const result = errorOf(this.#engine.tryFormula(this.#typed.compile(sheet, -1, key, formula) ?? '=0'));
    return result?.type === 'NAME' ? 'it uses a function or a name that is not known. Correct its spelling.' : undefined;
  }

  /**
   * Follows changes that the document has made.
   * @returns the rows of which anything is worth something else now; their ids by sheet.
   */
  update(touched: Touched): Touched {
    if (touched.all) {
      this.#engine.destroy();
      this.#build();
      return touched;
    }
    for (const sheet of SHEET_NAMES) this.#columns[sheet].reserve(this.#document.capacity(sheet));
    this.#retarget(touched);
    this.#noteFormulas(touched);
    const writes: CellWrite[] = [];
    for (const { sheet, id, keys } of touched.cells()) this.#writesOf(sheet, id, keys, writes);
    this.#calculate(writes, touched);
    return touched;
  }

  destroy(): void {
    this.#engine.destroy();
  }

  /** References that mean another row now are touched too, and with them what is read through them. */
  #retarget(touched: Touched): void {
    const rows = [...touched.cells()].filter(({ sheet, keys }) =>
      keys === null || [...keys].some((key) => this.#columns[sheet].targets.has(key)));
    const retargeted = SHEET_NAMES
      .filter((sheet) => REFERRED_SHEETS.has(sheet)
        && (touched.rearranged.has(sheet) || touched.concerns(sheet, SCHEMA[sheet].tag)))
      .flatMap((sheet) => this.#references.reindex(sheet));
    for (const { sheet, id } of rows) retargeted.push(...this.#references.resolveRow(sheet, id));
    for (const { sheet, id, key } of retargeted) touched.cell(sheet, id, key);
  }

  /** Notes the formulas of persons that came, went, or must be compiled again. */
  #noteFormulas(touched: Touched): void {
    let changed = false;
    for (const { sheet, id, keys } of touched.cells()) {
      const cells = this.#document.row(sheet, id)?.cells ?? {};
      for (const key of keys ?? this.#layout.keys(sheet)) {
        const own = cells[key];
        if (!isFormula(own) && this.#typed.size === 0) continue;
        if (isFormula(own)) this.#hold(own);
        changed = this.#typed.note(sheet, id, key, isFormula(own) && this.#isNumeric(sheet, key) ? own : undefined) || changed;
      }
    }
    if (this.#typed.size === 0 && !changed) return;
    for (const sheet of touched.rearranged) {
      for (const cell of this.#typed.referringTo(sheet)) touched.cell(cell.sheet, cell.id, cell.key);
    }
    if (changed) for (const cell of this.#typed.checkLoops()) touched.cell(cell.sheet, cell.id, cell.key);
  }

  #isNumeric(sheet: SheetName, key: string): boolean {
    const column = findColumn(sheet, key);
    return column !== undefined && column.role === 'input' && isNumeric(column);
  }

  /** Has the formula engine hold the columns that a formula reads. */
  #hold(formula: string): void {
    for (const { sheet, key } of this.#typed.columnsToHold(formula)) {
      if (this.#layout.place(sheet, key) !== undefined) continue;
      this.#layout.add(sheet, key);
      const place = this.#layout.place(sheet, key)!;
      this.#engine.write(this.#document.rows(sheet).map(({ id }) => ({ sheet, place, id, content: this.#content(sheet, id, key) })));
    }
  }

  /** Contents to write for a row: all of them, or those of some keys and of what is read through the references among them. */
  #writesOf(sheet: SheetName, id: number, keys: Set<string> | null, writes: CellWrite[]): void {
    const concerned = new Set(keys ?? this.#layout.keys(sheet));
    if (keys !== null) {
      const cells = this.#document.row(sheet, id)?.cells ?? {};
      for (const { key, args } of RULES[sheet]) {
        // A value of a person's own stands whatever its default would be read through.
        if (cells[key] === undefined && args.some(({ by }) => by !== undefined && keys.has(by))) concerned.add(key);
      }
    }
    for (const key of concerned) {
      const place = this.#layout.place(sheet, key);
      if (place !== undefined) writes.push({ sheet, place, id, content: this.#content(sheet, id, key) });
    }
  }

  /** What the formula engine holds for a cell. */
  #content(sheet: SheetName, id: number, key: string): RawCellContent {
    const row = this.#document.row(sheet, id);
    const column = findColumn(sheet, key)!;
    if (row === undefined) return null;
    const rule = ruleOf(sheet, key);
    if (column.role === 'computed') {
      if (column.total !== undefined) return this.#columns[sheet].number(key, id);
      return rule === undefined ? null : ruleFormula(rule, id, this.#layout, this.#columns);
    }
    const own = row.cells[key] ?? null;
    if (own === null) return rule === undefined ? column.default ?? null : ruleFormula(rule, id, this.#layout, this.#columns);
    if (isNumeric(column) && isFormula(own)) return this.#typed.compile(sheet, id, key, own);
    // An apostrophe keeps the formula engine from reading a text as a number, a date or a formula.
    return typeof own === 'string' ? `'${own}` : own;
  }

  /** Writes cells, then gathers totals until none changes. Adds to `touched` whatever is worth something else afterwards. */
  #calculate(writes: readonly CellWrite[], touched: Touched): void {
    let dirty = new Set<string>();
    for (const { sheet, keys } of touched.cells()) {
      for (const key of keys ?? ['*']) dirty.add(`${sheet}.${key}`);
    }
    this.#take(this.#engine.write(writes), touched, dirty);
    for (;;) {
      const due = TOTALS.filter(({ sheet, from, by, sum }) =>
        [`${from}.${by}`, `${from}.${sum}`, `${from}.*`, `${sheet}.*`].some((name) => dirty.has(name)));
      dirty = new Set();
      const next: CellWrite[] = [];
      for (const total of due) next.push(...this.#regroup(total, touched, dirty));
      if (next.length === 0 && dirty.size === 0) return;
      this.#take(this.#engine.write(next), touched, dirty);
    }
  }

  #regroup(total: (typeof TOTALS)[number], touched: Touched, dirty: Set<string>): CellWrite[] {
    const source = total.sum === undefined ? undefined : findColumn(total.from, total.sum);
    const sourceIsPartial = source?.role === 'computed' && source.whenPartial !== undefined
      ? (id: number) => this.isPartial(total.from, id, source.key) : undefined;
    const { changed, partialChanged } = regroup(total, this.#document, this.#columns, sourceIsPartial);
    for (const id of partialChanged) {
      touched.cell(total.sheet, id, total.key);
      for (const column of computedColumns(total.sheet)) {
        if (column.whenPartial !== undefined) dirty.add(`${total.sheet}.${column.key}`);
      }
    }
    const place = this.#layout.place(total.sheet, total.key)!;
    const numbers = this.#columns[total.sheet].numbers.get(total.key)!;
    for (const { id, value } of changed) {
      numbers[id] = value;
      touched.cell(total.sheet, id, total.key);
    }
    if (changed.length > 0) dirty.add(`${total.sheet}.${total.key}`);
    return changed.map(({ id, value }) => ({ sheet: total.sheet, place, id, content: value }));
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

  #keep(sheet: SheetName, id: number, key: string, value: unknown): void {
    const numbers = this.#columns[sheet].numbers.get(key);
    if (numbers !== undefined) numbers[id] = typeof value === 'number' ? value : NaN;
    const name = `${sheet}#${id}.${key}`;
    const fault = errorOf(value);
    if (fault !== undefined) this.#faults.set(name, fault);
    else if (this.#faults.size > 0) this.#faults.delete(name);
  }

  #build(): void {
    this.#columns = Object.fromEntries(SHEET_NAMES.map((sheet) =>
      [sheet, new SheetColumns(sheet, this.#document.capacity(sheet))])) as Record<SheetName, SheetColumns>;
    this.#layout = new CellLayout();
    this.#typed = new TypedFormulas(this.#document, this.#layout);
    this.#references = new References(this.#document, this.#columns);
    this.#faults = new Map();
    this.#findTypedFormulas();
    const contents = Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, this.#contents(sheet)])) as Record<SheetName, RawCellContent[][]>;
    this.#engine = new FormulaEngine(contents, this.#licenseKey);
    for (const sheet of SHEET_NAMES) {
      const keys = this.#layout.keys(sheet);
      this.#engine.values(sheet).forEach((line, id) => {
        for (let place = 0; place < keys.length; place += 1) this.#keep(sheet, id, keys[place]!, line[place]);
      });
    }
    const touched = new Touched();
    for (const sheet of SHEET_NAMES) touched.rows.set(sheet, new Map([[-1, null]]));
    this.#calculate([], touched);
  }

  #findTypedFormulas(): void {
    for (const sheet of SHEET_NAMES) {
      const keys = this.#layout.keys(sheet).filter((key) => this.#isNumeric(sheet, key));
      for (const { id, cells } of this.#document.rows(sheet)) {
        for (const key of keys) {
          const own = cells[key];
          if (!isFormula(own)) continue;
          for (const { sheet: other, key: column } of this.#typed.columnsToHold(own)) this.#layout.add(other, column);
          this.#typed.note(sheet, id, key, own);
        }
      }
    }
    this.#typed.checkLoops();
  }

  #contents(sheet: SheetName): RawCellContent[][] {
    const keys = this.#layout.keys(sheet);
    const lines: RawCellContent[][] = Array.from({ length: this.#document.capacity(sheet) }, () => []);
    for (const { id } of this.#document.rows(sheet)) lines[id] = keys.map((key) => this.#content(sheet, id, key));
    return lines;
  }
}

