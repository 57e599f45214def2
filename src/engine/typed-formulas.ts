import {
  findColumn, inputColumns, isFormula, isNumeric, referencesOf, SHEET_NAMES, type CellValue, type Reference,
  type SheetName,
} from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { blocks, compileFormula, trialFormula } from './compile-formula.ts';
import { addressOf, cellOfRange, type CellWrite } from './engine-cells.ts';
import { formulaEngine } from './engine-registry.ts';
import type { FormulaEngine } from './formula-engine.ts';
import { AWAITS_ENGINE, WRONG_ARGUMENTS, type FormulaFault } from './formula-fault.ts';
import type { RangeLines } from './formula-functions.ts';
import { findLoops, type CellName } from './formula-loops.ts';
import { idsOf, keysBetween, NamedRanges } from './named-ranges.ts';
import type { Calculation } from './calculation.ts';
import type { CellFigures } from './read-cell.ts';
import { Touched } from './touched.ts';

/** A formula typed by a person, by its cell. */
export interface TypedCell extends CellName {
  readonly formula: string;
  /** What it refers to; `undefined` for rows that are gone. */
  readonly references: readonly (Reference | undefined)[];
}

/** Why the formula in a cell has no result; the way round where it depends on itself. */
export interface TypedFault extends FormulaFault {
  readonly way?: readonly CellName[];
}

/** What formulas read. */
interface ShownFigures extends CellFigures {
  isPartial(sheet: SheetName, id: number, key: string): boolean;
}

/** Columns in which a person may type a formula. */
const TYPABLE = Object.fromEntries(SHEET_NAMES.map((sheet) =>
  [sheet, inputColumns(sheet).filter(isNumeric).map(({ key }) => key)])) as Record<SheetName, string[]>;

export const nameOf = (sheet: SheetName, id: number, key: string) => `${sheet}#${id}.${key}`;

/**
 * The formulas that persons have typed. They are worked out by the formula engine, which exists from the first one on
 * and is given the values of the cells that they name; what they come to is put into the columns. As long as that part
 * of the software has not been fetched, they are unknown.
 */
export class TypedFormulas {
  readonly #calculation: Calculation;
  readonly #figures: ShownFigures;
  readonly #licenseKey: string;
  #engine: FormulaEngine | undefined;
  readonly #cells = new Map<string, TypedCell>();
  /** How many formulas stand in a column, by its name. */
  readonly #perColumn = new Map<string, number>();
  /** Formulas that came, went, or have to be compiled again. */
  #due = new Map<string, CellName>();
  /** Formulas that are compiled with places of other rows, which may change. */
  readonly #placed = new Set<string>();
  readonly #faults = new Map<string, FormulaFault>();
  #loops: ReadonlyMap<string, readonly CellName[]> = new Map();
  /** Single cells that formulas name: ids by sheet and key. */
  #named = new Map<SheetName, Map<string, Set<number>>>();
  /** Columns that formulas read. */
  #read = new Map<string, CellName>();
  #ranges: NamedRanges;
  #version = 0;

  /** @param figures what cells are worth, as the screen shows it. */
  constructor(calculation: Calculation, figures: ShownFigures, licenseKey: string) {
    this.#calculation = calculation;
    this.#figures = figures;
    this.#licenseKey = licenseKey;
    this.#ranges = new NamedRanges(calculation.document);
  }

  /** Whether formulas are unknown because the formula engine has not been fetched. */
  get awaitsEngine(): boolean {
    return this.#cells.size > 0 && this.#engine === undefined;
  }

  destroy(): void {
    this.#engine?.destroy();
    this.#engine = undefined;
  }

  /** Why the formula in a cell has no result, if it has none. */
  fault(sheet: SheetName, id: number, key: string): TypedFault | undefined {
    if (this.#cells.size === 0) return undefined;
    const name = nameOf(sheet, id, key);
    const way = this.#loops.get(name);
    if (way !== undefined) return { type: 'CYCLE', message: '', way };
    return this.awaitsEngine && this.#cells.has(name) ? AWAITS_ENGINE : this.#faults.get(name);
  }

  /**
   * @returns a sentence on what is wrong with a formula, which goes on after it; `undefined` when it can stand in the
   * column, or nobody can tell yet: what is wrong with it is found when the formula engine has come.
   */
  problemOf(sheet: SheetName, key: string, formula: string, words: Words): string | undefined {
    const engine = this.#start();
    if (engine === undefined) return undefined;
    if (!engine.isFormula(formula.replaceAll(/⟦[^⟧]*⟧/g, '$A$1'))) {
      return words.say(
        'this is not a formula. Arguments are separated by ; and decimals by a point, as in =ROUND(2.5*3;0).'
      );
    }
    // What is asked hangs on names and arguments: the first line of a range is enough.
    const result = engine.tryFormula(trialFormula(formula, `${sheet}.${key}`, ({ sheet: read, from, to }) =>
      this.#ranges.number({ sheet: read, from, to: { ...from, key: (to ?? from).key } })));
    if (typeof result !== 'object') return undefined;
    if (result.message === WRONG_ARGUMENTS) {
      return words.say('it gives a function too few or too many arguments. Correct it.');
    }
    return result.type === 'NAME'
      ? words.say('it uses a function or a name that is not known. Correct its spelling.')
      : undefined;
  }

  /**
   * Notes the formulas that came, went, or must be compiled again.
   * @param touched what changed; everything when it is absent. Cells that go round in a circle, or did, are added to
   * it.
   */
  note(touched?: Touched): void {
    let changed = false;
    const columnsBefore = new Set(this.#perColumn.keys());
    for (const cell of touched === undefined ? this.#everyCell() : this.#touchedCells(touched)) {
      changed = this.#noteCell(cell) || changed;
    }
    if (this.#cells.size === 0 && !changed) return;
    const columns = [...new Set([...columnsBefore, ...this.#perColumn.keys()])]
      .filter((column) => columnsBefore.has(column) !== this.#perColumn.has(column));
    this.#compileAgain(touched, columns);
    if (changed || touched === undefined || this.#mayLinkOtherwise(touched)) this.#checkLoops();
    // The sentence about a circle names other rows, which may bear other tags now.
    for (const [, cell] of this.#looping()) touched?.cell(cell.sheet, cell.id, cell.key);
  }

  /**
   * Works the formulas out that read what changed.
   * @param touched what changed; everything when it is absent.
   * @returns the cells whose formula comes to something else than before.
   */
  follow(touched: Touched | undefined): Touched {
    const result = new Touched();
    if (this.#cells.size === 0 && this.#due.size === 0) return result;
    const engine = this.#start();
    const due = this.#due;
    this.#due = new Map();
    if (engine === undefined) {
      for (const [name, cell] of due) if (this.#cells.has(name)) this.#put(cell, NaN, result);
    } else this.#workOut(engine, due, touched, result);
    this.#followPartial(result);
    if (this.#cells.size === 0) this.#forget();
    return result;
  }

  /** The formula engine, built for the first formula; `undefined` as long as it has not been fetched. */
  #start(): FormulaEngine | undefined {
    const Engine = formulaEngine();
    if (this.#engine !== undefined || Engine === undefined) return this.#engine;
    // What was typed before it came has waited for it.
    for (const [name, cell] of this.#cells) this.#due.set(name, cell);
    return this.#engine = new Engine(this.#licenseKey, { range: (number) => this.#lines(number) });
  }

  /** Has the formula engine work out what is due, and what reads cells that were touched. */
  #workOut(
    engine: FormulaEngine, due: ReadonlyMap<string, CellName>, touched: Touched | undefined, result: Touched,
  ): void {
    const named: CellWrite[] = [];
    const compiled = [...due].map(([name, cell]): CellWrite => (
      { ...cell, content: this.#content(name, cell, named) }
    ));
    const versions = this.#ranges.touched(touched)
      .map((number): CellWrite => ({ ...cellOfRange(number), content: this.#version += 1 }));
    const changed = engine.write([...compiled, ...named, ...this.#namedValues(touched), ...versions]);
    const toTake = new Map(due);
    for (const { sheet, key, id } of changed) {
      if (sheet !== 'ranges') toTake.set(nameOf(sheet, id, key), { sheet, key, id });
    }
    for (const [name, cell] of toTake) {
      if (this.#cells.has(name)) this.#take(name, cell, engine, result);
    }
  }

  * #everyCell(): Iterable<CellName> {
    for (const sheet of SHEET_NAMES) {
      for (const id of this.#calculation.document.rowsWithFormulas(sheet)) {
        for (const key of TYPABLE[sheet]) yield { sheet, id, key };
      }
    }
  }

  * #touchedCells(touched: Touched): Iterable<CellName> {
    for (const { sheet, id, keys } of touched.cells()) {
      for (const key of TYPABLE[sheet]) if (keys === null || keys.has(key)) yield { sheet, id, key };
    }
  }

  /** @returns whether the formula in a cell came, went or changed. */
  #noteCell({ sheet, id, key }: CellName): boolean {
    const own = this.#calculation.document.row(sheet, id)?.cells[key];
    const formula = isFormula(own) ? own : undefined;
    if (formula === undefined && this.#cells.size === 0) return false;
    const name = nameOf(sheet, id, key);
    const before = this.#cells.get(name);
    if (before?.formula === formula) return false;
    const column = `${sheet}.${key}`;
    const count = (this.#perColumn.get(column) ?? 0) - (before === undefined ? 0 : 1) + (formula === undefined ? 0 : 1);
    if (count === 0) this.#perColumn.delete(column);
    else this.#perColumn.set(column, count);
    this.#due.set(name, { sheet, id, key });
    if (formula === undefined) {
      this.#cells.delete(name);
      this.#faults.delete(name);
    } else {
      const references = referencesOf(formula);
      this.#cells.set(name, { sheet, id, key, formula, references });
      for (const reference of references) if (reference !== undefined) this.#holdColumns(reference);
    }
    return true;
  }

  /** Columns that are worked out on demand have numbers from the time on when a formula reads them. */
  #holdColumns(reference: Reference): void {
    const { sheet } = reference;
    for (const key of keysBetween(reference)) {
      this.#read.set(`${sheet}.${key}`, { sheet, key, id: -1 });
      const column = findColumn(sheet, key)!;
      const columns = this.#calculation.columns[sheet];
      if (column.role !== 'computed' || column.onDemand !== true || columns.numbers.has(key)) continue;
      const worth = this.#calculation.document.rows(sheet).map(({ id }) =>
        [id, this.#figures.value(sheet, id, key), this.#figures.isPartial(sheet, id, key)] as const);
      columns.hold(key);
      for (const [id, value, isPartial] of worth) {
        if (typeof value === 'number') columns.setNumber(key, id, value);
        if (isPartial) columns.setPartial(key, id, -1);
      }
    }
  }

  /** Notes formulas in whose ranges rows came, went or moved, or formulas stand now, or did. */
  #compileAgain(touched: Touched | undefined, columns: readonly string[]): void {
    const rearranged = touched?.rearranged ?? new Set();
    if (rearranged.size === 0 && columns.length === 0) return;
    for (const [name, cell] of this.#cells) {
      const isPlaced = this.#placed.has(name)
        && cell.references.some((each) => each === undefined || rearranged.has(each.sheet));
      const reads = () => cell.references.some((each) => each?.to !== undefined
        && keysBetween(each).some((key) => columns.includes(`${each.sheet}.${key}`)));
      if (isPlaced || (columns.length > 0 && reads())) this.#due.set(name, cell);
    }
  }

  /**
   * Whether a change may let cells depend on others than before: through references or groups, or where a default takes
   * a value’s place.
   */
  #mayLinkOtherwise(touched: Touched): boolean {
    if (touched.rearranged.size > 0) return true;
    for (const { sheet, keys } of touched.cells()) {
      if (keys === null) return true;
      for (const key of keys) {
        const column = findColumn(sheet, key);
        if (column?.role !== 'input') continue;
        if (column.to !== undefined || column.tag === true || column.derived !== undefined || key === 'group') return true;
      }
    }
    return false;
  }

  #checkLoops(): void {
    const before = new Map(this.#looping());
    this.#loops = findLoops(this.#cells, this.#calculation);
    const after = new Map(this.#looping());
    for (const [name, cell] of [...before, ...after]) {
      if (before.has(name) !== after.has(name)) this.#due.set(name, cell);
    }
  }

  #looping(): [string, TypedCell][] {
    return [...this.#loops.keys()].flatMap((name) => this.#cells.has(name) ? [[name, this.#cells.get(name)!]] : []);
  }

  /** What the formula engine is given for a cell that holds, or held, a formula. */
  #content(name: string, { sheet, id, key }: CellName, named: CellWrite[]): CellWrite['content'] {
    this.#placed.delete(name);
    const cell = this.#cells.get(name);
    if (cell === undefined) return written(this.#figures.value(sheet, id, key));
    if (this.#loops.has(name)) return '#CYCLE!';
    const { document } = this.#calculation;
    return compileFormula(cell.formula, `${sheet}.${key}`, {
      cell: (reference) => {
        if (document.row(reference.sheet, reference.from.id) !== undefined) {
          return this.#name(reference.sheet, reference.from, named);
        }
        this.#placed.add(name);
        return undefined;
      },
      range: (reference) => this.#ranges.number(reference),
      formulasWithin: (number) => {
        const range = this.#ranges.get(number);
        const keys = range.keys.filter((each) => this.#perColumn.has(`${range.sheet}.${each}`));
        if (keys.length === 0) return [];
        this.#placed.add(name);
        return blocks(idsOf(range, document)).flatMap(([first, last]) => keys.map((each) => {
          const start = addressOf({ sheet: range.sheet, key: each, id: first });
          return `${start}:${addressOf({ sheet: range.sheet, key: each, id: last }).split('!')[1]}`;
        }));
      },
    });
  }

  /** Names a single cell; a value that the formula engine has not been given yet is added to `writes`. */
  #name(sheet: SheetName, { key, id }: { key: string; id: number }, writes: CellWrite[]): CellName {
    const columns = this.#named.get(sheet) ?? new Map<string, Set<number>>();
    const ids = columns.get(key) ?? new Set();
    this.#named.set(sheet, columns.set(key, ids));
    if (!ids.has(id) && !this.#cells.has(nameOf(sheet, id, key))) {
      writes.push({ sheet, key, id, content: written(this.#figures.value(sheet, id, key)) });
    }
    ids.add(id);
    return { sheet, key, id };
  }

  /** The values of named cells that were touched. */
  #namedValues(touched: Touched | undefined): CellWrite[] {
    const writes: CellWrite[] = [];
    for (const [sheet, columns] of this.#named) {
      for (const [id, keys] of touched?.rows.get(sheet) ?? []) {
        for (const [key, ids] of columns) {
          if ((keys !== null && !keys.has(key)) || !ids.has(id) || this.#cells.has(nameOf(sheet, id, key))) continue;
          writes.push({ sheet, key, id, content: written(this.#figures.value(sheet, id, key)) });
        }
      }
    }
    return writes;
  }

  /** The cells of a range as the functions of the formula engine read them. */
  #lines(number: number): RangeLines | undefined {
    const range = this.#ranges.get(number);
    const ids = idsOf(range, this.#calculation.document);
    if (ids.length === 0) return undefined;
    const { sheet, keys } = range;
    const hasFaults = this.#cells.size > 0;
    return ids.map((id) => keys.map((key) => this.#figures.value(sheet, id, key) ?? (
      hasFaults ? this.fault(sheet, id, key) ?? null : null
    )));
  }

  /** Takes over what a formula came to. @param result learns whether that differs from before. */
  #take(name: string, cell: CellName, engine: FormulaEngine, result: Touched): void {
    const value = this.#loops.has(name) ? undefined : engine.value(cell);
    const before = this.#faults.get(name);
    const fault = typeof value === 'object' ? value : undefined;
    if (fault === undefined) this.#faults.delete(name);
    else this.#faults.set(name, fault);
    if (before?.type !== fault?.type || before?.message !== fault?.message) result.cell(cell.sheet, cell.id, cell.key);
    this.#put(cell, typeof value === 'number' ? value : NaN, result);
  }

  /** Puts what a formula came to into its column; NaN where that is not known. */
  #put({ sheet, id, key }: CellName, value: number, result: Touched): void {
    if (this.#calculation.columns[sheet].setNumber(key, id, value)) result.cell(sheet, id, key);
  }

  /**
   * A formula that reads a figure which is not wholly known is not wholly known either. One that goes round would
   * follow itself for ever, and has no result that could lack something.
   */
  #followPartial(result: Touched): void {
    const { columns, document } = this.#calculation;
    const partial = [...this.#read.values(), ...[...this.#perColumn.keys()].map((name) => {
      const [sheet, key] = name.split('.') as [SheetName, string];
      return { sheet, key };
    })].filter(({ sheet, key }) => columns[sheet].partial.has(key));
    if (partial.length === 0) return;
    for (const [name, { sheet, id, key, references }] of this.#cells) {
      const lacks = !this.#loops.has(name) && references.some((each) => {
        if (each === undefined) return false;
        if (each.to === undefined) return columns[each.sheet].isPartial(each.from.key, each.from.id);
        const keys = keysBetween(each).filter((read) => columns[each.sheet].partial.has(read));
        return keys.length > 0 && idsOf(this.#ranges.get(this.#ranges.number(each)), document)
          .some((row) => keys.some((read) => columns[each.sheet].isPartial(read, row)));
      });
      if (columns[sheet].setPartial(key, id, lacks ? -1 : 0)) result.cell(sheet, id, key);
    }
  }

  /** No formula is left: the formula engine is emptied. */
  #forget(): void {
    this.#engine?.clear();
    this.#named = new Map();
    this.#read = new Map();
    this.#ranges = new NamedRanges(this.#calculation.document);
    this.#placed.clear();
  }
}

/**
 * A value as the formula engine is given it: an apostrophe keeps it from reading a text as a number, a date or a
 * formula.
 */
function written(value: CellValue): CellWrite['content'] {
  return typeof value === 'string' ? `'${value}` : value;
}
