import type { Argument, Touched, Workbook } from '../engine/index.ts';
import { findColumn, type SheetName } from '../schedule/index.ts';

/**
 * What checks have read: of their row, for each check, and of the rows that it refers to, where a change need not
 * change a figure of the row itself. It is kept for each sheet and not for each row, as the rows of a sheet are checked
 * alike.
 */
export class Reads {
  readonly #own = new Map<SheetName, Set<string>[]>();
  readonly #reads = new Map<SheetName, Map<string, Map<string, Argument>>>();
  readonly #checks: Readonly<Record<SheetName, readonly unknown[]>>;

  /** @param checks the checks of each sheet, in their order. */
  constructor(checks: Readonly<Record<SheetName, readonly unknown[]>>) {
    this.#checks = checks;
  }

  /** Keys of its own row that each check of a sheet has read, by the place of the check. */
  own(sheet: SheetName): Set<string>[] {
    let own = this.#own.get(sheet);
    if (own === undefined) this.#own.set(sheet, own = this.#checks[sheet].map(() => new Set()));
    return own;
  }

  /** Notes that a check of a sheet has read a column of the rows that a reference names. */
  note(sheet: SheetName, by: string, key: string): void {
    let references = this.#reads.get(sheet);
    if (references === undefined) this.#reads.set(sheet, references = new Map<string, Map<string, Argument>>());
    let keys = references.get(by);
    if (keys === undefined) references.set(by, keys = new Map<string, Argument>());
    if (keys.has(key)) return;
    const reference = findColumn(sheet, by);
    if (reference?.role !== 'input' || reference.to === undefined) throw new RangeError(`${sheet}.${by} is no reference.`);
    keys.set(key, { path: `${by}.${key}`, by, sheet: reference.to, key });
  }

  /** The rows whose checks have read something that was touched. */
  * rowsConcerned(touched: Touched, book: Workbook): Iterable<[SheetName, number]> {
    for (const [sheet, references] of this.#reads) {
      const read = [...references.values()].flatMap((keys) => [...keys.values()]);
      for (const id of book.rowsReading(sheet, read, touched)) yield [sheet, id];
    }
  }
}
