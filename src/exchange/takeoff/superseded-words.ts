import { plainWords } from './plain-words.ts';

/** Words that say that a line counts no longer, or is for others to do, in English, German, French; no source. */
const WORDS = [
  'by others', 'by client', 'by owner', 'not in contract', 'nic', 'omit', 'omits', 'omitted', 'deleted', 'cancelled', 'canceled', 'superseded', 'obsolete',
  'not required', 'void', 'removed', 'struck out',
  'entfallt', 'entfaellt', 'entfallen', 'bauseits', 'bauseitig', 'gestrichen', 'storniert', 'gewerk anderer', 'durch andere', 'nicht im auftrag',
  'kundenseits', 'wird nicht benotigt', 'ersatzlos',
  'supprime', 'supprimee', 'supprimes', 'supprimees', 'annule', 'annulee', 'annules', 'annulees', 'par autres', 'par d autres', 'hors lot', 'hors marche',
  'hors contrat', 'non compris', 'lot autre', 'a supprimer',
];

/** The words of a text that say that it counts no longer, as «entfällt», «by others», «supprimé»; `undefined` for none. */
export function supersededWords(text: string): string | undefined {
  const line = ` ${plainWords(text).join(' ')} `;
  return WORDS.some((each) => line.includes(` ${each} `)) ? text : undefined;
}
