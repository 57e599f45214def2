import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import { inputColumns, SCHEMA, SHEET_NAMES, type SheetName } from '../schema/index.ts';
import { namedInText } from './named-in-text.ts';

/**
 * Changes that give a row another tag and let every reference to it follow, texts that name it among them. References
 * stay as they are when the row had no tag, when another row bears the same one, or when the new tag is empty.
 */
export function renameTag(document: ScheduleDocument, sheet: SheetName, id: number, tag: string): Change[] {
  return renameTags(document, sheet, new Map([[id, tag]]));
}

/** The same for many rows of a sheet at once, by id: two of them may exchange their tags. */
export function renameTags(document: ScheduleDocument, sheet: SheetName, tags: ReadonlyMap<number, string>): Change[] {
  const key = SCHEMA[sheet].tag;
  const changes: Change[] = [];
  const bearers = new Map<unknown, number>();
  for (const { cells } of document.rows(sheet)) bearers.set(cells[key], (bearers.get(cells[key]) ?? 0) + 1);
  const following = new Map<unknown, string>();
  for (const [id, tag] of tags) {
    const before = document.row(sheet, id)?.cells[key] ?? null;
    const value = tag === '' ? null : tag;
    if (before === value) continue;
    changes.push({ op: 'set', sheet, id, key, value });
    if (before !== null && value !== null && bearers.get(before) === 1) following.set(before, value);
  }
  if (following.size === 0) return changes;
  for (const name of SHEET_NAMES) {
    const references = inputColumns(name).filter(({ to }) => to === sheet);
    const texts = inputColumns(name).filter(({ names }) => names?.includes(sheet));
    if (references.length + texts.length === 0) continue;
    for (const { id, cells } of document.rows(name)) {
      for (const { key } of references) {
        const value = following.get(cells[key]);
        if (value !== undefined) changes.push({ op: 'set', sheet: name, id, key, value });
      }
      for (const { key } of texts) {
        const text = cells[key];
        const named = typeof text === 'string' ? namedInText(text, (each) => following.has(each)) : undefined;
        if (named !== undefined) changes.push({ op: 'set', sheet: name, id, key, value: `${following.get(named.tag)!}${named.behind}` });
      }
    }
  }
  return changes;
}
