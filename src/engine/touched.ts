import { SHEET_NAMES, type Change, type SheetName } from '../schedule/index.ts';

/**
 * Keys of columns. Equal sets are one object, so that what follows from one is found once for all rows that have it,
 * and thousands of rows of a paste need no set each.
 */
export type Keys = ReadonlySet<string>;

const kept = new Map<string, Keys>();
const enlarged = new Map<Keys | undefined, Map<string, Keys>>();

/** A set with one key more. */
function withKey(keys: Keys | undefined, key: string): Keys {
  if (keys?.has(key) === true) return keys;
  let bigger = enlarged.get(keys);
  if (bigger === undefined) enlarged.set(keys, bigger = new Map<string, Keys>());
  const known = bigger.get(key);
  if (known !== undefined) return known;
  const all = [...keys ?? [], key].sort();
  const name = all.join(' ');
  const made = kept.get(name) ?? new Set(all);
  kept.set(name, made);
  bigger.set(key, made);
  return made;
}

/** Cells and rows that changes concern, whatever became of them. */
export class Touched {
  /** Keys by row id; `null` when the whole row came or went. */
  readonly rows = new Map<SheetName, Map<number, Keys | null>>();
  /** Keys that are concerned in some row; `null` where some row came or went. */
  readonly #keys = new Map<SheetName, Set<string> | null>();
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
      if (change.op === 'insert' || change.op === 'remove' || change.op === 'move') {
        touched.rearranged.add(change.sheet);
      }
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

  /** Notes that a cell is concerned. */
  cell(sheet: SheetName, id: number, key: string): void {
    this.column(sheet, [id], key);
  }

  /** Notes that cells of a column are concerned. */
  column(sheet: SheetName, ids: readonly number[], key: string): void {
    if (ids.length === 0) return;
    const rows = this.#rowsOf(sheet);
    this.#keys.get(sheet)?.add(key);
    let [before, now] = [undefined as Keys | undefined, withKey(undefined, key)];
    for (const id of ids) {
      const keys = rows.get(id);
      if (keys === null) continue;
      if (keys !== before) [before, now] = [keys, withKey(keys, key)];
      if (keys !== now) rows.set(id, now);
    }
  }

  /** Notes that a row came or went, with all its cells. */
  row(sheet: SheetName, id: number): void {
    this.#rowsOf(sheet).set(id, null);
    this.#keys.set(sheet, null);
  }

  /** Whether a column of a sheet is concerned in any row. */
  concerns(sheet: SheetName, key: string): boolean {
    const keys = this.#keys.get(sheet);
    return keys === null || keys?.has(key) === true;
  }

  /** Ids of the rows of a sheet in which one of some columns is concerned. */
  having(sheet: SheetName, columns: readonly string[]): number[] {
    const found: number[] = [];
    const read = columns.filter((key) => this.concerns(sheet, key));
    if (read.length === 0) return found;
    let [before, isRead] = [null as Keys | null, true];
    for (const [id, keys] of this.rows.get(sheet)!) {
      if (keys !== before) [before, isRead] = [keys, keys === null || read.some((key) => keys.has(key))];
      if (isRead) found.push(id);
    }
    return found;
  }

  /** The rows concerned, with the keys of their cells. */
  *cells(): Iterable<{ sheet: SheetName; id: number; keys: Keys | null }> {
    for (const sheet of SHEET_NAMES) for (const [id, keys] of this.rows.get(sheet) ?? []) yield { sheet, id, keys };
  }

  #rowsOf(sheet: SheetName): Map<number, Keys | null> {
    let rows = this.rows.get(sheet);
    if (rows === undefined) {
      this.rows.set(sheet, rows = new Map<number, Keys | null>());
      this.#keys.set(sheet, new Set());
    }
    return rows;
  }
}
