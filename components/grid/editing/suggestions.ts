import { SCHEMA, type InputColumn } from '../../../src/schedule/index.ts';
import type { LoadSchedule } from '../../../src/load-schedule.ts';
import type { Words } from '../../../src/words/index.ts';

/**
 * What may be entered in a column, for its list: tags of another sheet, words of a choice, yes and no, named values;
 * words in the language of the person.
 */
export function suggestionsFor(schedule: LoadSchedule, column: InputColumn, words: Words): readonly string[] {
  switch (column.kind) {
    case 'choice': return column.choices?.map((choice) => words.text(choice)) ?? [];
    case 'boolean': return [words.say('yes'), words.say('no')];
    case 'reference': return column.to === undefined ? [] : tagsOf(schedule, column.to);
    default: return column.suggestions?.map(({ label }) => words.text(label)) ?? [];
  }
}

function tagsOf(schedule: LoadSchedule, sheet: NonNullable<InputColumn['to']>): string[] {
  const key = SCHEMA[sheet].tag;
  const tags = schedule.document.rows(sheet).map(({ cells }) => cells[key]);
  return [...new Set(tags.filter((tag): tag is string => typeof tag === 'string' && tag !== ''))];
}

/** The words that hold a typed text, those that begin with it first. An empty text is held by all. */
export function matching(words: readonly string[], typed: string): string[] {
  const text = typed.trim().toLowerCase();
  const holding = words.filter((word) => word.toLowerCase().includes(text));
  const begins = (word: string): number => (word.toLowerCase().startsWith(text) ? 0 : 1);
  return holding.sort((one, other) => begins(one) - begins(other));
}
