import { readAliases } from '../../../src/exchange/takeoff/names/aliases.ts';
import type { LoadSchedule } from '../../../src/load-schedule.ts';
import { SCHEMA, type InputColumn } from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';

/** What may be entered, and what else it is called. */
export interface Suggested {
  readonly word: string;
  readonly aliases: readonly string[];
}

const named = (word: string): Suggested => ({ word, aliases: [] });

/**
 * What may be entered in a column, for its list: tags of another sheet, with the aliases of types, words of a choice,
 * yes and no, named values; words in the language of the person.
 */
export function suggestionsFor(schedule: LoadSchedule, column: InputColumn, words: Words): readonly Suggested[] {
  switch (column.kind) {
    case 'choice': return column.choices?.map((choice) => named(words.text(choice))) ?? [];
    case 'boolean': return [named(words.say('yes')), named(words.say('no'))];
    case 'reference': return column.to === undefined ? [] : tagsOf(schedule, column.to);
    default: return column.suggestions?.map(({ label }) => named(words.text(label))) ?? [];
  }
}

function tagsOf(schedule: LoadSchedule, sheet: NonNullable<InputColumn['to']>): Suggested[] {
  const key = SCHEMA[sheet].tag;
  const found = new Map<string, Suggested>();
  for (const { cells } of schedule.document.rows(sheet)) {
    const word = cells[key];
    if (typeof word === 'string' && word !== '' && !found.has(word)) found.set(word, { word, aliases: readAliases(cells.aliases) });
  }
  return [...found.values()];
}

/** Those that hold a typed text by name or alias, what begins with it first. An empty text is held by all. */
export function matching(all: readonly Suggested[], typed: string): Suggested[] {
  const text = typed.trim().toLowerCase();
  const rank = ({ word, aliases }: Suggested): number => {
    const [own, others] = [word.toLowerCase(), aliases.map((alias) => alias.toLowerCase())];
    return own.startsWith(text) ? 0 : others.some((alias) => alias.startsWith(text)) ? 1
      : [own, ...others].some((name) => name.includes(text)) ? 2 : 3;
  };
  return all.map((each) => ({ each, order: rank(each) })).filter(({ order }) => order < 3)
    .sort((one, other) => one.order - other.order).map(({ each }) => each);
}

/** The alias by which a typed text found it; `undefined` where its own name holds the text. */
export function aliasFor({ word, aliases }: Suggested, typed: string): string | undefined {
  const text = typed.trim().toLowerCase();
  return word.toLowerCase().includes(text) ? undefined : aliases.find((alias) => alias.toLowerCase().includes(text));
}
