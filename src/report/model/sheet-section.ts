import { tellsMore } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { isBlank, SCHEMA, type Column, type Row, type SheetName } from '../../schedule/index.ts';
import { numberCell, scheduleCell, scheduleColumn } from './cells.ts';
import type { ReportSection, ReportTable } from './report.ts';

/** The rows of a sheet in which something is entered. */
export function filledRows(schedule: LoadSchedule, sheet: SheetName): readonly Row[] {
  return schedule.rows(sheet).filter((row) => !isBlank(row));
}

/**
 * The columns of a sheet that are printed: those with a value in one of the rows, apart from those that hold nothing
 * but their default, which the assumptions name, from figures of marked cases that are no other than the figure itself,
 * and from the other names of types, which serve for reading takeoffs alone.
 */
export function printedColumns(schedule: LoadSchedule, sheet: SheetName, rows: readonly Row[]): Column[] {
  return SCHEMA[sheet].columns.filter((column) => column.key !== 'aliases' && rows.some(({ id }) =>
    column.role === 'input' && column.default !== undefined
      ? schedule.isOwn(sheet, id, column.key) : tellsMore(schedule, sheet, id, column.key)));
}

/**
 * Some rows of a sheet as a table.
 * @param isNumbered puts its number on the sheet before each row.
 */
export function rowsTable(
  schedule: LoadSchedule, sheet: SheetName, rows: readonly Row[], columns: readonly Column[], isNumbered = true,
): ReportTable {
  const { words } = schedule;
  return {
    columns: [
      ...isNumbered ? [{ title: words.say('Row'), kind: 'number' as const }] : [],
      ...columns.map((column) => scheduleColumn(column, words)),
    ],
    rows: rows.map(({ id }) => ({
      cells: [
        ...isNumbered ? [numberCell(String(schedule.document.position(sheet, id) + 1))] : [],
        ...columns.map((column) => scheduleCell(schedule, sheet, id, column)),
      ],
    })),
    ...isNumbered ? {} : { heads: 1 },
  };
}

/** More columns than these do not fit across a page. */
const MOST_COLUMNS = 15;

/** What is measured at commissioning, and by how much it may differ. */
const MEASURED = /^measured|Tolerance$/;

/** How the cable of a run is laid, which makes its entries too wide for a page. */
const LAID = /^(?:to|cable|cores|gland)$/;

/**
 * A sheet as it is, where it is wide in several tables: as entered, as measured, and as worked out; `undefined` when it
 * has no rows.
 * @param isMeant which of its rows are printed; all of them by default.
 */
export function sheetSection(
  schedule: LoadSchedule, sheet: SheetName, isMeant: (row: Row) => boolean = () => true,
): ReportSection | undefined {
  const { words } = schedule;
  const rows = filledRows(schedule, sheet).filter(isMeant);
  if (rows.length === 0) return undefined;
  const columns = printedColumns(schedule, sheet, rows);
  const table = (some: readonly Column[], of = rows) => rowsTable(schedule, sheet, of, some);
  const section = { name: sheet, title: words.text(SCHEMA[sheet].title), sentences: [] };
  if (columns.length <= MOST_COLUMNS) return { ...section, tables: [table(columns)] };
  const isTag = ({ key }: Column) => key === SCHEMA[sheet].tag;
  const measured = columns.filter(({ key }) => MEASURED.test(key));
  const measuredRows = rows.filter(({ id }) => measured.some(({ key }) => schedule.isOwn(sheet, id, key)));
  const laid = sheet === 'runs' ? columns.filter(({ key }) => LAID.test(key)) : [];
  const entered = columns.filter((column) => column.role === 'input' && ![...measured, ...laid].includes(column));
  return {
    ...section,
    tables: [
      { title: words.say('Entries'), ...table(entered) },
      ...(laid.length === 0 ? []
        : [{ title: words.say('Cable schedule'), ...table(columns.filter((column) => isTag(column) || laid.includes(column))) }]),
      ...(measured.length === 0 ? []
        : [{
          title: words.say('As measured'),
          ...table(columns.filter((column) => isTag(column) || measured.includes(column)), measuredRows),
        }]),
      {
        title: words.say('Calculated'),
        ...table(columns.filter((column) => isTag(column) || column.role === 'computed'))
      },
    ],
  };
}

/** What refers to the rows of a list. */
const USED_BY = {
  types: ['devices', 'type'], conductors: ['runs', 'conductor'], contacts: ['outputs', 'contact'],
} as const;

/** The rows of a list that something refers to, and how many others there are; `undefined` when it has no rows. */
export function usedSection(schedule: LoadSchedule, list: keyof typeof USED_BY): ReportSection | undefined {
  const { words } = schedule;
  const [sheet, key] = USED_BY[list];
  const used = new Set(schedule.rows(sheet).map(({ id }) => schedule.target(sheet, id, key)));
  const section = sheetSection(schedule, list, ({ id }) => used.has(id));
  const others = filledRows(schedule, list).filter(({ id }) => !used.has(id)).length;
  if (others === 0) return section;
  const sentence = words.say(
    '{n, plural, one {# row of this list that nothing refers to is not listed.} other {# rows of this list that nothing refers to are not listed.}}', { n: others });
  return section === undefined
    ? { name: list, title: words.text(SCHEMA[list].title), sentences: [sentence], tables: [] }
    : { ...section, sentences: [...section.sentences, sentence] };
}
