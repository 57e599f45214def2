import { changesText, compareSchedules } from '../report/index.ts';
import { ENGLISH } from '../words/index.ts';
import { calledAs } from './called-as.ts';
import { writeText } from './files.ts';
import { spokenWords } from './lang-option.ts';
import { openSchedule } from './open-schedule.ts';
import { parseWords } from './parse-words.ts';
import { Refusal, refusing } from './refusal.ts';
import type { Streams } from './streams.ts';

export const CHANGES_HELP = `Says what changed between two schedules.

  ${calledAs('changes')} OLD NEW [--format text|json] [--output FILE]

OLD, NEW       schedules (.schedule.json, or load tables in HTML)
--format       text (default): rows added, removed, moved and changed, and what that did to every total
               and status; json: the same for programs, values unrounded
--lang TAG     language of the text, and of files that are read beside English: en (default), de, fr
--output FILE  write to a file instead of the terminal
--help         this text

Rows are matched by their tags, then by what they hold.
Exit code: 0; 2 for bad input, which is named by file, line and column.
`;

const OPTIONS = {
  format: {
    type: 'string', default: 'text',
  }, output: { type: 'string' }, lang: { type: 'string' }, help: { type: 'boolean' },
} as const;

const HINT = `${calledAs('changes')} --help says what there is.`;

/** The command `changes`: compares two schedules. @returns the exit code: 0; 2 for bad input. */
export async function runChanges(words: readonly string[], { out, warn }: Streams): Promise<0 | 1 | 2> {
  return refusing(warn, async () => {
    const { values: { format, output, lang, help }, positionals } = parseWords(words, OPTIONS, HINT);
    if (help === true) {
      out(CHANGES_HELP);
      return 0;
    }
    const [old, present, ...others] = positionals;
    if (old === undefined || present === undefined || others.length > 0) {
      throw new Refusal([`Two schedules are compared; ${positionals.length} named. ${HINT}`]);
    }
    if (format !== 'text' && format !== 'json') {
      throw new Refusal([`--format ${format} is not known. Give one of text, json.`]);
    }
    const spoken = await spokenWords(lang);
    const schedules = [await openSchedule([old], warn, spoken), await openSchedule([present], warn, spoken)] as const;
    // What programs read is the same in every language.
    if (format === 'json') for (const schedule of schedules) schedule.speak(ENGLISH);
    const changes = compareSchedules(...schedules);
    await writeText(
      format === 'json' ? `${JSON.stringify(changes, null, 2)}\n` : changesText(changes, spoken), output, out
    );
    return 0;
  });
}
