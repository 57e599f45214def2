import { findColumn, isNumeric, type CellValue, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import type { Argument } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';

/** Gives what a rule reads for the row with an id; `null` when it is unknown. */
export type ArgumentReader = (id: number) => CellValue;

/**
 * Finds once where the values of an argument stand, so that reading them row by row costs little.
 * @param own the sheet whose rows are read for.
 */
export function argumentReader(
  { by, sheet, key }: Argument, own: SheetName, document: ScheduleDocument,
  columns: Readonly<Record<SheetName, SheetColumns>>,
): ArgumentReader {
  const column = findColumn(sheet, key)!;
  const numbers = isNumeric(column) ? columns[sheet].numbers.get(key) : undefined;
  const empty = column.role === 'input' ? column.default ?? null : null;
  const read: ArgumentReader = (id) => {
    if (numbers === undefined) return document.row(sheet, id)?.cells[key] ?? empty;
    const value = numbers[id]!;
    return Number.isNaN(value) ? null : value;
  };
  if (by === undefined) return read;
  const targets = columns[own].targets.get(by)!;
  return (id) => targets[id]! < 0 ? null : read(targets[id]!);
}
