import { languageOf } from './language.ts';
import { makeWords, type Words } from './words.ts';

/**
 * The words of a language, whose catalogue is loaded only where it is not English.
 * @param locale BCP 47 tag; a language that the software does not speak gives English words with numbers of that locale.
 * @throws where the catalogue cannot be loaded, as when the network is gone.
 */
export async function loadWords(locale: string): Promise<Words> {
  const language = languageOf(locale);
  if (language === 'en') return makeWords(locale);
  const { translationsInto } = await import('./catalogue/index.ts');
  return makeWords(locale, translationsInto(language));
}
