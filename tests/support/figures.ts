import type { LoadSchedule } from '../../src/load-schedule.ts';
import {
  isNumeric, SCHEMA, SHEET_NAMES, type CellValue, type Column, type SheetName,
} from '../../src/schedule/index.ts';

/** What a schedule comes to, for being held against what it came to earlier. */
export interface Figures {
  /** What each number and each column that is worked out is worth, row by row. */
  readonly sheets: Readonly<Record<SheetName, readonly Readonly<Record<string, CellValue>>[]>>;
  /** Findings that are accepted: sheet, number of the row from 1, key, rule. */
  readonly accepted: readonly string[];
}

/** @param has whether a column counts; all of them unless said otherwise. */
export function figuresOf(
  schedule: LoadSchedule, has: (sheet: SheetName, column: Column) => boolean = () => true
): Figures {
  const sheets = Object.fromEntries(SHEET_NAMES.map((sheet) => {
    const columns =
      SCHEMA[sheet].columns.filter((column) => (column.role === 'computed' || isNumeric(column)) && has(sheet, column));
    const rowOf = (id: number) => Object.fromEntries(columns.map(({ key }) => [key, schedule.value(sheet, id, key)]));
    return [sheet, schedule.rows(sheet).map(({ id }) => rowOf(id))];
  })) as unknown as Figures['sheets'];
  const accepted = schedule.findings.filter((finding) => finding.accepted !== undefined)
    .map(({ sheet, row, key, rule }) => `${sheet} ${row} ${key} ${rule}`);
  return { sheets, accepted };
}
