import { plainWords } from './plain-words.ts';

/** Words of lines of totals in English, German and French, wherever they stand; common practice, no source. */
const TOTAL_WORDS = [
  'total', 'totals', 'subtotal', 'subtotals', 'sub total', 'carried forward', 'brought forward',
  'tot', 'summe', 'summen', 'zwischensumme', 'zwischensummen', 'teilsumme', 'ges', 'gesamt', 'gesamtsumme', 'gesamtmenge',
  'gesamtanzahl', 'endsumme',
  'insgesamt', 'teilergebnis', 'gesamtergebnis', 'zwischenergebnis', 'ubertrag', 'uebertrag',
  'somme', 'sommes', 'totaux', 'sous total', 'sous totaux', 'a reporter', 'cumul',
];
/** Words that mean a total only where a line begins with them. */
const FIRST_WORDS = ['sum', 'sums', 'report'];

/** Whether a text may be that of a line of totals: «Subtotal», «Ground floor total», «Summe EG». */
export function namesTotal(text: string): boolean {
  const line = ` ${plainWords(text).join(' ')} `;
  return TOTAL_WORDS.some((each) => line.includes(` ${each} `))
    || FIRST_WORDS.some((each) => line.startsWith(` ${each} `));
}
