import type { Language } from '../../src/words/index.ts';

/**
 * What a person is told where the words of the page's language cannot be had, in that language: the catalogue is what
 * is missing.
 */
export const WORDS_NOT_LOADED: Readonly<Record<Exclude<Language, 'en'>, string>> = {
  de: 'Die Texte dieser Sprache konnten nicht geladen werden: Verbindung prüfen und die Seite neu laden. Bis dahin erscheinen sie auf Englisch.',
  fr: 'Les textes de cette langue n’ont pas pu être chargés\u00a0: vérifier la connexion et recharger la page. D’ici là, ils s’affichent en anglais.',
};
