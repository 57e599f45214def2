import { haveAgreeingNumbers, type DeviceName } from './device-name.ts';

/**
 * How like two names are: Dice’s coefficient of their groups of three letters, 2 c ÷ (a + b), where a and b are the
 * numbers of groups in each name and c is the number that they have in common, each counted as often as it occurs.
 * @returns 0 (nothing in common, or numbers that do not agree) to 1 (the same words in any order); 0 for an empty name.
 *
 * Source: L. R. Dice, Measures of the Amount of Ecologic Association Between Species, Ecology 26 (1945), 297–302.
 */
export function likeness(one: DeviceName, other: DeviceName): number {
  if (one.trigramCount === 0 || other.trigramCount === 0 || !haveAgreeingNumbers(one, other)) return 0;
  let common = 0;
  for (const [trigram, count] of one.trigrams) common += Math.min(count, other.trigrams.get(trigram) ?? 0);
  return 2 * common / (one.trigramCount + other.trigramCount);
}

/**
 * Whether all words of one of two names are words of the other, one of three letters or more among them: «PIR» beside
 * «PIR detector, ceiling». Symbols such as «S1» mean other things in other lists.
 */
export function isContained(one: DeviceName, other: DeviceName): boolean {
  const [few, many] = one.words.size < other.words.size ? [one, other] : [other, one];
  return haveAgreeingNumbers(one, other) && [...few.words].every((word) => many.words.has(word))
    && [...few.words].some((word) => /^\p{L}{3,}$/u.test(word));
}
