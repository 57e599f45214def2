import { SHEET_NAMES, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import type { Calculation } from './calculation.ts';
import type { CellContents } from './cell-contents.ts';
import type { CellLayout } from './cell-layout.ts';
import { FormulaEngine, type CellWrite } from './formula-engine.ts';
import { columnsGivenBy, SOLUTIONS, TOTALS } from './schema-rules.ts';
import { Touched } from './touched.ts';

/** Rows of a sheet that the formula engine is given at once while it is prepared step by step. */
const STEP = 250;

/** The formula engine and what it has yet to learn of the document, which it is given at once or step by step. */
export class CatchingUp {
  readonly #document: ScheduleDocument;
  readonly #layout: CellLayout;
  readonly #contents: CellContents;
  readonly #calculation: Calculation;
  readonly #licenseKey: string;
  #engine: FormulaEngine | undefined;
  /**
   * Rows that the formula engine has been given, by sheet, while it is being prepared; `undefined` before and after.
   */
  #given: Map<SheetName, number> | undefined;
  /** What changed while the formula engine was being prepared. */
  #missed = new Touched();

  constructor(
    document: ScheduleDocument, layout: CellLayout, contents: CellContents, calculation: Calculation, licenseKey: string,
  ) {
    this.#document = document;
    this.#layout = layout;
    this.#contents = contents;
    this.#calculation = calculation;
    this.#licenseKey = licenseKey;
  }

  /** Whether there is a formula engine, ready or not. */
  get hasBegun(): boolean {
    return this.#engine !== undefined;
  }

  /** Whether the formula engine has something to learn yet. */
  get isBehind(): boolean {
    return this.#given !== undefined;
  }

  /** Makes the formula engine ready at once, unless that is under way step by step. */
  prepare(): void {
    if (this.#engine === undefined) this.#start((sheet) => this.#document.capacity(sheet));
  }

  /** The formula engine, made ready if it is not. @param touched learns what is worth something else now. */
  ready(touched = new Touched()): FormulaEngine {
    if (this.#engine === undefined) this.prepare();
    else while (!this.step(touched));
    return this.#engine!;
  }

  /** Puts a change off. */
  miss(touched: Touched): void {
    this.#given ??= new Map(SHEET_NAMES.map((sheet) => [sheet, this.#document.capacity(sheet)]));
    this.#missed.add(touched);
  }

  /**
   * @param touched learns what is worth something else now; without it the results of a step are passed over, since they are
   * known from the quick pass, and what the formula engine has yet to learn may make them wrong.
   * @returns whether the formula engine is ready.
   */
  step(touched?: Touched): boolean {
    if (this.#engine !== undefined && this.#given === undefined) return true;
    if (this.#engine === undefined || this.#given === undefined) {
      this.#given = new Map(SHEET_NAMES.map((sheet) => [sheet, Math.min(STEP, this.#document.capacity(sheet))]));
      this.#start((sheet) => this.#given!.get(sheet)!);
      return false;
    }
    const sheet = SHEET_NAMES.find((each) => this.#given!.get(each)! < this.#document.capacity(each));
    if (sheet === undefined) {
      const due = this.#missed.take(STEP);
      if (due.size === 0) {
        this.#finish(touched ?? new Touched());
        return true;
      }
      this.#give(this.#contents.writesOf(due), touched);
      return false;
    }
    const from = this.#given.get(sheet)!;
    const end = Math.min(from + STEP, this.#document.capacity(sheet));
    const writes: CellWrite[] = [];
    for (let id = from; id < end; id += 1) writes.push(...this.#contents.writes(sheet, id, null));
    this.#given.set(sheet, end);
    this.#give(writes, touched);
    return false;
  }

  destroy(): void {
    this.#engine?.destroy();
    this.#engine = undefined;
  }

  #give(writes: readonly CellWrite[], touched: Touched | undefined): void {
    const results = this.#engine!.write(writes);
    if (touched !== undefined) this.#calculation.take(results, touched, new Set());
  }

  /** Builds the formula engine with the first rows of each sheet, and takes their results. */
  #start(rows: (sheet: SheetName) => number): void {
    const contents = Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, this.#contents.lines(sheet, rows(sheet))]));
    this.#engine = new FormulaEngine(contents as never, this.#licenseKey);
    if (this.#given !== undefined) return;
    for (const sheet of SHEET_NAMES) {
      const keys = this.#layout.keys(sheet);
      this.#engine.values(sheet).forEach((line, id) => {
        for (let place = 0; place < keys.length; place += 1) this.#calculation.keep(sheet, id, keys[place]!, line[place]);
      });
    }
    const touched = new Touched();
    for (const sheet of SHEET_NAMES) touched.row(sheet, -1);
    this.#calculation.run(this.#engine, [], touched);
  }

  /**
   * Ends a preparation: writes all totals.
   * @param touched learns what is worth something else now, as it does where rows have changed since.
   */
  #finish(touched: Touched): void {
    this.#given = undefined;
    const writes: CellWrite[] = [];
    for (const { sheet, key } of [...TOTALS, ...SOLUTIONS.flatMap(columnsGivenBy)]) {
      for (const { id } of this.#document.rows(sheet)) writes.push(...this.#contents.writes(sheet, id, new Set([key])));
    }
    this.#calculation.run(this.#engine!, writes, touched);
    this.#engine!.trim();
  }
}
