import { fixed, type Words } from '../../words/index.ts';
import type { CellValue, Column } from '../schema/index.ts';
import { decimalSign } from './decimal-sign.ts';

const THIN_SPACE = '\u2009';
const NARROW_NO_BREAK_SPACE = '\u202f';
/** A figure with more decimals than this was divided, not typed: it is shown rounded. */
const MOST_TYPED_DECIMALS = 6;
/** Where the figure may follow from others, these beyond the decimals of its column. */
const MORE_DECIMALS = 2;

/**
 * Writes the value of a cell as text that `parseCell` reads back in the same language.
 * @param use `show`: as a printed table has it, the same decimals down a column, thousands parted above 9999, shares in
 * percent, limits rounded to their safe side; an input shows all the decimals that were typed. `edit`: full precision,
 *   shares in percent. `copy`: full precision, shares as a number from 0 to 1, for another program.
 * @returns the text; empty for `null`.
 */
export function formatCell(column: Column, value: CellValue, words: Words, use: 'show' | 'edit' | 'copy'): string {
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? words.say('yes') : words.say('no');
  if (typeof value === 'string') return column.kind === 'choice' ? words.text(value) : value;
  const metres = column.role === 'input' && column.metres === true && !Number.isInteger(value) ? ' m' : '';
  const percent = column.kind === 'ratio' && use !== 'copy';
  const plain = movePoint(String(value), percent ? 2 : 0);
  const sign = decimalSign(words.locale);
  if (use !== 'show') return plain.replace('.', sign) + (percent ? ' %' : metres);
  return shown(column, plain).replace('.', sign) + (percent ? `${NARROW_NO_BREAK_SPACE}%` : metres);
}

/**
 * Decimals with which the figures of a column are shown: two of amperes and volts; a ratio counts those of its
 * percentage.
 */
export function decimalsOf({ decimals, unit }: Column): number {
  return decimals ?? (unit === 'A' || unit === 'V' ? 2 : 0);
}

/** Moves the decimal point in the text, so that nothing is rounded: 0.07 is 7 %, not 7.000000000000001 %. */
function movePoint(text: string, places: number): string {
  const [mantissa, exponent = '0'] = text.split('e');
  if (places === 0 && exponent === '0') return text;
  const [whole, decimals = ''] = mantissa!.replace('-', '').split('.');
  const point = whole!.length + Number(exponent) + places;
  const digits = (whole! + decimals).padStart(whole!.length + decimals.length + Math.max(0, 1 - point), '0');
  const place = Math.max(1, point);
  const padded = digits.padEnd(place, '0');
  const front = padded.slice(0, place).replace(/^0+(?=\d)/, '');
  const back = padded.slice(place).replace(/0+$/, '');
  return `${text.startsWith('-') ? '-' : ''}${front}${back === '' ? '' : `.${back}`}`;
}

function shown(column: Column, plain: string): string {
  const decimals = decimalsOf(column);
  const typed = plain.split('.')[1]?.length ?? 0;
  const most = column.role === 'input' && column.derived !== undefined ? decimals + MORE_DECIMALS : MOST_TYPED_DECIMALS;
  const asTyped = column.role === 'input' && typed <= most;
  const rounded = fixed(Number(plain), asTyped ? Math.max(decimals, typed) : decimals, column.safeSide);
  const [whole, fraction] = rounded.split('.');
  const grouped = /\d{5}/.test(whole!) ? whole!.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE) : whole!;
  return (fraction === undefined ? grouped : `${grouped}.${fraction}`).replace('-', '−');
}
