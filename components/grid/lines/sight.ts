import { STANDINGS, type Standing } from '../../../src/findings/finding.ts';
import { shownText } from '../../../src/findings/shown-text.ts';
import { isInSight } from '../../../src/engine/panel-of.ts';
import type { LoadSchedule } from '../../../src/load-schedule.ts';
import {
  columnOf, inputColumns, isBlank, isStatus, type CellValue, type Column, type SheetName,
} from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';
import { isNarrowed, type ColumnSight, type Sight } from './sight-type.ts';

/** What a cell holds, by which rows are picked: the same in every language. */
export const heldText = (value: CellValue): string => (value === null ? '' : String(value));

/**
 * Ids of the rows of a sheet that are in sight, in the order of the document or in the order asked for: by numbers, or
 * by texts in the alphabet of the language with numbers in them by their size; states by how bad they are. Rows that
 * hold nothing there come last, whichever way is up; equal ones stay in the order of the document.
 */
export function rowsInSight(schedule: LoadSchedule, sheet: SheetName, sight: Sight, words: Words): readonly number[] {
  const isIn = rowInSight(schedule, sheet, sight);
  const ids = schedule.document.rows(sheet).map(({ id }) => id).filter(isIn);
  return sight.sort === undefined ? ids : sorted(schedule, sheet, ids, sight.sort, words);
}

/** Whether a row is in sight. Blank rows are only where all rows are. */
export function rowInSight(schedule: LoadSchedule, sheet: SheetName, sight: Sight): (id: number) => boolean {
  if (!isNarrowed(sight)) return () => true;
  const { only, panel } = sight;
  const held = Object.entries(sight.columns);
  const states = only === undefined || only === 'own' ? undefined : foundIn(schedule, sheet);
  const derived = inputColumns(sheet).filter((column) => column.derived !== undefined);
  const isOfState = (id: number): boolean => {
    const has = (state: string) =>
      schedule.standing(sheet, id) === state || states!.get(id)?.has(state) === true;
    return only === 'near' ? has('near') || has('over') : has(only!);
  };
  return (id) => !isBlank(schedule.document.row(sheet, id)!) && isInSight(schedule, sheet, id, panel)
    && held.every(([key, column]) => holds(schedule, sheet, id, key, column))
    && (states === undefined || isOfState(id))
    && (only !== 'own' || derived.some(({ key }) => schedule.isOwn(sheet, id, key)));
}

function holds(
  schedule: LoadSchedule, sheet: SheetName, id: number, key: string, { texts, least, most, own }: ColumnSight,
): boolean {
  const value = schedule.shown(sheet, id, key);
  return texts?.includes(heldText(value)) !== false
    && (least === undefined || (typeof value === 'number' && value >= least))
    && (most === undefined || (typeof value === 'number' && value <= most))
    && (own === undefined || schedule.isOwn(sheet, id, key));
}

/** How bad the open findings of each row are. */
function foundIn(schedule: LoadSchedule, sheet: SheetName): Map<number, Set<string>> {
  const found = new Map<number, Set<string>>();
  for (const { sheet: of, id, severity, accepted } of schedule.findings) {
    if (of !== sheet || accepted !== undefined) continue;
    const states = found.get(id);
    if (states === undefined) found.set(id, new Set([severity]));
    else states.add(severity);
  }
  return found;
}

/** By what a value goes in order: its number, how bad a standing is, or its text. */
export function orderOf(column: Column, value: CellValue, words: Words): number | string | null {
  return value === null || typeof value === 'number' ? value
    : isStatus(column) ? STANDINGS.indexOf(value as Standing) : shownText(column, value, words);
}

function sorted(
  schedule: LoadSchedule, sheet: SheetName, ids: readonly number[], { key, down }: NonNullable<Sight['sort']>,
  words: Words,
): number[] {
  const column = columnOf(sheet, key);
  const ranks = ranksOf(ids.map((id) => orderOf(column, schedule.shown(sheet, id, key), words)), words);
  const turn = down ? -1 : 1;
  const places = ids.map((_id, place) => place);
  places.sort((one, other) => {
    const [a, b] = [ranks[one]!, ranks[other]!];
    // NaN is what holds nothing.
    return Number.isNaN(a) || Number.isNaN(b) ? Number(Number.isNaN(a)) - Number(Number.isNaN(b)) : turn * (a - b);
  });
  return places.map((place) => ids[place]!);
}

/**
 * Numbers by which values go in order; NaN for what holds nothing. Texts get theirs once each, as many rows hold the
 * same; beside texts, numbers count as such.
 */
function ranksOf(values: readonly (number | string | null)[], words: Words): Float64Array {
  const ranks = Float64Array.from(values, (value) => (typeof value === 'number' ? value : Number.NaN));
  if (!values.some((value) => typeof value === 'string')) return ranks;
  const { compare } = new Intl.Collator(words.locale, { numeric: true });
  const rank = new Map<string, number>();
  let last: string | undefined;
  for (const text of [...new Set(values.filter((value) => value !== null).map(String))].sort(compare)) {
    // Texts that are alike to the language stay in the order of the document.
    rank.set(text, last !== undefined && compare(last, text) === 0 ? rank.get(last)! : rank.size);
    last = text;
  }
  values.forEach((value, at) => { if (value !== null) ranks[at] = rank.get(String(value))!; });
  return ranks;
}
