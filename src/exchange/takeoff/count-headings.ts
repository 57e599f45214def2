import { HEADING_WORDS } from './heading-words.ts';
import { isCountUnit } from './count-units.ts';
import { plainWords } from './plain-words.ts';
import { namesTotal } from './total-words.ts';

/** Words that head counts, the longest first, and words that join them to what they count. */
const COUNT_WORDS = [...HEADING_WORDS.qty, 'in', 'im', 'of', 'de', 'des', 'per', 'je', 'par']
  .sort((one, other) => other.length - one.length);
const DEVICE_WORDS = new Set(HEADING_WORDS.type);
/** Words of a revision, of an order: two columns of counts under them are not added up. Common practice, no source. */
const RIVALS = /\b(?:alt|alte|alter|neu|neue|neuer|old|new|rev|revision|index|previous|bisher|stand|ancien|ancienne|nouveau|nouvelle|ordered|bestellt|commande|delivered|geliefert|livre|difference|differenz|ecart|delta|actual|ist|soll|planned|geplant|prevu)\b/u;

/**
 * What a heading of counts says beside that it counts: `L0` of «Qty L0», `1. OG` of «Menge (1. OG)»; empty for «Qty
 * (pcs)», «No. of devices» and «Total».
 */
export function placeOf(heading: string): string {
  let text = ` ${heading.replace(/[()[\]]/g, ' ').replace(/\s+/g, ' ').trim()} `;
  for (const word of COUNT_WORDS) {
    const pattern = word.split(' ').map((each) => [...each].map(anyAccent).join('')).join('[\\s.]+');
    text = text.replace(new RegExp(`^ ${pattern}[.:]? |(?<= )${pattern}[.:]? $`, 'iu'), ' ');
  }
  const place = text.replace(/^[\s:–-]+|[\s:–-]+$/g, '');
  const isNone = isCountUnit(place) || plainWords(place).every((word) => DEVICE_WORDS.has(word));
  return isNone || namesTotal(heading) ? '' : place;
}

/** Whether headings speak of revisions or orders of the same devices, which are never added up. */
export function areRivals(headings: readonly string[]): boolean {
  return headings.some((heading) => RIVALS.test(plainWords(heading).join(' ')));
}

/** A letter with or without an accent. */
function anyAccent(letter: string): string {
  const accents: Readonly<Record<string, string>> = { a: 'aàâä', e: 'eéèê', u: 'uüû', o: 'oöô', s: 'sß' };
  return Object.hasOwn(accents, letter) ? `[${accents[letter]}]` : letter;
}
