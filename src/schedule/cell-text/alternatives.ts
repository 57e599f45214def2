import type { Words } from '../../words/index.ts';

/** Texts of which one is to be chosen, for a sentence: `mA, A or W`. */
export function alternatives(texts: readonly string[], words: Words): string {
  if (texts.length < 2) return texts.join();
  return words.say('{first} or {last}', { first: texts.slice(0, -1).join(', '), last: texts.at(-1)! });
}
