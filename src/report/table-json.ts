import type { Finding } from '../findings/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { SCHEMA, SHEET_NAMES, type CellValue, type Details, type SheetName } from '../schedule/index.ts';
import type { ExplainedFigure } from './explained-figure.ts';

/** A finding as programs read it: its row is named by number and tag. */
export type TableFinding = Omit<Finding, 'id'>;

/** A schedule with its results, for programs. */
export interface TableJson {
  readonly details: Details;
  /** Every key of every row: inputs with their defaults, formulas worked out, results unrounded; unknown is `null`. */
  readonly sheets: Partial<Record<SheetName, readonly Readonly<Record<string, CellValue>>[]>>;
  readonly findings: readonly TableFinding[];
  /** Figures that somebody asked to have explained. */
  readonly explain?: readonly ExplainedFigure[];
}

/**
 * The whole schedule as plain data.
 * @param only the sheet that is given, with the findings on it; by default all of them.
 * @param explain figures to add with their explanations.
 */
export function tableJson(schedule: LoadSchedule, only?: SheetName, explain?: readonly ExplainedFigure[]): TableJson {
  const sheets = Object.fromEntries(SHEET_NAMES.filter((sheet) => only === undefined || sheet === only)
    .map((sheet) => [sheet, rowsOf(schedule, sheet)]));
  const findings = schedule.findings.filter(({ sheet }) => only === undefined || sheet === only)
    .map(({ id: _id, ...finding }) => finding);
  return { details: schedule.document.details, sheets, findings, ...(explain === undefined ? {} : { explain }) };
}

function rowsOf(schedule: LoadSchedule, sheet: SheetName): Record<string, CellValue>[] {
  return schedule.rows(sheet).map(({ id }) =>
    Object.fromEntries(SCHEMA[sheet].columns.map(({ key }) => [key, schedule.value(sheet, id, key)])));
}
