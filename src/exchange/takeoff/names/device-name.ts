import { isNumberWord, plainWords } from '../plain-words.ts';

/** Symbols of units that part otherwise like names: 24 V and 24 W are different things. */
const UNITS = new Set(['w', 'kw', 'v', 'mv', 'va', 'a', 'ma', 'm', 'mm', 'cm', 'mm2', 'k', 'lm', 'hz', 'nm']);

interface NumberInName {
  readonly value: string;
  readonly unit: string | undefined;
}

/** A name of a device, prepared for comparison. */
export interface DeviceName {
  readonly text: string;
  /** Equal for names that differ in case, spaces, accents and punctuation only; empty for an empty name. */
  readonly key: string;
  readonly words: ReadonlySet<string>;
  readonly numbers: readonly NumberInName[];
  /** How often each group of three letters occurs, words taken by themselves, so that their order does not count. */
  readonly trigrams: ReadonlyMap<string, number>;
  readonly trigramCount: number;
}

/** Prepares a name for comparison. */
export function deviceName(text: string): DeviceName {
  const words = plainWords(text);
  const trigrams = new Map<string, number>();
  let trigramCount = 0;
  for (const word of words) {
    const padded = ` ${word} `;
    for (let start = 0; start + 3 <= padded.length; start += 1) {
      const trigram = padded.slice(start, start + 3);
      trigrams.set(trigram, (trigrams.get(trigram) ?? 0) + 1);
      trigramCount += 1;
    }
  }
  return { text, key: keyOf(words, text), words: new Set(words), numbers: numbersOf(words), trigrams, trigramCount };
}

/** Digits that follow digits stay apart: «1 2 keys» is not «12 keys». */
function keyOf(words: readonly string[], text: string): string {
  if (words.length === 0) return text.trim();
  const apart = (word: string, index: number) => index > 0 && /\p{N}$/u.test(words[index - 1]!) && isNumberWord(word);
  return words.map((word, index) => apart(word, index) ? ` ${word}` : word).join('');
}

function numbersOf(words: readonly string[]): NumberInName[] {
  return words.flatMap((word, index) => {
    if (!isNumberWord(word)) return [];
    const value = Number(word);
    const next = words[index + 1];
    const unit = next !== undefined && UNITS.has(next) ? next : undefined;
    return { value: Number.isNaN(value) ? word : String(value), unit };
  });
}

/**
 * Whether the numbers in two names can mean the same device: those of one are all among those of the other, with the
 * same unit where both give one. «Downlight 7 W» and «Downlight 18 W» do not agree, «Downlight» agrees with both.
 */
export function haveAgreeingNumbers(one: DeviceName, other: DeviceName): boolean {
  return includesNumbers(one, other) || includesNumbers(other, one);
}

function includesNumbers({ numbers }: DeviceName, part: DeviceName): boolean {
  const left = [...numbers];
  return part.numbers.every(({ value, unit }) => {
    const place = left.findIndex((each) => each.value === value
      && (unit === undefined || each.unit === undefined || each.unit === unit));
    if (place >= 0) left.splice(place, 1);
    return place >= 0;
  });
}
