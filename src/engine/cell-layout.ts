import { columnLetters, SHEET_NAMES, type SheetName } from '../schedule/index.ts';
import { HELD_KEYS } from './schema-rules.ts';

/** Sheet of the formula engine whose first cell stays empty: what an unresolved reference points to. */
export const EMPTY_SHEET = 'nothing';
export const EMPTY_CELL = `${EMPTY_SHEET}!$A$1`;

/**
 * Where the formula engine holds the cells of a schedule: a sheet for each sheet, the row with id n in its row n, the
 * held columns from the first one on. Texts are held only where a formula of a person reads them.
 */
export class CellLayout {
  readonly #places = {} as Record<SheetName, Map<string, number>>;
  readonly #keys = {} as Record<SheetName, string[]>;

  constructor() {
    for (const sheet of SHEET_NAMES) {
      this.#keys[sheet] = [...HELD_KEYS[sheet]];
      this.#places[sheet] = new Map(HELD_KEYS[sheet].map((key, index) => [key, index]));
    }
  }

  /** The held columns of a sheet, in the order of their places. */
  keys(sheet: SheetName): readonly string[] {
    return this.#keys[sheet];
  }

  /** Place of a column; `undefined` when it is not held. */
  place(sheet: SheetName, key: string): number | undefined {
    return this.#places[sheet].get(key);
  }

  /** Holds one more column, at the end. */
  add(sheet: SheetName, key: string): void {
    this.#places[sheet].set(key, this.#keys[sheet].length);
    this.#keys[sheet].push(key);
  }

  /** Address of a held cell in a formula on any sheet. */
  address(sheet: SheetName, key: string, id: number): string {
    return `${sheet}!$${columnLetters(this.#places[sheet].get(key)!)}$${id + 1}`;
  }

  /** Address of a held cell in a formula of the same row, so that like rows have like formulas. */
  ownAddress(sheet: SheetName, key: string, id: number): string {
    return `${columnLetters(this.#places[sheet].get(key)!)}${id + 1}`;
  }
}
