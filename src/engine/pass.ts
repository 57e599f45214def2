import {
  findColumn, inputColumns, isFormula, isNumeric, SHEET_NAMES,
  type CellValue, type InputColumn, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import { argumentReader, partialReader } from './argument-reader.ts';
import { rowsReading } from './rows-reading.ts';
import { IN_ORDER, type PreparedRule, type PreparedTotal } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { Solutions } from './solutions.ts';
import type { TagIndex } from './tag-index.ts';
import { regroup } from './total-groups.ts';
import type { Touched } from './touched.ts';

/** What a document is worked out with. */
export interface Calculation {
  readonly document: ScheduleDocument;
  readonly columns: Readonly<Record<SheetName, SheetColumns>>;
  readonly tags: TagIndex;
  readonly solutions: Solutions;
}

/**
 * Works a document out by the rules of the schema, which stand in an order in which each follows all that it reads.
 * What the formulas of persons came to stands in the columns already.
 * @param touched what changed, with the references that mean another row now; all that follows from it is worked out,
 * and it learns what is worth something else. Without it everything is worked out, into columns that hold nothing yet.
 */
export function pass(calculation: Calculation, touched?: Touched): void {
  for (const sheet of touched?.rows.keys() ?? SHEET_NAMES) takeInputs(calculation, sheet, touched);
  for (const each of IN_ORDER) {
    if ('rule' in each) applyRule(each, calculation, touched);
    else if ('solve' in each) {
      for (const { sheet, id, key } of calculation.solutions.update(each, touched)) touched?.cell(sheet, id, key);
    } else applyTotal(each, calculation, touched);
  }
}

const NUMERIC_INPUTS = Object.fromEntries(SHEET_NAMES.map((sheet) =>
  [sheet, inputColumns(sheet).filter(isNumeric)])) as unknown as Readonly<Record<SheetName, readonly InputColumn[]>>;

function takeInputs({ document, columns }: Calculation, sheet: SheetName, touched: Touched | undefined): void {
  const inputs = NUMERIC_INPUTS[sheet];
  if (touched === undefined) {
    for (const { id } of document.rows(sheet)) {
      for (const column of inputs) takeInput(document, columns[sheet], sheet, id, column);
    }
    return;
  }
  for (const [id, keys] of touched.rows.get(sheet) ?? []) {
    for (const column of inputs) {
      if (keys === null || keys.has(column.key)) takeInput(document, columns[sheet], sheet, id, column);
    }
  }
}

function takeInput(
  document: ScheduleDocument, columns: SheetColumns, sheet: SheetName, id: number, {
    key, default: otherwise, derived,
  }: InputColumn,
): void {
  const row = document.row(sheet, id);
  const own = row?.cells[key];
  if (isFormula(own)) return;
  if (columns.partial.has(key)) columns.setPartial(key, id, 0);
  if (typeof own === 'number') columns.numbers.get(key)![id] = own;
  else if (row === undefined || derived === undefined) {
    columns.numbers.get(key)![id] = row !== undefined && typeof otherwise === 'number' ? otherwise : NaN;
  }
}

function applyTotal(total: PreparedTotal, { document, columns }: Calculation, touched: Touched | undefined): void {
  const { sheet, key, of } = total;
  const isDue = touched === undefined || touched.concerns(sheet, key)
    || of.some(({ from, by, sum = by, times = by }) => [by, sum, times].some((read) => touched.concerns(from, read)));
  if (isDue) for (const id of regroup(total, document, columns)) touched?.cell(sheet, id, key);
}

function applyRule(
  { sheet, key, args, rule }: PreparedRule, calculation: Calculation, touched: Touched | undefined
): void {
  const { document, columns, tags } = calculation;
  const numbers = columns[sheet].numbers.get(key);
  // A column that is worked out on demand has no numbers unless a formula of a person reads it.
  if (numbers === undefined) return;
  const due = touched === undefined ? document.rows(sheet).map(({ id }) => id)
    : rowsReading(sheet, [{ path: key, sheet, key }, ...args], touched, document, columns);
  const readers = args.map((arg) => argumentReader(arg, sheet, document, columns, rule.takesUnknown === true));
  const partial = args.flatMap((arg) => {
    const isPartial = partialReader(arg, sheet, columns, tags);
    return isPartial === undefined ? [] : [{ isPartial, onlyWith: rule.onlyWith?.[arg.path] }];
  });
  const mayBePartial = partial.length > 0 || columns[sheet].partial.has(key);
  const isInput = findColumn(sheet, key)!.role === 'input';
  const values: CellValue[] = readers.map(() => null);
  for (const id of due) {
    const row = document.row(sheet, id);
    if (isInput && (row?.cells[key] ?? null) !== null) continue;
    let unknown = row === undefined;
    for (let place = 0; place < readers.length; place += 1) {
      values[place] = readers[place]!(id);
      if (values[place] === null && rule.takesUnknown !== true) unknown = true;
    }
    const result = unknown ? null : rule.by(...(values as never[]));
    // Adding 0 makes zero of a negative zero.
    const number = typeof result === 'number' && Number.isFinite(result) ? result + 0 : NaN;
    let differs = !Object.is(numbers[id], number);
    numbers[id] = number;
    if (mayBePartial) {
      const lacks = row !== undefined && partial.some(({ isPartial, onlyWith }) =>
        (onlyWith === undefined || (row.cells[onlyWith] ?? null) !== null) && isPartial(id));
      differs = columns[sheet].setPartial(key, id, lacks ? -1 : 0) || differs;
    }
    if (differs) touched?.cell(sheet, id, key);
  }
}
