import { languageOf, type Language } from './language.ts';
import { makeWords, type Words } from './words.ts';

/** Messages by their English text, as a catalogue's file holds them. */
type Catalogue = Readonly<Record<string, string>>;

/** The catalogues, each a file of its own, so that a page loads only the language that it speaks. */
const CATALOGUES: Readonly<Record<Exclude<Language, 'en'>, () => Promise<{ default: Catalogue }>>> = {
  de: () => import('./catalogue/de.json'),
  fr: () => import('./catalogue/fr.json'),
};

/**
 * The words of a language, whose catalogue is loaded only where it is not English.
 * @param locale BCP 47 tag; a language that the software does not speak gives English words with numbers of that
 * locale.
 * @throws where the catalogue cannot be loaded, as when the network is gone.
 */
export async function loadWords(locale: string): Promise<Words> {
  const language = languageOf(locale);
  if (language === 'en') return makeWords(locale);
  const { default: catalogue } = await CATALOGUES[language]();
  return makeWords(locale, new Map(Object.entries(catalogue)));
}
