import {
  findColumn, inputColumns, isNumeric, SHEET_NAMES, type CellValue, type InputColumn, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import { argumentReader } from './argument-reader.ts';
import { rowsReading } from './rows-reading.ts';
import { IN_ORDER, type PreparedRule, type PreparedTotal } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { Solutions } from './solutions.ts';
import { regroup } from './total-groups.ts';
import type { Touched } from './touched.ts';

type Columns = Readonly<Record<SheetName, SheetColumns>>;

/**
 * Works a document out by the same rules, without the formula engine: some milliseconds for all of 10,000 device rows,
 * where to build the engine takes most of a second. It knows no formulas of persons.
 * @param touched what changed, with the references that mean another row now; all that follows from it is worked out,
 * and it learns what is worth something else. Without it everything is worked out, into columns that hold nothing yet.
 */
export function quickPass(document: ScheduleDocument, columns: Columns, solutions: Solutions, touched?: Touched): void {
  for (const sheet of touched?.rows.keys() ?? SHEET_NAMES) takeInputs(document, columns, sheet, touched);
  for (const each of IN_ORDER) {
    if ('rule' in each) applyRule(each, document, columns, touched);
    else if ('solve' in each) for (const { sheet, id, key } of solutions.update(each, touched)) touched?.cell(sheet, id, key);
    else applyTotal(each, document, columns, touched);
  }
}

function takeInputs(document: ScheduleDocument, columns: Columns, sheet: SheetName, touched: Touched | undefined): void {
  const inputs = inputColumns(sheet).filter(isNumeric);
  if (touched === undefined) {
    for (const { id } of document.rows(sheet)) for (const column of inputs) takeInput(document, columns, sheet, id, column);
    return;
  }
  for (const [id, keys] of touched.rows.get(sheet) ?? []) {
    for (const column of inputs) if (keys === null || keys.has(column.key)) takeInput(document, columns, sheet, id, column);
  }
}

function takeInput(
  document: ScheduleDocument, columns: Columns, sheet: SheetName, id: number, { key, default: otherwise, derived }: InputColumn,
): void {
  const row = document.row(sheet, id);
  const own = row?.cells[key];
  const empty = row !== undefined && typeof otherwise === 'number' ? otherwise : NaN;
  if (typeof own === 'number') columns[sheet].numbers.get(key)![id] = own;
  else if (row === undefined || derived === undefined) columns[sheet].numbers.get(key)![id] = empty;
}

function applyTotal(total: PreparedTotal, document: ScheduleDocument, columns: Columns, touched: Touched | undefined): void {
  const { sheet, key, from, by, sum = by } = total;
  const isDue = touched === undefined || touched.concerns(sheet, key) || touched.concerns(from, by) || touched.concerns(from, sum);
  if (!isDue) return;
  const numbers = columns[sheet].numbers.get(key)!;
  const { changed, partialChanged } = regroup(total, document, columns);
  for (const { id, value } of changed) {
    numbers[id] = value;
    touched?.cell(sheet, id, key);
  }
  for (const id of partialChanged) touched?.cell(sheet, id, key);
}

function applyRule(
  { sheet, key, args, rule }: PreparedRule, document: ScheduleDocument, columns: Columns, touched: Touched | undefined,
): void {
  const due = touched === undefined ? new Set(document.rows(sheet).map(({ id }) => id))
    : rowsReading(sheet, [{ path: key, sheet, key }, ...args], touched, document, columns);
  if (due.size === 0) return;
  const readers = args.map((arg) => argumentReader(arg, sheet, document, columns));
  const numbers = columns[sheet].numbers.get(key)!;
  const column = findColumn(sheet, key)!;
  const values: CellValue[] = readers.map(() => null);
  // Where a total lacks a row the sign of what follows may differ though the number does not.
  const mayBePartial = column.role === 'computed' && column.whenPartial !== undefined;
  for (const id of due) {
    const row = document.row(sheet, id);
    if (column.role === 'input' && (row?.cells[key] ?? null) !== null) continue;
    let unknown = row === undefined;
    for (let place = 0; place < readers.length; place += 1) {
      values[place] = readers[place]!(id);
      if (values[place] === null && rule.takesUnknown !== true) unknown = true;
    }
    const result = unknown ? null : rule.by(...(values as never[]));
    // Adding 0 makes zero of a negative zero, as the formula engine does.
    const number = result !== null && Number.isFinite(result) ? result + 0 : NaN;
    if (touched !== undefined && (mayBePartial || !Object.is(numbers[id], number))) touched.cell(sheet, id, key);
    numbers[id] = number;
  }
}
