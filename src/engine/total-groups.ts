import type { ScheduleDocument, SheetName } from '../schedule/index.ts';
import type { PreparedTotal } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';

/**
 * Gathers a total for all rows of its sheet in one pass over the columns of the rows that it is taken from, always in
 * full, so that no rounding error can build up over many edits.
 * @returns ids of the rows whose total differs from before, or lacks another number of rows.
 */
export function regroup(
  { sheet, key, of, greatest }: PreparedTotal, document: ScheduleDocument,
  columns: Readonly<Record<SheetName, SheetColumns>>,
): number[] {
  const size = document.capacity(sheet);
  const sums = new Float64Array(size);
  const lacking = new Int32Array(size);
  /** Rows that lack something of several parts lack it once. */
  const counted = new Set<string>();
  for (const { from, by, sum, times } of of) {
    const targets = columns[from].targets.get(by)!;
    const values = sum === undefined ? undefined : columns[from].numbers.get(sum)!;
    const factors = times === undefined ? undefined : columns[from].numbers.get(times)!;
    const partial = sum === undefined ? undefined : columns[from].partial.get(sum);
    const count = document.capacity(from);
    for (let id = 0; id < count; id += 1) {
      const target = targets[id]!;
      if (target < 0) continue;
      const value = (values === undefined ? 1 : values[id]!) * (factors === undefined ? 1 : factors[id]!);
      if (value === value) sums[target] = greatest ? Math.max(sums[target]!, value) : sums[target]! + value;
      if (value === value && (partial === undefined || partial[id] === 0)) continue;
      const name = `${from} ${by} ${id}`;
      if (of.length === 1 || !counted.has(name)) lacking[target]! += 1;
      if (of.length > 1) counted.add(name);
    }
  }
  const changed: number[] = [];
  for (const { id } of document.rows(sheet)) {
    const differs = columns[sheet].setNumber(key, id, sums[id]!);
    if (columns[sheet].setPartial(key, id, lacking[id]!) || differs) changed.push(id);
  }
  return changed;
}
