import { findColumn, isFormula, numericInputs, SHEET_NAMES, type SheetName } from '../schedule/index.ts';
import { isAllowed } from './allowed.ts';
import { partialReader, valuesOf } from './argument-reader.ts';
import { follow } from './follow.ts';
import { rowsReading } from './rows-reading.ts';
import type { Calculation } from './calculation.ts';
import {
  applyCaseTotal, applyMarked, forgetCases, ruleInCases, totalInCases,
} from './cases/case-pass.ts';
import { columnsOf, inCasesOf, IN_ORDER, type PreparedRule, type PreparedTotal } from './schema-rules.ts';
import { regroup } from './total-groups.ts';
import type { Touched } from './touched.ts';

/**
 * Works a document out by the rules of the schema, which stand in an order in which each follows all that it reads.
 * What the formulas of persons came to stands in the columns already.
 * @param touched what changed, with the references that mean another row now; all that follows from it is worked out,
 * and it learns what is worth something else. Without it everything is worked out, into columns that hold nothing yet.
 */
export function pass(calculation: Calculation, touched?: Touched): void {
  for (const sheet of touched?.rows.keys() ?? SHEET_NAMES) takeInputs(calculation, sheet, touched);
  const isOther = calculation.cases.update(touched);
  if (isOther && calculation.cases.cases.length === 0) forgetCases(calculation, touched);
  for (const each of IN_ORDER) {
    if ('rule' in each) applyRule(each, calculation, touched, isOther);
    else if ('solve' in each) {
      const changed = calculation.solutions.update(each, touched, isOther);
      for (const { sheet, id, key } of changed) touched?.cell(sheet, id, key);
    } else if ('marked' in each) applyMarked(each, calculation, touched, isOther);
    else if ('of' in each) applyTotal(each, calculation, touched, isOther);
    else applyCaseTotal(each, calculation, touched, isOther);
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

/** @param isOther whether cases or factors are others than before, so that all that they concern is due. */
function applyTotal(
  total: PreparedTotal, calculation: Calculation, touched: Touched | undefined, isOther: boolean,
): void {
  const { sheet, key, of } = total;
  const isInCases = inCasesOf(sheet, key) !== undefined;
  const isDue = touched === undefined || touched.concerns(sheet, key) || (isInCases && isOther)
    || of.some((part) => columnsOf(part).some((read) => touched.concerns(part.from, read))
      || (isInCases && touched.concerns(part.from, 'group')));
  if (!isDue) return;
  const { document, columns } = calculation;
  const changed = isInCases && calculation.cases.cases.length > 0 ? totalInCases(total, calculation, touched)
    : regroup(total, document, columns);
  touched?.column(sheet, changed, key);
}

function applyRule(
  prepared: PreparedRule, calculation: Calculation, touched: Touched | undefined, isOther: boolean,
): void {
  const { sheet, key, args, rule } = prepared;
  const { document, columns, tags, cases } = calculation;
  const isInCases = typeof inCasesOf(sheet, key) === 'string';
  const numbers = columns[sheet].numbers.get(key);
  // A column that is worked out on demand has no numbers unless a formula of a person reads it.
  if (numbers === undefined) return;
  const due = touched === undefined || (isInCases && isOther) ? document.rows(sheet).map(({ id }) => id)
    : rowsReading(sheet, [{ path: key, sheet, key }, ...args], touched, document, columns);
  if (due.length === 0) return;
  const rows = document.byId(sheet);
  const isInput = findColumn(sheet, key)!.role === 'input';
  const ids = isInput ? due.filter((id) => (rows[id]?.cells[key] ?? null) === null) : due;
  const differing = isInCases && cases.cases.length > 0 ? ruleInCases(prepared, calculation, ids, touched)
    : follow(rule, ids, rows, args.map((arg) =>
      valuesOf(arg, sheet, ids, document, columns, rule.takesUnknown === true)), numbers);
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
