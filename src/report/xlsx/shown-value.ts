import { shownText } from '../../findings/index.ts';
import type { CellValue, Column } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';

/** A value as a worksheet has it: a status, a choice, yes and no as they are called, every other one as it is. */
export function shownValue(column: Column, value: CellValue, words: Words): CellValue {
  return typeof value === 'string' || typeof value === 'boolean' ? shownText(column, value, words) : value;
}
