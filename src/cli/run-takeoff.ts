import { writeSchedule } from '../exchange/index.ts';
import {
  equationOf, missingColumns, nameKeysOf, officeColumns, readTakeoff, takeoffChanges, withOfficeNames,
  type NameDecision, type Takeoff, type TakeoffDecisions, type TakeoffOptions, type TakeoffTable,
} from '../exchange/takeoff/index.ts';
import { ScheduleDocument, toContent, toSnapshot, type Content } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { command } from './command.ts';
import { problemLines, writeText } from './files.ts';
import { decisionsOn, openNames, refuseUntaken } from './named-lines.ts';
import { openSchedule } from './open-schedule.ts';
import { readInputs } from './read-inputs.ts';
import { Refusal } from './refusal.ts';
import type { Streams } from './streams.ts';
import { takeOnto, type TakenOnto } from './take-onto.ts';
import { HELP, OPTIONS, readTakeoffOptions, type TakeoffCommand } from './takeoff-options.ts';
import { readTakeoffFile, type TakeoffFile } from './takeoff-file.ts';

/** All lists that are read together, and what their files are called. */
interface TakeoffList {
  readonly name: string;
  readonly source: readonly TakeoffTable[];
}

/** How many lines that need a decision are named. */
const MOST_NAMED = 20;

/** The command `takeoff`: reads a takeoff, prints what becomes of each line, writes a schedule. */
export const runTakeoff = command(HELP, OPTIONS, async (given, { out, warn }) => {
  const options = readTakeoffOptions(given);
  const { words } = given;
  const onto = options.onto === undefined ? undefined : await openSchedule([options.onto], warn, words);
  const content = onto?.content() ?? await readTypes(options.types, words, warn);
  if ((content.sheets.types ?? []).length === 0) {
    warn(`${options.onto ?? options.types}: ${words.say('It has no types, so that every name becomes a new one.')}`);
  }
  const files: TakeoffFile[] = [];
  const names = new Set<string>();
  for (const name of options.files) files.push(await readTakeoffFile(name, options.sheetNames, words, names));
  for (const file of files) for (const note of file.notes) warn(`${file.name}: ${note}`);
  const list = { name: options.files.join(', '), source: files.flatMap(({ tables }) => tables) };
  const takeoff = readDecided(list, content, options, words);
  const taken = onto === undefined ? undefined : takeOnto(onto, takeoff, options.revision, options);
  const result = taken?.takeoff ?? takeoff;
  if (options.output !== undefined) {
    await writeText(taken?.text ?? scheduleOf(takeoff, content, options.types, words), options.output, out);
  }
  const remarks = [...takeoff.notes, ...undecidedOf(result, words), `${equationOf(result.sums, words)}.`];
  for (const remark of remarks) warn(`${list.name}: ${remark}`);
  for (const remark of taken?.remarks ?? []) warn(`${options.onto!}: ${remark}`);
  out(jsonOf(result, taken?.printed));
  return 0;
});

async function readTypes(name: string, words: Words, warn: Streams['warn']): Promise<Content> {
  const { content, notes } = await readInputs([name], words);
  for (const note of notes) warn(note);
  return content;
}

/** Lines and names are known once the takeoff has been read, so that decisions on them make it read again. */
function readDecided(
  file: TakeoffList, { sheets: { types = [] }, lists }: Content, { columns: own, meanings, said }: TakeoffCommand,
  words: Words,
): Takeoff {
  const columns = { ...officeColumns(lists), ...own };
  const read = (decisions: TakeoffDecisions) =>
    readOnce(file, { types, columns, words, decisions: withOfficeNames(decisions, lists) });
  let takeoff = read({});
  const decided = decisionsOn(takeoff, said);
  if (said.length > 0) takeoff = read({ lines: decided });
  const names: Record<string, NameDecision> = {};
  for (const [name, type] of meanings) {
    const keys = nameKeysOf(takeoff, name);
    if (keys.length === 0) {
      throw new Refusal([`--as ${name}=${type}: no device in ${file.name} is called ${name}. Correct the name.`]);
    }
    if (type !== '' && !types.some((cells) => cells.type === type)) {
      throw new Refusal(
        [`--as ${name}=${type}: there is no type ${type}. Name one that there is, or none for a new one.`]
      );
    }
    for (const key of keys) names[key] = type === '' ? 'new' : { type };
  }
  if (meanings.length > 0) takeoff = read({ names, lines: decided });
  refuseUntaken(takeoff, said);
  return takeoff;
}

function readOnce({ name, source }: TakeoffList, options: TakeoffOptions): Takeoff {
  const takeoff = readTakeoff(source, options);
  if (!takeoff.ok) throw new Refusal(problemLines(name, takeoff));
  const { parts } = takeoff;
  const lists = parts.filter(({ kind }) => kind === 'list');
  const isReadable = lists.some((part) => missingColumns(part.columns).length === 0) || parts.every(({ kind }) => kind === 'legend');
  if (isReadable) return takeoff;
  const first = lists[0] ?? parts[0]!;
  const missing = missingColumns(first.columns);
  const columns = first.columns.map(({ index, heading }) => `${index + 1}${heading === '' ? '' : ` “${heading}”`}`)
    .join(', ');
  throw new Refusal(missing.map((field) =>
    `${name}: No column is known to ${field === 'qty' ? 'hold the quantities' : 'name the devices'}; the columns are ${columns}. `
    + `Say which it is, as in --column ${field}=${(first.columns.find((column) => column.field === undefined) ?? first.columns.at(-1)!).index + 1}.`));
}

function undecidedOf(takeoff: Takeoff, words: Words): string[] {
  const undecided = openNames(takeoff);
  const [named, count] = [undecided.slice(0, MOST_NAMED).join(', '), undecided.length - MOST_NAMED];
  if (named === '') return [];
  return [count > 0 ? words.say(
    'Lines that need a decision and are not in the schedule: {named} and {count} more.', { named, count }
  )
    : words.say('Lines that need a decision and are not in the schedule: {named}.', { named })];
}

function scheduleOf(takeoff: Takeoff, { sheets: { types = [] }, lists }: Content, name: string, words: Words): string {
  const { snapshot, problems } = toSnapshot({ details: {}, sheets: { types }, lists }, words);
  if (problems.length > 0) {
    throw new Refusal(problems.map(({ row, problem }) =>
      `${name}: ${words.say('{sheet}, row {row}:', { sheet: 'types', row })} ${problem}`));
  }
  const document = new ScheduleDocument(snapshot);
  document.perform(takeoffChanges(document, takeoff, words));
  return writeSchedule(toContent(document), { pretty: true });
}

function jsonOf({ lines, sums: { read, taken, leftOut, undecided } }: Takeoff, more: TakenOnto['printed'] = {}): string {
  const shown = lines.map(({ key, line, source, outcome, qty, type, area, flag, proposal, reason }) =>
    ({ key, line, source, outcome, qty, type, area, flag, proposal, reason }));
  return `${JSON.stringify({ lines: shown, read, taken, leftOut, undecided, ...more }, null, 2)}\n`;
}
