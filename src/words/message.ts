/**
 * Marks a text as a message that is said elsewhere, as those in a table of names, so that the catalogue is held against
 * it.
 * @returns the text as it is.
 */
export function message<Text extends string>(text: Text): Text {
  return text;
}
