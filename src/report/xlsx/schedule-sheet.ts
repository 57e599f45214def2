import type { LoadSchedule } from '../../load-schedule.ts';
import {
  columnLetters, decimalsOf, isBlank, isNumeric, letterOf, SCHEMA, titleWithUnit, type CellValue, type Column,
  type ComputedColumn, type Row, type SheetName,
} from '../../schedule/index.ts';
import type { CellStyles } from './cell-styles.ts';
import { SPARE_ROWS, TAKES_ROWS } from './changed-rows.ts';
import { WHOLE_LIMITS } from './formula-templates.ts';
import type { LiveFormulas } from './live-formulas.ts';
import { worksheetName, type CellToWrite, type Condition, type Worksheet } from './package-parts.ts';
import { shownValue } from './shown-value.ts';
import { choicesOf, statusConditions } from './sheet-aids.ts';
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
  const flag = (place: number): CellToWrite =>
    ({ value: 0, formula: formulas.changed.flag(sheet, place), ...empty });
  const marked = formulas.marked(sheet);
  const marks = ({ id }: Row, place: number) => marked.map((column): CellToWrite => ({
    value: schedule.isPartial(sheet, id, column.key) ? 1 : 0, formula: formulas.mark(sheet, column, place), ...empty,
  }));
  const rows: readonly (readonly CellToWrite[])[] = schedule.rows(sheet).map((row, place) =>
    columns.map((column) => isBlank(row) ? empty : cellOf(schedule, sheet, row, place, column, formulas, styles)));
  const spare = Array.from({ length: SPARE_ROWS }, (_row, index) => {
    const place = rows.length + index;
    return [...columns.map((column) => spareCell(sheet, column, place, formulas, styles)), flag(place)];
  });
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
  const changed = { value: words.say('Changed here'), style: styles.number({ font: 'heading', wraps: true }) };
  return {
    name: worksheetName(words.text(title)),
    rows: [
      [...headings, changed, ...marked.map(({ title, whenPartial }): CellToWrite =>
        ({ value: `${words.text(title)} ${whenPartial!}`, style: changed.style }))],
      ...schedule.rows(sheet).map((row, place) => [...rows[place]!, flag(place), ...marks(row, place)]), ...spare,
    ],
    widths: [...widths, NARROWEST, ...marked.map(() => NARROWEST)],
    hiddenColumns: new Set([changed, ...marked].map((_column, place) => columns.length + place)),
    frozen: { rows: 1, columns: 1 },
    table: `schedule_${sheet}`,
    choices: choicesOf(sheet, rows.length + SPARE_ROWS + 1, formulas, words),
    conditions: [
      ...statusConditions(sheet, rows.length + 1, formulas, styles, words),
      ...marked.map((column) => markCondition(sheet, column, rows.length + 1, formulas, styles)),
    ],
  };
}

/** The sign before a figure that is at least or at most what stands there, as long as it is. */
function markCondition(
  sheet: SheetName, column: ComputedColumn, last: number, formulas: LiveFormulas, styles: CellStyles,
): Condition {
  const letter = letterOf(sheet, column.key);
  return {
    range: `${letter}2:${letter}${last}`, formula: `$${columnLetters(formulas.markPlace(sheet, column.key)!)}2=1`,
    style: styles.conditional(markedFormat(sheet, column)),
  };
}

/** The format of a figure that is at least or at most what stands there. */
function markedFormat(sheet: SheetName, column: ComputedColumn): { format?: string } {
  const { format } = formatOf(column, null, isWhole(sheet, column));
  return format === undefined ? {} : { format: `"${column.whenPartial!} "${format}` };
}

/** A cell of a row that is kept ready: empty as long as nothing is entered into the row, then what follows from it. */
function spareCell(
  sheet: SheetName, column: Column, place: number, formulas: LiveFormulas, styles: CellStyles,
): CellToWrite {
  const isFollowing = column.role === 'computed' || column.derived !== undefined;
  const style = styles.number({
    ...formatOf(column, null, isWhole(sheet, column)),
    ...(column.role === 'computed' ? { isComputed: true } : column.derived === undefined ? {} : { font: 'inherited' }),
  });
  const formula = isFollowing && TAKES_ROWS.has(sheet) ? formulas.spare(sheet, column, place) : undefined;
  return formula === undefined ? { style } : { value: null, formula, style };
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
  // Where no formula tells it, a figure keeps the mark that it was issued with.
  const isLess = column.role === 'computed' && column.whenPartial !== undefined && schedule.isPartial(sheet, id, column.key)
    && formulas.markPlace(sheet, column.key) === undefined;
  const format = isLess ? markedFormat(sheet, column) : formatOf(column, value, isWhole(sheet, column));
  if (column.role === 'input' && (column.derived === undefined || schedule.isOwn(sheet, id, column.key))) {
    const isInherited = value !== null && !schedule.isOwn(sheet, id, column.key);
    return { value, style: styles.number({ ...format, ...(isInherited ? { font: 'inherited' } : {}) }) };
  }
  const style = styles.number(
    { ...format, ...(column.role === 'computed' ? { isComputed: true } : { font: 'inherited' }) }
  );
  const formula = formulas.shown(sheet, column, place, value);
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
