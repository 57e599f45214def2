import { deleteHidden, hiddenCharacters, type Change, type ScheduleDocument } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { HIDDEN_CHARACTER } from './checks/hidden-characters.ts';
import type { Finding } from './finding.ts';

/** What puts right what a finding is about, where that needs no choice. */
export interface Remedy {
  /** What is done, as a button and an action are called. */
  readonly label: string;
  /** The changes that do it. */
  readonly changes: () => readonly Change[];
}

/** The remedy of a finding; `undefined` where a person has to choose. */
export function remedyOf(document: ScheduleDocument, { rule, sheet, id, key, value }: Finding, words: Words): Remedy | undefined {
  if (rule !== HIDDEN_CHARACTER) return undefined;
  const characters = hiddenCharacters(String(value)).join(', ');
  return { label: words.say('Delete {characters}', { characters }), changes: () => deleteHidden(document, sheet, id, key) };
}
