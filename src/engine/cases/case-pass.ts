import { computedColumns, SHEET_NAMES, type SheetName } from '../../schedule/index.ts';
import { valuesOf } from '../argument-reader.ts';
import type { Calculation } from '../calculation.ts';
import { follow } from '../follow.ts';
import { rowsReading } from '../rows-reading.ts';
import {
  inCasesOf, worstOf, type Argument, type PreparedCaseTotal, type PreparedMarked, type PreparedRule, type PreparedTotal,
} from '../schema-rules.ts';
import { gathered } from '../total-groups.ts';
import type { Touched } from '../touched.ts';
import { COVER, coverOf, type CaseFigures } from './case-figures.ts';
import { regroupInCases } from './case-totals.ts';

/**
 * Gathers a total in each case, and takes the worst of them.
 * @param touched it learns where another case is worst.
 * @returns ids of the rows whose total differs from before in any case, or lacks another number of rows.
 */
export function totalInCases(total: PreparedTotal, calculation: Calculation, touched: Touched | undefined): number[] {
  const { document, columns, cases } = calculation;
  const { sheet, key } = total;
  const figures = columns[sheet].caseFigures(key, cases.cases.length, document.capacity(sheet));
  const before = figures.copy();
  const { sums, lacking } = gathered(total, document, columns, cases);
  regroupInCases(total, figures, sums, document, columns, cases);
  const changed: number[] = [];
  for (const { id } of document.rows(sheet)) {
    const isPartial = columns[sheet].setPartial(key, id, lacking[id]!);
    if (figures.differs(before, id) || isPartial) changed.push(id);
  }
  takeWorst(calculation, sheet, key, figures, document.rows(sheet).map(({ id }) => id), touched);
  return changed;
}

/**
 * Works a rule out in each case, and takes the worst of them.
 * @param touched it learns where another case is worst.
 * @returns ids of the rows of which the figure differs from before in any case.
 */
export function ruleInCases(
  { sheet, key, args, rule }: PreparedRule, calculation: Calculation, ids: readonly number[],
  touched: Touched | undefined,
): number[] {
  const { document, columns, cases } = calculation;
  const figures = columns[sheet].caseFigures(key, cases.cases.length, document.capacity(sheet));
  const rows = document.byId(sheet);
  const inCases = args.map((arg) => columns[arg.sheet].inCases.get(arg.key));
  const isTaken = rule.takesUnknown === true;
  const changed = cover(args, sheet, figures, ids, calculation);
  figures.values.forEach((numbers, at) => {
    const values = args.map((arg, place) => {
      const read = valuesOf(arg, sheet, ids, document, columns, isTaken, inCases[place]?.values[at]);
      const instead = rule.inCoveringCase?.[arg.path];
      return instead === undefined || at === 0 ? read
        : ids.map((id, row) => figures.covers[at - 1]![id] === COVER.all ? instead : read[row]!);
    });
    for (const id of follow(rule, ids, rows, values, numbers)) changed.add(id);
  });
  for (const id of takeWorst(calculation, sheet, key, figures, ids, touched)) changed.add(id);
  return [...changed];
}

/** Finds how far each case covers what a rule reads of rows. @returns those of which that differs from before. */
function cover(
  args: readonly Argument[], sheet: SheetName, figures: CaseFigures, ids: readonly number[], { columns }: Calculation,
): Set<number> {
  const read = args.flatMap(({ by, sheet: holder, key }) => {
    const kept = columns[holder].inCases.get(key);
    const targets = by === undefined ? undefined : columns[sheet].targets.get(by)!;
    return kept === undefined ? [] : [{ targets, kept }];
  });
  const changed = new Set<number>();
  figures.covers.forEach((covers, at) => {
    for (const id of ids) {
      let cover: number = COVER.nothing;
      for (const { targets, kept } of read) {
        const target = targets === undefined ? id : targets[id]!;
        if (target >= 0) cover = coverOf(cover, kept.covers[at]![target]!);
      }
      if (covers[id] !== cover) changed.add(id);
      covers[id] = cover;
    }
  });
  return changed;
}

/**
 * Takes the worst case of some rows over into the column itself, and its name into that which tells it.
 * @returns rows of which the figure differs from before.
 */
function takeWorst(
  { columns, cases }: Calculation, sheet: SheetName, key: string, figures: CaseFigures, ids: readonly number[],
  touched: Touched | undefined,
): number[] {
  const [isHighest, named] = [inCasesOf(sheet, key) === 'highest', worstOf(sheet, key)];
  const [differing, renamed]: [number[], number[]] = [[], []];
  for (const id of ids) {
    const { value, place } = figures.worst(id, isHighest);
    if (columns[sheet].setNumber(key, id, value)) differing.push(id);
    if (named === undefined) continue;
    if (columns[sheet].setText(named, id, place === 0 ? null : cases.cases[place - 1]!.name)) renamed.push(id);
  }
  if (named !== undefined) touched?.column(sheet, renamed, named);
  return differing;
}

/** Takes the highest of the cases that bear a mark. */
export function applyMarked(
  { sheet, key, of, marked, covering }: PreparedMarked, { document, columns, cases }: Calculation,
  touched: Touched | undefined, isOther: boolean,
): void {
  const due = touched === undefined || isOther ? document.rows(sheet).map(({ id }) => id)
    : rowsReading(sheet, [{ path: of, sheet, key: of }, { path: key, sheet, key }], touched, document, columns);
  const figures = columns[sheet].inCases.get(of);
  const places = cases.cases.flatMap((each, place) => each[marked] ? [place] : []);
  const changed = due.filter((id) => {
    if (document.row(sheet, id) === undefined) return columns[sheet].setNumber(key, id, NaN);
    const counting = places.filter((place) => covering !== true || figures!.covers[place]![id] === COVER.all);
    const value = counting.length > 0 ? Math.max(...counting.map((place) => figures!.values[place + 1]![id]!))
      : covering === true ? NaN : columns[sheet].numbers.get(of)![id]!;
    const isPartial = columns[sheet].setPartial(key, id, value === value && columns[sheet].isPartial(of, id) ? -1 : 0);
    return columns[sheet].setNumber(key, id, value) || isPartial;
  });
  touched?.column(sheet, changed, key);
}

/** Adds up a figure of all rows of a sheet, for each case as it is in that case. */
export function applyCaseTotal(
  { sheet, key, from, sum }: PreparedCaseTotal, { document, columns, cases }: Calculation,
  touched: Touched | undefined, isOther: boolean,
): void {
  if (touched !== undefined && !isOther && !touched.concerns(from, sum) && !touched.concerns(sheet, key)) return;
  const rows = document.rows(from);
  const figures = columns[from].inCases.get(sum);
  const changed = document.rows(sheet).flatMap(({ id }) => {
    const place = cases.cases.findIndex((each) => each.id === id);
    let [total, lacking] = [place < 0 ? NaN : 0, 0];
    for (const row of place < 0 ? [] : rows) {
      const value = figures!.values[place + 1]![row.id]!;
      if (value === value) total += value;
      if (value !== value || columns[from].isPartial(sum, row.id)) lacking += 1;
    }
    const differs = columns[sheet].setNumber(key, id, total);
    return columns[sheet].setPartial(key, id, lacking) || differs ? [id] : [];
  });
  touched?.column(sheet, changed, key);
}

/** Forgets what is kept of cases when the last of them is gone. */
export function forgetCases({ document, columns }: Calculation, touched: Touched | undefined): void {
  for (const sheet of SHEET_NAMES) {
    columns[sheet].inCases.clear();
    for (const { key, worstOf: of } of computedColumns(sheet)) {
      if (of === undefined) continue;
      const named = document.rows(sheet).flatMap(({ id }) => columns[sheet].setText(key, id, null) ? [id] : []);
      touched?.column(sheet, named, key);
    }
  }
}

