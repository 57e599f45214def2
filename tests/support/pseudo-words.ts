import { ENGLISH, type MessageValues, type Words } from '../../src/words/index.ts';

/**
 * A language that nobody speaks: English between brackets, which shows what is said through the words and what is not.
 * What stands outside of the brackets is data, a figure, or a text that no catalogue will ever translate.
 */
export const PSEUDO: Words = {
  ...ENGLISH,
  say: (message: string, values?: MessageValues) => `⟦${ENGLISH.say<string>(message, values)}⟧`,
  text: (message) => (message === '' ? '' : `⟦${message}⟧`),
  date: (entered) => `⟦${ENGLISH.date(entered)}⟧`,
  within: (title) => `⟦${ENGLISH.within(title)}⟧`,
};

/** What of a text stands outside of the brackets; `depth` says how many are open at its beginning. */
export function outside(text: string, depth = 0): { readonly left: string; readonly depth: number } {
  let left = '';
  for (const sign of text) {
    if (sign === '⟦') depth += 1;
    else if (sign === '⟧') depth -= 1;
    else if (depth === 0) left += sign;
  }
  return { left, depth };
}

/** The language that nobody speaks, and the messages that have been said in it so far. */
export function recordedWords(): { readonly words: Words; readonly messages: ReadonlySet<string> } {
  const messages = new Set<string>();
  const say = (message: string, values?: MessageValues) => {
    messages.add(message);
    return PSEUDO.say<string>(message, values);
  };
  return { words: { ...PSEUDO, say }, messages };
}
