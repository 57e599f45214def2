import { plainWords } from './plain-words.ts';

/** Words that say that a line counts no longer, or is for others to do, in English, German, French; no source. */
const WORDS = [
  'by others', 'by client', 'by owner', 'not in contract', 'nic', 'omit', 'omits', 'omitted', 'deleted', 'cancelled', 'canceled', 'superseded', 'obsolete',
  'not required', 'not in scope', 'out of scope', 'n i c', 'to be removed', 'dismantle', 'demolish', 'void', 'removed', 'struck out',
  'entfallt', 'entfaellt', 'entfallen', 'bauseits', 'bauseitig', 'gestrichen', 'storniert', 'gewerk anderer', 'durch andere', 'nicht im auftrag',
  'nicht im lieferumfang', 'nep', 'demontieren', 'demontage', 'ruckbau', 'rueckbau',
  'kundenseits', 'wird nicht benotigt', 'ersatzlos',
  'supprime', 'supprimee', 'supprimes', 'supprimees', 'annule', 'annulee', 'annules', 'annulees', 'par autres', 'par d autres', 'hors lot', 'hors marche',
  'hors contrat', 'non compris', 'hors fourniture', 'a deposer', 'lot autre', 'a supprimer',
];

/** How these words begin: most texts have none, and are not taken apart. */
const BEGINNINGS = new RegExp([...new Set(WORDS.map((word) => word.slice(0, 3))), 'n\\.i', 'rück', 'à dé', 'incl', 'enth', 'comp'].join('|'), 'i');
/** It is part of another line. */
const INCLUDED = /\b(?:in|unter) pos(?:ition)? .*enthalten\b|\bincluded in (?:item|pos|line)|\bcompris dans (?:le )?poste?\b/;

/** Whether a text says that something counts no longer, as «entfällt», «by others», «supprimé». */
export function isSuperseded(text: string): boolean {
  if (!BEGINNINGS.test(text)) return false;
  const line = ` ${plainWords(text).join(' ')} `;
  return INCLUDED.test(line) || WORDS.some((each) => line.includes(` ${each} `));
}

/** Words for what is there already, is an option or a spare, in English, German, French; common practice, no source. */
const STATUS_WORDS = [
  'existing', 'retain', 'retained', 'to remain', 'remove', 'relocate', 'relocated', 're use', 'reuse', 'reused', 'option', 'options', 'optional', 'provisional', 'alternative', 'spare', 'spares', 'reserve', 'reserves',
  'bestand', 'bestandsgerat', 'bleibt', 'versetzen', 'umsetzen', 'entfernen', 'bestehend', 'bestehende', 'bestehender', 'bestehendes', 'vorhanden', 'vorhandene', 'vorhandener', 'vorhandenes',
  'wiederverwenden', 'wiederverwendet', 'wiederverwendung', 'optionen', 'eventual', 'eventualposition', 'eventualpositionen', 'bedarfsposition', 'bedarfspositionen', 'alternativ', 'alternativposition', 'alternativpositionen',
  'ersatz', 'reserven',
  'maintenu', 'deposer', 'deplacer', 'existant', 'existante', 'existants', 'existantes', 'conserve', 'conservee', 'conserves', 'conservees', 'a conserver', 'reemploi', 'reemploye',
  'optionnel', 'optionnelle', 'optionnels', 'optionnelles', 'variante', 'en attente', 'rechange',
];
const NEGATIONS = /\b(?:not?|non|nicht|kein|keine|pas|sans|without|ohne)\b/;
/** More words are a remark, as «fix to the existing duct». */
const MOST_STATUS_WORDS = 3;

/**
 * Whether a text says no more than that something is there already, is an option or a spare, as a status does:
 * «existing», «Bestand», «en option»; in a name it stands behind a sign, as in «PIR (spare)».
 */
export function isStatus(text: string, most = MOST_STATUS_WORDS): boolean {
  const words = plainWords(text);
  const line = ` ${words.join(' ')} `;
  return words.length <= most && !NEGATIONS.test(line) && STATUS_WORDS.some((each) => line.includes(` ${each} `));
}
