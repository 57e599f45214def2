import { ENGLISH, type Words } from '../../words/index.ts';
import type { TakeoffLine } from './line.ts';

/** Quantities of a takeoff by what becomes of them: read = taken + leftOut + undecided. */
export interface TakeoffSums {
  readonly read: number;
  /** Merged lines included. */
  readonly taken: number;
  /** Totals included. */
  readonly leftOut: number;
  readonly undecided: number;
  /** The part of what is left out that stands in totals, which only repeat what other lines say. */
  readonly inTotals: number;
}

/** Adds up the quantities of lines by what becomes of them; a line without a quantity adds nothing. */
export function sumsOf(lines: readonly TakeoffLine[]): TakeoffSums {
  const sum = (belongs: (line: TakeoffLine) => boolean) => {
    const total = lines.reduce((before, line) => belongs(line) ? before + (line.qty ?? 0) : before, 0);
    // Quantities have three decimals at most.
    return Math.round(total * 1000) / 1000 + 0;
  };
  const taken = sum(({ outcome }) => outcome === 'taken' || outcome === 'merged');
  const leftOut = sum(({ outcome }) => outcome === 'left-out');
  const undecided = sum(({ outcome }) => outcome === 'undecided');
  const inTotals = sum(({ outcome, isTotal }) => outcome === 'left-out' && isTotal === true);
  return { read: taken + leftOut + undecided, taken, leftOut, undecided, inTotals };
}

/** The sums as an equation for a reader: «Read 42 = taken 20 + left out 21 (20 in totals) + undecided 1». */
export function equationOf(sums: TakeoffSums, words: Words = ENGLISH): string {
  return sums.inTotals === 0
    ? words.say('Read {read} = taken {taken} + left out {leftOut} + undecided {undecided}', { ...sums })
    : words.say(
      'Read {read} = taken {taken} + left out {leftOut} ({inTotals} in totals) + undecided {undecided}', { ...sums }
    );
}
