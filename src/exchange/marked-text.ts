/** Behind a sign, it strikes that sign through (Unicode: combining long stroke overlay). */
const STROKE = '\u0336';
const [LOWERED, RAISED] = ['₀₁₂₃₄₅₆₇₈₉₊₋₌₍₎', '⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁼⁽⁾'];
const PLAIN = '0123456789+-=()';
/** Marks of footnotes: raised or lowered digits and brackets, and digits in circles; not in «m²» and «CO₂». */
const FOOTNOTE = /(?<!\p{L})[²³¹⁰⁴-⁹⁺-⁾₀-₉₊-₎①-⒛❶-➓][²³¹⁰⁴-⁹⁺-⁾₀-₉₊-₎①-⒛❶-➓,\s]*$/u;

/** How a part of a cell is written, where a format says so and not its signs. */
export type Look = 'struck' | 'raised' | 'lowered';

/** A part of a cell with its look in its signs: «4» with a footnote is no «41», nor «4» struck before «6» «46». */
export function withLook(text: string, look: Look): string {
  if (look === 'struck') return text.replace(/[^\s\u0336]/gu, (sign) => `${sign}${STROKE}`);
  const signs = look === 'raised' ? RAISED : LOWERED;
  return /[^\s\d+=(),-]/.test(text) ? text : text.replace(/[\d+=()-]/g, (sign) => signs[PLAIN.indexOf(sign)]!);
}

/** Whether all of a text is struck through, and not only a part of it. */
export function isStruckThroughout(text: string): boolean {
  return /^\s*(?:[^\u0336]\u0336\s*)+$/u.test(text);
}

/** Whether a part of a text is struck through. */
export function hasStruck(text: string): boolean {
  return text.includes(STROKE);
}

/** A text as if nothing in it were struck through. */
export function unstruck(text: string): string {
  return text.replaceAll(STROKE, '');
}

/** What is left of a text without what is struck through. */
export function withoutStruck(text: string): string {
  return hasStruck(text) ? text.replace(/[^\u0336]\u0336/gu, '').replace(/\s+/g, ' ').trim() : text;
}

/** What is left of a quantity without its footnotes. */
export function withoutFootnote(text: string): string {
  return text.replace(FOOTNOTE, '').trimEnd();
}
