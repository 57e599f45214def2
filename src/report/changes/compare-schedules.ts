import { panelOf, tellsMore } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import {
  computedColumns, DETAIL_KEYS, inputColumns, isFormula, nameOf, SHEET_NAMES, withOtherIds,
  type CellValue, type DetailKey, type Revision, type Row, type SheetName, type Variant,
} from '../../schedule/index.ts';
import {
  compareLists, compareUnknown, matchRows, type ListChange, type MatchedRows, type UnknownChange,
} from '../../schedule/compare/index.ts';
import { fileDigest } from '../digest/index.ts';
import { SHEETS_WITH_STATUS } from '../model/status-section.ts';
import { compareAcceptances, type AcceptanceChange } from './compare-acceptances.ts';
import { compareFindings, type FindingChange } from './compare-findings.ts';
import { Renames } from './renames.ts';
import { isSameValue } from './same-value.ts';

/** A value before and after; formulas as they are read. */
export interface ValueChange {
  readonly key: string;
  readonly before: CellValue;
  readonly after: CellValue;
}

/** What became of a row. `row` is its number in the new schedule, `was` that in the old one, both from 1. */
export interface RowChange {
  /** `moved`: it stands in another order among the other rows; that its number is another is no move. */
  readonly kind: 'added' | 'removed' | 'moved' | 'changed';
  readonly sheet: SheetName;
  /** What tells it from the other rows of its sheet: its tag, or «evening, blinds». */
  readonly tag: string;
  readonly row: number | null;
  readonly was: number | null;
  /** What was entered, unknown keys included: all of an added or removed row, the differences of a changed one. */
  readonly values: readonly ValueChange[];
  /** How many cells name the row by its new tag in the place of the old one; they are no changes of their own. */
  readonly followed?: number;
  /** Tag of the row above a moved one, or its number; `null` for one that was moved to the top. */
  readonly below?: string | number | null;
}

/** What changes did to the totals and statuses of a row that both schedules have. */
export interface FigureChange {
  readonly sheet: SheetName;
  /** The panel that the row belongs to now; `null` for what is in none, as cases are. */
  readonly panel: string | null;
  readonly tag: string;
  readonly row: number;
  readonly values: readonly ValueChange[];
}

/** Sheets of which figures are compared: those whose rows have a status, and cases with what is asked in each. */
const JUDGED: readonly SheetName[] = [...SHEETS_WITH_STATUS, 'cases'];

/** What is different between two schedules. */
export interface ScheduleChanges {
  /** Whether the files hold the same, to the last value; then everything else is empty. */
  readonly isSame: boolean;
  readonly details: readonly (ValueChange & { readonly key: DetailKey })[];
  readonly rows: readonly RowChange[];
  readonly figures: readonly FigureChange[];
  readonly findings: readonly FindingChange[];
  readonly accepted: readonly AcceptanceChange[];
  readonly revisions: readonly ListChange<Revision>[];
  readonly variants: readonly ListChange<Variant>[];
  /** Keys beside those of rows that this version does not know. */
  readonly unknown: readonly UnknownChange[];
}

/**
 * Compares two schedules: all that their files hold, what that did to every total and status, and which findings came
 * and went. Both speak the same language.
 * @param matched which rows are the same; by tag and content unless it is known better.
 */
export function compareSchedules(
  before: LoadSchedule, after: LoadSchedule,
  matched: Readonly<Record<SheetName, MatchedRows>> = rowsAlike(before, after),
): ScheduleChanges {
  const [old, present] = [before.content(), after.content()];
  return {
    isSame: fileDigest(old) === fileDigest(present),
    details: DETAIL_KEYS.flatMap((key) => {
      const [was, is] = [old.details[key] ?? null, present.details[key] ?? null];
      return was === is ? [] : [{ key, before: was, after: is }];
    }),
    rows: allRowChanges(matched, before, after),
    figures: JUDGED.flatMap((sheet) => figureChanges(sheet, matched[sheet], before, after)),
    findings: compareFindings(before, after, matched),
    accepted: compareAcceptances(before, after, matched),
    revisions: compareLists(old.revisions ?? [], present.revisions ?? [], ({ revision }) => revision),
    variants: compareLists(old.variants ?? [], present.variants ?? [], ({ name }) => name),
    unknown: compareUnknown(old, present),
  };
}

function rowsAlike(before: LoadSchedule, after: LoadSchedule): Record<SheetName, MatchedRows> {
  return Object.fromEntries(SHEET_NAMES.map((sheet) =>
    [sheet, matchRows(sheet, before.rows(sheet), after.rows(sheet))])) as Record<SheetName, MatchedRows>;
}

function allRowChanges(
  matched: Readonly<Record<SheetName, MatchedRows>>, before: LoadSchedule, after: LoadSchedule,
): RowChange[] {
  const [formulas, renames] = [new SameFormulas(matched), new Renames(before.document, matched)];
  const found = SHEET_NAMES.flatMap((sheet) =>
    rowChanges(sheet, matched[sheet], before, after, { formulas, renames }));
  // What follows a new tag is known when the rows of every sheet were looked at.
  return found.map(({ change, old }) => {
    const followed = old === undefined || change.kind !== 'changed' ? 0 : renames.followedBy(change.sheet, old);
    return followed === 0 ? change : { ...change, followed };
  });
}

function rowChanges(
  sheet: SheetName, { pairs, removed, added }: MatchedRows, before: LoadSchedule, after: LoadSchedule,
  { formulas, renames }: { readonly formulas: SameFormulas; readonly renames: Renames },
): { readonly change: RowChange; readonly old: Row | undefined }[] {
  const known = inputColumns(sheet).map(({ key }) => key);
  const place = (schedule: LoadSchedule, { id }: Row) => schedule.document.position(sheet, id) + 1;
  const entered = (schedule: LoadSchedule, row: Row | undefined, key: string) =>
    row === undefined ? null : schedule.formulaText(sheet, row.id, key) ?? plain(row.cells[key]);
  const values = (old: Row | undefined, present: Row | undefined): ValueChange[] => {
    const keys = new Set([...known, ...Object.keys(old?.cells ?? {}), ...Object.keys(present?.cells ?? {})]);
    return [...keys].flatMap((key) => {
      const [was, is] = [plain(old?.cells[key]), plain(present?.cells[key])];
      const isSame = formulas.isSame(was, is)
        || (old !== undefined && present !== undefined && renames.isFollowing(sheet, old, key, is));
      return isSame ? [] : [{ key, before: entered(before, old, key), after: entered(after, present, key) }];
    });
  };
  const change = (
    kind: RowChange['kind'], old: Row | undefined, present: Row | undefined, changed: readonly ValueChange[],
    more?: Pick<RowChange, 'below'>,
  ) => ({
    old,
    change: {
      kind, sheet, tag: nameOf(sheet, (present ?? old)!), values: changed,
      row: present === undefined ? null : place(after, present), was: old === undefined ? null : place(before, old),
      ...more,
    },
  });
  const below = (row: number): RowChange['below'] => {
    const above = after.rows(sheet)[row - 2];
    return above === undefined ? null : nameOf(sheet, above) || row - 1;
  };
  return [
    ...removed.map((row) => change('removed', row, undefined, values(row, undefined))),
    ...added.map((row) => change('added', undefined, row, values(undefined, row))),
    ...pairs.filter(({ isMoved }) => isMoved).map((pair) =>
      change('moved', pair.before, pair.after, [], { below: below(pair.is + 1) })),
    ...pairs.flatMap((pair) => {
      const changed = values(pair.before, pair.after);
      return changed.length === 0 ? [] : [change('changed', pair.before, pair.after, changed)];
    }),
  ];
}

/** What a cell holds, `null` for nothing; more than a value, as a key that is not known may hold, is given as JSON. */
function plain(value: unknown): CellValue {
  if (value === undefined || value === null) return null;
  return typeof value === 'object' ? JSON.stringify(value) : value as CellValue;
}

function figureChanges(
  sheet: SheetName, { pairs }: MatchedRows, before: LoadSchedule, after: LoadSchedule,
): FigureChange[] {
  const columns = computedColumns(sheet);
  return pairs.flatMap((pair) => {
    const values = columns.flatMap((column) => {
      const { key } = column;
      // What a marked case gives is told where it is another figure than the one that is told anyway.
      const isTold = [[before, pair.before], [after, pair.after]] as const;
      if (!isTold.some(([schedule, { id }]) => tellsMore(schedule, sheet, id, column.key))) return [];
      const [was, is] = [before.value(sheet, pair.before.id, key), after.value(sheet, pair.after.id, key)];
      return isSameValue(was, is) ? [] : [{ key, before: was, after: is }];
    });
    return values.length === 0 ? [] : [{
      sheet, panel: panelOf(after, sheet, pair.after.id), tag: nameOf(sheet, pair.after), row: pair.is + 1, values,
    }];
  });
}

/** Tells whether cells hold the same: formulas do when they refer to the same rows, wherever these stand now. */
class SameFormulas {
  readonly #old = new Map<string, number>();

  constructor(matched: Readonly<Record<SheetName, MatchedRows>>) {
    for (const sheet of SHEET_NAMES) {
      for (const { before, after } of matched[sheet].pairs) this.#old.set(`${sheet} ${after.id}`, before.id);
    }
  }

  isSame(before: CellValue, after: CellValue): boolean {
    if (!isFormula(before) || !isFormula(after)) return before === after;
    // A row that was not there before is no deleted one either.
    return before === withOtherIds(after, (sheet, id) => this.#old.get(`${sheet} ${id}`) ?? -1);
  }
}
