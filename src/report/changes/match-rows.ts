import { inputColumns, isBlank, tagOf, type Row, type SheetName } from '../../schedule/index.ts';

/** The rows of one sheet of two schedules, matched. */
export interface MatchedRows {
  readonly pairs: readonly (readonly [before: Row, after: Row])[];
  readonly removed: readonly Row[];
  readonly added: readonly Row[];
}

/**
 * Matches the rows of a sheet of two schedules: by tag; what is left by equal content, as when only the tag is another; rows
 * without a tag that are left, in order, when more than half of their cells agree. Blank rows are left out.
 */
export function matchRows(sheet: SheetName, before: readonly Row[], after: readonly Row[]): MatchedRows {
  const keys = inputColumns(sheet).filter(({ tag }) => tag !== true).map(({ key }) => key);
  const content = (row: Row) => JSON.stringify(keys.map((key) => row.cells[key] ?? null));
  const tag = (row: Row) => tagOf(sheet, row);
  const left = new Left(before, after);
  left.pairEqual((row) => tag(row) === '' ? undefined : `${tag(row)} ${content(row)}`);
  left.pairEqual((row) => tag(row) || undefined);
  left.pairEqual(content);
  const agree = (one: Row, other: Row) => {
    const filled = keys.filter((key) => (one.cells[key] ?? other.cells[key] ?? null) !== null);
    const equal = filled.filter((key) => one.cells[key] === other.cells[key]);
    return tag(one) === '' && tag(other) === '' && equal.length * 2 > filled.length;
  };
  left.pairAlike(agree);
  return { pairs: left.pairs, removed: [...left.before], added: [...left.after] };
}

/** Rows that are not matched yet, and those that are. */
class Left {
  readonly pairs: [Row, Row][] = [];
  readonly before: Set<Row>;
  readonly after: Set<Row>;

  constructor(before: readonly Row[], after: readonly Row[]) {
    this.before = new Set(before.filter((row) => !isBlank(row)));
    this.after = new Set(after.filter((row) => !isBlank(row)));
  }

  /** Pairs rows with the same name, those that share one in their order. */
  pairEqual(nameOf: (row: Row) => string | undefined): void {
    const waiting = new Map<string, Row[]>();
    for (const row of this.after) {
      const name = nameOf(row);
      if (name === undefined) continue;
      const rows = waiting.get(name);
      if (rows === undefined) waiting.set(name, [row]);
      else rows.push(row);
    }
    for (const row of [...this.before]) {
      const other = waiting.get(nameOf(row) ?? '')?.shift();
      if (other !== undefined) this.#pair(row, other);
    }
  }

  pairAlike(areAlike: (before: Row, after: Row) => boolean): void {
    for (const row of [...this.before]) {
      const other = [...this.after].find((each) => areAlike(row, each));
      if (other !== undefined) this.#pair(row, other);
    }
  }

  #pair(before: Row, after: Row): void {
    this.before.delete(before);
    this.after.delete(after);
    this.pairs.push([before, after]);
  }
}
