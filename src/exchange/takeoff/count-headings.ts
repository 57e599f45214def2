import { looksLikeArea } from './area-words.ts';
import { HEADING_WORDS } from './heading-words.ts';
import { isCountUnit } from './count-units.ts';
import { plainWords } from './plain-words.ts';
import { namesTotal } from './total-words.ts';

/** Letters with an accent or without. */
const ACCENTS: Readonly<Record<string, string>> = {
  a: '[aàâä]', e: '[eéèê]', u: '[uüû]', o: '[oöô]', s: '[sß]',
};
/** Words that head counts, the longest first, and words that join them to what they count. */
const COUNT_WORDS = [...HEADING_WORDS.qty, 'in', 'im', 'of', 'de', 'des', 'per', 'je', 'par']
  .sort((one, other) => other.length - one.length);
const WORDS = COUNT_WORDS.map((word) => word.split(' ')
  .map((each) => each.replace(/[aeuos]/g, (letter) => ACCENTS[letter]!)).join('[\\s.]+')).join('|');
const [LEADING, TRAILING] = [new RegExp(`^ (?:${WORDS})[.:]? `, 'iu'), new RegExp(`(?<= )(?:${WORDS})[.:]? $`, 'iu')];
const DEVICE_WORDS = new Set(HEADING_WORDS.type);
/** Words of a revision, of an order: two columns of counts under them are not added up. Common practice, no source. */
const RIVALS = /\b(?:alt|alte|alter|neu|neue|neuer|old|new|rev|revision|index|previous|previously|former|formerly|was|now|before|after|latest|changed|issue|version|bisher|vorher|nachher|zuvor|jetzt|aktuell|geandert|ausgabe|avant|apres|actuel|actuelle|precedent|precedente|indice|stand|ancien|ancienne|nouveau|nouvelle|ordered|bestellt|commande|delivered|geliefert|livre|difference|differenz|ecart|delta|actual|ist|soll|planned|geplant|prevu|tender|contract|offer|angebot|auftrag|offre|marche|installed|built|required|verbaut|pose|existing|bestand|existant|est|estimated|geschatzt|estime|min|max|minimum|maximum|variante|variant)\b/u;

/**
 * What a heading of counts says beside that it counts: `L0` of «Qty L0», `1. OG` of «Menge (1. OG)»; empty for «Qty
 * (pcs)», «No. of devices» and «Total».
 */
export function placeOf(heading: string): string {
  let [text, before] = [` ${heading.replace(/[()[\]]/g, ' ').replace(/\s+/g, ' ').trim()} `, ''];
  for (; text !== before; text = text.replace(LEADING, ' ').replace(TRAILING, ' ')) before = text;
  const place = text.replace(/^[\s:–-]+|[\s:–-]+$/g, '');
  const isNone = isCountUnit(place) || plainWords(place).every((word) => DEVICE_WORDS.has(word));
  return isNone || namesTotal(heading) ? '' : place;
}

/** A year that a list may be of, in a heading or as its whole text beside a word for counts. */
const YEAR = /^(?:19|20)\d{2}$/;

/**
 * Whether headings speak of revisions, orders or years of the same devices, which are never added up: where a word says
 * that they count, by any word beside it, else as a whole, since «New hall» is a room. Numbers of rooms may be years
 * too, unless one beside them is none.
 */
export function areRivals(headings: readonly string[]): boolean {
  return areYears(headings) || headings.some((heading) => {
    if (looksLikeArea(heading)) return false;
    const words = plainWords(heading);
    return placeOf(heading) === heading.trim() ? words.every((word) => RIVALS.test(word) || /^(?:\p{N}.*|\p{L})$/u.test(word))
      && RIVALS.test(words.join(' ')) : RIVALS.test(words.join(' '));
  });
}

/** Whether all headings are years: «2024» and «2025», «Qty 2024» and «Qty 2025». */
export function areYears(headings: readonly string[]): boolean {
  return headings.length > 1 && headings.every((heading) => YEAR.test(placeOf(heading) || heading.trim()));
}
