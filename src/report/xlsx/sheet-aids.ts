import { columnLetters, inputColumns, isStatus, letterOf, SCHEMA, type SheetName } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import { STATE_WORDS } from '../model/state-words.ts';
import type { CellStyles } from './cell-styles.ts';
import type { LiveFormulas } from './live-formulas.ts';
import type { Choices, Condition } from './package-parts.ts';
import { quoted } from './quoted.ts';
import { shownValue } from './shown-value.ts';

/** Longest list of choices that the format takes in its place. */
const LONGEST_LIST = 255;

/**
 * What may be chosen in the columns of a sheet: the words of choices, yes and no, the tags of another sheet.
 * @param last number of the last row that takes an entry, from 1.
 */
export function choicesOf(sheet: SheetName, last: number, formulas: LiveFormulas, words: Words): Choices[] {
  return inputColumns(sheet).flatMap((column): Choices[] => {
    const letter = letterOf(sheet, column.key);
    const range = `${letter}2:${letter}${last}`;
    if (column.to !== undefined) {
      const tags = formulas.range(column.to, SCHEMA[column.to].tag);
      // What is not there yet may be named all the same.
      return tags === undefined ? [] : [{ range, list: tags, isOpen: true }];
    }
    const all = column.kind === 'boolean' ? [true, false] : column.choices ?? [];
    const named = all.map((each) => String(shownValue(column, each, words)));
    const list = quoted(named.join(','));
    // A comma parts the choices of a list.
    if (named.length === 0 || list.length > LONGEST_LIST || named.some((each) => each.includes(','))) return [];
    return [{ range, list }];
  });
}

/** Colours of statuses, as print and pages of the load table have them; words tell them apart without any. */
const STATE_LOOKS = {
  over: { ink: 'A1182A', fill: 'FBE9EB', isBold: true }, near: { ink: '7A4B00', fill: 'FFF4E0' },
  incomplete: { ink: '55606A', fill: 'ECEEF0' },
} as const;

/** How statuses look, and what asks for recalculation, in the rows up to the last one. */
export function statusConditions(
  sheet: SheetName, last: number, formulas: LiveFormulas, styles: CellStyles, words: Words,
): Condition[] {
  const { columns } = SCHEMA[sheet];
  const status = columns.findIndex(isStatus);
  const states = status < 0 ? [] : (['over', 'near', 'incomplete'] as const).map((state): Condition => {
    const letter = columnLetters(status);
    return {
      range: `${letter}2:${letter}${last}`, formula: `$${letter}2=${quoted(words.say(STATE_WORDS[state]))}`,
      style: styles.conditional(STATE_LOOKS[state]),
    };
  });
  return [...states, {
    range: `A2:${columnLetters(columns.length - 1)}${last}`, formula: `A2=${quoted(formulas.recalculate)}`,
    style: styles.conditional(STATE_LOOKS.near),
  }];
}
