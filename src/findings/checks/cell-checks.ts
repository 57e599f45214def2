import { outOfRange, READS_EMPTY, WRONG_ARGUMENTS, type FormulaFault } from '../../engine/index.ts';
import {
  hiddenCharacters, inputColumns, isFormula, isNumeric, SCHEMA, SHEET_NAMES, tagOf, titleWithUnit, type InputColumn, type SheetName,
} from '../../schedule/index.ts';
import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { unknown } from './limit-checks.ts';

/** What the errors of the formula engine mean, and what to do. */
const FAULTS: Readonly<Record<string, string>> = {
  DIV_BY_ZERO: message('{name}: the formula in {column} divides by zero. Check the cell that it divides by.'),
  NAME: message('{name}: the formula in {column} uses a function or a name that is not known. Correct its spelling.'),
  REF: message('{name}: the formula in {column} refers to a row that has been deleted. Refer to another one.'),
  CYCLE: message('{name}: the formula in {column} depends on its own result. Take the reference back to this cell out.'),
  LOOP: message('{name}: the formula in {column} reads a total that its own cell feeds. Refer to another cell.'),
  NUM: message('{name}: the formula in {column} has no finite result. Check what it refers to.'),
  VALUE: message('{name}: the formula in {column} does not give a number. Check what it refers to.'),
  ERROR: message('{name}: the formula in {column} cannot be read. Arguments are parted by ; and decimals by a point: correct it.'),
  NA: message('{name}: the formula in {column} finds no match for what it looks up. Check the value that it looks for.'),
};

/** What is wrong with a formula, and what to do. */
function faultOf(row: RowReader, column: InputColumn, fault: FormulaFault): string {
  const values = { column: row.words.text(column.title) };
  if (fault.message === READS_EMPTY) return row.say('{name}: the formula in {column} reads a cell that is empty. Fill that cell.', values);
  if (fault.message === WRONG_ARGUMENTS) return row.say('{name}: the formula in {column} gives a function too few or too many arguments. Correct it.', values);
  const problem = fault.value === undefined ? undefined : outOfRange(column, fault.value, row.words);
  if (problem !== undefined) return row.say('{name}: the formula in {column} gives a result that is not allowed: {problem}. Correct it.', { ...values, problem });
  const said = FAULTS[fault.type] ?? message('{name}: the formula in {column} cannot be worked out. Simplify it.');
  return row.say(said, values);
}

/** Inputs that no limit of their row needs, so that its status does not suffer. */
const BESIDE_LIMITS: Readonly<Partial<Record<SheetName, readonly string[]>>> = { supplies: ['voltage', 'peak'], feeds: ['voltage'] };

function formulaFault(sheet: SheetName, column: InputColumn): Check {
  return {
    rule: 'formula-without-result', sheet, key: column.key, severity: 'incomplete',
    ...(column.optional === true || BESIDE_LIMITS[sheet]?.includes(column.key) === true ? {} : { inStatus: true as const }),
    find: (row) => {
      const own = row.own(column.key);
      if (!isFormula(own)) return undefined;
      const fault = row.book.fault(sheet, row.row.id, column.key);
      return fault === undefined ? undefined : { value: null, limit: null, message: faultOf(row, column, fault) };
    },
  };
}

function numberOutOfRange(sheet: SheetName, column: InputColumn): Check {
  return {
    rule: 'number-out-of-range', sheet, key: column.key, severity: 'incomplete',
    find: (row) => {
      const own = row.own(column.key);
      if (typeof own !== 'number') return undefined;
      const problem = outOfRange(column, own, row.words);
      return problem === undefined ? undefined : {
        value: own, limit: null,
        message: row.say('{name}: {column} {problem}. Correct it.', { column: titleWithUnit(column, row.words), problem }),
      };
    },
  };
}

function namesNothing(sheet: SheetName, column: InputColumn, to: SheetName): Check {
  return {
    rule: 'tag-names-nothing', sheet, key: column.key, severity: 'incomplete',
    find: (row) => {
      const own = row.own(column.key);
      // Of a tag with a character that cannot be seen there is more to say.
      if (own === null || hiddenCharacters(String(own)).length > 0 || row.book.target(sheet, row.row.id, column.key) >= 0) return undefined;
      return {
        value: own, limit: null,
        message: row.say('{name}: there is no {row} {tag}. Add it to the sheet {sheet}, or correct the tag.', {
          row: row.words.text(SCHEMA[to].rowName), tag: String(own), sheet: row.titleOf(to),
        }),
      };
    },
  };
}

function withoutTag(sheet: SheetName): Check {
  return {
    rule: 'tag-missing', sheet, key: SCHEMA[sheet].tag, severity: 'note',
    find: (row) => tagOf(sheet, row.row) !== '' ? undefined
      : unknown(row, message('{name}: nothing can refer to it. Give it a tag.')),
  };
}

/** What every row of every sheet is held against, by sheet. */
export const cellChecks: readonly Check[] = SHEET_NAMES.flatMap((sheet) => [
  ...(sheet === 'devices' ? [] : [withoutTag(sheet)]),
  ...inputColumns(sheet).flatMap((column) => [
    ...(isNumeric(column) ? [formulaFault(sheet, column), numberOutOfRange(sheet, column)] : []),
    ...(column.to === undefined ? [] : [namesNothing(sheet, column, column.to)]),
  ]),
]);
