import { shownText } from '../findings/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { isAsked, SCHEMA, SHEET_NAMES, type Column, type SheetName } from '../schedule/index.ts';
import { editedText } from './edited-text.ts';

/** What a person looks for. */
export interface Search {
  readonly text: string;
  /** Where in a cell it has to stand. */
  readonly where: 'anywhere' | 'beginning' | 'whole';
  /** Whether capitals and small letters are told apart. */
  readonly exact: boolean;
  /** The sheet, or the column of it, that is looked through; all sheets where it is left out. */
  readonly within?: { readonly sheet: SheetName; readonly key?: string | undefined } | undefined;
}

/** A cell in which something was found, by the row's id. */
export interface FoundCell {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
}

/** What finds a searched text in another: every place of it; `undefined` for an empty search. */
export function patternOf({ text, where, exact }: Search): RegExp | undefined {
  if (text === '') return undefined;
  // Thin spaces part figures and their signs, and nobody types them.
  const plain = text.replace(/[\\^$.*+?()[\]{}|/]/g, String.raw`\$&`).replace(/\s/gu, String.raw`\s`);
  return new RegExp(`${where === 'anywhere' ? '' : '^'}${plain}${where === 'whole' ? '$' : ''}`, exact ? 'gu' : 'giu');
}

/**
 * The cells in which a text stands, sheet by sheet and row by row in the order of the schema. A cell is looked through
 * as a person sees it: words in their language, figures as shown, a formula also as it was typed. Defaults of columns
 * that few schedules need are out of sight, and not found.
 */
export function findCells(schedule: LoadSchedule, search: Search): FoundCell[] {
  const pattern = patternOf(search);
  if (pattern === undefined) return [];
  const { within } = search;
  return (within === undefined ? SHEET_NAMES : [within.sheet]).flatMap((sheet) => {
    const columns = SCHEMA[sheet].columns.filter(({ key }) => within?.key === undefined || within.key === key);
    const look = schedule.look(sheet);
    const ownOnly = new Set(columns.filter((column) =>
      column.role === 'input' && column.rare !== undefined && !isAsked(look, column)));
    return schedule.rows(sheet).flatMap(({ id }) => columns.flatMap((column): FoundCell[] => {
      const { key } = column;
      const isOut = ownOnly.has(column) && !schedule.isOwn(sheet, id, key);
      return !isOut && textsOf(schedule, sheet, id, column).some((text) => text.search(pattern) >= 0)
        ? [{ sheet, id, key }] : [];
    }));
  });
}

function textsOf(schedule: LoadSchedule, sheet: SheetName, id: number, column: Column): string[] {
  const { key, role } = column;
  const own = role === 'input' && schedule.isOwn(sheet, id, key);
  const value = schedule.shown(sheet, id, key);
  return [
    ...(own ? [editedText({ schedule, sheet, words: schedule.words }, id, column)] : []),
    ...(value === null ? [] : [shownText(column, value, schedule.words)]),
  ];
}
