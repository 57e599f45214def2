/** Words for a unit behind a number, and the symbol that they stand for. */
const SYMBOLS: Readonly<Record<string, string>> = {
  watt: 'w', watts: 'w', volt: 'v', volts: 'v', amp: 'a', amps: 'a', ampere: 'a', metre: 'm', metres: 'm', meter: 'm',
};

/**
 * The words of a text as they are compared: small letters without accents, decimals behind a point, units by their
 * symbol and apart from their number, no punctuation.
 * @returns the words in order; empty for a text without letters and digits.
 *
 * @example plainWords('Wandleuchte, 4,8Watt') // ['wandleuchte', '4.8', 'w']
 */
export function plainWords(text: string): string[] {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replaceAll('ß', 'ss').replaceAll('œ', 'oe')
    .replace(/(?<=\d),(?=\d)/g, '.');
  const words = plain.match(/\p{N}+(?:\.\p{N}+)*|\p{L}[\p{L}\p{N}]*/gu) ?? [];
  return words.map((word, index) => index > 0 && isNumberWord(words[index - 1]!) ? symbolOf(word) : word);
}

/** A text as it is compared with others: its words; the text itself where it has none. */
export function plainKey(text: unknown): string {
  if (typeof text !== 'string') return '';
  return plainWords(text).join(' ') || text.trim();
}

/** Whether a word is a number. */
export function isNumberWord(word: string): boolean {
  return /^\p{N}/u.test(word);
}

function symbolOf(word: string): string {
  return Object.hasOwn(SYMBOLS, word) ? SYMBOLS[word]! : word;
}
