import { SEVERITIES, type Severity, type Status } from '../../findings/index.ts';
import { LoadSchedule } from '../../load-schedule.ts';
import {
  columnOf, nameOf, SHEET_NAMES, withUnit, type Change, type Row, type SheetName,
} from '../../schedule/index.ts';
import type { MatchedRows } from '../../schedule/compare/index.ts';
import { SHEETS_WITH_STATUS } from '../model/status-section.ts';
import { compareSchedules, type ScheduleChanges } from './compare-schedules.ts';

/** The figure by which one sees first how a row of a sheet stands; terminals have a status alone. */
const FIGURES: Partial<Record<SheetName, string>> = {
  supplies: 'loading', ways: 'loading', branches: 'used', runs: 'dropRatio', modules: 'current', outputs: 'loading',
  feeds: 'loading', enclosures: 'top',
};

/** How a row stands: its status, and the figure that tells most of it as it is read, with its unit, if it has one. */
export interface RowOutcome {
  readonly status: Status | null;
  readonly figure: string;
}

/** A row that changes have stand otherwise; without a standing before it comes, without one after it goes. */
export interface StandingChange {
  readonly sheet: SheetName;
  readonly tag: string;
  /** Key of the figure; a sheet may have none. */
  readonly key: string | undefined;
  readonly before: RowOutcome | undefined;
  readonly after: RowOutcome | undefined;
}

/** What changes would come to. */
export interface TriedChanges extends ScheduleChanges {
  /** Number of findings of each severity that nobody has accepted, before and after. */
  readonly counts: Readonly<Record<'before' | 'after', Readonly<Record<Severity, number>>>>;
  /** Rows that stand otherwise, in the order of the sheets. */
  readonly standings: readonly StandingChange[];
}

/**
 * Has something looked up in a copy of a schedule in which changes are carried out; the schedule stays as it is. The
 * copy is gone afterwards.
 */
export function onTrial<Found>(
  schedule: LoadSchedule, changes: readonly Change[], look: (trial: LoadSchedule) => Found,
): Found {
  const session = { base: schedule.document.snapshot(), actions: [{ cause: 'act', label: '', changes }] as const };
  const trial = new LoadSchedule(undefined, { session, words: schedule.words });
  try {
    return look(trial);
  } finally {
    trial.dispose();
  }
}

/** What changes would come to, tried on a copy: rows, figures, statuses and findings before and after. */
export function tryChanges(schedule: LoadSchedule, changes: readonly Change[]): TriedChanges {
  return onTrial(schedule, changes, (trial) => triedOn(schedule, trial));
}

/** The same, of a copy in which they were carried out. */
export function triedOn(schedule: LoadSchedule, trial: LoadSchedule): TriedChanges {
  return {
    ...compareSchedules(schedule, trial, sameRows(schedule, trial)),
    counts: { before: openCounts(schedule), after: openCounts(trial) },
    standings: SHEETS_WITH_STATUS.flatMap((sheet) => standingChanges(sheet, schedule, trial)),
  };
}

const openCounts = ({ findings }: LoadSchedule) => {
  const open = findings.filter(({ accepted }) => accepted === undefined);
  return Object.fromEntries(SEVERITIES.map((each) =>
    [each, open.filter(({ severity }) => severity === each).length])) as Record<Severity, number>;
};

/** Rows keep their ids, whatever becomes of their tags. */
function sameRows(before: LoadSchedule, after: LoadSchedule): Record<SheetName, MatchedRows> {
  return Object.fromEntries(SHEET_NAMES.map((sheet): [SheetName, MatchedRows] => {
    const [old, present] = [before.document, after.document];
    return [sheet, {
      pairs: present.rows(sheet).flatMap((row, is) => {
        const was = old.position(sheet, row.id);
        return was < 0 ? [] : [{ before: old.row(sheet, row.id)!, after: row, was, is, isMoved: false }];
      }),
      removed: old.rows(sheet).filter(({ id }) => present.row(sheet, id) === undefined),
      added: present.rows(sheet).filter(({ id }) => old.row(sheet, id) === undefined),
    }];
  })) as Record<SheetName, MatchedRows>;
}

function standingChanges(sheet: SheetName, before: LoadSchedule, after: LoadSchedule): StandingChange[] {
  const key = FIGURES[sheet];
  const figure = (schedule: LoadSchedule, id: number): string => {
    if (key === undefined) return '';
    const value = schedule.value(sheet, id, key);
    const sign = value === null ? '' : schedule.partialSign(sheet, id, key);
    return sign + withUnit(columnOf(sheet, key), value, schedule.words);
  };
  const standing = (schedule: LoadSchedule, { id }: Row): RowOutcome =>
    ({ status: schedule.value(sheet, id, 'status') as Status | null, figure: figure(schedule, id) });
  const change = (old: Row | undefined, present: Row | undefined): StandingChange[] => {
    const was = old && standing(before, old);
    const is = present && standing(after, present);
    return was?.status === is?.status && was?.figure === is?.figure ? []
      : [{ sheet, tag: nameOf(sheet, (present ?? old)!), key, before: was, after: is }];
  };
  const gone = before.rows(sheet).filter(({ id }) => after.document.row(sheet, id) === undefined);
  return [
    ...after.rows(sheet).flatMap((row) => change(before.document.row(sheet, row.id), row)),
    ...gone.flatMap((row) => change(row, undefined)),
  ];
}
