import { railVoltages, writeSchedule } from '../exchange/index.ts';
import { LIST_WAYS, readList, takeList, type ListRows, type ListWay } from '../exchange/update/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { SHEET_NAMES, type SheetName } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { calledAs } from './called-as.ts';
import { problemLines, readText, writeText } from './files.ts';
import { spokenWords } from './lang-option.ts';
import { openSchedule, refuseFormulas } from './open-schedule.ts';
import { parseWords } from './parse-words.ts';
import { Refusal, refusing } from './refusal.ts';
import type { Streams } from './streams.ts';

export const UPDATE_HELP = `Brings lists of an office into a schedule: device types, conductors, contacts, supplies, any sheet.

  ${calledAs('update')} SCHEDULE LIST… [--how update|append|replace] [--sheet NAME] [--output FILE]

SCHEDULE       the schedule (.schedule.json, or a load table in HTML or XLSX)
LIST           a sheet in CSV, known by its headings, or a schedule, whose types, conductors, contacts
               and supplies are taken
--how          update (default): rows with the tag of one of the list take what it states, rows that are
               new stand behind the others, all else stays; what the list leaves empty says nothing
               append: the rows of the list stand behind those of the sheet
               replace: the rows of the list stand in the place of those of the sheet
--sheet NAME   the sheet that is taken of the lists
--replace-formulas   with update: what a list states also takes the place of formulas in the schedule
--output FILE  write the schedule with the lists in it
--lang TAG     language of notes and reasons, and of files that are read beside English: en (default), de, fr
--help         this text

Prints JSON for each list: with update the rows changed (cell by cell, before and after; kept: a formula
that stays), added, the same, not in the list, and left out with the reason.

Exit code: 0; 2 for bad input, which is named by file, line and column.
`;

const OPTIONS = {
  how: { type: 'string', default: 'update' }, sheet: { type: 'string' },
  'replace-formulas': { type: 'boolean', default: false },
  output: { type: 'string' }, lang: { type: 'string' }, help: { type: 'boolean' },
} as const;

const HINT = `${calledAs('update')} --help says what there is.`;

/**
 * The command `update`: brings lists into a schedule, by tag, behind its rows or in their place.
 * @returns the exit code: 0; 2 for bad input, of which nothing is written.
 */
export async function runUpdate(words: readonly string[], { out, warn }: Streams): Promise<0 | 1 | 2> {
  return refusing(warn, async () => {
    const { values, positionals: [base, ...files] } = parseWords(words, OPTIONS, HINT);
    if (values.help === true) {
      out(UPDATE_HELP);
      return 0;
    }
    if (base === undefined || files.length === 0) {
      throw new Refusal([`Name a schedule, then the lists that go into it; ${HINT}`]);
    }
    const how = LIST_WAYS.find((each) => each === values.how);
    if (how === undefined) throw new Refusal([`--how ${values.how} is not known. Give one of ${LIST_WAYS.join(', ')}.`]);
    const sheet = SHEET_NAMES.find((each) => each === values.sheet);
    if (sheet === undefined && values.sheet !== undefined) {
      throw new Refusal([`--sheet ${values.sheet} is not known. Give one of ${SHEET_NAMES.join(', ')}.`]);
    }
    const spoken = await spokenWords(values.lang);
    const schedule = await openSchedule([base], warn, spoken);
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
}

async function readLists(
  name: string, sheet: SheetName | undefined, schedule: LoadSchedule, warn: Streams['warn'],
): Promise<readonly ListRows[]> {
  const { words } = schedule;
  const file = await readText(name, words);
  const read = readList(file, sheet, railVoltages(schedule.content().sheets.supplies ?? []), words);
  if (!read.ok) throw new Refusal(problemLines(name, read));
  for (const note of [...file.notes, ...read.notes]) warn(`${name}: ${note}`);
  if (read.lists.length === 0) throw new Refusal([`${name}: ${noList(words)}`]);
  return read.lists;
}

function noList(words: Words): string {
  return words.say('It has no rows on the sheets that are taken. Name another file, or the sheet that is meant.');
}

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
