import { fixed, message, type Words } from '../../words/index.ts';
import type {
  CapacityLimit, LeftOut, LeftOutCode, LeftOutPiece, Served, SharedSheet, SharingLimit, SharingNote,
} from './sharing-problem.ts';

const NOTES: Readonly<Record<SharingNote['code'], string>> = {
  'limit-unknown': message('Branch {tag} has no known limit, so nothing is put on it.'),
  'nodes-unknown': message('Branch {tag} keeps devices whose nodes are not known, so nothing is added to it.'),
  'bus-current-unheeded': message(
    'What the supply of the bus of branch {tag} gives is not heeded: only nodes are shared out. See its status afterwards.'
  ),
  'rating-unknown': message('Supply {tag} has no known rating, so nothing is put on it.'),
  'purposes-mixed': message('Supply {tag} keeps devices of several purposes, so nothing is added to it.'),
  'demand-unknown': message('Supply {tag} keeps devices whose demand is not known, so nothing is added to it.'),
  'cases-added': message(
    'Each device row counts with what it draws in the case in which that is most: where rows are on in different cases, a supply may take more than is put on it.'
  ),
};

/** What a person should know, in one sentence. */
export function noteSentence({ code, tag }: SharingNote, words: Words): string {
  return words.say(NOTES[code], { tag });
}

/** What a supply is for: `lighting, 24 V`; empty for a branch. */
export function servedText(serves: Served | null, words: Words): string {
  return serves === null
    ? ''
    : words.say('{purpose}, {voltage} V', { purpose: words.text(serves.purpose), voltage: serves.voltage });
}

const CAPACITIES: Readonly<Record<CapacityLimit, string>> = {
  limit: message('A branch carries up to its limit.'),
  reserve: message('A branch carries up to its limit less its reserve.'),
  target: message('A supply carries up to the target of its usable current.'),
  fuse: message('A supply carries up to its fuse.'),
  extension: message('Each carries so much less that what is there may grow by the extension.'),
};

/** What decides how many branches or supplies there are: the sum, what stays together, or the time. */
export function limitSentence(over: SharedSheet, limit: SharingLimit, words: Words): string {
  const { serves, panel, used, byTotal, lowerBound } = limit;
  const values = { size: rounded(limit.size), used, byTotal, lowerBound };
  const sum = over === 'branches'
    ? words.say('{size, plural, one {# node} other {# nodes}} on {used, plural, one {# branch} other {# branches}}.', values)
    : words.say('{size} A on {used, plural, one {# supply} other {# supplies}}.', values);
  const decides = used === byTotal ? words.say('The sum sets the number.')
    : used === lowerBound ? words.say(
      'The sum alone would need {byTotal}; what stays together or where it is sets the number.', values
    )
    : words.say(
      'The sum alone would need {byTotal}, and none does with fewer than {lowerBound}; whether {used} is the least is not known.',
      values
    );
  const where = [panel, servedText(serves, words)].filter((part) => part !== null && part !== '').join(', ');
  const sentences = [sum, decides, ...limit.limitedBy.map((by) => words.say(CAPACITIES[by]))].join(' ');
  return where === '' ? sentences : words.say('{where}: {sentences}', { where, sentences });
}

/** Why devices have no place, and what to do, in a sentence or two. */
export function leftOutSentence(over: SharedSheet, left: LeftOut, words: Words): string {
  if ('piece' in left) return over === 'branches'
    ? noRoomOnBranch(left.code, left.piece, words) : noRoomOnSupply(left.code, left.piece, words);
  return words.say(REASONS[over][left.code]);
}

const REASONS: Readonly<Record<SharedSheet, Readonly<Record<Exclude<LeftOutCode, 'too-large' | 'no-room'>,
  string>>>> = {
  branches: reasons({
    'size-unknown': message(
      'The nodes of its type are not known. Choose a type that says how many nodes one device counts.'
    ),
    'takes-none': message('It counts no nodes on a branch.'),
    'nothing-to-share-over': message(
      'No branch has a known limit. Enter the most nodes that a branch may carry, or the standard of the bus, such as TIA-485-A; further branches are made like it.'
    ),
  }),
  supplies: reasons({
    'size-unknown': message('Its demand is not known. Enter its unit draw, or a type that has a draw or a power.'),
    'takes-none': message('It draws no current.'),
    'nothing-to-share-over': message(
      'There is no supply of known rating to put it on. Enter a supply with its rated current.'
    ),
  }),
};

/** The reasons that differ, with those that are the same whatever is shared. */
function reasons(own: Readonly<Record<'size-unknown' | 'takes-none' | 'nothing-to-share-over', string>>) {
  return {
    ...own,
    'quantity-unknown': message('Its quantity is not known. Enter how many devices there are.'),
    'mixed-run': message(
      'Its run feeds devices of several purposes, which are kept on supplies of their own. Give them runs of their own.'
    ),
    'run-between-panels': message(
      'Its run feeds devices of several panels, which stay in theirs. Give them runs of their own, or share out between panels too.'
    ),
    'run-elsewhere': message(
      'The rail that feeds its run has no capacity for it, or is kept for another purpose. Give it another run.'
    ),
  };
}

function noRoomOnBranch(code: 'too-large' | 'no-room', { of, size, most }: LeftOutPiece, words: Words): string {
  const values = { of, size: rounded(size), most: Number(fixed(most, 3, 'down')) };
  return code === 'no-room'
    ? words.say(
      '{of, select, row {The row takes} other {One device takes}} {size, plural, one {# node} other {# nodes}}, and no branch that is large enough has capacity left. Enter another one.',
      values
    )
    : words.say(
      '{of, select, row {The row takes} other {One device takes}} {size, plural, one {# node} other {# nodes}}; a branch has capacity for {most, plural, one {# node} other {# nodes}} at most. {of, select, row {Split the row, or enter} other {Enter}} a larger branch.',
      values
    );
}

function noRoomOnSupply(code: 'too-large' | 'no-room', { of, size, most }: LeftOutPiece, words: Words): string {
  const values = { of, size: rounded(size), most: Number(fixed(most, 3, 'down')) };
  return code === 'no-room'
    ? words.say(
      '{of, select, run {The devices of its run together take} row {The row takes} other {One device takes}} {size} A, and no supply that is large enough has capacity left. Enter another one.',
      values
    )
    : words.say(
      '{of, select, run {The devices of its run together take} row {The row takes} other {One device takes}} {size} A; a supply has capacity for {most} A at most. {of, select, run {Spread them over more runs, or enter} row {Split the row, or enter} other {Enter}} a larger supply.',
      values
    );
}

/** A quantity to three decimals, as a sentence gives it. */
function rounded(value: number): number {
  return Number(fixed(value, 3));
}
