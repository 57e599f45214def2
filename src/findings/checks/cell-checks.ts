import { outOfRange, READS_EMPTY, WRONG_ARGUMENTS } from '../../engine/index.ts';
import {
  inputColumns, isFormula, isNumeric, SCHEMA, SHEET_NAMES, tagOf, titleWithUnit,
  type InputColumn, type SheetName,
} from '../../schedule/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';

/** What the errors of the formula engine mean, and what to do. */
const FAULTS: Readonly<Record<string, (message: string) => string>> = {
  DIV_BY_ZERO: () => 'divides by zero. Check the cell that it divides by',
  NAME: () => 'uses a function or a name that is not known. Correct its spelling',
  REF: () => 'refers to a row that has been deleted. Refer to another one',
  CYCLE: () => 'depends on its own result. Take the reference back to this cell out',
  LOOP: () => 'reads a total that its own cell feeds. Refer to another cell',
  NUM: (message) => /^(NaN|Value) /.test(message) ? 'has no finite result. Check what it refers to'
    : `gives a result that is not allowed: ${message}. Correct it`,
  VALUE: () => 'does not give a number. Check what it refers to',
  ERROR: (message) => message === READS_EMPTY ? 'reads a cell that is empty. Fill that cell'
    : 'cannot be read. Arguments are parted by ; and decimals by a point: correct it',
  NA: (message) => message === WRONG_ARGUMENTS ? 'gives a function too few or too many arguments. Correct it'
    : 'finds no match for what it looks up. Check the value that it looks for',
};

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
      if (fault === undefined) return undefined;
      const meaning = FAULTS[fault.type] ?? (() => 'cannot be worked out. Simplify it');
      return { value: null, limit: null, message: `${row.name}: the formula in ${column.title} ${meaning(fault.message)}.` };
    },
  };
}

function numberOutOfRange(sheet: SheetName, column: InputColumn): Check {
  return {
    rule: 'number-out-of-range', sheet, key: column.key, severity: 'incomplete',
    find: (row) => {
      const own = row.own(column.key);
      if (typeof own !== 'number') return undefined;
      const problem = outOfRange(column, own);
      return problem === undefined ? undefined
        : { value: own, limit: null, message: `${row.name}: ${titleWithUnit(column)} ${problem}. Correct it.` };
    },
  };
}

function namesNothing(sheet: SheetName, column: InputColumn, to: SheetName): Check {
  return {
    rule: 'tag-names-nothing', sheet, key: column.key, severity: 'incomplete',
    find: (row) => {
      const own = row.own(column.key);
      if (own === null || row.book.target(sheet, row.row.id, column.key) >= 0) return undefined;
      return {
        value: own, limit: null,
        message: `${row.name}: there is no ${SCHEMA[to].rowName} ${String(own)}. Add it to the sheet ${SCHEMA[to].title}, or correct the tag.`,
      };
    },
  };
}

function withoutTag(sheet: SheetName): Check {
  const { tag, rowName } = SCHEMA[sheet];
  return {
    rule: 'tag-missing', sheet, key: tag, severity: 'note',
    find: (row: RowReader) => tagOf(sheet, row.row) !== '' ? undefined
      : { value: null, limit: null, message: `${row.name}: nothing can refer to this ${rowName}. Give it a tag.` },
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
