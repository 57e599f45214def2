import {
  LONGEST_WAY, outOfRange, READS_EMPTY, REFERRED_SHEETS, RULES, SOLUTIONS, WRONG_ARGUMENTS, type Argument,
  type TypedFault,
} from '../../engine/index.ts';
import {
  columnOf, hiddenCharacters, inputColumns, isFormula, isNumeric, SCHEMA, SHEET_NAMES, titleWithUnit, type Column,
  type InputColumn, type SheetName,
} from '../../schedule/index.ts';
import { amps, message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { namingNone, namingShared, withFormula, withoutNumber, wherePartial, withSharedTag } from '../only.ts';
import type { RowReader } from '../row-reader.ts';
import type { WaitingRows } from '../waiting.ts';
import { unknown } from './limit-checks.ts';

/** What the errors of the formula engine mean, and what to do. */
const FAULTS: Readonly<Record<string, string>> = {
  DIV_BY_ZERO: message('{name}: the formula in {column} divides by zero. Check the cell that it divides by.'),
  NAME: message('{name}: the formula in {column} uses a function or a name that is not known. Correct its spelling.'),
  REF: message('{name}: the formula in {column} refers to a row that has been deleted. Refer to another one.'),
  CYCLE: message('{name}: the formula in {column} reads one that depends on its own result. Put that one right.'),
  NUM: message('{name}: the formula in {column} has no finite result. Check what it refers to.'),
  VALUE: message('{name}: the formula in {column} does not give a number. Check what it refers to.'),
  ERROR: message(
    '{name}: the formula in {column} cannot be read. Arguments are separated by ; and decimals by a point: correct it.'
  ),
  AWAITED: message(
    '{name}: the formula in {column} is not calculated yet, because a part of the software has not been fetched. If this stays, check the connection and enter the formula again; if that does not help, save the schedule and load the page again.'
  ),
  NA: message(
    '{name}: the formula in {column} finds no match for what it looks up. Check the value that it looks for.'
  ),
};

/** What is wrong with a formula, and what to do. */
function faultOf(row: RowReader, column: InputColumn, fault: TypedFault): string {
  const values = { column: row.words.text(column.title) };
  if (fault.way !== undefined) {
    const names = fault.way.map(({ sheet, id, key }) => row.figure(sheet, id, key));
    const way = [...names, ...(names.length < LONGEST_WAY ? [] : ['…']), names[0]!].join(' → ');
    return row.say(
      '{name}: the formula in {column} depends on its own result: {way}. Take one of these references out.',
      { ...values, way }
    );
  }
  if (fault.message === READS_EMPTY) {
    return row.say('{name}: the formula in {column} reads a cell that is empty. Fill that cell.', values);
  }
  if (fault.message === WRONG_ARGUMENTS) {
    return row.say(
      '{name}: the formula in {column} gives a function too few or too many arguments. Correct it.', values
    );
  }
  const problem = fault.value === undefined ? undefined : outOfRange(column, fault.value, row.words);
  if (problem !== undefined) {
    return row.say(
      '{name}: the formula in {column} gives a result that is not allowed: {problem}. Correct it.',
      { ...values, problem }
    );
  }
  const said = FAULTS[fault.type] ?? message('{name}: the formula in {column} cannot be calculated. Simplify it.');
  return row.say(said, values);
}

function formulaFault(sheet: SheetName, column: InputColumn): Check {
  return {
    rule: 'formula-without-result', sheet, key: column.key, severity: 'incomplete', inStatus: true,
    needs: column.key, only: withFormula(column.key),
    find: (row) => {
      if (!isFormula(row.own(column.key))) return undefined;
      const fault = row.fault(column.key);
      return fault === undefined ? undefined : { value: null, limit: null, message: faultOf(row, column, fault) };
    },
  };
}

function numberOutOfRange(sheet: SheetName, column: InputColumn): Check {
  return {
    rule: 'number-out-of-range', sheet, key: column.key, severity: 'incomplete', inStatus: true, needs: column.key,
    // What is beyond its range is unknown to all that reads it.
    only: withoutNumber(column.key),
    find: (row) => {
      const own = row.own(column.key);
      if (typeof own !== 'number') return undefined;
      const problem = outOfRange(column, own, row.words);
      return problem === undefined ? undefined : {
        value: own, limit: null,
        message: row.say(
          '{name}: {column} {problem}. Correct it.', { column: titleWithUnit(column, row.words), problem }
        ),
      };
    },
  };
}

function namesNothing(sheet: SheetName, column: InputColumn, to: SheetName): Check {
  return {
    rule: 'tag-names-nothing', sheet, key: column.key, severity: 'incomplete', inStatus: true, needs: column.key,
    only: namingNone(column.key),
    find: (row) => {
      const own = row.own(column.key);
      // Of a tag with a character that cannot be seen there is more to say.
      if (hiddenCharacters(String(own)).length > 0) return undefined;
      const values = { row: row.words.text(SCHEMA[to].rowName), tag: String(own), sheet: row.titleOf(to) };
      const current = sheet === 'devices' && column.key === 'rail' ? row.number('connected') : null;
      return {
        value: own, limit: null,
        message: current === null ? row.say(
          '{name}: there is no {row} {tag}. Add it to the sheet {sheet}, or correct the tag.', values
        )
          : row.say('{name}: there is no {row} {tag}, so {current} count in none. Add it to the sheet {sheet}, or correct the tag.', {
            ...values, current: amps(current),
          }),
      };
    },
  };
}

/** Finds a formula that reads a figure which is less than the whole. */
function formulaPartial(sheet: SheetName, column: InputColumn): Check {
  return {
    rule: 'formula-partial', sheet, key: column.key, severity: 'incomplete', inStatus: true, elsewhere: true,
    needs: column.key, only: withFormula(column.key),
    find: (row) => !isFormula(row.own(column.key)) || !row.isPartial(column.key) ? undefined : {
      value: row.number(column.key), limit: null,
      message: row.say('{name}: the formula in {column} reads a figure that is not wholly known, and may come to another result. Complete what that follows from.', {
        column: row.words.text(column.title),
      }),
    },
  };
}

/** Finds a figure that follows through a reference from one that is less than the whole. */
function partialBehind(sheet: SheetName, key: string, args: readonly Argument[]): Check {
  const behind = args.filter(({ by }) => by !== undefined);
  return {
    // What a figure lacks is told where it is to be entered, and not at all that follows from it.
    rule: 'figure-partial', sheet, key, severity: 'incomplete', inStatus: true, elsewhere: true,
    only: wherePartial(key),
    find: (row) => {
      const source = behind.map((arg) => row.partialBehind(arg)).find((each) => each !== undefined);
      return source === undefined ? undefined : {
        value: row.value(key), limit: null,
        message: row.say('{name}: {column} follows from {source}, which is not wholly known. Complete that first.', {
          column: row.words.text(columnOf(sheet, key).title), source,
        }),
      };
    },
  };
}

/** Whether a column holds numbers that are worked out ahead. */
function isKept(column: Column): boolean {
  return isNumeric(column) && !(column.role === 'computed' && column.onDemand === true);
}

function namesShared(sheet: SheetName, { key }: InputColumn, to: SheetName): Check {
  return {
    // It is told at the rows that share the tag.
    rule: 'tag-not-unique', sheet, key, severity: 'incomplete', inStatus: true, elsewhere: true,
    only: namingShared(key, to),
    find: (row) => ({
      value: row.value(key), limit: null,
      message: row.say('{name}: {tag} stands in more than one row of the sheet {sheet}, and the first of them is meant. Give each a tag of its own.', {
        tag: String(row.value(key)), sheet: row.titleOf(to),
      }),
    }),
  };
}

/** The rows that name each sheet, by every reference to it. */
const NAMING = Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, SHEET_NAMES.flatMap((from) => inputColumns(from)
  .filter(({ to }) => to === sheet).map(({ key }): WaitingRows => ({ sheet, from, by: key, filled: key })))])) as
  unknown as Readonly<Record<SheetName, readonly WaitingRows[]>>;

/** Sheets whose rows name each other in texts, as a conductor goes from terminal to terminal. */
const NAMED_IN_TEXTS = new Set(SHEET_NAMES.filter((name) =>
  inputColumns(name).some(({ names }) => names?.includes(name))));

function usedTwice(sheet: SheetName): Check {
  const isNamed = REFERRED_SHEETS.has(sheet) || NAMED_IN_TEXTS.has(sheet);
  return {
    rule: 'tag-used-twice', sheet, key: SCHEMA[sheet].tag, severity: isNamed
      ? 'incomplete' : 'note', ...(isNamed ? { inStatus: true as const } : {}),
    only: withSharedTag(SCHEMA[sheet].tag),
    find: (row) => {
      const waiting = NAMING[sheet].reduce((sum, rows) => sum + row.waiting(rows), 0);
      return {
        value: row.tag, limit: null, ...waiting === 0 ? {} : { waiting },
        message: row.say(isNamed ? message(
          '{name} stands in more than one row. References mean the first of them{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Give each row a tag of its own.'
        )
          : message('{name} stands in more than one row. Give each row a tag of its own.'), { waiting }),
      };
    },
  };
}

function withoutTag(sheet: SheetName): Check {
  return {
    rule: 'tag-missing', sheet, key: SCHEMA[sheet].tag, severity: 'note',
    find: (row) => row.tag !== '' ? undefined
      : unknown(row, message('{name}: nothing can refer to it. Give it a tag.')),
  };
}

/** What every row of every sheet is held against, by sheet. */
export const cellChecks: readonly Check[] = SHEET_NAMES.flatMap((sheet) => [
  ...(sheet === 'devices' || sheet === 'factors' ? [] : [withoutTag(sheet)]),
  // A group stands in a factor for each case.
  ...(sheet === 'factors' ? [] : [usedTwice(sheet)]),
  ...RULES[sheet].filter(({ key, args }) => args.some(({ by }) => by !== undefined) && isKept(columnOf(sheet, key)))
    // What a supply has left is told at the supply, once for all that hangs on it; of runs only those with a way ask.
    .filter(({ key }) => sheet !== 'runs' || key !== 'available').map(({ key, args }) => partialBehind(sheet, key, args)),
  ...SOLUTIONS.filter((solution) => solution.sheet === sheet)
    .map(({ gives, of }) => partialBehind(sheet, gives[0]!, of)),
  ...inputColumns(sheet).flatMap((column) => [
    ...(
      isNumeric(column)
        ? [formulaFault(sheet, column), formulaPartial(sheet, column), numberOutOfRange(sheet, column)]
        : []
    ),
    ...(column.to === undefined ? [] : [namesNothing(sheet, column, column.to), namesShared(sheet, column, column.to)]),
  ]),
]);
