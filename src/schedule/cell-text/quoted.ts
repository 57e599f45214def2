/** A text as a sentence quotes it: between quotation marks, on one line, cut after 40 characters. */
export function quoted(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > 40 ? `“${line.slice(0, 40)}…”` : `“${line}”`;
}
