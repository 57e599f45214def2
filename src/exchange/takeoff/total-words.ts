import { plainWords } from './plain-words.ts';

/** Words of lines of totals in English, German and French, wherever they stand; common practice, no source. */
const TOTAL_WORDS = [
  'total', 'totals', 'subtotal', 'subtotals', 'sub total', 'carried forward', 'brought forward',
  'summe', 'zwischensumme', 'teilsumme', 'gesamt', 'gesamtsumme', 'endsumme', 'ubertrag', 'uebertrag',
  'somme', 'sous total', 'a reporter',
];
/** Words that mean a total only where a line begins with them. */
const FIRST_WORDS = ['sum', 'sums', 'report'];

/** Whether a text may be that of a line of totals: «Subtotal», «Ground floor total», «Summe EG». */
export function namesTotal(text: string): boolean {
  const line = ` ${plainWords(text).join(' ')} `;
  return TOTAL_WORDS.some((each) => line.includes(` ${each} `)) || FIRST_WORDS.some((each) => line.startsWith(` ${each} `));
}
