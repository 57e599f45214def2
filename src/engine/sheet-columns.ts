import { inputColumns, isNumeric, SCHEMA, type SheetName } from '../schedule/index.ts';
import { CaseFigures } from './cases/case-figures.ts';
import { enlarged, GROWTH } from './enlarged.ts';

/**
 * The numbers and the resolved references of one sheet, in columns indexed by row id: what rules and totals are worked
 * out from and what the screen reads. NaN stands for an unknown number, -1 for a reference that names nothing.
 */
export class SheetColumns {
  readonly numbers = new Map<string, Float64Array>();
  readonly targets = new Map<string, Int32Array>();
  /** What figures lack, as `setPartial` says; a column in which no figure lacks anything has none. */
  readonly partial = new Map<string, Int32Array>();
  /** What figures are worth in each case; of those that cases concern, while there are cases. */
  readonly inCases = new Map<string, CaseFigures>();
  /** Whether a number beyond the range of its column was entered since these columns were made. */
  holdsFaults = false;
  /** Texts that were worked out. */
  readonly #texts = new Map<string, (string | null)[]>();
  #capacity: number;

  constructor(sheet: SheetName, capacity: number) {
    this.#capacity = capacity;
    for (const column of SCHEMA[sheet].columns) {
      if (isNumeric(column) && !(column.role === 'computed' && column.onDemand === true)) this.hold(column.key);
    }
    for (const { key, to } of inputColumns(sheet)) {
      if (to !== undefined) this.targets.set(key, new Int32Array(capacity).fill(-1));
    }
  }

  /** Keeps the numbers of a column from now on, unknown at first. */
  hold(key: string): void {
    this.numbers.set(key, new Float64Array(this.#capacity).fill(NaN));
  }

  /** The figures of a column in so many cases, with room for so many rows. */
  caseFigures(key: string, cases: number, size: number): CaseFigures {
    let figures = this.inCases.get(key);
    if (figures === undefined) this.inCases.set(key, figures = new CaseFigures());
    figures.reserve(cases, size);
    return figures;
  }

  /** Makes room for row ids below `needed`. */
  reserve(needed: number): void {
    if (needed <= this.#capacity) return;
    const capacity = Math.ceil(Math.max(needed, this.#capacity * GROWTH));
    for (const [key, old] of this.numbers) this.numbers.set(key, enlarged(old, new Float64Array(capacity).fill(NaN)));
    for (const [key, old] of this.targets) this.targets.set(key, enlarged(old, new Int32Array(capacity).fill(-1)));
    for (const [key, old] of this.partial) this.partial.set(key, enlarged(old, new Int32Array(capacity)));
    this.#capacity = capacity;
  }

  /** The number of a row in a column; `null` when it is unknown or the column holds no numbers. */
  number(key: string, id: number): number | null {
    const value = this.numbers.get(key)?.[id];
    return value === undefined || Number.isNaN(value) ? null : value;
  }

  /** Keeps a number, NaN where it is unknown. @returns whether it differs from before. */
  setNumber(key: string, id: number, value: number): boolean {
    const numbers = this.numbers.get(key)!;
    if (Object.is(numbers[id], value)) return false;
    numbers[id] = value;
    return true;
  }

  /** A text that was worked out; `null` when it is unknown. */
  text(key: string, id: number): string | null {
    return this.#texts.get(key)?.[id] ?? null;
  }

  /** Keeps a text that was worked out. @returns whether it differs from before. */
  setText(key: string, id: number, text: string | null): boolean {
    if (this.text(key, id) === text) return false;
    const texts = this.#texts.get(key) ?? [];
    texts[id] = text;
    this.#texts.set(key, texts);
    return true;
  }

  /** How many rows a total or a solution leaves out, or takes too low, because a value is not wholly known. */
  missing(key: string, id: number): number {
    return Math.max(0, this.partial.get(key)?.[id] ?? 0);
  }

  /** Whether a figure leaves rows out, or follows from one that does. */
  isPartial(key: string, id: number): boolean {
    return (this.partial.get(key)?.[id] ?? 0) !== 0;
  }

  /**
   * Keeps what a figure lacks: a number of rows, -1 where it follows from another that lacks some, 0 where it is whole.
   * @returns whether that differs from before.
   */
  setPartial(key: string, id: number, lacking: number): boolean {
    let partial = this.partial.get(key);
    if ((partial?.[id] ?? 0) === lacking) return false;
    if (partial === undefined) this.partial.set(key, partial = new Int32Array(this.#capacity));
    partial[id] = lacking;
    return true;
  }

  /** Id of the row that a reference names; -1 when it names none. */
  target(key: string, id: number): number {
    return this.targets.get(key)?.[id] ?? -1;
  }
}
