import { columnOf, tagOf, withUnit, type CellValue, type SheetName } from '../../src/schedule/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { SafeSide, Words } from '../../src/words/index.ts';

/** One cell of a schedule, by the row's id. */
export interface Place {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
}

/** What a row is called in a sentence: its tag, else its number. */
export function rowName(schedule: LoadSchedule, { sheet, id }: Pick<Place, 'sheet' | 'id'>): string {
  const row = schedule.document.row(sheet, id);
  return row === undefined
    ? ''
    : tagOf(sheet, row) || schedule.words.say('row {row}', { row: schedule.document.position(sheet, id) + 1 });
}

const NO_BREAK = '\u00a0';

/**
 * A value of a column as a sentence gives it, with its unit: «7.90 A»; «unknown» for an empty one.
 * @param safeSide the side to which a limit is rounded where it is not one of the column itself.
 */
export function valueText(sheet: SheetName, key: string, value: CellValue, words: Words, safeSide?: SafeSide): string {
  if (value === null) return words.say('unknown');
  const column = columnOf(sheet, key);
  return withUnit(safeSide === undefined ? column : { ...column, safeSide }, value, words);
}

/** The figure in a cell with its unit; with ≥ or ≤ in front where it follows from a partial total. */
export function figureText(schedule: LoadSchedule, { sheet, id, key }: Place): string {
  const sign = schedule.partialSign(sheet, id, key);
  const value = schedule.value(sheet, id, key);
  return signed(sign, valueText(sheet, key, value, schedule.words), value);
}

/** The text of a figure with the sign of one that lacks something; one that is not known has none. */
export function signed(sign: string, text: string, value: CellValue): string {
  return sign === '' || value === null ? text : `${sign}${NO_BREAK}${text}`;
}

/** The value of a cell as a number; `null` when it is unknown. */
export function numberAt(schedule: LoadSchedule, { sheet, id, key }: Place): number | null {
  const value = schedule.value(sheet, id, key);
  return typeof value === 'number' ? value : null;
}
