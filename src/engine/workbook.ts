import {
  findColumn, isBlank, isFormula, isNumeric, SCHEMA, SHEET_NAMES,
  type CellValue, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { Calculation } from './calculation.ts';
import { CatchingUp } from './catching-up.ts';
import { CellContents } from './cell-contents.ts';
import { CellLayout } from './cell-layout.ts';
import { errorOf, type FormulaFault } from './formula-engine.ts';
import { WRONG_ARGUMENTS } from './formula-functions.ts';
import { isPartial } from './is-partial.ts';
import { quickPass } from './quick-pass.ts';
import { REFERRED_SHEETS, References } from './references.ts';
import { ruleOf } from './schema-rules.ts';
import { SheetColumns } from './sheet-columns.ts';
import { Solutions } from './solutions.ts';
import { Touched } from './touched.ts';
import { TypedFormulas } from './typed-formulas.ts';

/** A column that the formula engine holds. */
interface HeldColumn {
  readonly sheet: SheetName;
  readonly key: string;
}

/**
 * Works out a document, which it reads and never changes. As long as no person has typed a formula, the rules are applied
 * to typed columns, and the formula engine learns what it missed when there is time, at the latest when a formula comes. With
 * formulas, cells are worked out in the formula engine, totals gathered beside it and given to it as values.
 */
export class Workbook {
  readonly #document: ScheduleDocument;
  readonly #licenseKey: string;
  #columns!: Record<SheetName, SheetColumns>;
  #layout!: CellLayout;
  #references!: References;
  #typed!: TypedFormulas;
  #contents!: CellContents;
  #solutions!: Solutions;
  #calculation!: Calculation;
  #catchingUp!: CatchingUp;

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
    if (column.role === 'computed') {
      if (isBlank(row)) return null;
      if (column.onDemand === true) return this.#onDemand(sheet, id, key);
      return isNumeric(column) ? this.#columns[sheet].number(key, id) : this.#columns[sheet].text(key, id);
    }
    const own = row.cells[key] ?? null;
    if (isNumeric(column)) return own === null && isBlank(row) ? null : this.#columns[sheet].number(key, id);
    return own ?? (isBlank(row) ? null : column.default ?? null);
  }

  /** The number in a cell; NaN when it is unknown. */
  number(sheet: SheetName, id: number, key: string): number {
    return this.#columns[sheet].numbers.get(key)?.[id] ?? NaN;
  }

  /** Works out a column that nothing else reads. */
  #onDemand(sheet: SheetName, id: number, key: string): number | null {
    const { args, rule } = ruleOf(sheet, key)!;
    const values = args.map((arg) => {
      const holder = arg.by === undefined ? id : this.target(sheet, id, arg.by);
      return holder < 0 ? null : this.value(arg.sheet, holder, arg.key);
    });
    if (values.includes(null) && rule.takesUnknown !== true) return null;
    const result = rule.by(...(values as never[]));
    return result === null || !Number.isFinite(result) ? null : result;
  }

  /** The rows that each row names by a reference: their ids by id, -1 for none. Not to be changed, nor kept over a change. */
  targets(sheet: SheetName, key: string): Int32Array {
    return this.#columns[sheet].targets.get(key)!;
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

  /** Outcome of the solution of a row that is no figure, such as that no working voltage exists. */
  outcome(sheet: SheetName, id: number): string | undefined {
    return this.#solutions.outcome(sheet, id);
  }

  /** How many rows a total or a solution lacks because their value is unknown. */
  missing(sheet: SheetName, id: number, key: string): number {
    return this.#columns[sheet].partial.get(key)?.[id] ?? 0;
  }

  /** Whether a figure follows from a total that lacks a row whose value is unknown. */
  isPartial(sheet: SheetName, id: number, key: string): boolean {
    return isPartial(this.#columns, sheet, id, key);
  }

  /** Why the formula in a cell has no result, if it has none. */
  fault(sheet: SheetName, id: number, key: string): FormulaFault | undefined {
    if (this.#typed.size === 0) return undefined;
    if (this.#typed.loops(sheet, id, key)) return { type: 'LOOP', message: '' };
    return this.#calculation.fault(sheet, id, key);
  }

  /**
   * What is wrong with a formula, in the form that documents keep.
   * @returns a sentence that goes on after the formula; `undefined` when it can stand in the column.
   */
  problemOf(sheet: SheetName, key: string, formula: string, words: Words): string | undefined {
    const engine = this.#catchingUp.ready();
    if (!engine.isFormula(formula.replaceAll(/⟦[^⟧]*⟧/g, '$A$1'))) {
      return words.say('this is not a formula. Arguments are parted by ; and decimals by a point, as in =ROUND(2.5*3;0).');
    }
    this.#give(this.#hold(formula));
    const result = errorOf(engine.tryFormula(this.#typed.compile(sheet, -1, key, formula) ?? '=0'));
    if (result?.message === WRONG_ARGUMENTS) return words.say('it gives a function too few or too many arguments. Correct it.');
    return result?.type === 'NAME' ? words.say('it uses a function or a name that is not known. Correct its spelling.') : undefined;
  }

  /**
   * Makes the formula engine ready for the first formula, one step at a time so that a page stays responsive.
   * @returns whether it is ready.
   */
  prepareStep(): boolean {
    return this.#catchingUp.step();
  }

  /**
   * Follows changes that the document has made.
   * @returns the cells that are worth something else now.
   */
  update(touched: Touched): Touched {
    if (touched.all) {
      this.destroy();
      this.#build();
      return touched;
    }
    for (const sheet of SHEET_NAMES) this.#columns[sheet].reserve(this.#document.capacity(sheet));
    this.#touchBlank(touched);
    this.#retarget(touched);
    const missed = this.#catchingUp.isBehind;
    this.#noteFormulas(touched);
    if (this.#typed.size === 0) {
      this.#calculation.forgetFaults();
      this.#catchingUp.miss(touched);
      quickPass(this.#document, this.#columns, this.#solutions, touched);
      return touched;
    }
    const engine = this.#catchingUp.ready();
    if (missed) this.#calculation.takeAll(engine, touched);
    this.#calculation.run(engine, this.#contents.writesOf(touched), touched);
    return touched;
  }

  destroy(): void {
    this.#catchingUp.destroy();
  }

  #build(): void {
    this.#columns = Object.fromEntries(SHEET_NAMES.map((sheet) =>
      [sheet, new SheetColumns(sheet, this.#document.capacity(sheet))])) as Record<SheetName, SheetColumns>;
    this.#layout = new CellLayout();
    this.#typed = new TypedFormulas(this.#document, this.#layout);
    this.#references = new References(this.#document, this.#columns);
    this.#contents = new CellContents(this.#document, this.#columns, this.#layout, this.#typed);
    this.#solutions = new Solutions(this.#document, this.#columns);
    this.#calculation = new Calculation(this.#document, this.#columns, this.#layout, this.#contents, this.#solutions);
    this.#catchingUp = new CatchingUp(this.#document, this.#layout, this.#contents, this.#licenseKey);
    this.#findTypedFormulas();
    if (this.#typed.size === 0) {
      quickPass(this.#document, this.#columns, this.#solutions);
      return;
    }
    const engine = this.#catchingUp.ready();
    const touched = new Touched();
    for (const sheet of SHEET_NAMES) touched.row(sheet, -1);
    this.#calculation.takeAll(engine, touched);
    this.#calculation.run(engine, [], touched);
  }

  #findTypedFormulas(): void {
    for (const sheet of SHEET_NAMES) {
      const keys = this.#layout.keys(sheet).filter((key) => this.#isTypable(sheet, key));
      for (const { id, cells } of this.#document.rows(sheet)) {
        for (const key of keys) {
          const own = cells[key];
          if (!isFormula(own)) continue;
          this.#hold(own);
          this.#typed.note(sheet, id, key, own);
        }
      }
    }
    this.#typed.checkLoops();
  }

  /** Rows that are blank now, or may have been before, are touched whole: in a blank row no default holds. */
  #touchBlank(touched: Touched): void {
    for (const { sheet, id, keys } of touched.cells()) {
      if (keys === null) continue;
      const cells = this.#document.row(sheet, id)?.cells ?? {};
      if (Object.keys(cells).every((key) => cells[key] === null || keys.has(key))) touched.row(sheet, id);
    }
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
    const held: HeldColumn[] = [];
    for (const { sheet, id, keys } of touched.cells()) {
      const cells = this.#document.row(sheet, id)?.cells ?? {};
      for (const key of keys ?? this.#layout.keys(sheet)) {
        const own = cells[key];
        if (!isFormula(own) && this.#typed.size === 0) continue;
        const formula = isFormula(own) && this.#isTypable(sheet, key) ? own : undefined;
        if (formula !== undefined) held.push(...this.#hold(formula));
        changed = this.#typed.note(sheet, id, key, formula) || changed;
      }
    }
    this.#give(held);
    if (this.#typed.size === 0 && !changed) return;
    for (const sheet of touched.rearranged) {
      for (const cell of this.#typed.referringTo(sheet)) touched.cell(cell.sheet, cell.id, cell.key);
    }
    if (changed) for (const cell of this.#typed.checkLoops()) touched.cell(cell.sheet, cell.id, cell.key);
  }

  /** Whether a person may type a formula in a column. */
  #isTypable(sheet: SheetName, key: string): boolean {
    const column = findColumn(sheet, key);
    return column?.role === 'input' && isNumeric(column);
  }

  /** Makes places for the columns that a formula reads. @returns those that had none. */
  #hold(formula: string): HeldColumn[] {
    const held: HeldColumn[] = [];
    for (const { sheet, key } of this.#typed.columnsToHold(formula)) {
      if (this.#layout.place(sheet, key) !== undefined) continue;
      this.#layout.add(sheet, key);
      held.push({ sheet, key });
    }
    return held;
  }

  /** Gives the formula engine columns that it has not held so far. */
  #give(columns: readonly HeldColumn[]): void {
    if (columns.length === 0) return;
    this.#catchingUp.ready().write(columns.flatMap(({ sheet, key }) =>
      this.#document.rows(sheet).flatMap(({ id }) => this.#contents.writes(sheet, id, new Set([key])))));
  }
}
