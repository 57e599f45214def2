import { formatCell, inputColumns, isFormula, SCHEMA, type SheetName } from '../../schedule/index.ts';
import { ENGLISH, message, type Words } from '../../words/index.ts';
import type { Join } from './join-schedules.ts';
import type { JoinConflict } from './three-way.ts';

/** Cells that tell of a row without a tag. */
const MOST_HELD = 4;

const KINDS: Readonly<Record<Exclude<JoinConflict['kind'], 'cell' | 'removed' | 'parts' | 'tag'>, string>> = {
  detail: message('Both changed a detail of the schedule.'), revision: message('Both wrote about a revision.'),
  acceptance: message('Both accepted the same finding, each with words of their own.'),
  list: message('Both say of a heading or a name of takeoffs what it means, each something else.'),
  variant: message('Both have a variant of this name, each another one.'),
  other: message('Both changed a key that this version does not know.'),
};

/** What a conflict is about, in one sentence; the values of both stand beside it. */
export function conflictSentence(
  { kind, tag, mine, theirs, base, choices }: JoinConflict, words: Words = ENGLISH,
): string {
  switch (kind) {
    case 'cell':
      if (choices.includes('both')) {
        return tag === ''
          ? words.say('Both have a row of this kind, without a tag, with other values: is it one thing, or are these two?')
          : words.say('Both have a row of this tag, with other values: is it one thing, or are these two?');
      }
      return base === null && (mine === null || theirs === null)
        ? words.say('Only one of you says something here: whether the other took it out is not known.')
        : words.say('Both changed it, each in a way of their own.');
    case 'parts': return words.say(
      'It is shared out over rows, and both changed their quantities: those of one of you count together.');
    case 'removed': return mine === null
      ? words.say('You removed the row; they changed it, or name it in another one.')
      : words.say('They removed the row; you changed it, or name it in another one.');
    case 'tag': return words.say('They added a row with a tag that another row of yours has.');
    default: return words.say(KINDS[kind]);
  }
}

/** The row that a conflict is about: its tag, or its place and what it holds; empty where it is about none. */
export function conflictRow({ sheet, tag, row }: JoinConflict, words: Words = ENGLISH): string {
  if (tag !== '' || row === undefined) return tag;
  const { mine, theirs, holds } = row;
  const place = mine === null ? words.say('row {row} of theirs', { row: theirs! })
    : theirs === null ? words.say('row {row} of yours', { row: mine })
      : words.say('row {row} of yours, {other} of theirs', { row: mine, other: theirs });
  const held = inputColumns(sheet as SheetName).flatMap((column) => {
    const value = holds[column.key] ?? null;
    return value === null || column.key === 'source' ? [] : [isFormula(value) ? value : formatCell(column, value, words, 'show')];
  }).slice(0, MOST_HELD);
  return held.length === 0 ? place : `${place} (${held.join(', ')})`;
}

/** How much of theirs came in, and what is left to decide, in sentences. */
export function joinSentences(
  { added, changed, removed, others, moved, begun, conflicts }: Join, words: Words = ENGLISH,
): string[] {
  const open = conflicts.filter(({ choice }) => choice === null).length;
  const came = words.say(
    'From theirs: {added, plural, one {# row} other {# rows}} added, {changed} changed, {removed} removed; {others} other entries.',
    { added: added.length, changed: changed.length, removed: removed.length, others: others.length });
  return [
    came,
    ...(begun === 'given' ? [] : [begun === null
      ? words.say('Nothing says what both began with: every difference of a row that both have is asked, and rows that only one has all stay.')
      : words.say('Both list issue {revision} of {date}: choose its load table as what both began with. Without it every difference of a row that both have is asked, and rows that only one has all stay.', { ...begun, date: words.date(begun.date) })]),
    ...(open === 0 ? [] : [words.say(
      '{open, plural, one {One conflict is open: yours stands until it is decided.} other {# conflicts are open: yours stand until they are decided.}}',
      { open })]),
    ...(moved.length === 0 ? [] : [words.say('Rows of theirs stand in another order: {sheets}. The order stays as yours.',
      { sheets: moved.map((sheet) => words.text(SCHEMA[sheet].title)).join(', ') })]),
  ];
}
