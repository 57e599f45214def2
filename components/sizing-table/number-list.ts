import type { Words } from '../../src/words/index.ts';
/** A list as a person types it: numbers with a decimal point or comma, parted by spaces or semicolons. */
export function numberListText(numbers: readonly number[], words: Words): string {
  return numbers.map((number) => number.toLocaleString(words.locale, { useGrouping: false, maximumFractionDigits: 6 })).join('; ');
}

/**
 * Reads such a list.
 * @param whole whether only whole numbers may stand in it.
 * @returns its numbers in order, each once; else what is wrong with it.
 */
export function readNumberList(
  text: string, whole: boolean,
): { readonly ok: true; readonly numbers: readonly number[] } | { readonly ok: false; readonly problem: string } {
  const parts = text.split(/[;\s]+/).filter((part) => part !== '');
  const numbers = parts.map((part) => Number(part.replace(/,$/, '').replace(',', '.')));
  const kind = whole ? 'whole number' : 'number';
  const fits = (number: number) => number > 0 && Number.isFinite(number) && (!whole || Number.isInteger(number));
  const wrong = parts.find((_, index) => !fits(numbers[index]!));
  if (wrong !== undefined) return { ok: false, problem: `${wrong} is no ${kind} above 0. Part the numbers with semicolons.` };
  if (numbers.length === 0) return { ok: false, problem: `The list is empty. Enter at least one ${kind}.` };
  return { ok: true, numbers: [...new Set(numbers)].sort((a, b) => a - b) };
}
