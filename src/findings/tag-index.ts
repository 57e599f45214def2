import { SHEET_NAMES, tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';

/** Which rows bear which tag, kept up row by row, so that tags that are used twice are found without a search. */
export class TagIndex {
  readonly #document: ScheduleDocument;
  readonly #tags = {} as Record<SheetName, Map<number, string>>;
  readonly #rows = {} as Record<SheetName, Map<string, Set<number>>>;

  constructor(document: ScheduleDocument) {
    this.#document = document;
    for (const sheet of SHEET_NAMES) {
      this.#tags[sheet] = new Map();
      this.#rows[sheet] = new Map();
      for (const { id } of document.rows(sheet)) this.update(sheet, id);
    }
  }

  /** Ids of the rows that bear a tag. */
  sharing(sheet: SheetName, tag: string): ReadonlySet<number> {
    return this.#rows[sheet].get(tag) ?? new Set();
  }

  /** Reads the tag of a row again. @returns the other rows for which this made a difference. */
  update(sheet: SheetName, id: number): number[] {
    const row = this.#document.row(sheet, id);
    const before = this.#tags[sheet].get(id) ?? '';
    const after = row === undefined ? '' : tagOf(sheet, row);
    if (before === after) return [];
    const concerned: number[] = [];
    if (before !== '') {
      const rows = this.#rows[sheet].get(before)!;
      rows.delete(id);
      concerned.push(...rows);
      if (rows.size === 0) this.#rows[sheet].delete(before);
    }
    if (after === '') this.#tags[sheet].delete(id);
    else {
      this.#tags[sheet].set(id, after);
      const rows = this.#rows[sheet].get(after) ?? new Set();
      concerned.push(...rows);
      this.#rows[sheet].set(after, rows.add(id));
    }
    return concerned;
  }
}
