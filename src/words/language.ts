/** The languages that the software speaks, English first: what has no words of its own is said in English. */
export const LANGUAGES = ['en', 'de', 'fr'] as const;

/** A language that the software speaks, as BCP 47 names it. */
export type Language = typeof LANGUAGES[number];

/**
 * The language in which a page of a locale is spoken to.
 * @param locale BCP 47 tag, such as `de-CH`; one that is not well-formed, as a page's `lang` may be, counts as English.
 * @returns its language where the software speaks it, else English.
 */
export function languageOf(locale: string): Language {
  const language = isWellFormed(locale) ? new Intl.Locale(locale).language : 'en';
  return LANGUAGES.find((each) => each === language) ?? 'en';
}

/** Whether a text is a language tag as BCP 47 has it. */
export function isWellFormed(locale: string): boolean {
  try {
    return Intl.getCanonicalLocales(locale).length > 0;
  } catch {
    // Intl throws for what is no language tag.
    return false;
  }
}
