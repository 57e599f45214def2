import { SCHEMA, type SheetName } from '../schema/index.ts';
import { columnLetters } from './column-letters.ts';

/** Letters that formulas call a column by, as in `=D3*2`: they count the columns of the schema. */
export function letterOf(sheet: SheetName, key: string): string {
  return columnLetters(SCHEMA[sheet].columns.findIndex((column) => column.key === key));
}
