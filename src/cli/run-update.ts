import { writeSchedule } from '../exchange/index.ts';
import { LIST_WAYS, takeList, type ListRows, type ListWay } from '../exchange/update/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { SHEET_NAMES } from '../schedule/index.ts';
import { command, oneOf, oneOrNone } from './command.ts';
import { writeText } from './files.ts';
import { hintOf, type Help } from './help-text.ts';
import { openSchedule, refuseFormulas } from './open-schedule.ts';
import { readLists } from './read-lists.ts';
import { Refusal } from './refusal.ts';
import type { Streams } from './streams.ts';

const HELP: Help = {
  name: 'update',
  does: 'Brings lists of an office into a schedule: device types, conductors, contacts, supplies, any sheet.',
  forms: ['SCHEDULE LIST… [--how update|append|replace] [--sheet NAME] [--replace-formulas] [--output FILE]'],
  words: {
    SCHEDULE: 'the schedule (.schedule.json, or a load table in HTML or XLSX)',
    LIST: 'a sheet in CSV, known by its headings, or a schedule, whose types, conductors, contacts and supplies are taken',
    '--how': 'update (default): rows with the tag of one of the list take what it states, rows that are new stand '
      + 'behind the others, all else stays; what the list leaves empty says nothing. append: the rows of the list stand '
      + 'behind those of the sheet. replace: they stand in the place of those of the sheet',
    '--sheet NAME': 'the sheet that is taken of the lists',
    '--replace-formulas': 'with update: what a list states also takes the place of formulas in the schedule',
  },
  said: 'notes and reasons', output: 'write the schedule with the lists in it',
  about: [
    'Prints JSON for each list: with update the rows changed (cell by cell, before and after; kept: a formula that '
      + 'stays), added, the same, not in the list, and left out with the reason.',
  ],
};

const OPTIONS = {
  how: { type: 'string', default: 'update' }, sheet: { type: 'string' },
  'replace-formulas': { type: 'boolean', default: false },
} as const;

/** The command `update`: brings lists into a schedule, by tag, behind its rows or in their place. */
export const runUpdate = command(HELP, OPTIONS, async ({ values, positionals, words }, { out, warn }) => {
  const [base, ...files] = positionals;
  if (base === undefined || files.length === 0) {
    throw new Refusal([`Name a schedule, then the lists that go into it; ${hintOf(HELP.name)}`]);
  }
  const how = oneOf('how', values.how, LIST_WAYS);
  const sheet = oneOrNone('sheet', values.sheet, SHEET_NAMES);
  const schedule = await openSchedule([base], warn, words);
  const told: unknown[] = [];
  for (const name of files) {
    for (const list of await readLists(name, sheet, schedule, warn)) {
      told.push(take(schedule, list, name, how, values['replace-formulas'], warn));
    }
  }
  if (values.output !== undefined) {
    await writeText(writeSchedule(schedule.content(), { pretty: true }), values.output, out);
  }
  out(`${JSON.stringify({ how, lists: told }, null, 2)}\n`);
  return 0;
});

function take(
  schedule: LoadSchedule, list: ListRows, name: string, how: ListWay, replacesFormulas: boolean, warn: Streams['warn'],
): unknown {
  const { words } = schedule;
  const { sheet, rows } = list;
  const before = schedule.rows(sheet).length;
  const taken = takeList(schedule, list, name, how, replacesFormulas ? { words, takes: () => true } : { words });
  for (const note of taken.notes) warn(`${name}: ${note}`);
  if ('content' in taken) {
    refuseFormulas(schedule.load(taken.content, taken.label), words, () => name);
    return { list: name, sheet, rows: rows.length, before };
  }
  schedule.act(taken.label, taken.changes);
  const { changed, added, same, absent, leftOut } = taken.update;
  return {
    list: name, sheet,
    changed: changed.map(({ tag, row, cells }) => ({
      tag, row, cells: cells.map(({ key, before: was, after, isOwnFormula }) =>
        ({ key, before: was, after, ...(isOwnFormula && !replacesFormulas ? { kept: true } : {}) })),
    })),
    added: added.length, same, notInList: absent.length, leftOut,
  };
}
