export type Cells = readonly string[];

/** A table as GitHub's Markdown writes it; every column but the first reads from the right. */
export function markdownTable(heading: Cells, lines: readonly Cells[]): string {
  const line = (cells: Cells) => `| ${cells.join(' | ')} |`;
  return [line(heading), line(heading.map((_, index) => index === 0 ? '---' : '--:')), ...lines.map(line)].join('\n');
}

/** A table in columns of even width, for a terminal. */
export function plainTable(heading: Cells, lines: readonly Cells[]): string {
  const widths = heading.map((_, index) => Math.max(...[heading, ...lines].map((cells) => cells[index]!.length)));
  return [heading, ...lines].map((cells) => cells.map((cell, index) =>
    index === 0 ? cell.padEnd(widths[index]!) : cell.padStart(widths[index]!)).join('  ')).join('\n');
}
