import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { CellValue, SheetName } from '../schema/index.ts';

/** A new value for one cell. */
export interface CellEdit {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
  readonly value: CellValue;
}

/** Changes that give cells new values; edits that would change nothing are dropped. */
export function setCells(document: ScheduleDocument, edits: readonly CellEdit[]): Change[] {
  return edits
    .filter(({ sheet, id, key, value }) => (document.row(sheet, id)?.cells[key] ?? null) !== value)
    .map(({ sheet, id, key, value }): Change => ({ op: 'set', sheet, id, key, value }));
}
