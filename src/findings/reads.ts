import { Touched, type Argument, type Workbook } from '../engine/index.ts';
import { findColumn, type SheetName } from '../schedule/index.ts';
import type { Only } from './only.ts';

/** What decides whether a check is made in a row at all. */
interface Conditions {
  readonly needs?: string;
  readonly only?: Only;
}

/**
 * What checks have read: of their row, and of the rows that it refers to, where a change need not change a figure of
 * the row itself. It is kept for each check of a sheet and not for each row, as the rows of a sheet are checked alike.
 */
export class Reads {
  readonly #own = new Map<SheetName, Set<string>[]>();
  readonly #reads = new Map<SheetName, Map<string, Map<string, Argument>>>();
  readonly #checks: Readonly<Record<SheetName, readonly Conditions[]>>;

  /** @param checks the checks of each sheet, in their order. */
  constructor(checks: Readonly<Record<SheetName, readonly Conditions[]>>) {
    this.#checks = checks;
  }

  /**
   * What each check of a sheet has read, by the place of the check: keys of its row, and paths such as `rail.target`.
   */
  own(sheet: SheetName): Set<string>[] {
    let own = this.#own.get(sheet);
    if (own === undefined) {
      own = this.#checks[sheet].map(({ needs, only }) =>
        new Set([needs ?? [], only?.reads ?? []].flat().flatMap((path) => this.#readBy(sheet, path))));
      this.#own.set(sheet, own);
    }
    return own;
  }

  /** What reading a key or a path takes: the column, and the reference through which it is reached. */
  #readBy(sheet: SheetName, path: string): string[] {
    const [by, key] = path.split('.') as [string, string?];
    return key === undefined ? [path] : [by, this.note(sheet, by, key)];
  }

  /** Places of the checks of a sheet that have read one of some keys and paths. */
  due(sheet: SheetName, keys: ReadonlySet<string>): readonly number[] {
    const touched = [...keys];
    return this.own(sheet).flatMap((read, check) => touched.some((key) => read.has(key)) ? [check] : []);
  }

  /**
   * Notes that a check of a sheet reads a column of the rows that a reference names. @returns the path of the column.
   */
  note(sheet: SheetName, by: string, key: string): string {
    let references = this.#reads.get(sheet);
    if (references === undefined) this.#reads.set(sheet, references = new Map<string, Map<string, Argument>>());
    let keys = references.get(by);
    if (keys === undefined) references.set(by, keys = new Map<string, Argument>());
    const known = keys.get(key);
    if (known !== undefined) return known.path;
    const reference = findColumn(sheet, by);
    if (reference?.role !== 'input' || reference.to === undefined) {
      throw new RangeError(`${sheet}.${by} is no reference.`);
    }
    const path = `${by}.${key}`;
    keys.set(key, { path, by, sheet: reference.to, key });
    return path;
  }

  /**
   * The rows that checks have read something touched of through a reference, with the paths of it in the place of keys.
   */
  concerned(touched: Touched, book: Workbook): Touched {
    const found = new Touched();
    for (const [sheet, references] of this.#reads) {
      for (const read of [...references.values()].flatMap((keys) => [...keys.values()])) {
        if (!touched.concerns(read.sheet, read.key)) continue;
        found.column(sheet, book.rowsReading(sheet, [read], touched), read.path);
      }
    }
    return found;
  }
}
