import { writeSchedule } from '../exchange/index.ts';
import { conflictSentence, joinSchedules, joinSentences, type JoinChoice } from '../exchange/join/index.ts';
import type { Words } from '../words/index.ts';
import { calledAs } from './called-as.ts';
import { writeText } from './files.ts';
import { spokenWords } from './lang-option.ts';
import { openSchedule } from './open-schedule.ts';
import { parseWords } from './parse-words.ts';
import { Refusal, refusing } from './refusal.ts';
import type { Streams } from './streams.ts';

const CHOICES = ['mine', 'theirs', 'both'] as const;

export const JOIN_HELP = `Joins two schedules that were worked on apart: two people, two floors.

  ${calledAs('join')} MINE THEIRS [--base FILE] [--choose NAME=mine|theirs|both]… [--output FILE]

MINE, THEIRS   schedules (.schedule.json, or load tables in HTML or XLSX)
--base FILE    the schedule that both began with, such as the load table of the last issue: what one of
               them changed since counts, and what one removed goes. Without it all rows of both stay
--choose NAME=CHOICE   decides a conflict by its name: mine, theirs, or both, where a tag stands for two
               things: theirs is then given the next free tag, and what names it follows
--all mine|theirs      decides every conflict that --choose does not
--output FILE  write the joined schedule; where nothing was decided it holds what mine says
--lang TAG     language of sentences, and of files that are read beside English: en (default), de, fr
--help         this text

Rows are matched by their tags. Prints JSON: the rows that came, changed and went because of theirs,
other entries, and the conflicts, each with the values of base, mine and theirs.

Exit code: 0; 1 while conflicts stand that nobody decided; 2 for bad input, which is named by file,
line and column.
`;

const OPTIONS = {
  base: { type: 'string' }, choose: { type: 'string', multiple: true, default: [] as string[] }, all: { type: 'string' },
  output: { type: 'string' }, lang: { type: 'string' }, help: { type: 'boolean' },
} as const;

const HINT = `${calledAs('join')} --help says what there is.`;

/**
 * The command `join`: joins two schedules, and writes what they make together.
 * @returns the exit code: 0; 1 while conflicts stand; 2 for bad input, of which nothing is written.
 */
export async function runJoin(words: readonly string[], { out, warn }: Streams): Promise<0 | 1 | 2> {
  return refusing(warn, async () => {
    const { values, positionals } = parseWords(words, OPTIONS, HINT);
    if (values.help === true) {
      out(JOIN_HELP);
      return 0;
    }
    const [mine, theirs, ...others] = positionals;
    if (mine === undefined || theirs === undefined || others.length > 0) {
      throw new Refusal([`Two schedules are joined; ${positionals.length} named. ${HINT}`]);
    }
    if (values.all !== undefined && values.all !== 'mine' && values.all !== 'theirs') {
      throw new Refusal([`--all ${values.all} is not known. Give one of mine, theirs.`]);
    }
    const chosen = Object.fromEntries<JoinChoice>(values.choose.map(choiceOf));
    const spoken = await spokenWords(values.lang);
    const read = async (name: string) => contentOf(name, warn, spoken);
    const [own, other] = [await read(mine), await read(theirs)];
    const base = values.base === undefined ? undefined : await read(values.base);
    const first = joinSchedules(own, other, base, chosen);
    const unknown = Object.keys(chosen).filter((name) =>
      !first.conflicts.some((each) => each.name === name && each.choice === chosen[name]));
    if (unknown.length > 0) {
      throw new Refusal(unknown.map((name) => `--choose ${name}=${chosen[name]!}: ${unknownWords(name, first)}`));
    }
    const { all } = values;
    const open = first.conflicts.filter(({ choice }) => choice === null);
    const rest = Object.fromEntries(open.map(({ name, choices }): [string, JoinChoice] =>
      [name, all === 'theirs' && choices.includes(all) ? all : 'mine']));
    const join = all === undefined ? first : joinSchedules(own, other, base, { ...chosen, ...rest });
    for (const sentence of joinSentences(join, spoken)) warn(sentence);
    if (values.output !== undefined) {
      await writeText(writeSchedule(join.content, { pretty: true }), values.output, out);
    }
    const { content: _content, conflicts, ...told } = join;
    const asked = conflicts.map((each) => ({ ...each, about: conflictSentence(each, spoken) }));
    out(`${JSON.stringify({ ...told, conflicts: asked }, null, 2)}\n`);
    return conflicts.some(({ choice }) => choice === null) ? 1 : 0;
  });
}

function unknownWords(name: string, { conflicts }: ReturnType<typeof joinSchedules>): string {
  const known = conflicts.find((each) => each.name === name);
  return known === undefined ? 'there is no conflict of that name. The conflicts that are printed have names.'
    : `it takes one of ${known.choices.join(', ')}.`;
}

async function contentOf(name: string, warn: Streams['warn'], words: Words) {
  const schedule = await openSchedule([name], (line) => { warn(line); }, words);
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
