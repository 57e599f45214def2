import { isWellFormed, LANGUAGES, languageOf, loadWords, type Words } from '../words/index.ts';
import { Refusal } from './refusal.ts';

/**
 * The words of the language that `--lang` names, with the numbers of its country: `de`, `fr-CH`; English without it.
 * @throws Refusal for a language that is not spoken.
 */
export async function spokenWords(tag = 'en'): Promise<Words> {
  const language = isWellFormed(tag) ? new Intl.Locale(tag).language : '';
  if (language !== languageOf(tag)) {
    throw new Refusal([`--lang ${tag} is not spoken. Give one of ${LANGUAGES.join(', ')}.`]);
  }
  return loadWords(tag);
}
