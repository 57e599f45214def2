import { SHEET_NAMES, type Change, type SheetName } from '../schedule/index.ts';

/** Cells and rows that changes concern, whatever became of them. */
export class Touched {
  /** Keys by row id; `null` when the whole row came or went. */
  readonly rows = new Map<SheetName, Map<number, Set<string> | null>>();
  /** Sheets whose rows came, went or moved. */
  readonly rearranged = new Set<SheetName>();
  /** Everything was replaced. */
  all = false;

  /**
   * @param changes what was carried out.
   * @param inverse what takes it back: it holds the rows that were removed.
   */
  static by(changes: readonly Change[], inverse: readonly Change[]): Touched {
    const touched = new Touched();
    for (const change of [...changes, ...inverse]) {
      if (change.op === 'load') touched.all = true;
      if (change.op === 'set') touched.cell(change.sheet, change.id, change.key);
      if (change.op === 'insert') for (const { id } of change.rows) touched.row(change.sheet, id);
      if (change.op === 'insert' || change.op === 'remove' || change.op === 'move') touched.rearranged.add(change.sheet);
    }
    return touched;
  }

  /** How many rows are concerned. */
  get size(): number {
    let size = 0;
    for (const rows of this.rows.values()) size += rows.size;
    return size;
  }

  /** Takes in what another one holds. */
  add(other: Touched): void {
    for (const { sheet, id, keys } of other.cells()) {
      if (keys === null) this.row(sheet, id);
      else for (const key of keys) this.cell(sheet, id, key);
    }
  }

  cell(sheet: SheetName, id: number, key: string): void {
    const rows = this.#rowsOf(sheet);
    const keys = rows.get(id);
    if (keys === undefined) rows.set(id, new Set([key]));
    else keys?.add(key);
  }

  row(sheet: SheetName, id: number): void {
    this.#rowsOf(sheet).set(id, null);
  }

  /** Whether a column of a sheet is concerned in any row. */
  concerns(sheet: SheetName, key: string): boolean {
    for (const keys of this.rows.get(sheet)?.values() ?? []) if (keys === null || keys.has(key)) return true;
    return false;
  }

  *cells(): Iterable<{ sheet: SheetName; id: number; keys: Set<string> | null }> {
    for (const sheet of SHEET_NAMES) for (const [id, keys] of this.rows.get(sheet) ?? []) yield { sheet, id, keys };
  }

  #rowsOf(sheet: SheetName): Map<number, Set<string> | null> {
    let rows = this.rows.get(sheet);
    if (rows === undefined) this.rows.set(sheet, rows = new Map<number, Set<string> | null>());
    return rows;
  }
}
