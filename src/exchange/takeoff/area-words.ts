import { HEADING_WORDS } from './heading-words.ts';
import { plainWords } from './plain-words.ts';

/** Words in the names of storeys and rooms, in English, German and French; common practice, no source. */
const AREA_WORDS = new Set([...HEADING_WORDS.area.filter((word) => !word.includes(' ')), ...[
  'ground', 'basement', 'cellar', 'mezzanine', 'attic', 'roof', 'hall', 'lobby', 'foyer', 'corridor', 'kitchen', 'office',
  'store', 'stores', 'bath', 'bathroom', 'toilet', 'toilets', 'wc', 'stair', 'stairs', 'staircase', 'wing', 'block', 'tower', 'plant', 'lounge', 'reception',
  'erdgeschoss', 'obergeschoss', 'untergeschoss', 'dachgeschoss', 'kellergeschoss', 'keller', 'dach', 'stock', 'flur',
  'kuche', 'kueche', 'buro', 'buero', 'bad', 'lager', 'treppenhaus', 'haus', 'flugel', 'technik', 'saal', 'eingang', 'gang',
  'eg', 'ug', 'og', 'dg', 'kg', 'zg', 'rdc', 'rez', 'combles', 'toiture', 'sous', 'couloir', 'cuisine', 'bureau',
  'bains', 'accueil', 'entree', 'escalier', 'gf', 'lg', 'bf', 'ss',
]]);
/** L0, N1, U2, B-1, R+1, 1.OG, 2nd, 1er, 0.01, 101. */
const STOREY = /^(?:[lnubre]\s?[+-]?\d{1,2}|\d{1,2}\.?\s?(?:og|ug|st|nd|rd|th|er|e|eme)|\d{1,2}\.\d{2}\b.*|\d{3,4}[a-z]?)$/u;

const MOST_TITLE_WORDS = 5;

/** Whether a text looks like the name of a storey or a room. */
export function looksLikeArea(text: string): boolean {
  const words = plainWords(text);
  return words.some((word) => AREA_WORDS.has(word)) || STOREY.test(text.trim().toLowerCase());
}

/** Whether a text names a storey or a building and little more: «1. OG», «Building A», and not «see roof plan». */
export function isPlaceTitle(text: string): boolean {
  const words = plainWords(text);
  const others = words.filter((word) => !AREA_WORDS.has(word) && word.length > 2 && !/^\p{N}/u.test(word));
  return looksLikeArea(text) && others.length <= 1 && words.length <= MOST_TITLE_WORDS;
}
