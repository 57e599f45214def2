import { joinVariant, variantOf, withoutVariant } from '../exchange/variants/index.ts';
import { LoadSchedule } from '../load-schedule.ts';
import { changesText, compareSchedules } from '../report/index.ts';
import { ENGLISH, type Words } from '../words/index.ts';
import { command, oneOf, twoNames } from './command.ts';
import { writeText } from './files.ts';
import { hintOf, type Help } from './help-text.ts';
import { openSchedule } from './open-schedule.ts';
import { Refusal } from './refusal.ts';

const HELP: Help = {
  name: 'changes', does: 'Says what changed between two schedules, or what a variant would change.',
  forms: ['OLD NEW [--format text|json] [--output FILE]', 'SCHEDULE --variant NAME [--format text|json] [--output FILE]'],
  words: {
    'OLD, NEW': 'schedules (.schedule.json, or load tables in HTML or XLSX)',
    '--variant': 'name of a variant that is kept in the schedule: what taking it over would change; where both changed '
      + 'a value since, that of the schedule stands',
    '--format': 'text (default): rows added, removed, moved and changed, and what that did to every total and status; '
      + 'json: the same for programs, values unrounded',
  },
  said: 'the text', about: ['Rows are matched by their tags, then by what they hold.'],
};

const OPTIONS = { format: { type: 'string', default: 'text' }, variant: { type: 'string' } } as const;

/** The command `changes`: compares two schedules, or a schedule with a variant of it. */
export const runChanges = command(HELP, OPTIONS, async ({ values, positionals, words }, { out, warn }) => {
  const format = oneOf('format', values.format, ['text', 'json']);
  const schedules = values.variant === undefined ? await openBoth(positionals, warn, words)
    : await openWithVariant(positionals, values.variant, warn, words);
  // What programs read is the same in every language.
  if (format === 'json') for (const schedule of schedules) schedule.speak(ENGLISH);
  const changes = compareSchedules(...schedules);
  await writeText(
    format === 'json' ? `${JSON.stringify(changes, null, 2)}\n` : changesText(changes, words), values.output, out
  );
  return 0;
});

type Both = readonly [before: LoadSchedule, after: LoadSchedule];

async function openBoth(names: readonly string[], warn: (line: string) => void, words: Words): Promise<Both> {
  const [old, present] = twoNames(names, 'compared', HELP.name);
  return [await openSchedule([old], warn, words), await openSchedule([present], warn, words)];
}

async function openWithVariant(
  names: readonly string[], name: string, warn: (line: string) => void, words: Words,
): Promise<Both> {
  if (names.length !== 1) {
    throw new Refusal([`One schedule is held against its variant; ${names.length} named. ${hintOf(HELP.name)}`]);
  }
  const schedule = await openSchedule([names[0]!], warn, words);
  const variant = variantOf(schedule.document, name);
  if (variant === undefined) {
    const known = schedule.document.variants.map((each) => `“${each.name}”`).join(', ');
    throw new Refusal([`The schedule has no variant “${name}”. ${known === '' ? 'It has none.' : `Give one of ${known}.`}`]);
  }
  const join = joinVariant(schedule.content(), variant);
  const { length: open } = join.conflicts;
  if (open > 0) {
    warn(words.say('{open, plural, one {# value was changed by schedule and variant: that of the schedule stands here.} other {# values were changed by schedule and variant: those of the schedule stand here.}}', { open }));
  }
  // It is compared by what it does; that it is kept no longer once it is taken over is no news.
  const before = withoutVariant(schedule.content(), name);
  return [new LoadSchedule(before, { words }), new LoadSchedule(withoutVariant(join.content, name), { words })];
}
