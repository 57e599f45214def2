import { SCHEMA, withRowsReplaced, type Content } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { goneNotes } from '../gone-notes.ts';
import type { ListRows } from './list-formulas.ts';

/** A content with the rows of a list in it. */
export interface ContentWithList {
  readonly content: Content;
  /** Name of the action for a person: «Devices: 12 rows from list.csv in place of 9». */
  readonly label: string;
  /** Sentences on what it does beside. */
  readonly notes: readonly string[];
}

/** The content with the rows of a list in the place of those of its sheet. */
export function replaceWithList(
  content: Content, list: ListRows, file: string, words: Words = ENGLISH,
): ContentWithList {
  const { content: replaced, gone } = withRowsReplaced(content, list.sheet, list.rows);
  const named = listWords(content, list, file, words);
  return {
    content: replaced, notes: goneNotes(gone, words),
    label: named.before === 0 ? words.say('{sheet}: {n, plural, one {# row} other {# rows}} from {file}', named)
      : words.say('{sheet}: {n, plural, one {# row} other {# rows}} from {file} in place of {before}', named),
  };
}

/** What a sentence says of a list and of the rows that its sheet has before. */
export function listWords({ sheets }: Content, { sheet, rows }: ListRows, file: string, words: Words) {
  return { sheet: words.text(SCHEMA[sheet].title), n: rows.length, file, before: sheets[sheet]?.length ?? 0 };
}
