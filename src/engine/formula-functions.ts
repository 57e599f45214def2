import {
  CellError, EmptyValue, ErrorType, FunctionArgumentType, FunctionPlugin, HyperFormula, SimpleRangeValue,
} from 'hyperformula';
import { columnOf, SHEET_NAMES, type InputColumn, type SheetName } from '../schedule/index.ts';
import { ENGLISH, type Words } from '../words/index.ts';
import { RULES, type PreparedRule } from './schema-rules.ts';

/**
 * Function that every formula typed by a person is wrapped in: column, formula, then the single cells that it reads.
 */
export const TYPED_FUNCTION = 'TYPED.INPUT';

/**
 * Function that makes one range of cells that a person sees side by side and the engine holds apart: number of columns,
 * then the ranges of each column in turn.
 */
export const RANGE_FUNCTION = 'TYPED.RANGE';

/** Why a formula has no result where it reads an empty cell. */
export const READS_EMPTY = 'a cell that it reads is empty';
/** What the formula engine says of a function with another number of arguments than it takes (hyperformula 3.5.0). */
export const WRONG_ARGUMENTS = 'Wrong number of arguments.';

/** A part of a formula; its type is not published. */
type Ast = never;
interface State { readonly formulaAddress: unknown }
interface Call { readonly args: readonly Ast[] }

/** A value of the formula engine as the schedule knows it; what is neither is unknown. */
function plain(value: unknown): number | string | boolean | null {
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
  if (above !== undefined && value <= above) return words.say('{value} is not greater than {limit}', { value, limit: above });
  if (max !== undefined && value > max) return words.say('{value} is greater than {limit}', { value, limit: max });
  return undefined;
}

/**
 * The functions that the compiled formulas call: one for each rule of the schema, two for formulas typed by a
 * person, and INT. A rule with an unknown argument gives an unknown result, which the engine holds as an empty value.
 */
class ScheduleFunctions extends FunctionPlugin {
  static override implementedFunctions: Record<string, { method: string; parameters: never[] }> = {};
  static override aliases = {};

  runRule(rule: PreparedRule, call: Call, state: State): unknown {
    const takesUnknown = rule.rule.takesUnknown === true;
    const values: (number | string | boolean | null)[] = [];
    for (const arg of call.args) {
      const result: unknown = this.evaluateAst(arg, state as never);
      const value = plain(result);
      if (value === null && !takesUnknown) return EmptyValue;
      // A formula without a result is not the same as nothing entered: no default may take its place.
      values.push(result instanceof CellError ? NaN : value);
    }
    const result = rule.rule.by(...(values as never[]));
    return result === null || !Number.isFinite(result) ? EmptyValue : result;
  }

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

  /** INT as OpenFormula has it, down; that of the formula engine goes towards zero (hyperformula 3.5.0). */
  roundedDown(call: Call, state: State): unknown {
    return this.runFunction(call.args as never, state as never, this.metadata('INT'), Math.floor);
  }

  typedRange(call: Call, state: State): unknown {
    const [width, ...ranges] = call.args.map((arg) => this.evaluateAst(arg, state as never));
    const values = ranges.flatMap((range) => range instanceof SimpleRangeValue ? range.data.flat() : [range]);
    const height = values.length / Number(width);
    const lines = Array.from({ length: height }, (_line, line) =>
      Array.from({ length: Number(width) }, (_value, column) => values[column * height + line]!));
    return SimpleRangeValue.onlyValues(lines as never);
  }
}

let registered = false;

/** Makes the schedule's functions known to the formula engine; further calls do nothing. */
export function registerScheduleFunctions(): void {
  if (registered) return;
  registered = true;
  const names: Record<string, string> = { [TYPED_FUNCTION]: TYPED_FUNCTION, [RANGE_FUNCTION]: RANGE_FUNCTION, INT: 'INT' };
  ScheduleFunctions.implementedFunctions = {
    [TYPED_FUNCTION]: { method: 'typedInput', parameters: [] }, [RANGE_FUNCTION]: { method: 'typedRange', parameters: [] },
    INT: { method: 'roundedDown', parameters: [{ argumentType: FunctionArgumentType.NUMBER }] as never },
  };
  const methods = ScheduleFunctions.prototype as unknown as Record<string, unknown>;
  for (const rule of SHEET_NAMES.flatMap((sheet) => RULES[sheet])) {
    ScheduleFunctions.implementedFunctions[rule.functionName] = { method: rule.functionName, parameters: [] };
    names[rule.functionName] = rule.functionName;
    methods[rule.functionName] = function (this: ScheduleFunctions, call: Call, state: State) {
      return this.runRule(rule, call, state);
    };
  }
  HyperFormula.registerFunctionPlugin(ScheduleFunctions, { enGB: names });
}
