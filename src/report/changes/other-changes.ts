import { STATE_WORDS } from '../../findings/index.ts';
import { SCHEMA, SHEET_NAMES } from '../../schedule/index.ts';
import { message, type Words } from '../../words/index.ts';
import type { AcceptanceChange } from './compare-acceptances.ts';
import type { FindingChange } from './compare-findings.ts';
import type { ScheduleChanges } from './compare-schedules.ts';

/** Changes of one kind as lines of texts; the first text of each says what became of it. */
export interface ChangeTable {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const ACCEPTANCE_WORDS: Readonly<Record<AcceptanceChange['kind'], string>> = {
  added: message('accepted'), withdrawn: message('acceptance withdrawn'), changed: message('acceptance changed'),
  lapsed: message('acceptance lapsed'), restored: message('acceptance holds again'),
};
const ENTRY_WORDS = { added: message('added'), removed: message('removed'), changed: message('changed') } as const;

/** What changed beside details, rows and figures: findings, acceptances, revisions, variants, unknown keys. */
export function otherChanges(
  { findings, accepted, revisions, variants, unknown }: ScheduleChanges, words: Words,
): ChangeTable[] {
  const place = [words.say('Sheet'), words.say('Tag')];
  const became = words.say('What became of it');
  return [
    {
      title: words.say('Findings'), columns: [became, ...place, words.say('Finding')],
      rows: findings.map((change) => [
        findingWords(change, words), words.text(SCHEMA[change.sheet].title),
        change.tag || words.say('row {row}', { row: change.row }), change.message,
      ]),
    },
    {
      title: words.say('Acceptances'),
      columns: [
        became, ...place, words.say('Reason'), words.say('Accepted by'), words.say('Date'), words.say('Finding'),
      ],
      rows: accepted.map(({ kind, acceptance: { sheet, tag, reason, name, date }, message: said }) => [
        words.say(ACCEPTANCE_WORDS[kind]), words.text(SCHEMA[sheet].title), tag, reason, name, words.date(date),
        said ?? words.say('The finding is gone.'),
      ]),
    },
    {
      title: words.say('Revisions'),
      columns: [
        became, words.say('Revision'), words.say('Date'), words.say('Issued by'), words.say('What is different'),
      ],
      rows: revisions.map(({ kind, before, after }) => {
        const { revision, date, name, text } = (after ?? before)!;
        return [words.say(ENTRY_WORDS[kind]), revision, words.date(date), name, text];
      }),
    },
    {
      title: words.say('Variants'), columns: [became, words.say('Variant'), words.say('Note'), words.say('Sheets')],
      rows: variants.map(({ kind, before, after }) => {
        const { name, note = '', tried: { sheets } } = (after ?? before)!;
        const stated = SHEET_NAMES.filter((sheet) => sheets[sheet] !== undefined);
        return [words.say(ENTRY_WORDS[kind]), name, note, stated.map((sheet) => words.text(SCHEMA[sheet].title)).join(', ')];
      }),
    },
    {
      title: words.say('Keys that this version does not know'), columns: [
        words.say('Key'), words.say('Before'), words.say('Now'),
      ],
      rows: unknown.map(({ path, before, after }) => [path, jsonOf(before), jsonOf(after)]),
    },
  ].filter(({ rows }) => rows.length > 0);
}

function findingWords({ before, after }: FindingChange, words: Words): string {
  if (before === null) return words.say('new: {state}', { state: words.say(STATE_WORDS[after!]) });
  if (after === null) return words.say('gone: was {state}', { state: words.say(STATE_WORDS[before]) });
  return words.say(
    'was {before}, now {after}', { before: words.say(STATE_WORDS[before]), after: words.say(STATE_WORDS[after]) }
  );
}

function jsonOf(value: unknown): string {
  return value === null ? '–' : JSON.stringify(value);
}
