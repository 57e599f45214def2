import type { SheetColumns, Workbook } from '../engine/index.ts';
import { hiddenCharacters, tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';

type Ids = readonly number[];

/** What tells of which rows more is to be read. */
interface Among {
  readonly sheet: SheetName;
  readonly columns: SheetColumns;
  readonly book: Workbook;
  readonly document: ScheduleDocument;
}

/**
 * Rows in which a check can find something, told by whole columns before anything else is read of them: of most checks
 * they are few or none, and the others then cost next to nothing.
 */
export interface Only {
  /** What is read: keys of the row, and paths such as `rail.usable`. */
  readonly reads: readonly string[];
  /** Picks them, by id. */
  readonly of: (ids: Ids, among: Among) => Ids;
}

const NONE: Ids = [];

const only = (key: string, of: Only['of']): Only => ({ reads: [key], of });

/** Rows in which up to three numbers, their own or those of rows that they name, are known and a condition holds. */
export const where = (reads: readonly string[], holds: (...numbers: number[]) => boolean): Only => ({
  reads, of: (ids, { sheet, book }) => {
    const columns = reads.map((path) => book.numbers(sheet, path, ids));
    return columns.every((column) => column !== undefined) ? holding(ids, columns, holds) : NONE;
  },
});

function holding(
  ids: Ids, [one, other = one, third = other]: readonly Float64Array[], holds: (...numbers: number[]) => boolean,
): Ids {
  const found: number[] = [];
  for (let place = 0; place < ids.length; place += 1) {
    const a = one![place]!;
    const b = other![place]!;
    const c = third![place]!;
    if (a === a && b === b && c === c && holds(a, b, c)) found.push(ids[place]!);
  }
  return found;
}

/** Rows in which a column of numbers has none. */
export const withoutNumber = (key: string) => only(key, (ids, { columns }) => {
  const numbers = columns.numbers.get(key)!;
  return ids.filter((id) => Number.isNaN(numbers[id]));
});

/** Rows in which a figure is less than the whole. */
export const wherePartial = (key: string) => only(key, (ids, { columns }) => {
  const partial = columns.partial.get(key);
  return partial === undefined ? NONE : ids.filter((id) => partial[id] !== 0);
});

/** Rows that may hold a formula in a cell. */
export const withFormula = (key: string) => only(key, (ids, { sheet, document }) => {
  const rows = document.rowsWithFormulas(sheet);
  return rows.size === 0 ? NONE : ids.filter((id) => rows.has(id));
});

/** Rows whose reference names no row. */
export const namingNone = (key: string) => only(key, (ids, { columns }) => {
  const targets = columns.targets.get(key)!;
  return ids.filter((id) => targets[id]! < 0);
});

/** Rows whose reference names a row. */
export const namingOne = (key: string) => only(key, (ids, { columns }) => {
  const targets = columns.targets.get(key)!;
  return ids.filter((id) => targets[id]! >= 0);
});

/** Rows whose reference names one that shares its tag with others. */
export const namingShared = (key: string, to: SheetName) => only(key, (ids, { columns, book }) => {
  const [targets, shared] = [columns.targets.get(key)!, book.shared(to)];
  return shared.size === 0 ? NONE : ids.filter((id) => shared.has(targets[id]!));
});

/** Rows whose reference names none, or one whose tag holds a character that cannot be seen: each is looked at once. */
export const namingHidden = (key: string, to: SheetName) => only(key, (ids, { columns, document }) => {
  const targets = columns.targets.get(key)!;
  const known: boolean[] = [];
  const isHidden = (id: number) => hiddenCharacters(tagOf(to, document.row(to, id)!)).length > 0;
  return ids.filter((id) => targets[id]! < 0 || (known[targets[id]!] ??= isHidden(targets[id]!)));
});

/** Rows whose text holds a character that cannot be seen. */
export const holdingHidden = (key: string) => only(key, (ids, { sheet, document }) => {
  const rows = document.byId(sheet);
  return ids.filter((id) => {
    const own = rows[id]?.cells[key];
    return typeof own === 'string' && hiddenCharacters(own).length > 0;
  });
});

/** Rows that share their tag with others. */
export const withSharedTag = (tag: string) => only(tag, (ids, { sheet, book }) => {
  const shared = book.shared(sheet);
  return shared.size === 0 ? NONE : ids.filter((id) => shared.has(id));
});
