import { SEVERITIES, STANDINGS, type Status } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { isBlank, isStatus, SCHEMA, tagOf, type CellValue, type Row, type SheetName } from '../../schedule/index.ts';
import { matchRows } from '../../schedule/compare/index.ts';
import { isSameValue } from './same-value.ts';

/** The figures by which two ways to do it are compared, by sheet in the order in which they are told. */
export const OUTCOME_FIGURES = {
  supplies: ['usable', 'demand', 'loading', 'spare', 'worstCase', 'batteryNeeded'],
  ways: ['demand', 'loading', 'available', 'worstCase'],
  branches: ['nodes', 'free', 'busDemand', 'cableLength'],
  runs: ['current', 'endVoltage', 'voltageMargin', 'carries', 'faultCurrent', 'worstCase'],
  modules: ['current', 'headroom'],
  outputs: ['current', 'loading'],
  feeds: ['demand', 'loading', 'inrush', 'worstCase'],
  enclosures: ['top', 'freeWidth'],
  cases: ['demand', 'energy'],
  devices: ['demand', 'voltageMargin'],
} as const satisfies Partial<Record<SheetName, readonly string[]>>;

/** A figure of a row in both; `null` where it is not known, or where the row is not there. */
export interface OutcomeFigure {
  readonly key: string;
  readonly before: CellValue;
  readonly after: CellValue;
  /** What it is more by afterwards, in the unit of the column; `null` where one is not known, or no number. */
  readonly difference: number | null;
  /** Signs of figures that lack something. */
  readonly signs: readonly ['≥' | '≤' | '', '≥' | '≤' | ''];
  readonly isSame: boolean;
}

/** How a row stands before and after, and the figures by which it is compared. */
export interface RowComparison {
  readonly sheet: SheetName;
  readonly tag: string;
  /** Number of the row, from 1: afterwards, or before where it is gone. */
  readonly row: number;
  /** `undefined` where the row is not there, `null` where its sheet has no status and nothing was found in it. */
  readonly before: Status | null | undefined;
  readonly after: Status | null | undefined;
  readonly figures: readonly OutcomeFigure[];
  /** Whether status and figures are the same in both. */
  readonly isSame: boolean;
}

/**
 * Compares what two schedules come to: every supply, way, branch, run, module, output, feed, enclosure, case and
 * device row that one of them has, those first that stand worst afterwards, then as the sheets have them; what is gone
 * stands last. Rows are matched by their tags, then by what they hold.
 */
export function compareOutcomes(before: LoadSchedule, after: LoadSchedule): RowComparison[] {
  const sheets = Object.keys(OUTCOME_FIGURES) as (keyof typeof OUTCOME_FIGURES)[];
  const rank = ({ after: status }: RowComparison) => status === undefined ? STANDINGS.length + 1
    : status === null ? STANDINGS.length : STANDINGS.indexOf(status);
  return sheets.flatMap((sheet) => compareSheet(sheet, before, after))
    .sort((one, other) => rank(one) - rank(other));
}

function compareSheet(sheet: keyof typeof OUTCOME_FIGURES, before: LoadSchedule, after: LoadSchedule): RowComparison[] {
  const matched = matchRows(sheet, before.rows(sheet), after.rows(sheet));
  const olds = new Map(matched.pairs.map((pair) => [pair.after.id, pair.before]));
  const there = after.rows(sheet).filter((row) => !isBlank(row) || olds.has(row.id))
    .map((row) => compareRow(sheet, { before, after }, olds.get(row.id), row));
  const gone = matched.removed.filter((row) => !isBlank(row))
    .map((row) => compareRow(sheet, { before, after }, row, undefined));
  return [...there, ...gone];
}

function compareRow(
  sheet: keyof typeof OUTCOME_FIGURES, { before, after }: Readonly<Record<'before' | 'after', LoadSchedule>>,
  old: Row | undefined, present: Row | undefined,
): RowComparison {
  const sides = [[before, old], [after, present]] as const;
  const figures = OUTCOME_FIGURES[sheet].map((key): OutcomeFigure => {
    const [was, is] = sides.map(([schedule, row]) => row === undefined ? null : schedule.value(sheet, row.id, key)) as
      [CellValue, CellValue];
    const signs = sides.map(([schedule, row]) => row === undefined ? '' : schedule.partialSign(sheet, row.id, key)) as
      unknown as OutcomeFigure['signs'];
    return {
      key, before: was, after: is, signs, isSame: isSameValue(was, is) && signs[0] === signs[1],
      difference: typeof was === 'number' && typeof is === 'number' ? is - was : null,
    };
  });
  const [stood, stands] = sides.map(([schedule, row]) =>
    row === undefined ? undefined : statusOf(schedule, sheet, row.id));
  const position = present === undefined ? before.document.position(sheet, old!.id)
    : after.document.position(sheet, present.id);
  return {
    sheet, tag: tagOf(sheet, (present ?? old)!), row: position + 1, before: stood, after: stands, figures,
    isSame: stood === stands && figures.every(({ isSame }) => isSame),
  };
}

/** The status of a row; of one whose sheet has none the worst that was found in it, and `null` where nothing was. */
function statusOf(schedule: LoadSchedule, sheet: SheetName, id: number): Status | null {
  if (SCHEMA[sheet].columns.some(isStatus)) return schedule.value(sheet, id, 'status') as Status | null;
  const found = new Set(schedule.findingsOf(sheet, id).map(({ severity }) => severity));
  const worst = SEVERITIES.find((severity) => found.has(severity));
  return worst === 'note' ? null : worst ?? null;
}
