import { read as readFile, utils, type WorkBook, type WorkSheet } from '@e965/xlsx';
import { HyperFormula, type RawCellContent } from 'hyperformula';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, loadTableXlsx } from '../../src/report/index.ts';
import { LiveFormulas } from '../../src/report/xlsx/live-formulas.ts';
import { STATE_WORDS } from '../../src/report/model/state-words.ts';
import { columnOf, isBlank, SCHEMA, SHEET_NAMES, type CellValue, type Column, type SheetName } from '../../src/schedule/index.ts';

/** The load table of a schedule as a workbook. */
export const writeWorkbook = async (schedule: LoadSchedule): Promise<Uint8Array> =>
  loadTableXlsx(schedule, buildReport(schedule, { generated: '2026-11-25' }));
const isShown = (schedule: LoadSchedule, sheet: SheetName) => schedule.rows(sheet).length > 0;

/** The workbook as another reader of ECMA-376 understands it. */
export const openWorkbook = (bytes: Uint8Array): WorkBook =>
  readFile(bytes, { type: 'array', cellFormula: true, cellNF: true, cellStyles: true });

/** Cells of a worksheet as a spreadsheet engine takes them. */
function contents(sheet: WorkSheet): RawCellContent[][] {
  const { e: end } = utils.decode_range(sheet['!ref']!);
  return Array.from({ length: end.r + 1 }, (_row, r) => Array.from({ length: end.c + 1 }, (_column, c) => {
    const cell = sheet[utils.encode_cell({ r, c })] as { f?: string; v?: RawCellContent } | undefined;
    // INT goes down in every spreadsheet; that of this engine goes towards zero (hyperformula 3.5.0).
    return cell?.f === undefined ? cell?.v === '' ? null : typeof cell?.v === 'string' ? `'${cell.v}` : cell?.v
      ?? null : `=${cell.f.replace(/\bINT\(/g, 'FLOOR.MATH(')}`;
  }));
}

/** The sheets of the schedule worked out by a spreadsheet engine from nothing but what stands in the file. */
export function recalculate(schedule: LoadSchedule, bytes: Uint8Array): HyperFormula {
  const { Sheets } = openWorkbook(bytes);
  const titles = SHEET_NAMES.filter((name) => isShown(schedule, name))
    .map((name) => schedule.words.text(SCHEMA[name].title));
  const ofCases = ['Load table', 'Factors by case', 'Demand by case'].map((name) => schedule.words.say(name)).filter((name) => name in Sheets);
  const sheets = [...titles, ...ofCases].map((title) => [title, contents(Sheets[title]!)] as const);
  // Within SUMPRODUCT every spreadsheet works columns out cell by cell; this engine does when it is told to.
  return HyperFormula.buildFromSheets(
    Object.fromEntries(sheets), { licenseKey: 'gpl-v3', smartRounding: false, useArrayArithmetic: true });
}

/**
 * What a limit that no other formula reads is written as: rounded down to the decimals of its column, up for a need.
 */
function asWritten(sheet: SheetName, column: Column, value: CellValue): CellValue {
  const isRead = ['supplies.usable', 'supplies.batteryNeeded', 'ways.available', 'outputs.rating'].includes(`${sheet}.${column.key}`);
  if (typeof value !== 'number' || column.role === 'input' || column.safeSide === undefined || isRead) return value;
  const steps = 10 ** (column.decimals ?? 2);
  return column.safeSide === 'down'
    ? Math.floor(value * steps + 1e-9) / steps : Math.ceil(value * steps - 1e-9) / steps;
}

/** Whether two cases that are named as the worst of a figure are equally bad but for rounding: sums differ in order. */
function areAsBad(
  schedule: LoadSchedule, sheet: SheetName, id: number, column: Column, named: readonly unknown[],
): boolean {
  const figure = column.role === 'computed' ? column.worstOf : undefined;
  if (figure === undefined) return false;
  const names = schedule.cases.cases.map((each) => schedule.document.row('cases', each.id)!.cells.case);
  const places = named.map((name) => name === null ? -1 : names.indexOf(name as CellValue));
  if (places.some((place, at) => place < 0 && named[at] !== null)) return false;
  const [one, other] = places.map((place) => schedule.inCase(sheet, id, figure, place));
  return typeof one === 'number' && typeof other === 'number' && Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other));
}

/** What stands in a cell of a worksheet that was worked out, by its title; rows and columns from 0. */
export interface WorkedOut {
  value(title: string, row: number, column: number): unknown;
  formula(title: string, row: number, column: number): string | undefined;
}

/** The cells of a spreadsheet engine. */
const cellsOf = (engine: HyperFormula): WorkedOut => ({
  value: (title, row, col) => engine.getCellValue({ sheet: engine.getSheetId(title)!, row, col }),
  formula: (title, row, col) => engine.getCellFormula({ sheet: engine.getSheetId(title)!, row, col }),
});

/**
 * Every figure of the workbook that is not the schedule's, to 1e-9; limits as they are rounded to their safe side.
 * After edits a figure may say that it is to be recalculated, or be marked as at least or at most so much.
 */
export function differencesAfterEdits(schedule: LoadSchedule, worked: HyperFormula | WorkedOut): unknown[] {
  const formulas = new LiveFormulas(schedule);
  const cells = worked instanceof HyperFormula ? cellsOf(worked) : worked;
  return differences(schedule, worked).filter((each) => {
    const [sheet, row, key, found, expected, formula] = each as [SheetName, number, string, unknown, unknown, string?];
    const [mark, column] = [formulas.markPlace(sheet, key), columnOf(sheet, key)];
    const isMarked = mark !== undefined && cells.value(schedule.words.text(SCHEMA[sheet].title), row, mark) === 1;
    if (isMarked && column.role === 'computed' && typeof found === 'number' && typeof expected === 'number') {
      return column.whenPartial === '≥' ? found > expected : found < expected;
    }
    // An input that was emptied shows its default in the schedule alone.
    return found !== schedule.words.say('recalculate') && !(columnOf(sheet, key).role === 'input' && formula === undefined);
  });
}

/** The same of a workbook in which nothing was edited. */
export function differences(schedule: LoadSchedule, worked: HyperFormula | WorkedOut): unknown[] {
  const cells = worked instanceof HyperFormula ? cellsOf(worked) : worked;
  return SHEET_NAMES.filter((name) => isShown(schedule, name)).flatMap((sheet) => {
    const { words } = schedule;
    const title = words.text(SCHEMA[sheet].title);
    return schedule.rows(sheet).flatMap((row, place) => SCHEMA[sheet].columns.flatMap((column, index) => {
      const found = cells.value(title, place + 1, index);
      const worth = isBlank(row) ? null : schedule.value(sheet, row.id, column.key);
      const expected = column.role === 'computed' && column.status === true
        && worth !== null ? words.say(STATE_WORDS[worth as 'ok'])
        : column.kind === 'choice' ? words.text(String(worth ?? '')) || null
        : typeof worth === 'boolean' ? words.say(worth ? 'yes' : 'no') : asWritten(sheet, column, worth);
      const value = found === '' || found === undefined ? null : found;
      const isSame = typeof value === 'number' && typeof expected === 'number'
        ? Math.abs(value - expected) <= 1e-9 * Math.max(1, Math.abs(expected)) : value === expected;
      return isSame || areAsBad(schedule, sheet, row.id, column, [value, expected]) ? []
        : [[sheet, place + 1, column.key, value, expected, cells.formula(title, place + 1, index)]];
    }));
  });
}

/** Figures that are marked as less than the whole where the schedule has them whole, or the other way round. */
export function marksThatDiffer(schedule: LoadSchedule, worked: HyperFormula | WorkedOut): unknown[] {
  const formulas = new LiveFormulas(schedule);
  const cells = worked instanceof HyperFormula ? cellsOf(worked) : worked;
  const all = SHEET_NAMES.flatMap((sheet) => formulas.marked(sheet).map(({ key }) => [sheet, key] as const));
  return all.flatMap(([sheet, key]) => schedule.rows(sheet).flatMap(({ id }, place) => {
    const [title, mark] = [schedule.words.text(SCHEMA[sheet].title), formulas.markPlace(sheet, key)!];
    const found = cells.value(title, place + 1, mark);
    const expected = schedule.isPartial(sheet, id, key) ? 1 : 0;
    return found === expected || schedule.value(sheet, id, key) === null ? []
      : [[sheet, place + 1, key, found, expected, cells.formula(title, place + 1, mark)]];
  }));
}
