import {
  findColumn, isBlank, isNumeric, SCHEMA, SHEET_NAMES, type CellValue, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import type { Calculation } from './calculation.ts';
import { CaseTable, countedIn, type GroupedSheet } from './cases/case-table.ts';
import { gather } from './gather.ts';
import { pass } from './pass.ts';
import { REFERRED_SHEETS, References } from './references.ts';
import { rowsReading } from './rows-reading.ts';
import { argument, inCasesOf, ruleOf, worstOf, type Argument } from './schema-rules.ts';
import { SheetColumns } from './sheet-columns.ts';
import { Solutions } from './solutions.ts';
import { TagIndex } from './tag-index.ts';
import { Touched } from './touched.ts';
import { TypedFormulas, type TypedFault } from './typed-formulas.ts';

/**
 * Works out a document, which it reads and never changes. Rules, totals and solutions are applied to typed columns in
 * passes over the rows that a change concerns. The formulas that persons typed are worked out between two passes, until
 * nothing changes any more.
 */
export class Workbook {
  readonly #document: ScheduleDocument;
  readonly #licenseKey: string;
  #calculation!: Calculation;
  #references!: References;
  #typed!: TypedFormulas;

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
    if (column === undefined || row === undefined || isBlank(row)) return null;
    if (isNumeric(column)) {
      const columns = this.#columns[sheet];
      return columns.numbers.has(key) ? columns.number(key, id) : this.workOut(sheet, id, key);
    }
    if (column.role === 'computed') return this.#columns[sheet].text(key, id);
    if (column.to !== undefined) return this.#references.text(sheet, id, key);
    if (column.derived !== undefined) return row.cells[key] ?? this.#derivedText(sheet, id, key);
    return row.cells[key] ?? column.default ?? null;
  }

  /** The number in a cell; NaN when it is unknown. */
  number(sheet: SheetName, id: number, key: string): number {
    return this.#columns[sheet].numbers.get(key)?.[id] ?? NaN;
  }

  /** What a rule or a solution reads for a row of a sheet; `null` when it is unknown. */
  read(sheet: SheetName, id: number, { by, sheet: of, key }: Argument): CellValue {
    const holder = by === undefined ? id : this.target(sheet, id, by);
    return holder < 0 ? null : this.value(of, holder, key);
  }

  /**
   * Works a figure out by its rule, as it is or as it would be with greater numbers.
   * @param more by how much each number that the rule reads is greater
   */
  workOut(sheet: SheetName, id: number, key: string, more: (argument: Argument) => number = () => 0): number | null {
    const { args, rule } = ruleOf(sheet, key)!;
    const values = args.map((arg) => {
      const value = this.read(sheet, id, arg);
      return typeof value === 'number' ? value + more(arg) : value;
    });
    if (values.includes(null) && rule.takesUnknown !== true) return null;
    const result = rule.by(...(values as never[]));
    return typeof result !== 'number' || !Number.isFinite(result) ? null : result;
  }

  /**
   * The rows that each row names by a reference: their ids by id, -1 for none. Not to be changed, nor kept over a
   * change.
   */
  targets(sheet: SheetName, key: string): Int32Array {
    return this.#columns[sheet].targets.get(key)!;
  }

  /** Numbers and references of a sheet by row id. Not to be changed, nor its columns kept over a change. */
  columns(sheet: SheetName): SheetColumns {
    return this.#columns[sheet];
  }

  /**
   * The numbers that some rows of a sheet have at a path, such as `rail.usable`, in their order; NaN where it is
   * unknown. @returns `undefined` where it is known of no row at all.
   */
  numbers(sheet: SheetName, path: string, ids: readonly number[]): Float64Array | undefined {
    const { by, sheet: holder, key } = argument(sheet, path);
    const numbers = this.#columns[holder].numbers.get(key)!;
    return numbers.some((number) => number === number)
      ? gather(numbers, by === undefined ? undefined : this.targets(sheet, by), ids) : undefined;
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

  /** The cases, with the factors that they give groups. */
  get cases(): CaseTable {
    return this.#calculation.cases;
  }

  /**
   * What a figure is worth for a row in one of the cases, by its place among them, or for -1 by the diversity of rows
   * alone; `null` where it is not known, and for a figure that is not worked out in cases.
   */
  inCase(sheet: SheetName, id: number, key: string, place: number): number | null {
    const figures = this.#columns[sheet].inCases.get(key);
    if (this.cases.cases.length === 0 && place === -1) return this.#columns[sheet].number(key, id);
    const value = figures?.values[place + 1]?.[id] ?? NaN;
    return Number.isNaN(value) ? null : value;
  }

  /**
   * The case in which a figure of a row is worst, by its place, and -1 for the diversity of rows alone, or where it is
   * the same in whatever case.
   * @param isHighest whether it is worst where it is highest; as its column says unless said otherwise.
   * @returns `undefined` for a figure that is not worked out in cases, and where there are none.
   */
  worstPlace(
    sheet: SheetName, id: number, key: string, isHighest = inCasesOf(sheet, key) === 'highest',
  ): number | undefined {
    if (typeof inCasesOf(sheet, key) !== 'string') return undefined;
    const figures = this.#columns[sheet].inCases.get(key);
    if (figures === undefined) return undefined;
    return figures.isAlike(id) && worstOf(sheet, key) === undefined ? -1 : figures.worst(id, isHighest).place - 1;
  }

  /** The most that a figure of a row comes to in what counts for it; `null` where that is not known. */
  most(sheet: SheetName, id: number, key: string): number | null {
    const value = this.#columns[sheet].inCases.get(key)?.worst(id, true).value ?? this.number(sheet, id, key);
    return Number.isNaN(value) ? null : value;
  }

  /** What a row counts in a case with a figure that hangs on its group; `null` where it is not known. */
  shareInCase(sheet: SheetName, id: number, key: string, place: number): number | null {
    const how = inCasesOf(sheet, key);
    if (typeof how !== 'object') return this.#columns[sheet].number(key, id);
    const factor = place < 0 ? undefined : this.cases.factor(place, this.cases.groupOf(sheet as GroupedSheet)[id]!);
    const amps = countedIn(factor, this.number(sheet, id, how.share), this.number(sheet, id, key));
    return Number.isNaN(amps) ? null : amps;
  }

  /** Whether what the diversity of rows alone gives counts for a row, beside the cases. */
  countsOwn(sheet: SheetName, id: number, key: string): boolean {
    return this.#columns[sheet].inCases.get(key)?.countsOwn(id) ?? true;
  }

  /** Ids of the rows of a sheet for which something that is read of them, or through their references, was touched. */
  rowsReading(sheet: SheetName, args: readonly Argument[], touched: Touched): readonly number[] {
    return rowsReading(sheet, args, touched, this.#document, this.#columns);
  }

  /** Whether other rows of its sheet bear the tag of a row, so that whoever names it may mean another. */
  isShared(sheet: SheetName, id: number): boolean {
    return this.shared(sheet).has(id);
  }

  /** Ids of the rows of a sheet whose tag others bear too. */
  shared(sheet: SheetName): ReadonlySet<number> {
    return this.#calculation.tags.shared(sheet);
  }

  /** Outcome of the solution of a row that is no figure, such as that no working voltage exists. */
  outcome(sheet: SheetName, id: number): string | undefined {
    return this.#calculation.solutions.outcome(sheet, id);
  }

  /** How many rows a total or a solution lacks because their value is not wholly known. */
  missing(sheet: SheetName, id: number, key: string): number {
    return this.#columns[sheet].missing(key, id);
  }

  /**
   * Whether a figure is less than the whole: a total that lacks a row whose value is not wholly known, or what follows
   * from one, by references and formulas too.
   */
  isPartial(sheet: SheetName, id: number, key: string): boolean {
    const column = findColumn(sheet, key);
    const isKept = column?.role !== 'computed' || column.onDemand !== true || this.#columns[sheet].numbers.has(key);
    if (isKept) return this.#columns[sheet].isPartial(key, id);
    return ruleOf(sheet, key)!.args.some((arg) => {
      const holder = arg.by === undefined ? id : this.target(sheet, id, arg.by);
      return holder >= 0 && (
        this.isPartial(arg.sheet, holder, arg.key) || (arg.by !== undefined && this.isShared(arg.sheet, holder))
      );
    });
  }

  /** Why the formula in a cell has no result, if it has none. */
  fault(sheet: SheetName, id: number, key: string): TypedFault | undefined {
    return this.#typed.fault(sheet, id, key);
  }

  /** Whether formulas are unknown because the formula engine has not been fetched. */
  get awaitsEngine(): boolean {
    return this.#typed.awaitsEngine;
  }

  /**
   * What is wrong with a formula, in the form that documents keep.
   * @returns a sentence that goes on after the formula; `undefined` when it can stand in the column, or that cannot be
   * told before the formula engine has been fetched.
   */
  problemOf(sheet: SheetName, key: string, formula: string, words: Words): string | undefined {
    return this.#typed.problemOf(sheet, key, formula, words);
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
    this.#typed.note(touched);
    this.#work(touched);
    return touched;
  }

  /**
   * Works out the formulas that waited for the formula engine, which has come, and all that follows from them.
   * @returns the cells that are worth something else now.
   */
  takeUpFormulas(): Touched {
    const touched = new Touched();
    this.#work(touched);
    return touched;
  }

  destroy(): void {
    this.#typed.destroy();
  }

  /** The text that an empty cell takes from other cells. */
  #derivedText(sheet: SheetName, id: number, key: string): string | null {
    const { args, rule } = ruleOf(sheet, key)!;
    const values = args.map((arg) => this.read(sheet, id, arg));
    const text = values.includes(null) ? null : rule.by(...(values as never[]));
    return typeof text === 'string' ? text : null;
  }

  get #columns(): Calculation['columns'] {
    return this.#calculation.columns;
  }

  #build(): void {
    const document = this.#document;
    const columns = Object.fromEntries(SHEET_NAMES.map((sheet) =>
      [sheet, new SheetColumns(sheet, document.capacity(sheet))])) as Record<SheetName, SheetColumns>;
    const tags = new TagIndex(document);
    const cases = new CaseTable(document, columns, tags);
    this.#calculation = { document, columns, tags, cases, solutions: new Solutions(document, columns, tags, cases) };
    this.#references = new References(document, columns, tags);
    this.#typed = new TypedFormulas(this.#calculation, this, this.#licenseKey);
    this.#typed.note();
    this.#work();
  }

  /** Works out what follows from changes; everything when they are absent. */
  #work(touched?: Touched): void {
    let pending = touched;
    do {
      pass(this.#calculation, pending);
      if (pending !== touched) touched?.add(pending!);
      pending = this.#typed.follow(pending);
    } while (pending.size > 0);
  }

  /** Rows that are blank now, or may have been before, are touched whole: in a blank row no default holds. */
  #touchBlank(touched: Touched): void {
    for (const { sheet, id, keys } of touched.cells()) {
      if (keys === null) continue;
      const cells = this.#document.row(sheet, id)?.cells ?? {};
      if (Object.keys(cells).every((key) => cells[key] === null || keys.has(key))) touched.row(sheet, id);
    }
  }

  /** Ids of the rows that share their tag now and did not, or the other way round, by sheet. */
  #sharedOtherwise(touched: Touched): Map<SheetName, Set<number>> {
    const found = new Map<SheetName, Set<number>>();
    for (const sheet of touched.rows.keys()) {
      const ids = new Set<number>();
      for (const id of touched.having(sheet, [SCHEMA[sheet].tag])) {
        const was = this.isShared(sheet, id);
        for (const other of this.#calculation.tags.update(sheet, id)) ids.add(other);
        if (was !== this.isShared(sheet, id)) ids.add(id);
      }
      if (ids.size > 0) found.set(sheet, ids);
    }
    return found;
  }

  /** References that mean another row now are touched too, and with them what is read through them. */
  #retarget(touched: Touched): void {
    const shared = this.#sharedOtherwise(touched);
    const renamed = SHEET_NAMES.filter((sheet) => REFERRED_SHEETS.has(sheet)
      && (touched.rearranged.has(sheet) || touched.concerns(sheet, SCHEMA[sheet].tag)));
    const retargeted = [
      ...renamed.flatMap((sheet) => this.#references.resolveTo(sheet)),
      ...SHEET_NAMES.flatMap((sheet) =>
        this.#references.resolveRows(sheet, touched.having(sheet, [...this.#columns[sheet].targets.keys()]))),
      ...[...shared].flatMap(([sheet, ids]) => [
        ...this.#references.naming(sheet, ids), ...[...ids].map((id) => ({ sheet, id, key: SCHEMA[sheet].tag })),
      ]),
    ];
    for (const { sheet, id, key } of retargeted) touched.cell(sheet, id, key);
    this.#references.takeOver(touched);
  }
}
