import { writeSchedule } from '../exchange/index.ts';
import {
  conflictRow, conflictSentence, joinSchedules, joinSentences, throughout, type JoinChoice,
} from '../exchange/join/index.ts';
import type { Words } from '../words/index.ts';
import { command, oneOrNone, twoNames } from './command.ts';
import { writeText } from './files.ts';
import type { Help } from './help-text.ts';
import { openSchedule } from './open-schedule.ts';
import { Refusal } from './refusal.ts';
import type { Streams } from './streams.ts';

const CHOICES = ['mine', 'theirs', 'both'] as const;

const HELP: Help = {
  name: 'join', does: 'Joins two schedules that were worked on apart: two people, two floors.',
  forms: ['MINE THEIRS [--base FILE] [--choose NAME=mine|theirs|both]… [--all mine|theirs] [--output FILE]'],
  words: {
    'MINE, THEIRS': 'schedules (.schedule.json, or load tables in HTML or XLSX)',
    '--base FILE': 'the schedule that both began with, such as the load table of the last issue: what one of them '
      + 'changed since counts, and what one removed goes. Without it all rows of both stay, and every difference of a row '
      + 'that both have is asked',
    '--choose NAME=CHOICE': 'decides a conflict by its name: mine, theirs, or both, where a tag stands for two things: '
      + 'theirs is then given the next free tag, and what names it follows',
    '--all mine|theirs': 'decides every conflict that --choose does not; nothing never counts in the place of something',
  },
  said: 'sentences', output: 'write the joined schedule; where nothing was decided it holds what mine says',
  about: [
    'Rows are matched by their tags, device rows without one by what was counted where. Device rows that were shared out '
      + 'count together: their quantities are those of one side. Prints JSON: the rows that came, changed and went because of theirs, other '
      + 'entries, and the conflicts, each with the values of base, mine and theirs.',
  ],
  one: 'while conflicts stand that nobody decided',
};

const OPTIONS = {
  base: { type: 'string' }, choose: { type: 'string', multiple: true, default: [] as string[] }, all: { type: 'string' },
} as const;

/** The command `join`: joins two schedules, and writes what they make together. */
export const runJoin = command(HELP, OPTIONS, async ({ values, positionals, words }, { out, warn }) => {
  const [mine, theirs] = twoNames(positionals, 'joined', HELP.name);
  const all = oneOrNone('all', values.all, ['mine', 'theirs']);
  const chosen = Object.fromEntries<JoinChoice>(values.choose.map(choiceOf));
  const read = async (name: string) => contentOf(name, warn, words);
  const [own, other] = [await read(mine), await read(theirs)];
  const base = values.base === undefined ? undefined : await read(values.base);
  const first = joinSchedules(own, other, base, chosen);
  const unknown = Object.keys(chosen).filter((name) =>
    !first.conflicts.some((each) => each.name === name && each.choice === chosen[name]));
  if (unknown.length > 0) {
    throw new Refusal(unknown.map((name) => `--choose ${name}=${chosen[name]!}: ${unknownWords(name, first)}`));
  }
  const open = first.conflicts.filter(({ choice }) => choice === null);
  const rest = all === undefined ? {} : Object.fromEntries(open.map((each): [string, JoinChoice] =>
    [each.name, throughout(each, all)]));
  const join = all === undefined ? first : joinSchedules(own, other, base, { ...chosen, ...rest });
  for (const sentence of joinSentences(join, words)) warn(sentence);
  if (values.output !== undefined) {
    await writeText(writeSchedule(join.content, { pretty: true }), values.output, out);
  }
  const { content: _content, conflicts, ...told } = join;
  const asked = conflicts.map((each) =>
    ({ ...each, where: conflictRow(each, words), about: conflictSentence(each, words) }));
  out(`${JSON.stringify({ ...told, conflicts: asked }, null, 2)}\n`);
  return conflicts.some(({ choice }) => choice === null) ? 1 : 0;
});

function unknownWords(name: string, { conflicts }: ReturnType<typeof joinSchedules>): string {
  const known = conflicts.find((each) => each.name === name);
  return known === undefined ? 'there is no conflict of that name. The conflicts that are printed have names.'
    : `it takes one of ${known.choices.join(', ')}.`;
}

async function contentOf(name: string, warn: Streams['warn'], words: Words) {
  const schedule = await openSchedule([name], warn, words);
  const content = schedule.content();
  schedule.dispose();
  return content;
}

function choiceOf(text: string): [name: string, choice: JoinChoice] {
  const sign = text.lastIndexOf('=');
  const choice = CHOICES.find((each) => each === text.slice(sign + 1));
  if (sign > 0 && choice !== undefined) return [text.slice(0, sign), choice];
  throw new Refusal([
    `--choose ${text} is not understood. Write --choose "NAME=CHOICE", the choice being one of ${CHOICES.join(', ')}.`,
  ]);
}
