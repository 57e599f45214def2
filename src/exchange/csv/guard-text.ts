/**
 * First characters that make a spreadsheet run a text as a formula, wide forms included; and the apostrophe, so that
 * guarding can be taken back.
 */
const RISKY = /^[=+\-@\t\r\n＝＋－＠']/;

/** A text as it is written to CSV: an apostrophe in front keeps a spreadsheet from running it. */
export function guardText(text: string): string {
  return RISKY.test(text) ? `'${text}` : text;
}

/** The text that `guardText` made safe; other texts come back unchanged. */
export function unguardText(text: string): string {
  return text.startsWith("'") && RISKY.test(text.slice(1)) ? text.slice(1) : text;
}
