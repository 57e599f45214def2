import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, tagOf, withUnit, type CellValue, type SheetName } from '../../schedule/index.ts';
import type { SafeSide, Words } from '../../words/index.ts';

const NO_BREAK = '\u00a0';

/**
 * A value of a column with its unit: «7.90 A»; «not known» for an empty one.
 * @param safeSide the side to which a limit is rounded where it is not one of the column itself.
 */
export function valueText(sheet: SheetName, key: string, value: CellValue, words: Words, safeSide?: SafeSide): string {
  const column = columnOf(sheet, key);
  return withUnit(safeSide === undefined ? column : { ...column, safeSide }, value, words);
}

/** The figure in a cell with its unit, with ≥ or ≤ before it where it is partial. */
export function figureText(schedule: LoadSchedule, sheet: SheetName, id: number, key: string): string {
  const value = schedule.value(sheet, id, key);
  const sign = schedule.partialSign(sheet, id, key);
  const text = valueText(sheet, key, value, schedule.words);
  return sign === '' || value === null ? text : `${sign}${NO_BREAK}${text}`;
}

/** The value of a cell as a number; `null` when it is unknown. */
export function numberAt(schedule: LoadSchedule, sheet: SheetName, id: number, key: string): number | null {
  const value = schedule.value(sheet, id, key);
  return typeof value === 'number' ? value : null;
}

/** What a row is called: its tag, else its number. */
export function nameOf(schedule: LoadSchedule, sheet: SheetName, id: number): string {
  const row = schedule.document.row(sheet, id);
  const tag = row === undefined ? '' : tagOf(sheet, row);
  return tag === '' ? schedule.words.say('row {row}', { row: schedule.document.position(sheet, id) + 1 }) : tag;
}

/** A text of at most so many signs: its middle gives way, as tags differ at their ends. */
export function shortened(text: string, most: number): string {
  const signs = Array.from(text);
  if (signs.length <= most) return text;
  const end = Math.floor((most - 1) / 2);
  return `${signs.slice(0, most - 1 - end).join('')}…${signs.slice(signs.length - end).join('')}`;
}

/** A text in lines of at most so many signs, apart from longer words. */
export function wrapped(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && longer.length <= most) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** A number as the axis of a picture has it. */
export function axisNumber(value: number, decimals: number, words: Words): string {
  const digits = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  return new Intl.NumberFormat(words.locale, { ...digits, signDisplay: 'negative', numberingSystem: 'latn' })
    .format(value);
}
