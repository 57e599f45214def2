/** Rows that follow one another: the first place and how many. */
export interface Span {
  readonly at: number;
  readonly count: number;
}

/** Places in ascending order, gathered into spans. */
export function spansOf(positions: readonly number[]): Span[] {
  const spans: { at: number; count: number }[] = [];
  for (const position of [...new Set(positions)].sort((a, b) => a - b)) {
    const last = spans.at(-1);
    if (last !== undefined && last.at + last.count === position) last.count += 1;
    else spans.push({ at: position, count: 1 });
  }
  return spans;
}
