import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Finding } from '../../src/findings/index.ts';
import {
  columnLetters, SCHEMA, setCells, type Cells, type CellValue, type Content, type SheetName,
} from '../../src/schedule/index.ts';

/** A schedule with these rows. */
export function scheduleOf(sheets: Content['sheets']): LoadSchedule {
  return new LoadSchedule({ details: {}, sheets });
}

type Sheets = Content['sheets'];

/**
 * The same sheets with a way for each run that has a `protection`, on its rail and named after it: a breaker B that
 * acts at `trip` times that, 5 unless the run says otherwise.
 */
export function withWays(sheets: Sheets): Sheets {
  const ways: Cells[] = [...sheets.ways ?? []];
  const runs = (sheets.runs ?? []).map(({ protection = null, trip = 5, ...run }): Cells => {
    if (protection === null) return run;
    ways.push({ way: `F-${String(run.run)}`, rail: run.rail ?? null, kind: 'B', rated: protection, trip });
    return { ...run, way: `F-${String(run.run)}` };
  });
  return { ...sheets, ways, runs };
}

/** Id of the row at a place of a sheet, counted from 0. */
export function idAt(schedule: LoadSchedule, sheet: SheetName, at = 0): number {
  return schedule.rows(sheet)[at]!.id;
}

/** What a cell is worth, by the place of its row. */
export function valueAt(schedule: LoadSchedule, sheet: SheetName, at: number, key: string): CellValue {
  return schedule.value(sheet, idAt(schedule, sheet, at), key);
}

/** What was found in the row at a place. */
export function findingsAt(schedule: LoadSchedule, sheet: SheetName, at = 0): readonly Finding[] {
  return schedule.findingsOf(sheet, idAt(schedule, sheet, at));
}

/** Gives cells of the row at a place new values, as one action. */
export function enter(schedule: LoadSchedule, sheet: SheetName, at: number, cells: Cells): void {
  const id = idAt(schedule, sheet, at);
  schedule.act(
    'Entry', setCells(schedule.document, Object.entries(cells).map(([key, value]) => ({ sheet, id, key, value })))
  );
}

/**
 * Types a formula into a cell, as a person does.
 * @returns what is wrong with it; `undefined` when it stands there now.
 */
export function typeFormula(
  schedule: LoadSchedule, sheet: SheetName, at: number, key: string, text: string,
): string | undefined {
  const read = schedule.checkFormula(sheet, key, text);
  if (!read.ok) return read.problem;
  enter(schedule, sheet, at, { [key]: read.value });
  return undefined;
}

/** A cell as a formula names it: `supplies!Q1` for the connected current in the first row. */
export function reference(sheet: SheetName, key: string, row = 1): string {
  return `${sheet}!${columnLetters(SCHEMA[sheet].columns.findIndex((column) => column.key === key))}${row}`;
}
