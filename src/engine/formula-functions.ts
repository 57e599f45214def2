import {
  CellError, EmptyValue, ErrorType, FunctionPlugin, HyperFormula, type FunctionPluginDefinition,
} from 'hyperformula';
import { columnOf, SHEET_NAMES, type InputColumn, type SheetName } from '../schedule/index.ts';
import { RULES, type PreparedRule } from './schema-rules.ts';

/** Function that every formula typed by a person is wrapped in: column, formula, then the single cells that it reads. */
export const TYPED_FUNCTION = 'TYPED.INPUT';

type Ast = Parameters<FunctionPlugin['evaluateAst' & keyof FunctionPlugin]>[0];
type State = { readonly formulaAddress: unknown };
interface Call { readonly args: readonly Ast[] }

/** A value of the formula engine as the schedule knows it; what is neither is unknown. */
function plain(value: unknown): number | string | boolean | null {
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value;
  // Percentages, dates and the like come as objects that hold their number.
  if (typeof value === 'object' && value !== null && 'val' in value && typeof value.val === 'number') return value.val;
  return null;
}

/** Why a number cannot stand in a column, or `undefined` when it can. */
export function outOfRange(column: InputColumn, value: number): string | undefined {
  if (!Number.isFinite(value)) return 'not a finite number';
  if (column.kind === 'integer' && !Number.isInteger(value)) return `${value} is not a whole number`;
  if (column.min !== undefined && value < column.min) return `${value} is less than ${column.min}`;
  if (column.above !== undefined && value <= column.above) return `${value} is not greater than ${column.above}`;
  if (column.max !== undefined && value > column.max) return `${value} is greater than ${column.max}`;
  return undefined;
}

/**
 * The functions that the compiled formulas call: one for each rule of the schema, and the one that wraps a formula typed by a
 * person. A rule with an unknown argument gives an unknown result, which the engine holds as an empty value.
 */
class ScheduleFunctions extends FunctionPlugin {
  static override implementedFunctions: Record<string, { method: string; parameters: never[] }> = {};
  static override aliases = {};

  runRule(rule: PreparedRule, call: Call, state: State): unknown {
    const takesUnknown = rule.rule.takesUnknown === true;
    const values: (number | string | boolean | null)[] = [];
    for (const arg of call.args) {
      const value = plain(this.evaluateAst(arg, state as never));
      if (value === null && !takesUnknown) return EmptyValue;
      values.push(value);
    }
    const result = rule.rule.by(...(values as never[]));
    return result === null || !Number.isFinite(result) ? EmptyValue : result;
  }

  typedInput(call: Call, state: State): unknown {
    const [column, formula, ...cells] = call.args.map((arg) => this.evaluateAst(arg, state as never) as unknown);
    if (formula instanceof CellError) return formula;
    if (cells.some((cell) => cell === EmptyValue)) return EmptyValue;
    const value = plain(formula);
    if (typeof value !== 'number') return new CellError(ErrorType.VALUE, 'its result is not a number');
    const [sheet, key] = String(column).split('.') as [SheetName, string];
    const problem = outOfRange(columnOf(sheet, key) as InputColumn, value);
    return problem === undefined ? value : new CellError(ErrorType.NUM, problem);
  }
}

let registered = false;

/** Makes the schedule's functions known to the formula engine; further calls do nothing. */
export function registerScheduleFunctions(): void {
  if (registered) return;
  registered = true;
  const names: Record<string, string> = { [TYPED_FUNCTION]: TYPED_FUNCTION };
  ScheduleFunctions.implementedFunctions = { [TYPED_FUNCTION]: { method: 'typedInput', parameters: [] } };
  const methods = ScheduleFunctions.prototype as unknown as Record<string, unknown>;
  for (const rule of SHEET_NAMES.flatMap((sheet) => RULES[sheet])) {
    ScheduleFunctions.implementedFunctions[rule.functionName] = { method: rule.functionName, parameters: [] };
    names[rule.functionName] = rule.functionName;
    methods[rule.functionName] = function (this: ScheduleFunctions, call: Call, state: State) {
      return this.runRule(rule, call, state);
    };
  }
  HyperFormula.registerFunctionPlugin(ScheduleFunctions as unknown as FunctionPluginDefinition, { enGB: names });
}
