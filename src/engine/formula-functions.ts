import {
  CellError, EmptyValue, ErrorType, FunctionArgumentType, FunctionPlugin, HyperFormula, SimpleRangeValue,
} from 'hyperformula';
import { columnOf, type CellValue, type InputColumn, type SheetName } from '../schedule/index.ts';
import { ENGLISH, type Words } from '../words/index.ts';

/*
 * Our functions have names of their own: registering them changes nothing for a page that uses the same library itself.
 */

/**
 * Function that every formula typed by a person is wrapped in: column, formula, then the single cells that it reads.
 */
export const TYPED_FUNCTION = 'ELV.TYPED';
/** Function that gives the cells of a range: its number, then cells that make the engine work it out again. */
export const RANGE_FUNCTION = 'ELV.RANGE';
/** INT as OpenFormula has it, down; that of the formula engine goes towards zero (hyperformula 3.5.0). */
export const INT_FUNCTION = 'ELV.INT';

/** Why a formula has no result where it reads an empty cell. */
export const READS_EMPTY = 'a cell that it reads is empty';
/** What the formula engine says of a function with another number of arguments than it takes (hyperformula 3.5.0). */
export const WRONG_ARGUMENTS = 'Wrong number of arguments.';

/** Why a formula has no result. */
export interface FormulaFault {
  readonly type: string;
  readonly message: string;
  /** The number that it comes to, where that cannot stand in its column. */
  readonly value?: number;
}

/** The cells of a range, line by line: their values, and faults where a formula has no result. */
export type RangeLines = readonly (readonly (CellValue | FormulaFault)[])[];

/** What the functions are given with the formula engine. */
export interface FunctionContext {
  /** The cells of the range with a number; `undefined` where an end of it is gone. */
  readonly range: (place: number) => RangeLines | undefined;
}

/** A part of a formula; its type is not published. */
type Ast = never;
interface State { readonly formulaAddress: unknown }
interface Call { readonly args: readonly Ast[] }

/** A value of the formula engine as the schedule knows it; what is neither is unknown. */
function plain(value: unknown): CellValue {
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value;
  // Percentages, dates and the like come as objects that hold their number.
  if (typeof value === 'object' && value !== null && 'val' in value && typeof value.val === 'number') return value.val;
  return null;
}

/** Why a number cannot stand in a column, or `undefined` when it can. */
export function outOfRange(column: InputColumn, value: number, words: Words): string | undefined {
  const { kind, min, above, max } = column;
  if (!Number.isFinite(value)) return words.say('not a finite number');
  if (kind === 'integer' && !Number.isInteger(value)) return words.say('{value} is not a whole number', { value });
  if (min !== undefined && value < min) return words.say('{value} is less than {limit}', { value, limit: min });
  if (above !== undefined && value <= above) {
    return words.say('{value} is not greater than {limit}', { value, limit: above });
  }
  if (max !== undefined && value > max) return words.say('{value} is greater than {limit}', { value, limit: max });
  return undefined;
}

const ERRORS: Readonly<Record<string, ErrorType>> =
  Object.fromEntries(Object.values(ErrorType).map((type) => [type, type]));

/** The functions that compiled formulas call. */
class ScheduleFunctions extends FunctionPlugin {
  static override implementedFunctions = {
    [TYPED_FUNCTION]: { method: 'typedInput', parameters: [] }, [RANGE_FUNCTION]: { method: 'range', parameters: [] },
    [INT_FUNCTION]: { method: 'roundedDown', parameters: [{ argumentType: FunctionArgumentType.NUMBER }] },
  };
  static override aliases = {};

  typedInput(call: Call, state: State): unknown {
    const [column, formula, ...cells] = call.args.map((arg) => this.evaluateAst(arg, state as never) as unknown);
    if (formula instanceof CellError) return formula;
    if (cells.some((cell) => cell === EmptyValue)) return new CellError(ErrorType.ERROR, READS_EMPTY);
    const value = plain(formula);
    if (typeof value !== 'number') return new CellError(ErrorType.VALUE, 'its result is not a number');
    const [sheet, key] = String(column).split('.') as [SheetName, string];
    const fits = outOfRange(columnOf(sheet, key) as InputColumn, value, ENGLISH) === undefined;
    return fits ? value : new CellError(ErrorType.NUM, String(value));
  }

  range(call: Call, state: State): unknown {
    const place: unknown = this.evaluateAst(call.args[0]!, state as never);
    const lines = (this.config.context as FunctionContext).range(Number(place));
    if (lines === undefined) return new CellError(ErrorType.REF);
    return SimpleRangeValue.onlyValues(lines.map((line) => line.map((value) => {
      if (value === null) return EmptyValue;
      return typeof value === 'object' ? new CellError(ERRORS[value.type] ?? ErrorType.ERROR, value.message) : value;
    })));
  }

  roundedDown(call: Call, state: State): unknown {
    return this.runFunction(call.args as never, state as never, this.metadata(INT_FUNCTION), Math.floor);
  }
}

let registered = false;

/** Makes the schedule's functions known to the formula engine; further calls do nothing. */
export function registerScheduleFunctions(): void {
  if (registered) return;
  registered = true;
  const names = Object.keys(ScheduleFunctions.implementedFunctions);
  HyperFormula.registerFunctionPlugin(
    ScheduleFunctions, { enGB: Object.fromEntries(names.map((name) => [name, name])) }
  );
}
