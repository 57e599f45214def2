import { SHEET_NAMES, tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';

/** Which rows bear which tag, kept up row by row, so that tags that are used twice are found without a search. */
export class TagIndex {
  readonly #document: ScheduleDocument;
  readonly #tags = {} as Record<SheetName, string[]>;
  /** The one row that bears a tag, or the set of those that share it. */
  readonly #rows = {} as Record<SheetName, Map<string, number | Set<number>>>;

  constructor(document: ScheduleDocument) {
    this.#document = document;
    for (const sheet of SHEET_NAMES) {
      this.#tags[sheet] = [];
      this.#rows[sheet] = new Map();
      for (const { id } of document.rows(sheet)) this.update(sheet, id);
    }
  }

  /** Whether more than one row bears a tag. */
  isShared(sheet: SheetName, tag: string): boolean {
    const rows = this.#rows[sheet].get(tag);
    return typeof rows === 'object' && rows.size > 1;
  }

  /**
   * Reads the tag of a row again. @returns the other rows whose tag is shared now and was not, or the other way round.
   */
  update(sheet: SheetName, id: number): number[] {
    const row = this.#document.row(sheet, id);
    const before = this.#tags[sheet][id] ?? '';
    const after = row === undefined ? '' : tagOf(sheet, row);
    if (before === after) return [];
    this.#tags[sheet][id] = after;
    return [...this.#drop(sheet, before, id), ...this.#add(sheet, after, id)];
  }

  #drop(sheet: SheetName, tag: string, id: number): number[] {
    const rows = this.#rows[sheet].get(tag);
    if (rows === id) this.#rows[sheet].delete(tag);
    if (typeof rows !== 'object') return [];
    rows.delete(id);
    return rows.size === 1 ? [...rows] : [];
  }

  #add(sheet: SheetName, tag: string, id: number): number[] {
    if (tag === '') return [];
    const rows = this.#rows[sheet].get(tag);
    if (typeof rows === 'object') {
      rows.add(id);
      return rows.size === 2 ? [...rows].filter((other) => other !== id) : [];
    }
    this.#rows[sheet].set(tag, rows === undefined ? id : new Set([rows, id]));
    return rows === undefined ? [] : [rows];
  }
}
