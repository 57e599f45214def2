import {
  renameTags, SCHEMA, SHEET_NAMES, type CellValue, type Row, type ScheduleDocument, type SheetName,
} from '../../schedule/index.ts';
import type { MatchedRows } from '../../schedule/compare/index.ts';

/** Rows that bear another tag now, and what only follows that. */
export class Renames {
  /** What a cell of the old schedule becomes as a row that it names is renamed, and that row. */
  readonly #due = new Map<string, { readonly value: CellValue; readonly renamed: string }>();
  readonly #followed = new Map<string, number>();

  constructor(before: ScheduleDocument, matched: Readonly<Record<SheetName, MatchedRows>>) {
    for (const sheet of SHEET_NAMES) {
      const key = SCHEMA[sheet].tag;
      const renamed = matched[sheet].pairs.filter(({ before: old, after }) =>
        typeof old.cells[key] === 'string' && typeof after.cells[key] === 'string' && old.cells[key] !== after.cells[key]);
      for (const { before: { id }, after } of renamed) {
        for (const change of renameTags(before, sheet, new Map([[id, after.cells[key] as string]]))) {
          if (change.op !== 'set' || (change.sheet === sheet && change.id === id && change.key === key)) continue;
          this.#due.set(placeOf(change.sheet, change.id, change.key), { value: change.value, renamed: `${sheet} ${id}` });
        }
      }
    }
  }

  /** Whether all that is different about a cell is the tag of a row that it names; then it is counted with that row. */
  isFollowing(sheet: SheetName, { id }: Row, key: string, after: CellValue): boolean {
    const due = this.#due.get(placeOf(sheet, id, key));
    if (due?.value !== after) return false;
    this.#followed.set(due.renamed, (this.#followed.get(due.renamed) ?? 0) + 1);
    return true;
  }

  /** How many cells follow the new tag of a row of the old schedule, once all of them were looked at. */
  followedBy(sheet: SheetName, { id }: Row): number {
    return this.#followed.get(`${sheet} ${id}`) ?? 0;
  }
}

const placeOf = (sheet: SheetName, id: number, key: string): string => `${sheet} ${id} ${key}`;
