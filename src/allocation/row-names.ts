import type { Words } from '../words/index.ts';

/** Rows that are named one by one; of more, only how many. */
const MOST_NAMED = 5;

/** Device rows or outputs in a sentence: by their tag, or their number where they have none. */
export function rowNames(
  rows: readonly { readonly row: number; readonly ref: string | null }[], words: Words, most = MOST_NAMED,
): string {
  const names = rows.slice(0, most).map(({ row, ref }) => ref ?? words.say('row {row}', { row: row + 1 })).join(', ');
  return rows.length > most ? words.say('{names} and {more} more', { names, more: rows.length - most }) : names;
}
