import { isUnit } from './units.ts';
import { writtenNumber, type DecimalSign } from './written-number.ts';

/**
 * Finds out which decimal sign numbers that came together use: `12,5` and `1.234,5` prove a comma, `0.35` a point,
 * `1,200` proves nothing.
 * @param texts cells of columns of numbers; what is not a number, with or without a unit, is passed over.
 * @returns the sign; `undefined` when nothing proves one or when both are in use.
 */
export function detectDecimal(texts: Iterable<string>): DecimalSign | undefined {
  let sign: DecimalSign | undefined;
  for (const text of texts) {
    const number = writtenNumber(text);
    if (number?.proves === undefined || (number.rest !== '' && !isUnit(number.rest))) continue;
    if (sign !== undefined && sign !== number.proves) return undefined;
    sign = number.proves;
  }
  return sign;
}
