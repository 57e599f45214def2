import { SHEET_NAMES, type SheetName } from '../../src/schedule/index.ts';
import { LIST_WAYS, type ListWay } from '../../src/exchange/update/list-ways.ts';
import { message, type Words } from '../../src/words/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { NamedText } from './files.ts';

/**
 * What a page gave the element is not what it takes; nothing has changed. The message says what was given and is taken.
 */
export class ElvInputError extends TypeError {
  override readonly name = 'ElvInputError';
  /** The property or method that was given it. */
  readonly member: string;

  constructor(member: string, sentence: string) {
    super(sentence);
    this.member = member;
  }
}

/** What each member takes. */
const TAKES = {
  value: message('“value” was given {found}. It takes the text of a schedule file. Nothing has changed.'),
  schedule: message('“schedule” was given {found}. It takes a LoadSchedule. Nothing has changed.'),
  markSaved: message(
    '“markSaved” was given {found}. It takes a value as “value” gave it, or nothing. Nothing has changed.'
  ),
  src: message(
    '“src” was given {found}. It takes the address of a schedule file as a text, or null. Nothing has changed.'
  ),
  openFile: message(
    '“openFile” was given {found}. It takes a File, or an object with the texts “name” and “text”. Nothing has changed.'
  ),
  importCsv: message('“importCsv” was given {found}. It takes CSV as a text. Nothing has changed.'),
} as const;

type Member = keyof typeof TAKES;

/** What a person at a console would see of a value: itself where it is short, else its kind. */
function shown(given: unknown): string {
  if (typeof given === 'string') return `"${given}"`;
  if (typeof given === 'function' || (typeof given === 'object' && given !== null)) {
    return Object.prototype.toString.call(given).slice(1, -1).split(' ')[1]!;
  }
  return String(given);
}

function refuse(member: Member, given: unknown, words: Words): never {
  throw new ElvInputError(member, words.say(TAKES[member], { found: shown(given) }));
}

/** @throws {ElvInputError} for what is no text. */
export function textOf(member: 'value' | 'markSaved' | 'importCsv', given: unknown, words: Words): string {
  return typeof given === 'string' ? given : refuse(member, given, words);
}

/** An address, `null` for none. @throws {ElvInputError} for what is neither. */
export function addressOf(given: unknown, words: Words): string | null {
  if (given === null || given === undefined || typeof given === 'string') return given ?? null;
  return given instanceof URL ? given.href : refuse('src', given, words);
}

/** A schedule, also one that another copy of this software made. @throws {ElvInputError} for anything else. */
export function scheduleOf(given: unknown, words: Words): LoadSchedule {
  const methods = ['speak', 'subscribe', 'act', 'content'] as const;
  const isSchedule = typeof given === 'object' && given !== null
    && methods.every((name) => typeof (given as Partial<LoadSchedule>)[name] === 'function');
  return isSchedule ? given as LoadSchedule : refuse('schedule', given, words);
}

/** A file, also one of another frame. @throws {ElvInputError} for what is none. */
export function fileOf(given: unknown, words: Words): File | NamedText {
  const { name, text, arrayBuffer } = (given ?? {}) as Partial<Record<'name' | 'text' | 'arrayBuffer', unknown>>;
  const isFile = typeof name === 'string' && (typeof text === 'string' || typeof arrayBuffer === 'function');
  return isFile ? given as File | NamedText : refuse('openFile', given, words);
}

/** A way in which rows come into a sheet. @throws {ElvInputError} where there is no such way. */
export function wayOf(given: unknown, words: Words): ListWay {
  const way = LIST_WAYS.find((each) => each === given);
  if (way !== undefined) return way;
  const values = { found: shown(given), ways: LIST_WAYS.join(', ') };
  throw new ElvInputError('importCsv', words.say(
    '“importCsv” was given {found} as a way to take rows. There are {ways}. Nothing has changed.', values));
}

/** The name of a sheet. @throws {ElvInputError} where there is no such sheet. */
export function sheetOf(member: string, given: unknown, words: Words): SheetName {
  const sheet = SHEET_NAMES.find((name) => name === given);
  if (sheet !== undefined) return sheet;
  const values = { member, found: shown(given), sheets: SHEET_NAMES.join(', ') };
  const sentence =
    words.say('“{member}” was given {found} as a sheet. There are {sheets}. Nothing has changed.', values);
  throw new ElvInputError(member, sentence);
}
