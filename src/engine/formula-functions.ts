import {
  CellError, EmptyValue, ErrorType, FunctionArgumentType, FunctionPlugin, HyperFormula, SimpleRangeValue,
} from 'hyperformula';
import { columnOf, type CellValue, type InputColumn, type SheetName } from '../schedule/index.ts';
import { ENGLISH } from '../words/index.ts';
import { INT_FUNCTION, RANGE_FUNCTION, TYPED_FUNCTION } from './compile-formula.ts';
import { outOfRange, READS_EMPTY, type FormulaFault } from './formula-fault.ts';

/*
 * Our functions have names of their own: registering them changes nothing for a page that uses the same library itself.
 */

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
