import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import { SCHEMA, type SheetName } from '../schema/index.ts';
import { withoutHidden } from '../cell-text/index.ts';
import { renameTag } from './rename-tag.ts';
import { setCells } from './set-cells.ts';

/** Changes that take the characters that cannot be seen out of a text; of a tag, references to it follow. */
export function deleteHidden(document: ScheduleDocument, sheet: SheetName, id: number, key: string): Change[] {
  const text = document.row(sheet, id)?.cells[key];
  if (typeof text !== 'string') return [];
  const value = withoutHidden(text);
  if (key === SCHEMA[sheet].tag) return renameTag(document, sheet, id, value);
  return setCells(document, [{ sheet, id, key, value: value === '' ? null : value }]);
}
