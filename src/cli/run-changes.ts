import { changesText, compareSchedules } from '../report/index.ts';
import { ENGLISH } from '../words/index.ts';
import { command, oneOf, twoNames } from './command.ts';
import { writeText } from './files.ts';
import type { Help } from './help-text.ts';
import { openSchedule } from './open-schedule.ts';

const HELP: Help = {
  name: 'changes', does: 'Says what changed between two schedules.',
  forms: ['OLD NEW [--format text|json] [--output FILE]'],
  words: {
    'OLD, NEW': 'schedules (.schedule.json, or load tables in HTML or XLSX)',
    '--format': 'text (default): rows added, removed, moved and changed, and what that did to every total and status; '
      + 'json: the same for programs, values unrounded',
  },
  said: 'the text', about: ['Rows are matched by their tags, then by what they hold.'],
};

const OPTIONS = { format: { type: 'string', default: 'text' } } as const;

/** The command `changes`: compares two schedules. */
export const runChanges = command(HELP, OPTIONS, async ({ values, positionals, words }, { out, warn }) => {
  const [old, present] = twoNames(positionals, 'compared', HELP.name);
  const format = oneOf('format', values.format, ['text', 'json']);
  const schedules = [await openSchedule([old], warn, words), await openSchedule([present], warn, words)] as const;
  // What programs read is the same in every language.
  if (format === 'json') for (const schedule of schedules) schedule.speak(ENGLISH);
  const changes = compareSchedules(...schedules);
  await writeText(
    format === 'json' ? `${JSON.stringify(changes, null, 2)}\n` : changesText(changes, words), values.output, out
  );
  return 0;
});
