import type { Words } from '../../words/index.ts';
import type { CellValue, Column } from '../schema/index.ts';
import { formatCell } from './format-cell.ts';

/** A value as a sentence gives it, with its unit after a no-break space: «7.90 A»; «not known» for an empty one. */
export function withUnit(column: Column, value: CellValue, words: Words): string {
  if (value === null) return words.say('not known');
  const text = formatCell(column, value, words, 'show');
  return column.unit === undefined ? text : `${text}\u00a0${column.unit}`;
}
