/** A field that is quoted from its beginning to before its end, as «"Door strike" left». */
const HALF_QUOTED = /^\s*"[^"]+"\s*[^"\s][^"]*$/;

/**
 * A list in which quotes are signs of a text, as ditto marks and names in quotes are, with these quotes doubled as CSV
 * has it; everything else stays, texts in quotes over several lines too.
 * @param sign what parts the fields.
 */
export function mendQuotes(text: string, sign: string): string {
  if (!text.includes('"')) return text;
  let isOpen = false;
  return text.split(/(\r\n?|\n)/).map((line, place) => {
    if (place % 2 === 1 || !line.includes('"')) return line;
    const fields = line.split(sign);
    return fields.map((field, index) => {
      const isPlain = !isOpen && (isDitto(field, fields.slice(index + 1)) || HALF_QUOTED.test(field));
      if (isPlain) return `"${field.trim().replaceAll('"', '""')}"`;
      if (field.split('"').length % 2 === 0) isOpen = !isOpen;
      return field;
    }).join(sign);
  }).join('');
}

/** A quote alone is one unless it opens a text that begins with what parts fields. */
function isDitto(field: string, behind: readonly string[]): boolean {
  if (field.trim() !== '"') return false;
  const next = behind.find((each) => each.includes('"'));
  return next === undefined || next.trim() === '"' || next.trimStart().startsWith('"');
}
