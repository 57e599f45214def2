import { findColumn, type SheetName } from '../schedule/index.ts';
import type { SheetColumns } from './sheet-columns.ts';

/** Whether a figure follows from a total that lacks a row whose value is unknown. */
export function isPartial(columns: Readonly<Record<SheetName, SheetColumns>>, sheet: SheetName, id: number, key: string): boolean {
  const column = findColumn(sheet, key);
  if (column?.role !== 'computed' || column.whenPartial === undefined) return false;
  if (column.total !== undefined || column.solved !== undefined) return (columns[sheet].partial.get(key)?.[id] ?? 0) > 0;
  return column.rule?.of.some((path) => isPartial(columns, sheet, id, path)) === true;
}
