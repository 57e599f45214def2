import type { RawCellContent } from 'hyperformula';
import { SHEET_NAMES, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import type { CellContents } from './cell-contents.ts';
import type { CellLayout } from './cell-layout.ts';
import { FormulaEngine, type CellWrite } from './formula-engine.ts';
import { columnsGivenBy, SOLUTIONS, TOTALS } from './schema-rules.ts';
import { Touched } from './touched.ts';

/** Rows of a sheet that the formula engine is given at once while it is prepared step by step. */
const STEP = 250;

/**
 * The formula engine and what it has yet to learn of the document, which it is given at once or step by step. What its cells come to
 * meanwhile is passed over: it may be wrong until everything is learnt.
 */
export class CatchingUp {
  readonly #document: ScheduleDocument;
  readonly #layout: CellLayout;
  readonly #contents: CellContents;
  readonly #licenseKey: string;
  #engine: FormulaEngine | undefined;
  /** What the formula engine has yet to learn. */
  readonly #missed = new Touched();
  /** Whether totals have yet to be written after what was missed. */
  #isBehind = false;

  constructor(document: ScheduleDocument, layout: CellLayout, contents: CellContents, licenseKey: string) {
    this.#document = document;
    this.#layout = layout;
    this.#contents = contents;
    this.#licenseKey = licenseKey;
  }

  /** Whether the formula engine has something to learn yet. */
  get isBehind(): boolean {
    return this.#engine === undefined || this.#isBehind;
  }

  /** The formula engine, which has learnt everything; it is built at once where it has not been begun step by step. */
  ready(): FormulaEngine {
    if (this.#engine === undefined) this.#begin((sheet) => this.#contents.lines(sheet));
    while (!this.step());
    return this.#engine!;
  }

  /** Puts a change off, which the formula engine learns in one of the next steps. */
  miss(touched: Touched): void {
    if (this.#engine === undefined) return;
    this.#isBehind = true;
    this.#missed.add(touched);
  }

  /** Gives the formula engine some of what it has yet to learn. @returns whether that was all. */
  step(): boolean {
    if (this.#engine === undefined) {
      this.#begin(() => []);
      this.#isBehind = true;
      // Devices last: each that came before what it refers to would be worked out twice.
      for (const sheet of [...SHEET_NAMES].reverse()) for (const { id } of this.#document.rows(sheet)) this.#missed.row(sheet, id);
    }
    if (!this.#isBehind) return true;
    const due = this.#missed.take(STEP);
    this.#isBehind = due.size > 0;
    this.#engine!.write(this.#isBehind ? this.#contents.writesOf(due) : this.#gathered());
    if (!this.#isBehind) this.#engine!.trim();
    return !this.#isBehind;
  }

  destroy(): void {
    this.#engine?.destroy();
    this.#engine = undefined;
  }

  #begin(lines: (sheet: SheetName) => RawCellContent[][]): void {
    const sheets = SHEET_NAMES.map((sheet) => [sheet, lines(sheet)]);
    this.#engine = new FormulaEngine(Object.fromEntries(sheets) as never, this.#licenseKey);
  }

  /** All totals and solutions, which the formula engine is given as values. */
  #gathered(): CellWrite[] {
    return [...TOTALS, ...SOLUTIONS.flatMap(columnsGivenBy)].flatMap(({ sheet, key }) =>
      this.#layout.place(sheet, key) === undefined ? []
        : this.#document.rows(sheet).flatMap(({ id }) => this.#contents.writes(sheet, id, new Set([key]))));
  }
}
