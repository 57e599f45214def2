import type { Acceptance } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';

/** Rows that are named, before the rest are left out. */
const MOST_NAMED = 5;

/**
 * Says of which rows something was accepted that a file does not hold any more.
 * @returns one sentence; none where nothing is gone.
 */
export function goneNotes(gone: readonly Acceptance[], words: Words): string[] {
  if (gone.length === 0) return [];
  const names = [...new Set(gone.map(({ tag, row }) => tag || words.say('row {row}', { row: row ?? 0 })))];
  const rows = [...names.slice(0, MOST_NAMED), ...(names.length > MOST_NAMED ? ['…'] : [])].join(', ');
  return [words.say('What was accepted of {rows} has no row any more; it is kept and written back.', { rows })];
}
