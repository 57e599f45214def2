import type { Line } from './line.ts';

/**
 * By how many lines a move goes that passes over headings, but for folded ones, which stand for their rows. Where only
 * headings lie beyond, it ends before them.
 * @param from the line that has the focus.
 * @param delta lines asked for, downwards.
 */
export function skipHeadings(lines: readonly Line[], from: number, delta: number): number {
  if (delta === 0) return 0;
  const isPassed = (line: Line) => line.kind === 'heading' && !line.folded;
  const wanted = Math.min(lines.length - 1, Math.max(0, from + delta));
  for (let to = wanted; to >= 0 && to < lines.length; to += Math.sign(delta)) {
    if (!isPassed(lines[to]!)) return to - from;
  }
  let to = wanted;
  while (to !== from && isPassed(lines[to]!)) to -= Math.sign(delta);
  return to - from;
}
