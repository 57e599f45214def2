import { headingFactor } from './heading-factor.ts';

/** What is counted once and built several times, in English, German, French; common practice, no source. */
const DWELLING = 'flats?|apartments?|dwellings?|houses?|maisonettes?|suites?|villas?|bungalows?|wohnung(?:en)?|wohneinheit(?:en)?|we|whg|'
  + 'appartements?|haus|hauser|haeuser|reihenhaus|reihenhauser|reihenhaeuser|logements?|maisons?|studios?';
/** What stands in the lines of a list too: its quantity per room may be that of the room of the line. */
const PLACE = 'rooms?|bedrooms?|bathrooms?|classrooms?|floors?|storeys?|levels?|units?|zimmer|raum|raume|raeume|geschoss|geschosse|etagen?|stockwerke?|'
  + 'klassenzimmer|einheit(?:en)?|chambres?|etages?|niveaux?|salles?|locaux|local|types?|typen?';
const SEVERAL = 'flats|apartments|dwellings|houses|maisonettes|suites|villas|bungalows|wohnungen|wohneinheiten|we|appartements|hauser|haeuser|'
  + 'reihenhauser|reihenhaeuser|logements|maisons|studios';
const PLACES = 'rooms|bedrooms|bathrooms|classrooms|floors|storeys|levels|raume|geschosse|etagen|stockwerke|chambres|etages|niveaux|salles|locaux';
/** «No. room» is the number of one, and «Zimmer» are one or several. */
const NUMBER_OF = String.raw`(?:(?:nos?|nr|number|anzahl|anz|zahl|nombre|nb|nbre)\.?\s*(?:of|der|an|de|des|d')?\s*(?:the\s)?(?:identical\s|gleiche[rn]?\s)?(?:${SEVERAL}|${PLACES})`
  + String.raw`|(?:anzahl|anz\.?)\s*(?:der\s)?(?:klassen)?zimmer)`;
const PER = new RegExp(String.raw`(?:\b(?:per|pro|je|par|each|every|jede[rmns]?|chaque)\s+|\/\s*)(?:(${DWELLING})|(?:${PLACE}))(?:\s+typ(?:e|en)?\b.{0,20})?\s*(?:[(,:\[].*)?[)\]]?$`, 'u');
const [OF_NUMBER, BARE, TIMES] = [
  new RegExp(String.raw`^${NUMBER_OF}\s*[:=]?$`, 'u'),
  new RegExp(String.raw`^(?:(?:nos?|number|anzahl|nombre)\.?\s*(?:of\s|de\s|d')?)?(?:${SEVERAL}|${PLACES}|zimmer|units|einheiten)\s*[:=]?$`, 'u'),
  /^(?:x|×|times|multiplier|multiplikator|multiplicateur|mal|fois)$/u,
];
const SAID = [
  new RegExp(String.raw`(?<![\d.,/-])(\d{1,4})\s*(?:[x×]\s*)?(?:${SEVERAL})\b`, 'u'), new RegExp(String.raw`(?<![\d.,/-])(\d{1,4})\s*[x×]\s*(?:${DWELLING})\b`, 'u'),
  new RegExp(String.raw`(?<!\p{L})${NUMBER_OF}\s*[:=]?\s*(\d{1,4})\s*$`, 'u'), new RegExp(String.raw`\b(?:${SEVERAL})\s*[:=]\s*(\d{1,4})\s*$`, 'u'),
];

/**
 * Of what a quantity is there once: `dwelling` for «Qty per flat», «Stk/WE» and «par logement», `place` for «per room»,
 * which may be the room of the line.
 */
export function perUnit(text: string): 'dwelling' | 'place' | undefined {
  const found = PER.exec(plain(text));
  return found === null ? undefined : found[1] === undefined ? 'place' : 'dwelling';
}

/**
 * Whether a text heads the number of what is built several times: «No. of flats», «Multiplier».
 * @param isPer a quantity beside it is said to be per flat, so that «Flats» is enough.
 */
export function countsUnits(text: string, isPer: boolean): boolean {
  const heading = plain(text);
  return OF_NUMBER.test(heading) || TIMES.test(heading) || (isPer && BARE.test(heading));
}

/** How many a title says there are of what is counted below it: 12 for «Flat type A, 12 flats» and «Type A (x12)». */
export function unitsSaid(text: string): number | undefined {
  const title = plain(text);
  const said = SAID.map((each) => each.exec(title)?.[1]).find((number) => number !== undefined);
  const times = said === undefined ? headingFactor(title) : Number(said);
  return times > 1 ? times : undefined;
}

const EACH = /(?:^|[\s\d])(?:each|jeweils|je|chacune?|apiece)(?!\p{L})/u;
// A word stands apart: «1A3» is a room, «1 à 3» are three.
const REFS = /^(\D*)(\d{1,5})(?:\s*(?:\.{2,}|…|[–—])\s*|\s+(?:-|to|bis|a|au)\s+)(?:\1)?(\d{1,5})$/u;
const STRETCH = /(\d{1,4})(?:\s*[-–—]\s*|\s+(?:to|bis|a|au)\s+)(\d{1,4})$/u;

/** Whether a quantity is for each of several, as «1 each»; in a column of units that means pieces. */
export function isEach(quantity: string): boolean {
  return EACH.test(plain(quantity));
}

/** How many refs «BM-01 to BM-04» and «D3..D6» are; `undefined` for a single one. */
export function refsSaid(ref: string): number | undefined {
  const [, , from, to] = REFS.exec(plain(ref)) ?? [];
  return several(from, to);
}

/** How many rooms «102–105» and «Bedrooms 201 to 212» are; `undefined` for a room, and for what is no such stretch. */
export function roomsSaid(area: string): number | undefined {
  const [, from, to] = STRETCH.exec(plain(area)) ?? [];
  return several(from, to);
}

function several(from: string | undefined, to: string | undefined): number | undefined {
  const number = Number(to) - Number(from) + 1;
  return number > 1 && number < 1000 ? number : undefined;
}

function plain(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replaceAll('ß', 'ss').replace(/\s+/g, ' ').trim();
}
