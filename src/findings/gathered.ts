import type { Touched } from '../engine/index.ts';
import type { SheetName } from '../schedule/index.ts';

/** What is gathered of a whole sheet for the rows that it names, and again when something changes that it hangs on. */
export class Gathered<Value> {
  readonly #reads: readonly (readonly [SheetName, string])[];
  readonly #gather: () => ReadonlyMap<number, Value>;
  #values: ReadonlyMap<number, Value>;

  /**
   * @param reads columns that it hangs on; the order of the rows of their sheets counts too.
   * @param gather gathers afresh, by id of the rows that are named.
   */
  constructor(reads: readonly (readonly [SheetName, string])[], gather: () => ReadonlyMap<number, Value>) {
    this.#reads = reads;
    this.#gather = gather;
    this.#values = gather();
  }

  /** What was gathered for a row; `undefined` where there is nothing. */
  of(id: number): Value | undefined {
    return this.#values.get(id);
  }

  /** Gathers again what a change concerns. @returns the rows for which it comes to something else than before. */
  update(touched: Touched): number[] {
    if (!this.#reads.some(([sheet, key]) => touched.concerns(sheet, key) || touched.rearranged.has(sheet))) return [];
    const before = this.#values;
    this.#values = this.#gather();
    return [...new Set([...before.keys(), ...this.#values.keys()])]
      .filter((id) => JSON.stringify(before.get(id)) !== JSON.stringify(this.#values.get(id)));
  }
}
