import type { InputColumn } from '../schedule/index.ts';

/**
 * Whether a number may stand in a column, asked of many rows: within its range, and whole where things are counted.
 * One that a file holds beyond it is not known: nobody can tell what was meant.
 */
export function allowedIn(column: InputColumn): (value: number) => boolean {
  const { kind, metres, min = -Infinity, above = -Infinity, max = Infinity } = column;
  const isCounted = kind === 'integer' && metres !== true;
  return (value) => value >= min && value > above && value <= max && value < Infinity && value > -Infinity
    && (!isCounted || Number.isInteger(value));
}
