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
/** L0, N1, U2, B-1, R+1, 1.OG, 2nd, 1er. */
const STOREY = /^(?:[lnubre]\s?[+-]?\d{1,2}|\d{1,2}\.?\s?(?:og|ug|st|nd|rd|th|er|e|eme))$/u;
/** 0.01, 101. */
const ROOM_NUMBER = /^(?:\d{1,2}\.\d{2}\b.*|\d{3,4}[a-z]?)$/u;

/** Words that say how much a title takes in, from the most on; common practice, no source. */
const RANKS: readonly ReadonlySet<string>[] = [
  ['site', 'campus', 'areal', 'gelande', 'gelaende'],
  ['building', 'block', 'tower', 'house', 'haus', 'gebaude', 'gebaeude', 'turm', 'batiment', 'bat', 'tour'],
  ['wing', 'trakt', 'flugel', 'fluegel', 'gebaudeteil', 'gebaeudeteil', 'bauteil', 'bauabschnitt', 'aile'],
  [
    'level', 'floor', 'storey', 'ground', 'basement', 'cellar', 'mezzanine', 'attic', 'roof', 'geschoss', 'etage',
    'stockwerk', 'stock', 'ebene', 'niveau', 'keller', 'dach', 'eg', 'ug', 'og', 'dg', 'kg', 'zg', 'rdc', 'rez', 'combles',
    'toiture', 'sous', 'gf', 'lg', 'bf', 'ss',
  ],
  ['flat', 'apartment', 'suite', 'wohnung', 'whg', 'logement', 'appartement'],
].map((words) => new Set(words));
const RANK_OF_STOREYS = 3;
/** Rank of rooms, and of whatever else a title says. */
export const OTHER = RANKS.length;

const MOST_TITLE_WORDS = 5;

/** Whether a text looks like the name of a storey or a room. */
export function looksLikeArea(text: string): boolean {
  const words = plainWords(text);
  const whole = text.trim().toLowerCase();
  return words.some((word) => AREA_WORDS.has(word)) || STOREY.test(whole) || ROOM_NUMBER.test(whole);
}

/** Whether a text names a storey or a building and little more: «1. OG», «Building A», and not «see roof plan». */
export function isPlaceTitle(text: string): boolean {
  const words = plainWords(text);
  const others = words.filter((word) => !AREA_WORDS.has(word) && word.length > 2 && !/^\p{N}/u.test(word));
  return looksLikeArea(text) && others.length <= 1 && words.length <= MOST_TITLE_WORDS;
}

/** How much a title takes in: 0 for a site, 1 for a building and so on; several for one that names several. */
export function ranksOf(title: string): number[] {
  const words = plainWords(title);
  const isStorey = STOREY.test(title.trim().toLowerCase()) || words.some((word) => word.endsWith('geschoss'));
  const ranks = RANKS.flatMap((names, rank) =>
    words.some((word) => names.has(word)) || (isStorey && rank === RANK_OF_STOREYS) ? rank : []);
  return ranks.length > 0 ? ranks : [OTHER];
}
