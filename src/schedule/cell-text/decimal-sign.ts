import { isWellFormed } from '../../words/index.ts';
import type { DecimalSign } from './written-number.ts';

export type { DecimalSign } from './written-number.ts';

const known = new Map<string, DecimalSign>();

/**
 * The decimal sign of a language.
 * @param locale BCP 47 tag, such as `de-CH`; one that is not well-formed, as a page's `lang` may be, gives the point.
 */
export function decimalSign(locale: string): DecimalSign {
  let sign = known.get(locale);
  if (sign === undefined) {
    const format = new Intl.NumberFormat(isWellFormed(locale) ? locale : 'en', { numberingSystem: 'latn' });
    sign = format.format(1.5).includes(',') ? ',' : '.';
    known.set(locale, sign);
  }
  return sign;
}
