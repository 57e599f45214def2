import { SHEET_NAMES, tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';

/**
 * Which rows bear which tag, kept up row by row, so that rows that share theirs are found without a search: whoever
 * names one of them may mean the other.
 */
export class TagIndex {
  readonly #document: ScheduleDocument;
  readonly #tags = {} as Record<SheetName, string[]>;
  /** The one row that bears a tag, or the set of those that share it. */
  readonly #rows = {} as Record<SheetName, Map<string, number | Set<number>>>;
  readonly #shared = {} as Record<SheetName, Set<number>>;

  constructor(document: ScheduleDocument) {
    this.#document = document;
    for (const sheet of SHEET_NAMES) {
      this.#tags[sheet] = [];
      this.#rows[sheet] = new Map();
      this.#shared[sheet] = new Set();
      for (const { id } of document.rows(sheet)) this.update(sheet, id);
    }
  }

  /** Ids of the rows of a sheet that share their tag with another. */
  shared(sheet: SheetName): ReadonlySet<number> {
    return this.#shared[sheet];
  }

  /** Id of the row that bears a tag, the first in order of those that share it; -1 where none does. */
  first(sheet: SheetName, tag: string): number {
    const rows = this.#rows[sheet].get(tag);
    if (typeof rows !== 'object') return rows ?? -1;
    const place = (id: number) => this.#document.position(sheet, id);
    return [...rows].reduce((first, id) => place(id) < place(first) ? id : first);
  }

  /**
   * Reads the tag of a row again. @returns the other rows that share their tag now and did not, or the other way round.
   */
  update(sheet: SheetName, id: number): readonly number[] {
    const row = this.#document.row(sheet, id);
    const before = this.#tags[sheet][id] ?? '';
    const after = row === undefined ? '' : tagOf(sheet, row);
    if (before === after) return NONE;
    this.#tags[sheet][id] = after;
    if (before === '') return this.#add(sheet, after, id);
    return [...this.#drop(sheet, before, id), ...this.#add(sheet, after, id)];
  }

  #drop(sheet: SheetName, tag: string, id: number): readonly number[] {
    const rows = this.#rows[sheet].get(tag);
    if (rows === id) this.#rows[sheet].delete(tag);
    if (typeof rows !== 'object') return NONE;
    rows.delete(id);
    this.#shared[sheet].delete(id);
    const [other] = rows;
    if (rows.size > 1) return NONE;
    this.#rows[sheet].set(tag, other!);
    this.#shared[sheet].delete(other!);
    return [other!];
  }

  #add(sheet: SheetName, tag: string, id: number): readonly number[] {
    if (tag === '') return NONE;
    const rows = this.#rows[sheet].get(tag);
    if (rows === undefined) {
      this.#rows[sheet].set(tag, id);
      return NONE;
    }
    this.#shared[sheet].add(id);
    if (typeof rows === 'object') {
      rows.add(id);
      return NONE;
    }
    this.#rows[sheet].set(tag, new Set([rows, id]));
    this.#shared[sheet].add(rows);
    return [rows];
  }
}

const NONE: readonly number[] = [];
