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
  /** How many rows of a sheet have which keys. */
  readonly #counts = new Map<SheetName, Map<Keys | null, number>>();
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
    const keys = this.rows.get(sheet)?.get(id);
    if (keys !== null) this.#set(sheet, id, keys, withKey(keys, key));
  }

  /** Notes that a row came or went, with all its cells. */
  row(sheet: SheetName, id: number): void {
    this.#set(sheet, id, this.rows.get(sheet)?.get(id), null);
  }

  /** Whether a column of a sheet is concerned in any row. */
  concerns(sheet: SheetName, key: string): boolean {
    for (const [keys, count] of this.#counts.get(sheet) ?? []) {
      if (count > 0 && (keys === null || keys.has(key))) return true;
    }
    return false;
  }

  /** The rows concerned, with the keys of their cells. */
  *cells(): Iterable<{ sheet: SheetName; id: number; keys: Keys | null }> {
    for (const sheet of SHEET_NAMES) for (const [id, keys] of this.rows.get(sheet) ?? []) yield { sheet, id, keys };
  }

  #set(sheet: SheetName, id: number, before: Keys | null | undefined, now: Keys | null): void {
    if (now === before) return;
    let rows = this.rows.get(sheet);
    if (rows === undefined) this.rows.set(sheet, rows = new Map<number, Keys | null>());
    rows.set(id, now);
    let counts = this.#counts.get(sheet);
    if (counts === undefined) this.#counts.set(sheet, counts = new Map<Keys | null, number>());
    if (before !== undefined) counts.set(before, counts.get(before)! - 1);
    counts.set(now, (counts.get(now) ?? 0) + 1);
  }
}
