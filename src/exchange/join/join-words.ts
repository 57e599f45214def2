import { SCHEMA } from '../../schedule/index.ts';
import { ENGLISH, message, type Words } from '../../words/index.ts';
import type { Join } from './join-schedules.ts';
import type { JoinConflict } from './three-way.ts';

const KINDS: Readonly<Record<Exclude<JoinConflict['kind'], 'cell' | 'removed' | 'tag'>, string>> = {
  detail: message('Both changed a detail of the schedule.'), revision: message('Both wrote about a revision.'),
  acceptance: message('Both accepted the same finding, each with words of their own.'),
  list: message('Both say of a heading or a name of takeoffs what it means, each something else.'),
  other: message('Both changed a key that this version does not know.'),
};

/** What a conflict is about, in one sentence; the values of both stand beside it. */
export function conflictSentence({ kind, mine, choices }: JoinConflict, words: Words = ENGLISH): string {
  switch (kind) {
    case 'cell': return choices.includes('both')
      ? words.say('Both have a row of this tag, with other values: is it one thing, or are these two?')
      : words.say('Both changed it, each in a way of their own.');
    case 'removed': return mine === null
      ? words.say('You removed the row; they changed it, or name it in another one.')
      : words.say('They removed the row; you changed it, or name it in another one.');
    case 'tag': return words.say('They added a row with a tag that another row of yours has.');
    default: return words.say(KINDS[kind]);
  }
}

/** How much of theirs came in, and what is left to decide, in sentences. */
export function joinSentences(
  { added, changed, removed, others, moved, conflicts }: Join, words: Words = ENGLISH,
): string[] {
  const open = conflicts.filter(({ choice }) => choice === null).length;
  const came = words.say(
    'From theirs: {added, plural, one {# row} other {# rows}} added, {changed} changed, {removed} removed; {others} other entries.',
    { added: added.length, changed: changed.length, removed: removed.length, others: others.length });
  return [
    came,
    ...(open === 0 ? [] : [words.say(
      '{open, plural, one {One conflict is open: yours stands until it is decided.} other {# conflicts are open: yours stand until they are decided.}}',
      { open })]),
    ...(moved.length === 0 ? [] : [words.say('Rows of theirs stand in another order: {sheets}. The order stays as yours.',
      { sheets: moved.map((sheet) => words.text(SCHEMA[sheet].title)).join(', ') })]),
  ];
}
