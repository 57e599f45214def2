import { isInRange, type InputColumn } from '../schedule/index.ts';

/**
 * Whether a number may stand in a column: within its range, and whole where things are counted. One that a file holds
 * beyond it is not known: nobody can tell what was meant. What is refused here is told by `outOfRange`.
 */
export function isAllowed(column: InputColumn, value: number): boolean {
  return isInRange(column, value)
    && (column.kind !== 'integer' || column.metres === true || Number.isInteger(value));
}
