import type { LoadSchedule } from '../../load-schedule.ts';
import {
  decimalsOf, isBlank, isNumeric, SCHEMA, titleWithUnit, type CellValue, type Column, type Row,
  type SheetName,
} from '../../schedule/index.ts';
import type { CellStyles } from './cell-styles.ts';
import { WHOLE_LIMITS } from './formula-templates.ts';
import type { LiveFormulas } from './live-formulas.ts';
import { worksheetName, type CellToWrite, type Worksheet } from './package-parts.ts';
import { shownValue } from './shown-value.ts';
import { fixed } from '../../words/index.ts';

/** Decimals of a share or number that a person typed, as far as they are shown. */
const MOST_DECIMALS = 6;
/** So many that a limit is not rounded to a side by more than the arithmetic does. */
const ALL_DECIMALS = 9;
const [NARROWEST, WIDEST] = [7, 40];

/**
 * A sheet of the schedule as a worksheet: headings, then every row, figures as formulas wherever a spreadsheet can
 * follow them.
 */
export function scheduleSheet(
  schedule: LoadSchedule, sheet: SheetName, formulas: LiveFormulas, styles: CellStyles
): Worksheet {
  const { columns, title } = SCHEMA[sheet];
  const { words } = schedule;
  const heading = (column: Column) => titleWithUnit(column, words);
  const headings = columns.map((column): CellToWrite => ({
    value: isFixed(sheet, column, formulas)
      ? `${heading(column)} *`
      : heading(column), style: styles.number({ font: 'heading', wraps: true }),
  }));
  const empty = { style: styles.number({}) };
  const rows: readonly (readonly CellToWrite[])[] = schedule.rows(sheet).map((row, place) =>
    columns.map((column) => isBlank(row) ? empty : cellOf(schedule, sheet, row, place, column, formulas, styles)));
  const widths = columns.map((column, index) => {
    const longest = rows.reduce(
      (most, cells) =>
        Math.max(most, isNumeric(column) && !isWhole(sheet, column) ? 0 : String(cells[index]!.value ?? '').length),
      0
    );
    return Math.min(
      WIDEST, Math.max(NARROWEST, longest + 1, ...heading(column).split(' ').map((word) => word.length + 2))
    );
  });
  return { name: worksheetName(words.text(title)), rows: [headings, ...rows], widths, frozen: { rows: 1, columns: 1 } };
}

/** Whether a figure stands as it was worked out and does not follow changes. */
export function isFixed(sheet: SheetName, column: Column, formulas: LiveFormulas): boolean {
  return column.role === 'computed' && !formulas.isLive(sheet, column);
}

function cellOf(
  schedule: LoadSchedule, sheet: SheetName, { id }: Row, place: number, column: Column, formulas: LiveFormulas,
  styles: CellStyles,
): CellToWrite {
  const value = asShown(sheet, column, shownValue(column, schedule.shown(sheet, id, column.key), schedule.words));
  const format = formatOf(column, value, isWhole(sheet, column));
  if (column.role === 'input' && (column.derived === undefined || schedule.isOwn(sheet, id, column.key))) {
    const isInherited = value !== null && !schedule.isOwn(sheet, id, column.key);
    return { value, style: styles.number({ ...format, ...(isInherited ? { font: 'inherited' } : {}) }) };
  }
  const style = styles.number(
    { ...format, ...(column.role === 'computed' ? { isComputed: true } : { font: 'inherited' }) }
  );
  const formula = formulas.formula(sheet, column, place);
  return formula === undefined ? { value, style } : { value, formula, style };
}

const isWhole = (sheet: SheetName, { key }: Column): boolean => WHOLE_LIMITS.has(`${sheet}.${key}`);

/**
 * A limit that was worked out, rounded to its safe side, which no number format of a spreadsheet does; all else as it
 * is.
 */
function asShown(sheet: SheetName, column: Column, value: CellValue): CellValue {
  if (typeof value !== 'number' || column.role === 'input' || column.safeSide === undefined || isWhole(sheet, column)) {
    return value;
  }
  return Number(fixed(value, decimalsOf(column), column.safeSide));
}

/**
 * Figures have the decimals of their column, inputs those that were typed as well, and limits that stay whole all of
 * theirs.
 */
function formatOf(column: Column, value: CellValue, whole: boolean): { format?: string } {
  if (!isNumeric(column)) return {};
  const isShare = column.kind === 'ratio';
  const decimals = decimalsOf(column);
  const typed = typeof value === 'number' && column.role === 'input'
    ? String(Number((value * (isShare ? 100 : 1)).toPrecision(12))).split('.')[1]?.length ?? 0 : 0;
  const long = column.safeSide === undefined ? decimals : ALL_DECIMALS;
  const digits = Math.max(decimals, typed <= MOST_DECIMALS ? typed : long);
  return {
    format: `0${digits === 0 ? '' : `.${'0'.repeat(digits)}${whole ? '#'.repeat(ALL_DECIMALS - digits) : ''}`}${isShare ? '%' : ''}`,
  };
}
