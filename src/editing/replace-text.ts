import type { LoadSchedule } from '../load-schedule.ts';
import {
  asEntered, columnOf, renameTags, SCHEMA, setCells, SHEET_NAMES,
  type CellValue, type Change, type InputColumn, type SheetName,
} from '../schedule/index.ts';
import { editedText } from './edited-text.ts';
import { findCells, patternOf, type FoundCell, type Search } from './find-cells.ts';
import { readCell } from './read-cell.ts';

/** What becomes of one cell where a text is replaced. */
export interface Replacement extends FoundCell {
  /** What a person entered, as the editor of the cell shows it. */
  readonly before: string;
  readonly after: string;
  readonly value: CellValue;
  /** Why the cell is left as it is; absent where it is not. */
  readonly problem?: string;
}

/**
 * What replacing a text comes to, in every cell in which a person entered it; defaults and figures stay as they are.
 * @param by what comes in its place; empty takes the text out.
 */
export function replacements(schedule: LoadSchedule, search: Search, by: string): Replacement[] {
  const pattern = patternOf(search);
  if (pattern === undefined) return [];
  const { words } = schedule;
  const found = findCells(schedule, search).flatMap((cell): Replacement[] => {
    const { sheet, id, key } = cell;
    const column = columnOf(sheet, key);
    if (column.role !== 'input' || !schedule.isOwn(sheet, id, key)) return [];
    const place = { schedule, sheet, words };
    const before = editedText(place, id, column);
    const after = before.replace(pattern, () => by);
    if (after === before) return [];
    const read = readCell(place, id, column, after);
    if (read.ok && read.value === (schedule.document.row(sheet, id)!.cells[key] ?? null)) return [];
    return [read.ok ? { ...cell, before, after, value: read.value }
      : { ...cell, before, after, value: null, problem: read.problem }];
  });
  return SHEET_NAMES.flatMap((sheet) => withTagsOnce(schedule, sheet, found.filter((each) => each.sheet === sheet)));
}

/** A tag that stands in another row is not given a second time: nobody could tell the two apart afterwards. */
function withTagsOnce(schedule: LoadSchedule, sheet: SheetName, found: readonly Replacement[]): Replacement[] {
  const { tag } = SCHEMA[sheet];
  const renamed = new Set(found.filter(({ key, problem }) => key === tag && problem === undefined).map(({ id }) => id));
  if (renamed.size === 0) return [...found];
  const taken = new Set(schedule.rows(sheet).filter(({ id }) => !renamed.has(id)).map(({ cells }) => cells[tag]));
  return found.map((each) => {
    if (each.key !== tag || each.problem !== undefined || each.value === null) return each;
    if (!taken.has(each.value)) {
      taken.add(each.value);
      return each;
    }
    return { ...each, problem: schedule.words.say('Another row has the tag “{tag}” already.', { tag: each.after }) };
  });
}

/** Changes that replace in cells; references to renamed rows follow. Cells with a problem are left as they are. */
export function replaceChanges(schedule: LoadSchedule, replaced: readonly Replacement[]): readonly Change[] {
  const { document, words } = schedule;
  const taken = replaced.filter(({ problem }) => problem === undefined);
  const isTag = ({ sheet, key }: FoundCell) => (columnOf(sheet, key) as InputColumn).tag === true;
  const edits = taken.filter((each) => !isTag(each));
  const named = new Set(edits.map(({ sheet, id, key }) => `${sheet} ${id} ${key}`));
  const renamed = SHEET_NAMES.flatMap((sheet) => {
    const tags = taken.filter((each) => each.sheet === sheet && isTag(each))
      .map(({ id, value }) => [id, typeof value === 'string' ? value : ''] as const);
    return tags.length === 0 ? [] : renameTags(document, sheet, new Map(tags));
  }).filter((change) => change.op !== 'set' || !named.has(`${change.sheet} ${change.id} ${change.key}`));
  return asEntered(document, [...renamed, ...setCells(document, edits)], words);
}
