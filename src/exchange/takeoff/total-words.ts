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

/** Texts that mean a total only where a line of a list says nothing else; common practice, no source. */
const WHOLE = new Set([
  'c f', 'b f', 'c fwd', 'b fwd', 'carried fwd', 'brought fwd', 'in all', 'altogether', 'overall', 'all devices', 'number of devices',
  'zusammen', 'seitensumme', 'kontrollsumme', 'alle gerate', 'alle geraete', 'anzahl gerate', 'anzahl geraete',
  'recapitulatif', 'tous les appareils', 'nombre d appareils',
]);

/** Words of a title below which devices are counted once more, by type; common practice, no source. */
const SUMMARY_TITLE = /\b(?:totals|summary|recap|summen|ubersicht|uebersicht|zusammenfassung|zusammenstellung|totaux|recapitulatif|recapitulation|synthese)\b/;

/** Whether a title heads a summary of what stands above it. */
export function headsSummary(title: string): boolean {
  return SUMMARY_TITLE.test(plainWords(title).join(' '));
}

/** Whether what a line is called, without a device, is a total: «Summe EG», «c/f», «Σ». */
export function isTotalName(text: string): boolean {
  return namesTotal(text) || /^[Σ∑]|^=+$/.test(text) || WHOLE.has(plainWords(text).join(' '));
}
