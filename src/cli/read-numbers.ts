import { Refusal } from './refusal.ts';

/**
 * Reads a percentage behind an option as a share.
 * @throws Refusal for what is none from 0 to 1000.
 */
export function readPercent(option: string, text: string): number {
  const percent = text.trim() === '' ? NaN : Number(text);
  if (percent >= 0 && percent <= 1000) return percent / 100;
  throw new Refusal([`--${option} ${text} is no percentage. Give one from 0 to 1000, as in --${option} 20.`]);
}

/**
 * Reads numbers above 0 behind an option, parted by commas, each once and in order; `undefined` where it is left out.
 * @param kind only whole numbers may stand in it, or a single number.
 * @throws Refusal for anything else.
 */
export function readNumbers(
  option: string, text: string | undefined, kind: 'any' | 'whole' | 'one' = 'any',
): readonly number[] | undefined {
  if (text === undefined) return undefined;
  const numbers = text.split(',').map((part) => part.trim() === '' ? NaN : Number(part));
  const fits = numbers.every((number) => number > 0 && number < Infinity && (kind !== 'whole' || Number.isInteger(number)));
  if (fits && (kind !== 'one' || numbers.length === 1)) return [...new Set(numbers)].sort((one, other) => one - other);
  const [wanted, example] = { any: ['numbers above 0, parted by commas', '2.5,5,10'], one: ['a number above 0', '4'],
    whole: ['whole numbers above 0, parted by commas', '4,8'] }[kind] as [string, string];
  throw new Refusal([`--${option} ${text} is not understood. Give ${wanted}, as in --${option} ${example}.`]);
}
