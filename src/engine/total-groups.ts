import type { ScheduleDocument, SheetName } from '../schedule/index.ts';
import type { CaseTable, GroupedSheet } from './cases/case-table.ts';
import { inCasesOf, type PreparedTotal } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';

/**
 * Gathers a total for all rows of its sheet in one pass over the columns of the rows that it is taken from, always in
 * full, so that no rounding error can build up over many edits.
 * @returns ids of the rows whose total differs from before, or lacks another number of rows.
 */
export function regroup(
  total: PreparedTotal, document: ScheduleDocument, columns: Readonly<Record<SheetName, SheetColumns>>,
): number[] {
  const { sheet, key } = total;
  const { sums, lacking } = gathered(total, document, columns);
  const changed: number[] = [];
  for (const { id } of document.rows(sheet)) {
    const differs = columns[sheet].setNumber(key, id, sums[id]!);
    if (columns[sheet].setPartial(key, id, lacking[id]!) || differs) changed.push(id);
  }
  return changed;
}

/**
 * What a total comes to, and how many rows it lacks, by row id.
 * @param cases where it is asked for what stands beside them: figures that are worked out in cases count as they are by
 * the diversity of rows alone, and rows of which it is not known how far they are on in a case lack it.
 */
export function gathered(
  { sheet, of, greatest }: PreparedTotal, document: ScheduleDocument,
  columns: Readonly<Record<SheetName, SheetColumns>>, cases?: CaseTable,
): { sums: Float64Array; lacking: Int32Array } {
  const size = document.capacity(sheet);
  const sums = new Float64Array(size);
  const lacking = new Int32Array(size);
  /** Rows that lack something of several parts lack it once. */
  const counted = new Set<string>();
  for (const { from, by, sum, times, only } of of) {
    const { targets, numbers, partial, inCases } = columns[from];
    const named = targets.get(by)!;
    const rows = document.byId(from);
    const unsure = addUp(sums, document.capacity(from), greatest === true, {
      isLeftOut: only && ((id) => ((rows[id]?.cells[only.key] ?? null) !== null) !== only.filled),
      targets: named, values: sum === undefined ? undefined : numbers.get(sum)!,
      plain: cases === undefined || sum === undefined ? undefined : inCases.get(sum)?.values[0],
      isUnsure: cases === undefined || sum === undefined || typeof inCasesOf(from, sum) !== 'object' ? undefined
        : (id) => cases.isUnsure(from as GroupedSheet, id),
      factors: times === undefined ? undefined : numbers.get(times)!,
      partial: sum === undefined ? undefined : partial.get(sum),
    });
    for (const id of unsure) {
      const name = `${from} ${by} ${id}`;
      if (of.length === 1 || !counted.has(name)) lacking[named[id]!]! += 1;
      if (of.length > 1) counted.add(name);
    }
  }
  return { sums, lacking };
}

/** What a part of a total is taken from, by id of its rows; a row without values counts as 1. */
interface Part {
  readonly targets: Int32Array;
  readonly values: Float64Array | undefined;
  /** What is added up in the place of the values, which still say what is known. */
  readonly plain: Float64Array | undefined;
  readonly factors: Float64Array | undefined;
  readonly partial: Int32Array | undefined;
  readonly isLeftOut: ((id: number) => boolean) | undefined;
  readonly isUnsure: ((id: number) => boolean) | undefined;
}

/** Adds rows to the sums of those that they name. @returns ids of the rows that are not wholly known. */
function addUp(
  sums: Float64Array, count: number, isGreatest: boolean,
  { targets, values, plain = values, factors, partial, isLeftOut, isUnsure }: Part,
): number[] {
  const unsure: number[] = [];
  for (let id = 0; id < count; id += 1) {
    const target = targets[id]!;
    if (target < 0 || isLeftOut?.(id) === true) continue;
    const factor = factors === undefined ? 1 : factors[id]!;
    const value = (plain === undefined ? 1 : plain[id]!) * factor;
    if (value === value) sums[target] = isGreatest ? Math.max(sums[target]!, value) : sums[target]! + value;
    const known = values === plain ? value : values![id]! * factor;
    if (known !== known || (partial !== undefined && partial[id] !== 0) || isUnsure?.(id) === true) unsure.push(id);
  }
  return unsure;
}
