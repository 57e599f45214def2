import {
  findColumn, isFormula, numericInputs, SHEET_NAMES, type CellValue, type Rule, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import { isAllowed } from './allowed.ts';
import { partialReader, valuesOf, type Values } from './argument-reader.ts';
import { rowsReading } from './rows-reading.ts';
import { columnsOf, IN_ORDER, type PreparedRule, type PreparedTotal } from './schema-rules.ts';
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

function takeInputs({ document, columns }: Calculation, sheet: SheetName, touched: Touched | undefined): void {
  const all = touched === undefined ? document.rows(sheet).map(({ id }) => id) : [];
  for (const column of numericInputs(sheet)) {
    const { key, default: otherwise, derived } = column;
    const numbers = columns[sheet].numbers.get(key)!;
    const rows = document.byId(sheet);
    const empty = typeof otherwise === 'number' ? otherwise : NaN;
    for (const id of touched?.having(sheet, [key]) ?? all) {
      const row = rows[id];
      const own = row?.cells[key];
      if (isFormula(own)) continue;
      if (columns[sheet].partial.has(key)) columns[sheet].setPartial(key, id, 0);
      if (typeof own === 'number') {
        numbers[id] = isAllowed(column, own) ? own : NaN;
        if (numbers[id] !== own) columns[sheet].holdsFaults = true;
      }
      else if (row === undefined) numbers[id] = NaN;
      else if (derived === undefined) numbers[id] = empty;
    }
  }
}

function applyTotal(total: PreparedTotal, { document, columns }: Calculation, touched: Touched | undefined): void {
  const { sheet, key, of } = total;
  const isDue = touched === undefined || touched.concerns(sheet, key)
    || of.some((part) => columnsOf(part).some((read) => touched.concerns(part.from, read)));
  const changed = isDue ? regroup(total, document, columns) : [];
  touched?.column(sheet, changed, key);
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
  if (due.length === 0) return;
  const rows = document.byId(sheet);
  const isInput = findColumn(sheet, key)!.role === 'input';
  const ids = isInput ? due.filter((id) => (rows[id]?.cells[key] ?? null) === null) : due;
  const values = args.map((arg) => valuesOf(arg, sheet, ids, document, columns, rule.takesUnknown === true));
  const differing = follow(rule, ids, rows, values, numbers);
  touched?.column(sheet, differing, key);
  const partial = args.flatMap((arg) => {
    const isPartial = partialReader(arg, sheet, columns, tags);
    return isPartial === undefined ? [] : [{ isPartial, onlyWith: rule.onlyWith?.[arg.path] }];
  });
  if (partial.length === 0 && !columns[sheet].partial.has(key)) return;
  const lackingOtherwise = ids.filter((id) => {
    const row = rows[id];
    const lacks = row !== undefined && partial.some(({ isPartial, onlyWith }) =>
      (onlyWith === undefined || (row.cells[onlyWith] ?? null) !== null) && isPartial(id));
    return columns[sheet].setPartial(key, id, lacks ? -1 : 0);
  });
  touched?.column(sheet, lackingOtherwise, key);
}

/** Works a rule out for some rows, from the values of each argument in them. @returns those that differ from before. */
function follow(
  { by, takesUnknown }: Rule, ids: readonly number[], rows: readonly unknown[], values: readonly Values[],
  numbers: Float64Array,
): number[] {
  const work = by as (...values: CellValue[]) => number | string | null;
  const [one, other, third] = values as [Values, Values, Values];
  const count = values.length;
  const differing: number[] = [];
  for (let place = 0; place < ids.length; place += 1) {
    const id = ids[place]!;
    let result: number | string | null = null;
    if (rows[id] !== undefined && (takesUnknown === true || isKnown(values, place))) {
      // Most rules take few values, and are called without a list of them.
      if (count === 1) result = work(one[place]!);
      else if (count === 2) result = work(one[place]!, other[place]!);
      else if (count === 3) result = work(one[place]!, other[place]!, third[place]!);
      else result = work(...values.map((each) => each[place]!));
    }
    // Adding 0 makes zero of a negative zero.
    const number = typeof result === 'number' && Number.isFinite(result) ? result + 0 : NaN;
    if (!Object.is(numbers[id], number)) differing.push(id);
    numbers[id] = number;
  }
  return differing;
}

function isKnown(values: readonly Values[], place: number): boolean {
  for (const each of values) if (Number.isNaN(each[place] ?? NaN)) return false;
  return true;
}
