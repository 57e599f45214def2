import { writeSchedule } from '../../exchange/index.ts';
import { isInSight } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { SCHEMA, SHEET_NAMES } from '../../schedule/index.ts';
import { withoutVariants } from '../digest/index.ts';
import type { Report } from '../model/index.ts';
import { CellStyles } from './cell-styles.ts';
import { LiveFormulas } from './live-formulas.ts';
import { embeddedSheet, frontSheet, sectionSheet } from './report-sheets.ts';
import { scheduleSheet } from './schedule-sheet.ts';
import { packageParts, type DefinedName, type Worksheet } from './package-parts.ts';

/** Parts of the load table that have a worksheet of their own beside the sheets of the schedule. */
const SECTIONS: readonly string[] = [
  'revisions', 'changes', 'panels', 'findings', 'accepted', 'cases', 'notes', 'assumptions', 'checklist',
  'measuring', 'commissioning',
];

/**
 * The load table as a workbook (ECMA-376) whose figures are formulas, so that whoever receives it can change a count
 * and see the totals follow. It carries the schedule. Of one panel, rows and sheets of others are hidden: totals count
 * them.
 */
export async function loadTableXlsx(schedule: LoadSchedule, report: Report): Promise<Uint8Array> {
  const { zipSync } = await import('fflate');
  const styles = new CellStyles();
  const formulas = new LiveFormulas(schedule);
  const sheets = worksheetsOf(schedule, report, styles, formulas);
  const defined = sheetsWithRows(schedule).flatMap((sheet) => SCHEMA[sheet].columns.map(({ key }): DefinedName => (
    { name: `${sheet}.${key}`, range: formulas.range(sheet, key)! }
  )));
  // The time of a file in a package cannot be before 1980; a fixed one makes the same schedule the same file.
  return zipSync(packageParts(sheets, defined, styles), { mtime: '1980-01-02' });
}

const sheetsWithRows = (schedule: LoadSchedule) => SHEET_NAMES.filter((sheet) => schedule.rows(sheet).length > 0);

/** All worksheets of a load table, the one with the schedule last. */
export function worksheetsOf(
  schedule: LoadSchedule, report: Report, styles: CellStyles, formulas: LiveFormulas,
): Worksheet[] {
  const sections = report.sections.filter(({ name }) => SECTIONS.includes(name));
  return [
    frontSheet(report, formulas.changed, styles),
    ...sheetsWithRows(schedule).map((sheet) => {
      const worksheet = scheduleSheet(schedule, sheet, formulas, styles);
      // The row of the headings stands above them.
      const hidden = schedule.rows(sheet).flatMap(({ id }, place) =>
        isInSight(schedule, sheet, id, report.scope.panel) ? [] : [place + 1]);
      const isHidden = hidden.length === schedule.rows(sheet).length;
      return { ...worksheet, hidden: new Set(hidden), ...(isHidden ? { isHidden: true as const } : {}) };
    }),
    ...sections.map((section) => sectionSheet(section, formulas.changed, schedule.words, styles)),
    ...formulas.cases.worksheets(styles),
    embeddedSheet(writeSchedule(withoutVariants(schedule.content())), report.scope, styles),
  ];
}
