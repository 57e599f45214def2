import type { Workbook } from '../engine/index.ts';
import { NO_WORKING_VOLTAGE, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';
import type { RowReader } from './row-reader.ts';

/** Names of cases for rows of a sheet. */
export type CaseNames = Gathering<string>;

type Read = readonly [SheetName, string];

/** What names of cases follow from, besides figures. */
const OF_CASES: readonly Read[] = (['case', 'standby'] as const).map((key) => ['cases', key]);

/** @param placeOf place of the case that is named for a row; -1 and `undefined` for none. */
const naming = (
  sheet: SheetName, reads: readonly Read[], placeOf: (book: Workbook, id: number) => number | undefined,
): CaseNames => ({
  sheet, reads: [...reads, ...OF_CASES],
  gather: (document: ScheduleDocument, book: Workbook) => new Map(document.rows(sheet).flatMap(({ id }) => {
    const place = placeOf(book, id) ?? -1;
    return place < 0 ? [] : [[id, book.cases.cases[place]!.name] as const];
  })),
});

const worst = (sheet: SheetName, key: string, isHighest?: true) =>
  naming(sheet, [[sheet, key]], (book, id) => book.worstPlace(sheet, id, key, isHighest));

/** The first case in which a run has no working voltage, unless it has none by the diversity of its rows either. */
function collapsedPlace(book: Workbook, id: number): number {
  if (book.outcome('runs', id) !== NO_WORKING_VOLTAGE) return -1;
  const collapsed = [-1, ...book.cases.cases.keys()].filter((place) => book.inCase('runs', id, 'endVoltage', place) === null);
  const isAnyway = collapsed[0] === -1 && (book.countsOwn('runs', id, 'endVoltage') || collapsed.length > book.cases.cases.length);
  return isAnyway ? -1 : collapsed.find((place) => place >= 0) ?? -1;
}

/** Of the cases marked standby the one that asks most of a supply; without one that which asks most of all. */
function standbyPlace(book: Workbook, id: number): number | undefined {
  const marked = book.cases.cases.flatMap(({ standby }, place) => standby ? [place] : []);
  if (marked.length === 0) return book.worstPlace('supplies', id, 'demand');
  const demand = (place: number) => book.inCase('supplies', id, 'demand', place) ?? -1;
  return marked.reduce((most, place) => demand(place) > demand(most) ? place : most);
}

/**
 * In which case a figure of a row is worst, by what it follows from; nothing where that is so by the diversity of its
 * rows.
 */
export const WORST_IN = {
  demand: {
    supplies: worst('supplies', 'demand'), ways: worst('ways', 'demand'), feeds: worst('feeds', 'demand'),
  },
  standby: naming('supplies', [['supplies', 'demand']], standbyPlace),
  /** How warm it is where a supply stands. */
  warmth: {
    enclosures: worst('enclosures', 'supplyLoss'),
    supplies: naming('supplies', [['supplies', 'enclosure'], ['enclosures', 'supplyLoss']], (book, id) => {
      const enclosure = book.target('supplies', id, 'enclosure');
      return enclosure < 0 ? undefined : book.worstPlace('enclosures', enclosure, 'supplyLoss');
    }),
  },
  available: { ways: worst('ways', 'available'), runs: worst('runs', 'available') },
  /** Where a supply has most left for a short circuit, its own breaker may act too. */
  mostAvailable: worst('ways', 'available', true),
  runs: {
    current: worst('runs', 'current'), drop: worst('runs', 'drop'), margin: worst('runs', 'voltageMargin'),
    openMargin: worst('runs', 'openMargin'), collapse: naming('runs', [['runs', 'endVoltage']], collapsedPlace),
  },
} as const;

/** A sentence, begun with the case in which what it says is as bad as that. */
export function inItsCase(said: string, row: RowReader, names: CaseNames | undefined): string {
  const worst = names === undefined ? undefined : row.fact(names);
  return worst === undefined ? said : row.say('In the case “{worst}”: {said}', { worst, said });
}

/** What names the case of a short circuit, where what its supply has left for it is all that it draws [A]. */
export const limitedBy = (row: RowReader, fault: number): CaseNames | undefined =>
  row.number('available') === fault ? WORST_IN.available.runs : undefined;
