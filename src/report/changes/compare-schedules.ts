import type { LoadSchedule } from '../../load-schedule.ts';
import {
  computedColumns, DETAIL_KEYS, inputColumns, isFormula, keepReference, mapReferences, SHEET_NAMES, tagOf,
  type CellReference, type CellValue, type DetailKey, type Row, type SheetName,
} from '../../schedule/index.ts';
import { SHEETS_WITH_STATUS } from '../model/status-section.ts';
import { matchRows, type MatchedRows } from './match-rows.ts';
import { movedAmong } from './moved.ts';

/** A value before and after; formulas as they are read. */
export interface ValueChange {
  readonly key: string;
  readonly before: CellValue;
  readonly after: CellValue;
}

/** What became of a row. `row` is its number in the new schedule, `was` that in the old one, both from 1. */
export interface RowChange {
  readonly kind: 'added' | 'removed' | 'moved' | 'changed';
  readonly sheet: SheetName;
  readonly tag: string;
  readonly row: number | null;
  readonly was: number | null;
  /** What was entered: all of an added or removed row, the differences of a changed one. */
  readonly values: readonly ValueChange[];
}

/** What changes did to the totals and statuses of a row that both schedules have. */
export interface FigureChange {
  readonly sheet: SheetName;
  readonly tag: string;
  readonly row: number;
  readonly values: readonly ValueChange[];
}

/** What is different between two schedules. */
export interface ScheduleChanges {
  readonly details: readonly (ValueChange & { readonly key: DetailKey })[];
  readonly rows: readonly RowChange[];
  readonly figures: readonly FigureChange[];
}

/** Differences that only rounding makes. */
const ROUNDING = 1e-9;

/** Compares two schedules: their details, their rows, and what that did to every total and status. */
export function compareSchedules(before: LoadSchedule, after: LoadSchedule): ScheduleChanges {
  const matched = Object.fromEntries(SHEET_NAMES.map((sheet) =>
    [sheet, matchRows(sheet, before.rows(sheet), after.rows(sheet))])) as Record<SheetName, MatchedRows>;
  const formulas = new SameFormulas(matched);
  return {
    details: DETAIL_KEYS.flatMap((key) => {
      const [old, present] = [before.document.details[key] ?? null, after.document.details[key] ?? null];
      return old === present ? [] : [{ key, before: old, after: present }];
    }),
    rows: SHEET_NAMES.flatMap((sheet) => rowChanges(sheet, matched[sheet], before, after, formulas)),
    figures: SHEETS_WITH_STATUS.flatMap((sheet) => figureChanges(sheet, matched[sheet], before, after)),
  };
}

function rowChanges(
  sheet: SheetName, { pairs, removed, added }: MatchedRows, before: LoadSchedule, after: LoadSchedule, formulas: SameFormulas,
): RowChange[] {
  const keys = inputColumns(sheet).map(({ key }) => key);
  const place = (schedule: LoadSchedule, { id }: Row) => schedule.document.position(sheet, id);
  const entered = (schedule: LoadSchedule, { id, cells }: Row, key: string) => schedule.formulaText(sheet, id, key) ?? cells[key] ?? null;
  const values = (old: Row | undefined, present: Row | undefined): ValueChange[] => keys.flatMap((key) => {
    const isSame = formulas.isSame(old?.cells[key] ?? null, present?.cells[key] ?? null);
    return isSame ? [] : [{
      key, before: old === undefined ? null : entered(before, old, key), after: present === undefined ? null : entered(after, present, key),
    }];
  });
  const change = (kind: RowChange['kind'], old: Row | undefined, present: Row | undefined, changed: readonly ValueChange[]): RowChange => ({
    kind, sheet, tag: tagOf(sheet, (present ?? old)!), values: changed,
    row: present === undefined ? null : place(after, present) + 1, was: old === undefined ? null : place(before, old) + 1,
  });
  const ordered = [...pairs].sort(([, one], [, other]) => place(after, one) - place(after, other));
  const moved = movedAmong(ordered.map(([old]) => place(before, old)));
  return [
    ...removed.map((row) => change('removed', row, undefined, values(row, undefined))),
    ...added.map((row) => change('added', undefined, row, values(undefined, row))),
    ...ordered.filter((_pair, index) => moved.has(index)).map(([old, present]) => change('moved', old, present, [])),
    ...ordered.flatMap(([old, present]) => {
      const changed = values(old, present);
      return changed.length === 0 ? [] : [change('changed', old, present, changed)];
    }),
  ];
}

function figureChanges(sheet: SheetName, { pairs }: MatchedRows, before: LoadSchedule, after: LoadSchedule): FigureChange[] {
  const keys = computedColumns(sheet).map(({ key }) => key);
  return pairs.flatMap(([old, present]) => {
    const values = keys.flatMap((key) => {
      const [was, is] = [before.value(sheet, old.id, key), after.value(sheet, present.id, key)];
      return isSameFigure(was, is) ? [] : [{ key, before: was, after: is }];
    });
    const row = after.document.position(sheet, present.id) + 1;
    return values.length === 0 ? [] : [{ sheet, tag: tagOf(sheet, present), row, values }];
  }).sort((one, other) => one.row - other.row);
}

function isSameFigure(one: CellValue, other: CellValue): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one === other;
  return Math.abs(one - other) <= ROUNDING * Math.max(Math.abs(one), Math.abs(other));
}

/** Tells whether cells hold the same: formulas do when they refer to the same rows, wherever these stand now. */
class SameFormulas {
  readonly #old = new Map<string, number>();

  constructor(matched: Readonly<Record<SheetName, MatchedRows>>) {
    for (const sheet of SHEET_NAMES) {
      for (const [before, after] of matched[sheet].pairs) this.#old.set(`${sheet} ${after.id}`, before.id);
    }
  }

  isSame(before: CellValue, after: CellValue): boolean {
    if (!isFormula(before) || !isFormula(after)) return before === after;
    const moved = (sheet: SheetName, cell: CellReference) => ({ ...cell, id: this.#old.get(`${sheet} ${cell.id}`) ?? -1 });
    return before === mapReferences(after, (reference) => keepReference(reference && {
      ...reference, from: moved(reference.sheet, reference.from),
      ...(reference.to === undefined ? {} : { to: moved(reference.sheet, reference.to) }),
    }));
  }
}
