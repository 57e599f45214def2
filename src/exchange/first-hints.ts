import type { Words } from '../words/index.ts';

/** How many hints of one kind a person is shown. */
const MOST = 20;

/** The first hints, and how many there are besides. */
export function firstHints(hints: readonly string[], words: Words): string[] {
  if (hints.length <= MOST) return [...hints];
  return [...hints.slice(0, MOST), words.say('And {count} more of this kind.', { count: hints.length - MOST })];
}
