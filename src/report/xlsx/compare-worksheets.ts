import type { Workbook, WorksheetCell } from '../../exchange/workbook/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnLetters, grouped, type CellValue } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import { isSameValue } from '../changes/same-value.ts';
import { buildReport, type Report, type ReportScope } from '../model/index.ts';
import { linesThatDiffer, type ShownLine } from '../verify/match-lines.ts';
import { otherDigest, otherText, UNVERIFIED, type Verification } from '../verify/verification.ts';
import { CellStyles } from './cell-styles.ts';
import { LiveFormulas } from './live-formulas.ts';
import { worksheetsOf } from './load-table-xlsx.ts';
import type { Worksheet } from './package-parts.ts';
import { EMBEDDED_SHEET } from './report-sheets.ts';

/**
 * Makes all worksheets of a load table anew of the schedule that the workbook carries and compares them cell by cell:
 * figures, digest, findings and sentences. Inputs that were edited are told by `editsOf`, and change figures beside.
 * @param schedule that schedule, in the language in which the worksheets were written.
 * @param words the language of the sentences.
 */
export function compareWorksheets(
  workbook: Workbook, schedule: LoadSchedule, { since, ...options }: ReportScope, words: Words,
): Verification {
  const report = buildReport(schedule, options);
  const sheets = worksheetsOf(schedule, report, new CellStyles(), new LiveFormulas(schedule));
  const differs = sheets.filter(({ name }) => name !== EMBEDDED_SHEET)
    .flatMap((sheet) => cellsThatDiffer(workbook, sheet, report, words));
  const names = new Set(sheets.map(({ name }) => name));
  const added = workbook.sheets.filter((name) => !names.has(name));
  return {
    differs: [...differs, ...since ? [] : added.map((name) => words.say('{sheet}: the worksheet is none of the load table.', { sheet: name }))],
    unverified: since ? [words.say(UNVERIFIED.since)] : [],
  };
}

function cellsThatDiffer(workbook: Workbook, sheet: Worksheet, report: Report, words: Words): string[] {
  const { name } = sheet;
  const held = workbook.cells(name);
  if (held === undefined) return [words.say('{sheet}: the worksheet is not in the workbook.', { sheet: name })];
  if ('ok' in held) return held.problems.map(({ message }) => `${name}: ${message}`);
  // What was entered into the title block is compared with the inputs.
  const entered = new Set<CellValue>(report.details.map(({ title }) => title));
  const isOurs = ({ texts }: ShownRow) => !entered.has([...texts.values()][0] ?? null);
  return linesThatDiffer(shownRows(held).filter(isOurs), dueRows(sheet).filter(isOurs)).flatMap(({ shown, due }) => {
    const columns = new Set([...shown?.texts.keys() ?? [], ...due?.texts.keys() ?? []]);
    return [...columns].flatMap((column) => {
      const [is, should] = [shown?.texts.get(column) ?? null, due?.texts.get(column) ?? null];
      if (isSameValue(is, should)) return [];
      if (should === report.issue.digest) return [otherDigest(words)];
      const cell = `${columnLetters(column)}${(shown ?? due)!.number}`;
      return [otherText(`${name}, ${cell}`, String(is ?? ''), String(should ?? ''), words)];
    });
  });
}

/** A row of a worksheet, with its number from 1; cells without anything are left out. */
interface ShownRow extends ShownLine {
  readonly number: number;
}

function shownRows(held: readonly WorksheetCell[]): ShownRow[] {
  return [...grouped(held, ({ row }) => row)].flatMap(([row, cells]) =>
    shownRow(row, cells.map(({ column, value }) => [column, value])));
}

function dueRows({ rows }: Worksheet): ShownRow[] {
  return rows.flatMap((cells, row) => shownRow(row, cells.map(({ value }, column) => [column, value ?? null])));
}

function shownRow(row: number, cells: readonly (readonly [number, CellValue])[]): ShownRow[] {
  const texts = new Map(cells.map(([column, value]) => [column, asShown(value)] as const)
    .filter(([, value]) => value !== null));
  return texts.size === 0 ? [] : [{ part: '', number: row + 1, texts }];
}

/** A value as it is compared: texts without the ends and line ends that programs change. */
function asShown(value: CellValue): CellValue {
  return typeof value === 'string' ? value.replace(/\s+/g, ' ').trim() || null : value;
}
