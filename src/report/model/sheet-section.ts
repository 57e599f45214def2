import type { LoadSchedule } from '../../load-schedule.ts';
import { isBlank, SCHEMA, type Column, type Row, type SheetName } from '../../schedule/index.ts';
import { numberCell, scheduleCell, scheduleColumn } from './cells.ts';
import type { ReportSection, ReportTable } from './report.ts';

/** The rows of a sheet in which something is entered. */
export function filledRows(schedule: LoadSchedule, sheet: SheetName): readonly Row[] {
  return schedule.rows(sheet).filter((row) => !isBlank(row));
}

/**
 * The columns of a sheet that are printed: those with a value in one of the rows, apart from those that hold nothing but their
 * default, which the assumptions name.
 */
export function printedColumns(schedule: LoadSchedule, sheet: SheetName, rows: readonly Row[]): Column[] {
  return SCHEMA[sheet].columns.filter((column) => rows.some(({ id }) =>
    column.role === 'input' && column.default !== undefined
      ? schedule.isOwn(sheet, id, column.key) : schedule.value(sheet, id, column.key) !== null));
}

/** Some rows of a sheet as a table, each with its number on the sheet. */
export function rowsTable(
  schedule: LoadSchedule, sheet: SheetName, rows: readonly Row[], columns: readonly Column[], locale: string,
): ReportTable {
  return {
    columns: [{ title: 'Row', kind: 'number' }, ...columns.map(scheduleColumn)],
    rows: rows.map(({ id }) => ({
      cells: [
        numberCell(String(schedule.document.position(sheet, id) + 1)),
        ...columns.map((column) => scheduleCell(schedule, sheet, id, column, locale)),
      ],
    })),
  };
}

/** A sheet as it is; `undefined` when it has no rows. */
export function sheetSection(schedule: LoadSchedule, sheet: SheetName, locale: string): ReportSection | undefined {
  const rows = filledRows(schedule, sheet);
  if (rows.length === 0) return undefined;
  const columns = printedColumns(schedule, sheet, rows);
  return { name: sheet, title: SCHEMA[sheet].title, sentences: [], tables: [rowsTable(schedule, sheet, rows, columns, locale)] };
}
