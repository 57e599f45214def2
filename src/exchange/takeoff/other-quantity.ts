import { plainWords } from './plain-words.ts';

/** Symbols of units that a count has not, in brackets, behind a slash or as a word; those of one letter only there. */
const UNIT = /[([/]\s*(?:[mkµ]?[WVA]|VA|kVA|m[²2]|[mc]m[²2]?|dB(?:\(A\))?|k?g|lm|lx|K|°C|%|h|min|s|k?Hz|Ω|ohm|€|EUR|CHF|£|GBP|\$|USD|kWh?|IP)\s*(?:[)\]]|$)/u;
const UNIT_WORDS = new Set(['ma', 'mw', 'kw', 'va', 'kva', 'db', 'mm', 'cm', 'm2', 'mm2', 'kg', 'lm', 'lx', 'hz', 'ohm', 'eur', 'chf', 'gbp', 'usd', 'kwh']);
/** Words of other quantities than a count, as parts of words too; common practice, no source. */
const WORDS = new RegExp(`[€£$%°]|${[
  'preis', 'price', 'prix', 'kosten', 'betrag', 'montant', 'tarif', '\\bcosts?\\b', '\\bep\\b', '\\bgp\\b', '\\bpu\\b', '\\bp u\\b', '\\bpt\\b',
  'leistung', 'power', 'puissance', '\\bwatts?\\b', '\\bdraw\\b', '\\bcurrent\\b', '\\bstrom', 'courant', 'consommation', 'intensite',
  'spannung', 'voltage', '\\bvolts?\\b', '\\bamps?\\b', 'ampere', '\\bpeak\\b', '\\bspitze', '\\btension', 'breite', 'width', 'largeur', 'hohe\\b', 'hoehe', 'height', 'hauteur', 'tiefe', 'depth', 'profondeur',
  'lange\\b', 'laenge', 'length', 'longueur', 'distance', 'abstand', 'gewicht', 'weight', 'poids', 'durchmesser', 'diameter', 'diametre',
  'flache', 'flaeche', 'surface', 'querschnitt', 'section\\b', 'cores\\b', 'adern', 'conducteurs', 'nodes', 'teilnehmer', 'participants',
  'address', 'adresse', 'channel', 'kanal', 'canal', 'voie', 'stunden', 'hours', 'heures', 'minuten', 'minutes', 'jahr\\b', '\\byear', 'annee',
  'datum', '\\bdate', 'artikel', '\\bart\\b', 'article', 'part n', 'catalog', '\\bean\\b', '\\bcode\\b', 'phase', 'circuit',
  'stromkreis', 'page', 'seite', 'blatt', 'schallpegel', 'lumen', 'lux\\b', 'temperatur', 'diversity', 'gleichzeit',
  'simultaneite', 'faktor', 'factor', 'facteur', 'prozent', 'percent',
].join('|')}`, 'u');

/** Words of a revision or an order: beside «Qty» they say which count it is. */
const ISSUE = /order|bestell|\brev|index|version/u;
const QTY = /\b(?:qty|quantit(?:y|ies|es?)|counts?|pcs|pieces|anzahl|stuck|stueck|stk|qtes?)\b|mengen?\b/u;

/** Whether a heading speaks of another quantity than a count: mA, W, €, a price, a length, an address. */
export function namesOtherQuantity(heading: string): boolean {
  const words = plainWords(heading);
  return UNIT.test(heading.normalize('NFC')) || words.some((word) => UNIT_WORDS.has(word)) || WORDS.test(
    `${words.join(' ')} ${/[€£$%°]/.exec(heading)?.[0] ?? ''}`) || (ISSUE.test(words.join(' ')) && !QTY.test(words.join(' ')));
}
