import {
  findColumn, isNumeric, type CellValue, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import { gather } from './gather.ts';
import type { Argument } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { TagIndex } from './tag-index.ts';

type Columns = Readonly<Record<SheetName, SheetColumns>>;

/** Gives what a rule reads for the row with an id; `null` when it is unknown. */
export type ArgumentReader = (id: number) => CellValue;

/**
 * Finds once where the values of an argument stand, so that reading them row by row costs little.
 * @param own the sheet whose rows are read for.
 * @param withFaults a formula without a result, or a number beyond its range, gives NaN, not `null`: no default may
 * take its place.
 */
export function argumentReader(
  { by, sheet, key }: Argument, own: SheetName, document: ScheduleDocument, columns: Columns, withFaults = false,
): ArgumentReader {
  const column = findColumn(sheet, key)!;
  const numbers = isNumeric(column) ? columns[sheet].numbers.get(key) : undefined;
  const empty = column.role === 'input' ? column.default ?? null : null;
  const rows = document.byId(sheet);
  const read: ArgumentReader = numbers === undefined ? (id) => rows[id]?.cells[key] ?? empty : (id) => {
    const value = numbers[id]!;
    if (!Number.isNaN(value)) return value;
    return withFaults && column.role === 'input' && (rows[id]?.cells[key] ?? null) !== null ? NaN : null;
  };
  if (by === undefined) return read;
  const targets = columns[own].targets.get(by)!;
  return (id) => targets[id]! < 0 ? null : read(targets[id]!);
}

/** Values of some rows, in their order; where no rule takes them, NaN stands for an unknown number as well. */
export type Values = ArrayLike<CellValue>;

/**
 * What a rule reads of some rows.
 * @param isUnknownTaken the rule takes what is unknown, as `null`.
 * @param figures what the column is worth in one case, where that is asked for.
 */
export function valuesOf(
  argument: Argument, own: SheetName, ids: readonly number[], document: ScheduleDocument, columns: Columns,
  isUnknownTaken: boolean, figures?: Float64Array,
): Values {
  const { by, sheet, key } = argument;
  const numbers = figures ?? columns[sheet].numbers.get(key);
  const mayHoldFaults = columns[sheet].holdsFaults || document.rowsWithFormulas(sheet).size > 0;
  if (numbers === undefined || (figures === undefined && isUnknownTaken && mayHoldFaults)) {
    const read = argumentReader(argument, own, document, columns, isUnknownTaken);
    return ids.map((id) => read(id));
  }
  const values = gather(numbers, by === undefined ? undefined : columns[own].targets.get(by)!, ids);
  return isUnknownTaken ? withNull(values) : values;
}

function withNull(numbers: Float64Array): Values {
  const values: CellValue[] = [];
  for (const number of numbers) values.push(Number.isNaN(number) ? null : number);
  return values;
}

/**
 * Finds once whether what is read of a row may be less than the whole: a figure that lacks rows, or a value of a row
 * that shares its tag with another, so that nobody knows which is meant.
 * @returns `undefined` where all that it reads is whole, as it mostly is.
 */
export function partialReader(
  { by, sheet, key }: Argument, own: SheetName, columns: Columns, tags: TagIndex,
): ((id: number) => boolean) | undefined {
  const partial = columns[sheet].partial.get(key);
  const rows = by === undefined ? undefined : tags.shared(sheet);
  if (partial === undefined && (rows === undefined || rows.size === 0)) return undefined;
  if (by === undefined) return (id) => partial![id] !== 0;
  const targets = columns[own].targets.get(by)!;
  return (id) => {
    const target = targets[id]!;
    return target >= 0 && ((partial !== undefined && partial[target] !== 0) || rows!.has(target));
  };
}
