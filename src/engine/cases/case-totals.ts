import { inCasesOf, type PreparedTotal } from '../schema-rules.ts';
import type { ScheduleDocument, SheetName, TotalPart } from '../../schedule/index.ts';
import type { SheetColumns } from '../sheet-columns.ts';
import { COVER, coverOf, type CaseFigures } from './case-figures.ts';
import { countedIn, type CaseTable, type GroupedSheet } from './case-table.ts';

type Columns = Readonly<Record<SheetName, SheetColumns>>;

/**
 * Gathers a total in each case, in full. What groups share is added up by groups once, and cases weigh these sums, so
 * that many cases cost little.
 * @param figures what the total was before in each case; it takes in what it is now.
 * @param plain the total by the diversity of rows alone, by row id, unknown for none.
 */
export function regroupInCases(
  { sheet, of }: PreparedTotal, figures: CaseFigures, plain: Float64Array, document: ScheduleDocument, columns: Columns,
  table: CaseTable,
): void {
  const size = document.capacity(sheet);
  figures.values[0]!.set(plain);
  for (const values of figures.values.slice(1)) values.fill(0);
  for (const covers of figures.covers) covers.fill(COVER.nothing);
  for (const part of of) {
    const how = part.sum === undefined ? undefined : inCasesOf(part.from, part.sum);
    if (typeof how === 'object') addShares(part, how.share, figures, size, document, columns, table);
    else addFigures(part, figures, document, columns);
  }
}

/** Adds what each group has on each row, times its factor. */
function addShares(
  { from, by, sum }: TotalPart, share: string, figures: CaseFigures, count: number, document: ScheduleDocument,
  columns: Columns, table: CaseTable,
): void {
  const { groupCount } = table;
  const { targets, numbers } = columns[from];
  const groupOf = table.groupOf(from as GroupedSheet);
  const size = count * groupCount;
  const [all, own, rows] = [new Float64Array(size), new Float64Array(size), new Int32Array(size)];
  const [shared, left] = [numbers.get(share)!, numbers.get(sum!)!];
  addByGroup(document.capacity(from), targets.get(by)!, groupOf, groupCount, shared, left, all, own, rows);
  for (let target = 0; target < count; target += 1) {
    for (let group = 0; group < groupCount; group += 1) {
      const place = target * groupCount + group;
      if (rows[place] === 0) continue;
      for (let at = 0; at < figures.covers.length; at += 1) {
        const factor = table.factor(at, group);
        const [values, covers] = [figures.values[at + 1]!, figures.covers[at]!];
        covers[target] = coverOf(covers[target]!, factor === undefined ? COVER.some : COVER.all);
        const amps = countedIn(factor, all[place]!, own[place]!);
        if (amps === amps) values[target]! += amps;
      }
    }
  }
}

/** Adds up by rows that are named and groups. A short loop of its own is compiled within the first edits. */
function addByGroup(
  rows: number, targets: Int32Array, groupOf: Int32Array, groupCount: number, shared: Float64Array, left: Float64Array,
  all: Float64Array, own: Float64Array, count: Int32Array,
): void {
  for (let id = 0; id < rows; id += 1) {
    const target = targets[id]!;
    if (target < 0) continue;
    const place = target * groupCount + groupOf[id]!;
    count[place]! += 1;
    if (shared[id] === shared[id]) all[place]! += shared[id]!;
    if (left[id] === left[id]) own[place]! += left[id]!;
  }
}

/** Adds figures that are known in each case. */
function addFigures(
  { from, by, sum, times, only }: TotalPart, figures: CaseFigures, document: ScheduleDocument, columns: Columns,
): void {
  const { targets, numbers, inCases } = columns[from];
  const [named, kept, rows] = [targets.get(by)!, inCases.get(sum!), document.byId(from)];
  const plain = numbers.get(sum!)!;
  const factors = times === undefined ? undefined : numbers.get(times)!;
  for (let id = 0; id < document.capacity(from); id += 1) {
    const target = named[id]!;
    if (target < 0 || (only && ((rows[id]?.cells[only.key] ?? null) !== null) !== only.filled)) continue;
    for (let at = 0; at < figures.covers.length; at += 1) {
      const value = (kept?.values[at + 1] ?? plain)[id]! * (factors === undefined ? 1 : factors[id]!);
      if (value === value) figures.values[at + 1]![target]! += value;
      const covers = figures.covers[at]!;
      covers[target] = coverOf(covers[target]!, kept === undefined ? COVER.some : kept.covers[at]![id]!);
    }
  }
}
