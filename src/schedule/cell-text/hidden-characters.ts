/**
 * A character that nothing shows, such as those of no width and those that turn the direction of writing: those that
 * Unicode has ignored by default (property Default_Ignorable_Code_Point, Unicode Standard Annex 44, as remembered),
 * without those that choose how the character before them looks.
 */
const HIDDEN = /(?!\p{Variation_Selector})\p{Default_Ignorable_Code_Point}/gu;

/** What stands in most texts: letters, figures and signs that can all be seen. */
const PLAIN = /^[\x20-\x7e]*$/;

/** The characters of a text that cannot be seen, each once, as Unicode names them: `U+200B`. */
export function hiddenCharacters(text: string): string[] {
  if (PLAIN.test(text)) return [];
  const found = new Set(text.match(HIDDEN) ?? []);
  return [...found].map((character) => `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`);
}

/** A text without the characters that cannot be seen, and without the spaces that these held apart from its ends. */
export function withoutHidden(text: string): string {
  return text.replace(HIDDEN, '').trim();
}
