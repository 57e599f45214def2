/**
 * Reads a table from the clipboard: cells parted by tabs, lines by any line end. A cell that begins with a quotation
 * mark and ends with one before the next tab or line end may hold both, and quotation marks doubled; any other stands
 * as it is.
 * @returns the cells of each line; none for an empty text. A line end at the very end begins no further line.
 */
export function readTable(text: string): string[][] {
  const lines: string[][] = [];
  let cells: string[] = [];
  let at = 0;
  while (at < text.length) {
    const { value, end } = readCellAt(text, at);
    cells.push(value);
    if (text[end] === '\t') {
      at = end + 1;
      if (at === text.length) cells.push('');
      continue;
    }
    lines.push(cells);
    cells = [];
    at = end + (text.startsWith('\r\n', end) ? 2 : 1);
  }
  if (cells.length > 0) lines.push(cells);
  return lines;
}

const QUOTED = /"((?:[^"]|"")*)"(?=\t|\r|\n|$)/y;
const PLAIN = /[^\t\r\n]*/y;

function readCellAt(text: string, at: number): { value: string; end: number } {
  QUOTED.lastIndex = at;
  const quoted = text[at] === '"' ? QUOTED.exec(text) : null;
  if (quoted !== null) {
    return { value: quoted[1]!.replaceAll('""', '"').replace(/\r\n?/g, '\n'), end: QUOTED.lastIndex };
  }
  PLAIN.lastIndex = at;
  return { value: PLAIN.exec(text)![0], end: PLAIN.lastIndex };
}

/** Writes a table for the clipboard, so that `readTable` and spreadsheets read the same cells. */
export function writeTable(lines: readonly (readonly string[])[]): string {
  return lines.map((cells) => cells.map(writeCell).join('\t')).join('\r\n');
}

function writeCell(text: string): string {
  return /[\t\r\n]|^"/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
