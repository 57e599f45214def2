/** Size of all texts of a drawing [units], 8.5 pt on paper at four units to the millimetre. */
export const TEXT_SIZE = 12;

/**
 * Widths of signs as shares of the size of type, in DejaVu Sans, the widest of the usual faces without serifs, measured
 * in a browser. What a page has is the same or narrower; the tests in a browser measure what is drawn.
 */
const WIDTHS: readonly (readonly [signs: string, width: number])[] = [
  ['ijlIJ', 0.3], [' \u00a0\u202f,.·/:;\\|\'', 0.34], ['f-()[]t!²r', 0.42], ['"*_`°–sz', 0.53], ['?cçLFkvxyP', 0.61],
  ['TYaeoäöéèàâêôß', 0.63], ['$0123456789ESbdghnpqu{}üûK', 0.66], ['ABVXZÄCR', 0.7], ['UÜNH&DG', 0.78],
  ['OQÖw#+<=>^~×÷≥≤−', 0.84], ['M%', 0.96], ['mW@…—', 1],
];
const WIDTH_OF: ReadonlyMap<string, number> =
  new Map(WIDTHS.flatMap(([signs, width]) => Array.from(signs, (sign) => [sign, width] as const)));
/** A letter with an accent, and another sign of which nothing is known: those of eastern Asia fill a square. */
const ACCENTED = 0.8;
const OTHER = 1.1;
/** How much wider bold type is. */
const BOLD = 1.125;

/** The most that a text takes across [units]. */
export function textWidth(text: string, isBold = false): number {
  let sum = 0;
  for (const sign of text) sum += WIDTH_OF.get(sign) ?? (/[\p{Script=Latin}\p{Zs}]/u.test(sign) ? ACCENTED : OTHER);
  return sum * TEXT_SIZE * (isBold ? BOLD : 1);
}
