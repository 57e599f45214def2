import { OFFICE_LISTS, type ShareRequest, type SizingOptions } from '../allocation/index.ts';
import { oneOf, refuseNone, type Given } from './command.ts';
import { CAUTION, INPUT, type Help } from './help-text.ts';
import { readNumbers, readPercent } from './read-numbers.ts';
import { Refusal } from './refusal.ts';

/** What the words behind the command ask for. */
export interface ShareOptions {
  readonly inputs: readonly string[];
  /** Lists of an office from which the types of the devices come. */
  readonly types: readonly string[];
  readonly request: ShareRequest;
  readonly output: string | undefined;
  readonly sizing: string | undefined;
  /** How a sizing is made. */
  readonly rules: Pick<SizingOptions, 'wholeRows' | 'extension' | 'equalUnits' | 'panel' | 'unplaced' | 'lists'>;
  /** Rows are made of the sizing in the place of sharing out. */
  readonly create: boolean;
}

export const HELP: Help = {
  name: 'share', does: 'Shares the devices of a schedule out over the least number of bus branches or supplies.',
  forms: ['INPUT… [--over branches|supplies] [--whole-rows] [--keep] [--across-panels] [--extension PERCENT] '
    + '[--types LIST]… [--equal-units] [--unplaced] [--panel NAME] [--ratings A,…] [--module-outputs N,…] [--way-rating A] '
    + '[--create] [--output FILE] [--sizing FILE]'],
  words: {
    INPUT,
    '--over': 'branches (default): nodes, up to the limit of a branch less its reserve. supplies: demand, up to what may '
      + 'be used of a supply times its target, each purpose on supplies of its own',
    '--whole-rows': 'no row is split',
    '--keep': 'devices that have a branch or supply keep it; without this all are shared anew',
    '--across-panels': 'devices may go to another panel; without this what is on a branch or rail that has an enclosure '
      + 'stays in that panel, and the rest may go to any',
    '--extension PERCENT': 'put so much less on each that what is there may grow by this',
    '--types LIST': 'a list of an office: a schedule, or its sheet of types in CSV, whose types are brought in by tag before '
      + 'anything else, as the command update does it',
    '--sizing FILE': 'write what the job needs (supplies, ways, mains feeds, branches, relay modules, by panel) to a CSV file',
    '--equal-units': 'supplies of a sizing for one purpose in one panel are of one rating',
    '--unplaced': 'a sizing counts only what has no place yet',
    '--ratings A,…': `rated currents of supplies [A] to size with; ${OFFICE_LISTS.ratings.join(', ')} unless said`,
    '--module-outputs N,…': `outputs of relay modules to size with; ${OFFICE_LISTS.ways.join(', ')} unless said`,
    '--way-rating A': `rating of ways where no row says another; ${OFFICE_LISTS.wayRating!} unless said`,
    '--panel NAME': 'the panel of what belongs to none, in a sizing',
    '--create': 'instead of sharing out, make rows of the sizing of what has no place yet, put it on them, and print how '
      + 'many; needs --output',
  },
  said: 'notes and reasons, and of what the job needs', output: 'write the schedule, shared out, to a file',
  about: [
    'Prints JSON: how many are used, the lower bound for that, whether the number is proven to be the least, what decides '
      + 'it in each panel, and the placements (row: place of the device row from 0); then what was left out and why, how '
      + 'full each one is, and those that are to be made. Where there are too few, more are made like the last whose '
      + 'limit or rating is known.',
  ],
  caution: CAUTION,
};

export const OPTIONS = {
  over: { type: 'string', default: 'branches' },
  'whole-rows': { type: 'boolean', default: false },
  keep: { type: 'boolean', default: false },
  'across-panels': { type: 'boolean', default: false },
  extension: { type: 'string', default: '0' },
  types: { type: 'string', multiple: true },
  'equal-units': { type: 'boolean', default: false },
  unplaced: { type: 'boolean', default: false },
  ratings: { type: 'string' },
  'module-outputs': { type: 'string' },
  'way-rating': { type: 'string' },
  panel: { type: 'string' },
  create: { type: 'boolean', default: false },
  sizing: { type: 'string' },
} as const;

/**
 * Reads the words behind the command.
 * @throws Refusal for a word that it does not know.
 */
export function readShareOptions({ values, positionals }: Given<typeof OPTIONS>): ShareOptions {
  refuseNone(positionals, HELP.name);
  const over = oneOf('over', values.over, ['branches', 'supplies']);
  const extension = readPercent('extension', values.extension);
  if (values.create && values.output === undefined) {
    throw new Refusal(['--create makes rows in a schedule. Name a file for it with --output, as in --output panel.schedule.json.']);
  }
  return {
    inputs: positionals,
    types: values.types ?? [],
    create: values.create,
    rules: {
      extension, wholeRows: values['whole-rows'], equalUnits: values['equal-units'], panel: values.panel, unplaced: values.unplaced,
      lists: {
        ratings: readNumbers('ratings', values.ratings) ?? OFFICE_LISTS.ratings,
        ways: readNumbers('module-outputs', values['module-outputs'], 'whole') ?? OFFICE_LISTS.ways,
        wayRating: readNumbers('way-rating', values['way-rating'], 'one')?.[0] ?? OFFICE_LISTS.wayRating!,
      },
    },
    request: { over, wholeRows: values['whole-rows'], keepPlaced: values.keep, acrossPanels: values['across-panels'], extension },
    output: values.output,
    sizing: values.sizing,
  };
}
