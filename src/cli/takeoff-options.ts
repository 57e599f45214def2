import { fileURLToPath } from 'node:url';
import { TAKEOFF_FIELDS, type RememberedColumns, type TakeoffField } from '../exchange/takeoff/index.ts';
import type { RevisionOptions } from '../exchange/revision/index.ts';
import { oneOrNone, type Given } from './command.ts';
import { hintOf, type Help } from './help-text.ts';
import type { SaidOfLine } from './named-lines.ts';
import { Refusal } from './refusal.ts';

/** What the words behind the command ask for. */
export interface TakeoffCommand {
  readonly files: readonly string[];
  /** Which sheets of a workbook hold lists; by default all that are shown. */
  readonly sheetNames: readonly string[];
  readonly types: string;
  /** The schedule onto which the takeoff is taken; its types are those that names are looked up among. */
  readonly onto: string | undefined;
  /** How it is taken onto one. */
  readonly revision: Pick<RevisionOptions, 'lists' | 'by' | 'gone'>;
  /** Lines of the list and the device rows that they are, as they were given. */
  readonly same: readonly (readonly [line: string, row: string])[];
  /** Lines of the list that are new rows; `all` for every one that is asked about. */
  readonly fresh: readonly string[];
  readonly output: string | undefined;
  readonly columns: RememberedColumns;
  /** What is said of single lines. */
  readonly said: readonly SaidOfLine[];
  /** Names and the types that they mean; an empty one asks for a new type. */
  readonly meanings: readonly (readonly [name: string, type: string])[];
}

/** What `--revises` calls the rows for which the schedule names no list. */
export const UNLISTED = 'unlisted';
/** What `--new` calls every line that is asked about. */
export const ALL = 'all';

export const HELP: Help = {
  name: 'takeoff', does: 'Reads a takeoff: says of every line what becomes of it, and writes a schedule.',
  forms: [
    'FILE… [--sheet-name NAME]… [--types SCHEDULE] [--output FILE] [--as NAME=TYPE]… [--column FIELD=COLUMN]… '
      + '[--take LINE]… [--qty LINE=QUANTITY]… [--leave-out LINE]…',
    'FILE… --onto SCHEDULE [--gone mark|delete] [--revises LIST]… [--match ref|place] [--is LINE=ROW]… '
      + '[--new LINE|all]… …',
  ],
  words: {
    FILE: 'the takeoff, in one file or several: a workbook (.xlsx), a page with tables (.html), or text with fields '
      + 'parted by comma, semicolon or tab, in UTF-8, UTF-16 or Windows-1252',
    '--sheet-name NAME': 'a sheet of the workbook that holds a list; by default all that are shown, each of which is the '
      + 'area of lines that have none; legends explain the codes of the lists',
    '--types SCHEDULE': 'the schedule, or its sheet of types in CSV, whose types and aliases the names are looked up '
      + 'among; by default the types that come with this software',
    '--onto SCHEDULE': 'take it onto this schedule, which was counted in an earlier issue of it: rows are the same by '
      + 'ref, else by area and type; what stays keeps rail, branch, run and all that was entered',
    '--gone mark|delete': 'rows that the list no longer has are marked and still count (default), or deleted',
    '--revises LIST': 'the list that it takes the place of, by its name in the schedule; by default that of the same '
      + `name, or the one of which it has rows; «${UNLISTED}»: the rows that name no list; empty: none, it is a further list`,
    '--match ref|place': 'what tells rows apart where ref and place disagree; by default refs, unless numbered anew',
    '--is LINE=ROW': 'a line of the list is a device row that it does not name: its number, or its key where there are '
      + 'several lists (file!sheet!line), and the ref of the row or # and its number, as --is 5=#12',
    '--new LINE|all': 'a line of the list is a new row, though it may be one that is there: until --is or --new says which, '
      + 'it is undecided and not in the schedule; all: every line that is asked about',
    '--as NAME=TYPE': 'a name means this type, and is remembered as its alias in what is written; with nothing behind '
      + 'the sign it becomes a new type',
    '--take LINE': 'the line counts, with the quantity that it has or that is proposed; LINE is its number, its key where '
      + 'there are several lists (file!sheet!line), or the key of one of its counts (file!sheet!line/column)',
    '--qty LINE=QUANTITY': 'the line counts, with this quantity; so does one that is called a total or a title, whose name '
      + '--as gives a type',
    '--leave-out LINE': 'the line does not count',
    '--column FIELD=COLUMN': 'what a column holds, by its heading or its number from 1; FIELD is one of '
      + `${TAKEOFF_FIELDS.join(', ')} or ignore`,
  },
  said: 'reasons and notes', output: 'write a schedule with these types, the new ones, and the devices that were taken',
  about: [
    'A takeoff is understood in each of the languages whatever --lang says.',
    'Prints JSON: what becomes of each line (taken, merged, left-out, undecided) and why, where it stands (source), why '
      + 'a person is asked (flag: hidden, struck, superseded, sum, matrix, proposal) and the quantity that is proposed, with the '
      + 'sums of the quantities; a line with several counts stands once for each. With --onto also how many device rows '
      + 'came, changed, went and are kept, how many rows of the list are asked about (undecided, too), and each of them with its quantity before and after.',
  ],
  caution: 'Counts and draws are to be checked before anything is bought or wired.',
};

export const OPTIONS = {
  'sheet-name': { type: 'string', multiple: true },
  types: { type: 'string' },
  onto: { type: 'string' },
  gone: { type: 'string' },
  revises: { type: 'string', multiple: true },
  match: { type: 'string' },
  is: { type: 'string', multiple: true },
  new: { type: 'string', multiple: true },
  as: { type: 'string', multiple: true },
  take: { type: 'string', multiple: true },
  qty: { type: 'string', multiple: true },
  'leave-out': { type: 'string', multiple: true },
  column: { type: 'string', multiple: true },
} as const;

/**
 * Reads the words behind the command.
 * @throws Refusal for a word that it does not know.
 */
export function readTakeoffOptions({ values, positionals }: Given<typeof OPTIONS>): TakeoffCommand {
  if (positionals.length === 0) throw new Refusal([`No takeoff is named. Name its file; ${hintOf(HELP.name)}`]);
  if (values.onto !== undefined && values.types !== undefined) {
    throw new Refusal([`--types ${values.types}: names are looked up among the types of the schedule of --onto. Leave it out.`]);
  }
  const lone = (['gone', 'revises', 'match', 'is', 'new'] as const).find((option) => values[option] !== undefined);
  if (lone !== undefined && values.onto === undefined) {
    throw new Refusal([`--${lone} goes with --onto. Name the schedule onto which the takeoff is taken, or leave it out.`]);
  }
  return {
    files: positionals,
    sheetNames: values['sheet-name'] ?? [],
    types: values.types ?? fileURLToPath(new URL('../../data/device-types.json', import.meta.url)),
    output: values.output,
    onto: values.onto,
    revision: {
      gone: oneOrNone('gone', values.gone, ['mark', 'delete']) ?? 'mark', by: oneOrNone('match', values.match, ['ref', 'place']),
      lists: values.revises?.filter((name) => name !== '').map((name) => name === UNLISTED ? '' : name),
    },
    same: (values.is ?? []).map((text) => pairOf(text, '--is', 'LINE=ROW')),
    columns: Object.fromEntries((values.column ?? []).map(columnOf)),
    fresh: values.new ?? [],
    said: [
      ...(values.take ?? []).map((line): SaidOfLine => ({ given: `--take ${line}`, line, decision: 'take' })),
      ...(values.qty ?? []).map(quantityOf),
      ...(values['leave-out'] ?? []).map((line): SaidOfLine => ({ given: `--leave-out ${line}`, line, decision: 'leave-out' })),
    ],
    meanings: (values.as ?? []).map((text) => pairOf(text, '--as', 'NAME=TYPE')),
  };
}

function columnOf(text: string): [column: string, field: TakeoffField | 'ignore'] {
  const [name, column] = pairOf(text, '--column', 'FIELD=COLUMN');
  const field = name === 'ignore' ? name : TAKEOFF_FIELDS.find((each) => each === name);
  if (field !== undefined && column !== '') return [column, field];
  throw new Refusal([`--column ${text}: give one of ${TAKEOFF_FIELDS.join(', ')} or ignore, then = and a column.`]);
}

function quantityOf(text: string): SaidOfLine {
  const [line, quantity] = pairOf(text, '--qty', 'LINE=QUANTITY');
  const qty = quantity === '' ? NaN : Number(quantity);
  if (qty >= 0 && qty < Infinity) return { given: `--qty ${text}`, line, decision: { qty } };
  throw new Refusal([`--qty ${text}: ${quantity} is no quantity. Give a number from 0 on, as in --qty ${line}=4.`]);
}

function pairOf(text: string, option: string, form: string): [string, string] {
  const sign = text.lastIndexOf('=');
  if (sign <= 0) throw new Refusal([`${option} ${text} is not understood. Write ${option} "${form}".`]);
  return [text.slice(0, sign).trim(), text.slice(sign + 1).trim()];
}
