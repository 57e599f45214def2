import type { Workbook } from '../engine/index.ts';
import type { InputColumn, ScheduleDocument, SheetName } from '../schedule/index.ts';

type IsOne = (id: number) => boolean;

/**
 * Rows in which a check can find something, told by whole columns before anything else is read of them: of most checks
 * they are few or none, and the others then cost next to nothing.
 */
export interface Only {
  /** Keys of what is read of the row. */
  readonly reads: readonly string[];
  /** Tells by id whether a row is one of them; `undefined` where none of its sheet is. */
  readonly rows: (sheet: SheetName, book: Workbook, document: ScheduleDocument) => IsOne | undefined;
}

/** Rows in which a column of numbers has none. */
export const withoutNumber = (key: string): Only => ({
  reads: [key],
  rows: (sheet, book) => {
    const numbers = book.columns(sheet).numbers.get(key)!;
    return (id) => Number.isNaN(numbers[id]);
  },
});

/** Rows in which a number of an input column may be none that is allowed. */
export const outsideOf = ({ key, kind, min = -Infinity, above = -Infinity, max = Infinity }: InputColumn): Only => ({
  reads: [key],
  rows: (sheet, book) => {
    const numbers = book.columns(sheet).numbers.get(key)!;
    return (id) => {
      const value = numbers[id]!;
      const isWithin = value >= min && value > above && value <= max && value < Infinity;
      return !isWithin || (kind === 'integer' && !Number.isInteger(value));
    };
  },
});

/** Rows in which a figure is less than the whole. */
export const wherePartial = (key: string): Only => ({
  reads: [key],
  rows: (sheet, book) => {
    const partial = book.columns(sheet).partial.get(key);
    return partial && ((id) => partial[id] !== 0);
  },
});

/** Rows that may hold a formula in a cell. */
export const withFormula = (key: string): Only => ({
  reads: [key],
  rows: (sheet, _book, document) => {
    const rows = document.rowsWithFormulas(sheet);
    return rows.size === 0 ? undefined : (id) => rows.has(id);
  },
});

/** Rows whose reference names no row. */
export const namingNone = (key: string): Only => ({
  reads: [key],
  rows: (sheet, book) => {
    const targets = book.columns(sheet).targets.get(key)!;
    return (id) => targets[id]! < 0;
  },
});

/** Rows whose reference names one that shares its tag with others. */
export const namingShared = (key: string, to: SheetName): Only => ({
  reads: [key],
  rows: (sheet, book) => {
    const [targets, shared] = [book.columns(sheet).targets.get(key)!, book.shared(to)];
    return shared.size === 0 ? undefined : (id) => shared.has(targets[id]!);
  },
});

/** Rows that share their tag with others. */
export const withSharedTag = (tag: string): Only => ({
  reads: [tag],
  rows: (sheet, book) => {
    const shared = book.shared(sheet);
    return shared.size === 0 ? undefined : (id) => shared.has(id);
  },
});
