import type { TakeoffField } from './field.ts';
import { plainWords } from './plain-words.ts';

/**
 * What the columns of an office's takeoffs hold, by their heading, or by their number (`"1"` is the first) where they
 * have none; `ignore` for a column that is not read. Plain data, to be kept by the page from one takeoff to the next.
 */
export type RememberedColumns = Readonly<Record<string, TakeoffField | 'ignore'>>;

/** What is remembered for a column, if anything. */
export function rememberedField(
  remembered: RememberedColumns, heading: string, index: number,
): TakeoffField | 'ignore' | undefined {
  const words = plainWords(heading).join(' ');
  const named = words === '' ? undefined : Object.keys(remembered).find((key) => plainWords(key).join(' ') === words);
  if (named !== undefined) return remembered[named];
  const number = String(index + 1);
  return Object.hasOwn(remembered, number) ? remembered[number] : undefined;
}
