import { findColumn, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import { isPartial } from './is-partial.ts';
import type { PreparedTotal } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';

/** What a total came to for one row that differs from before. */
export interface ChangedTotal {
  readonly id: number;
  readonly value: number;
}

/**
 * Gathers a total for all rows of its sheet in one pass over the columns of the rows that it is taken from, always in
 * full, so that no rounding error can build up over many edits.
 * @returns the rows whose total differs from what the columns hold, and those that lack another number of rows.
 */
export function regroup(
  total: PreparedTotal, document: ScheduleDocument, columns: Readonly<Record<SheetName, SheetColumns>>,
): { changed: ChangedTotal[]; partialChanged: number[] } {
  const source = total.sum === undefined ? undefined : findColumn(total.from, total.sum);
  const sourceMayBePartial = source?.role === 'computed' && source.whenPartial !== undefined;
  const size = document.capacity(total.sheet);
  const sums = new Float64Array(size);
  const partial = new Int32Array(size);
  const targets = columns[total.from].targets.get(total.by)!;
  const values = total.sum === undefined ? undefined : columns[total.from].numbers.get(total.sum)!;
  const count = document.capacity(total.from);
  for (let id = 0; id < count; id += 1) {
    const target = targets[id]!;
    if (target < 0) continue;
    const value = values === undefined ? 1 : values[id]!;
    if (value === value) sums[target]! += value;
    if (value !== value || (sourceMayBePartial && isPartial(columns, total.from, id, source.key))) partial[target]! += 1;
  }
  const before = columns[total.sheet].numbers.get(total.key)!;
  const partialBefore = columns[total.sheet].partial.get(total.key)!;
  const changed: ChangedTotal[] = [];
  const partialChanged: number[] = [];
  for (const { id } of document.rows(total.sheet)) {
    if (before[id] !== sums[id]) changed.push({ id, value: sums[id]! });
    if (partialBefore[id] !== partial[id]) {
      partialBefore[id] = partial[id]!;
      partialChanged.push(id);
    }
  }
  return { changed, partialChanged };
}
