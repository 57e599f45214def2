import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { Cells } from '../snapshot.ts';
import type { SheetName } from '../schema/index.ts';

/** Changes that put rows in before place `at`, counted from 0. */
export function insertRows(document: ScheduleDocument, sheet: SheetName, at: number, rows: readonly Cells[]): Change[] {
  if (rows.length === 0) return [];
  const ids = document.freeIds(sheet, rows.length);
  return [{ op: 'insert', sheet, at, rows: rows.map((cells, index) => ({ id: ids[index]!, cells })) }];
}
