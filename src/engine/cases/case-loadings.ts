import { exceeds } from '../../electrical/index.ts';
import { isBlank, type ScheduleDocument } from '../../schedule/index.ts';
import type { Workbook } from '../workbook.ts';

/** Sheets whose rows are loaded otherwise in each case. */
export const LOADED_SHEETS = ['supplies', 'ways', 'feeds', 'runs'] as const;
export type LoadedSheet = (typeof LOADED_SHEETS)[number];

/** What is asked of a row of each sheet, and what it may be asked for. */
export const LOADING_OF: Readonly<Record<LoadedSheet, { readonly demand: string; readonly limit: string }>> = {
  supplies: { demand: 'demand', limit: 'usable' }, ways: { demand: 'demand', limit: 'rated' },
  feeds: { demand: 'demand', limit: 'rated' }, runs: { demand: 'current', limit: 'carries' },
};

/** How a row is loaded in one case. */
export interface CaseLoading {
  /** Place of the case among the cases, -1 for the diversity of rows alone. */
  readonly place: number;
  /** [A]; `null` where it is not known. */
  readonly demand: number | null;
  /** Demand over what may be used. */
  readonly loading: number | null;
  /** By the demand alone: over what may be used, or the fuse; above the target; not wholly known. */
  readonly state: 'over' | 'near' | 'incomplete' | 'ok';
}

/** How a supply, way, feed or run is loaded in each case. */
export interface RowLoading {
  readonly sheet: LoadedSheet;
  readonly id: number;
  /** What may be used [A]; `null` where it is not known. */
  readonly limit: number | null;
  /** Rating of the fuse of a supply, where that is less [A]. */
  readonly fuse: number | null;
  /** `null` for none. */
  readonly target: number | null;
  /** What is asked of it is known in part only: it is at least what is shown. */
  readonly isPartial: boolean;
  /** By the diversity of rows alone; `undefined` where every case says of all that is on it how much is on. */
  readonly own: CaseLoading | undefined;
  readonly cases: readonly CaseLoading[];
  /** The worst of these; of equals the diversity of rows, then the first case. */
  readonly worst: CaseLoading;
}

/** How a row is loaded in each case. A run that is calculated with everything at once is the same in all of them. */
export function loadingOf(book: Workbook, sheet: LoadedSheet, id: number): RowLoading {
  const keys = LOADING_OF[sheet];
  const number = (key: string) => {
    const value = book.number(sheet, id, key);
    return Number.isNaN(value) ? null : value;
  };
  const limit = number(keys.limit);
  const given = sheet === 'supplies' ? number('fuse') : null;
  const fuse = given !== null && (limit === null || given < limit) ? given : null;
  const target = sheet === 'runs' ? null : number('target');
  const isPartial = book.isPartial(sheet, id, keys.demand) || book.isPartial(sheet, id, keys.limit);
  const inCase = (place: number): CaseLoading => {
    const demand = book.inCase(sheet, id, keys.demand, place);
    const isKnown = demand !== null && limit !== null;
    const isOver = demand !== null && [limit, fuse].some((most) => most !== null && exceeds(demand, most));
    const isNear = isKnown && target !== null && exceeds(demand, limit * target);
    return {
      place, demand, loading: isKnown && limit > 0 ? demand / limit : null,
      state: isOver ? 'over' : isNear ? 'near' : !isKnown || isPartial ? 'incomplete' : 'ok',
    };
  };
  const own = book.countsOwn(sheet, id, keys.demand) ? inCase(-1) : undefined;
  const cases = book.cases.cases.map((_, place) => inCase(place));
  const worst = [...own === undefined ? [] : [own], ...cases].reduce((most, each) =>
    most.demand !== null && (each.demand === null || exceeds(each.demand, most.demand)) ? each : most);
  return { sheet, id, limit, fuse, target, isPartial, own, cases, worst };
}

/**
 * How every supply, way, feed and run at basis demand is loaded in each case, the worst first. Bus branches are not
 * among them: their nodes are the same in every case.
 */
export function caseLoadings(
  document: ScheduleDocument, book: Workbook, sheets: readonly LoadedSheet[] = LOADED_SHEETS,
): RowLoading[] {
  const rows = sheets.flatMap((sheet) => document.rows(sheet)
    .filter((row) => !isBlank(row) && (sheet !== 'runs' || row.cells.basis === 'demand'))
    .map(({ id }) => loadingOf(book, sheet, id)));
  return rows.sort((one, other) => worseFirst(one.worst, other.worst));
}

/**
 * The order of loadings, the worst first: what is over a limit, which a supply may be by its fuse alone, before all
 * else; what is not known last.
 */
export function worseFirst(one: CaseLoading, other: CaseLoading): number {
  return Number(other.state === 'over') - Number(one.state === 'over')
    || (other.loading ?? -1) - (one.loading ?? -1);
}
