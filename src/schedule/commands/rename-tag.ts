import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import { grouped } from '../grouped.ts';
import { inputColumns, SCHEMA, SHEET_NAMES, type SheetName } from '../schema/index.ts';
import type { Cells } from '../snapshot.ts';
import { namedInText } from './named-in-text.ts';
import { isTickedAsIs, recordOf, ticksOf } from './ticks.ts';

/**
 * Changes that give a row another tag and let every reference to it follow, texts that name it among them. References
 * stay as they are when the row had no tag, when another row bears the same one, or when the new tag is empty.
 */
export function renameTag(document: ScheduleDocument, sheet: SheetName, id: number, tag: string): Change[] {
  return renameTags(document, sheet, new Map([[id, tag]]));
}

/** The same for many rows of a sheet at once, by id: two of them may exchange their tags. */
export function renameTags(document: ScheduleDocument, sheet: SheetName, tags: ReadonlyMap<number, string>): Change[] {
  return renamed(document, sheet, tags).changes;
}

/**
 * How many texts an action leaves as they are, though they name a row to which it gives another tag: each may also name
 * a row of another sheet that bears the tag of before.
 */
export function textsInDoubt(document: ScheduleDocument, changes: readonly Change[]): number {
  const place = ({ sheet, id, key }: Place) => `${sheet} ${id} ${key}`;
  const sets = changes.flatMap((change) => change.op === 'set' ? [change] : []);
  const set = new Set(sets.map(place));
  const tags = grouped(sets.filter(({ sheet, key }) => key === SCHEMA[sheet].tag), ({ sheet }) => sheet);
  return new Set([...tags].flatMap(([sheet, those]) =>
    renamed(document, sheet, new Map(those.map(({ id, value }) => [id, String(value ?? '')]))).inDoubt.map(place))
    .filter((each) => !set.has(each))).size;
}

interface Place {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
}

function renamed(
  document: ScheduleDocument, sheet: SheetName, tags: ReadonlyMap<number, string>,
): { readonly changes: Change[]; readonly inDoubt: readonly Place[] } {
  const key = SCHEMA[sheet].tag;
  const changes: Change[] = [];
  const naming = SHEET_NAMES.map((name) => ({
    name, references: inputColumns(name).filter(({ to }) => to === sheet),
    texts: inputColumns(name).filter(({ names }) => names?.includes(sheet)),
  })).filter(({ references, texts }) => references.length + texts.length > 0);
  const bearers = new Map<unknown, number>();
  // Nothing names a device, of which a list may rename thousands.
  for (const { cells } of naming.length === 0 ? [] : document.rows(sheet)) {
    bearers.set(cells[key], (bearers.get(cells[key]) ?? 0) + 1);
  }
  const following = new Map<unknown, string>();
  for (const [id, tag] of tags) {
    const before = document.row(sheet, id)?.cells[key] ?? null;
    const value = tag === '' ? null : tag;
    if (before === value) continue;
    changes.push({ op: 'set', sheet, id, key, value });
    if (before !== null && value !== null && bearers.get(before) === 1) following.set(before, value);
  }
  if (following.size === 0) return { changes, inDoubt: [] };
  const isTag = tagsOf(document);
  const inDoubt: Place[] = [];
  for (const { name, references, texts } of naming) {
    for (const { id, cells } of document.rows(name)) {
      const after: Record<string, Cells[string]> = {};
      for (const { key } of references) {
        const value = following.get(cells[key]);
        if (value !== undefined) after[key] = value;
      }
      for (const column of texts) {
        const text = cells[column.key];
        if (typeof text !== 'string') continue;
        // Most texts name nothing that is renamed, which is quickly seen.
        const may = namedInText({ ...column, names: [sheet] }, text, (_sheet, tag) => following.has(tag));
        if (may.length === 0) continue;
        const named = namedInText(column, text, isTag);
        const own = named.find((each) => each.sheet === sheet && following.has(each.tag));
        if (own === undefined) continue;
        if (named.length > 1) inDoubt.push({ sheet: name, id, key: column.key });
        else after[column.key] = `${following.get(own.tag)!}${own.behind}`;
      }
      for (const tick of ticksOf(name)) {
        // What is carried out is the same under the new tag.
        if (isTickedAsIs(tick, cells)) after[tick.as] = recordOf(tick, { ...cells, ...after });
      }
      for (const [key, value] of Object.entries(after)) {
        if ((cells[key] ?? null) !== value) changes.push({ op: 'set', sheet: name, id, key, value });
      }
    }
  }
  return { changes, inDoubt };
}

/** Whether a text is the tag of a row of a sheet; the tags of a sheet are gathered when they are first asked for. */
function tagsOf(document: ScheduleDocument): (sheet: SheetName, tag: string) => boolean {
  const tags = new Map<SheetName, ReadonlySet<unknown>>();
  return (sheet, tag) => {
    let those = tags.get(sheet);
    if (those === undefined) {
      tags.set(sheet, those = new Set(document.rows(sheet).map(({ cells }) => cells[SCHEMA[sheet].tag])));
    }
    return tag !== '' && those.has(tag);
  };
}
