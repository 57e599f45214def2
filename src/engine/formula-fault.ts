import type { InputColumn } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';

/** Why a formula has no result. */
export interface FormulaFault {
  readonly type: string;
  readonly message: string;
  /** The number that it comes to, where that cannot stand in its column. */
  readonly value?: number;
}

/** Why a formula has no result where it reads an empty cell. */
export const READS_EMPTY = 'a cell that it reads is empty';
/** What the formula engine says of a function with another number of arguments than it takes (hyperformula 3.5.0). */
export const WRONG_ARGUMENTS = 'Wrong number of arguments.';
/** Why a formula has no result as long as the formula engine has not been fetched. */
export const AWAITS_ENGINE: FormulaFault = { type: 'AWAITED', message: '' };

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
