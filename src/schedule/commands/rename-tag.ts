import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import { inputColumns, SCHEMA, SHEET_NAMES, type SheetName } from '../schema/index.ts';

/**
 * Changes that give a row another tag and let every reference to it follow. References stay as they are when the row
 * had no tag, when another row bears the same one, or when the new tag is empty.
 */
export function renameTag(document: ScheduleDocument, sheet: SheetName, id: number, tag: string): Change[] {
  const key = SCHEMA[sheet].tag;
  const before = document.row(sheet, id)?.cells[key] ?? null;
  const value = tag === '' ? null : tag;
  if (before === value) return [];
  const changes: Change[] = [{ op: 'set', sheet, id, key, value }];
  const shared = document.rows(sheet).some((row) => row.id !== id && row.cells[key] === before);
  if (before === null || value === null || shared) return changes;
  for (const name of SHEET_NAMES) {
    const references = inputColumns(name).filter((column) => column.to === sheet);
    for (const row of document.rows(name)) {
      for (const column of references) {
        if (row.cells[column.key] === before) {
          changes.push({ op: 'set', sheet: name, id: row.id, key: column.key, value });
        }
      }
    }
  }
  return changes;
}
