import { plainWords } from './plain-words.ts';

/** Words with which a line of totals begins, in English, German and French; common practice, no source. */
const TOTAL_WORDS = [
  'total', 'totals', 'subtotal', 'subtotals', 'sub total', 'grand total', 'sum', 'carried forward', 'brought forward',
  'summe', 'zwischensumme', 'teilsumme', 'gesamt', 'gesamtsumme', 'endsumme', 'ubertrag', 'uebertrag',
  'somme', 'sous total', 'report', 'a reporter',
];

/** Whether a text begins as a line of totals does. */
export function headsTotal(text: string): boolean {
  const line = `${plainWords(text).join(' ')} `;
  return TOTAL_WORDS.some((each) => line.startsWith(`${each} `));
}
