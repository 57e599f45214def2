import type { Language } from '../words/index.ts';

const SOFT_HYPHEN = '\u00ad';

/**
 * Parts of compounds and endings before which a long word of a heading may go on in the next line. Browsers know such
 * places of a language only where they have its dictionary, which those that print documents often lack.
 */
const PARTS: Readonly<Record<Language, readonly string[]>> = {
  en: [],
  de: [
    'abgang', 'art', 'aufnahme', 'bedarf', 'belastbarkeit', 'derliche', 'durchgang', 'einrichtung', 'faktor', 'fall',
    'faches', 'fernung', 'fläche', 'fügbar',
    'grad', 'gung', 'keits', 'länge', 'lastung', 'leistung', 'linie', 'lust', 'paare', 'plätze', 'reserve', 'richtung',
    'schlossen', 'schluss', 'schnitt', 'spannung', 'spitze', 'stellungs', 'strom',
    'temperatur', 'teristik', 'vielfaches', 'wendung', 'wert', 'widerstände', 'zeichen', 'zeitigkeits',
  ],
  fr: [
    'chement', 'cient', 'cordé', 'deur', 'fement', 'gnation', 'gnée', 'loppe', 'male', 'néité', 'pation', 'rieure',
    'sable', 'sance', 'sement',
    'tance', 'tations', 'tection', 'teur', 'tité', 'ture',
  ],
};

/** Shorter words stay whole. */
const SHORTEST = 8;

/** Signs that headings take at least beside one another, where each is broken wherever it may be. */
export function leastWidth(headings: readonly string[], language: Language): number {
  return headings.reduce((sum, heading) =>
    sum + Math.max(...breakable(heading, language).split(/[ \u00ad]/).map(({ length }) => length)), 0);
}

/** A heading that may be broken within its long words, at unseen hyphens. */
export function breakable(heading: string, language: Language): string {
  const parts = PARTS[language];
  if (parts.length === 0) return heading;
  const joint = new RegExp(`(?<=\\p{L}{3})(?=(?:${parts.join('|')}))`, 'gu');
  return heading.replace(/\p{L}+/gu, (word) => word.length < SHORTEST ? word : word.replace(joint, SOFT_HYPHEN));
}
