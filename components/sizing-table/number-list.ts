import type { Words } from '../../src/words/index.ts';

/** A list as a person types it: numbers with a decimal point or comma, parted by spaces or semicolons. */
export function numberListText(numbers: readonly number[], words: Words): string {
  return numbers.map((number) => words.number(number)).join('; ');
}

/** What is wrong with a list, in the language of whoever asks. */
export type NumberListProblem = (words: Words) => string;

/**
 * Reads such a list.
 * @param whole whether only whole numbers may stand in it.
 * @returns its numbers in order, each once; else what is wrong with it.
 */
export function readNumberList(
  text: string, whole: boolean,
): { readonly ok: true; readonly numbers: readonly number[] }
  | { readonly ok: false; readonly problem: NumberListProblem } {
  const parts = text.split(/[;\s]+/).filter((part) => part !== '');
  const numbers = parts.map((part) => Number(part.replace(/,$/, '').replace(',', '.')));
  const fits = (number: number) => number > 0 && Number.isFinite(number) && (!whole || Number.isInteger(number));
  const wrong = parts.find((_, index) => !fits(numbers[index]!));
  if (wrong !== undefined) {
    return {
      ok: false,
      problem: (words) =>
        whole ? words.say('{wrong} is no whole number above 0. Part the numbers with semicolons.', { wrong })
        : words.say('{wrong} is no number above 0. Part the numbers with semicolons.', { wrong }),
    };
  }
  if (numbers.length === 0) {
    return {
      ok: false,
      problem: (words) => whole ? words.say('The list is empty. Enter at least one whole number.')
        : words.say('The list is empty. Enter at least one number.'),
    };
  }
  return { ok: true, numbers: [...new Set(numbers)].sort((a, b) => a - b) };
}
