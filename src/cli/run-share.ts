import {
  createSized, leftOutSentence, limitSentence, noteSentence, readSharing, servedText, shareChanges, shareOut, sizePanel,
  sizingCsv, type Placement, type Sharing,
} from '../allocation/index.ts';
import { writeSchedule } from '../exchange/index.ts';
import { takeList } from '../exchange/update/index.ts';
import { ENGLISH, type Words } from '../words/index.ts';
import { command } from './command.ts';
import { writeText } from './files.ts';
import { openSchedule } from './open-schedule.ts';
import { readLists } from './read-lists.ts';
import { HELP, OPTIONS, readShareOptions } from './share-options.ts';

/** Time for the search; nobody waits at a screen, and most schedules take a small part of it [ms]. */
const MOST_MILLISECONDS = 10_000;

/**
 * The command `share`: reads a schedule, shares its devices out and prints how; writes the schedule, and what the
 * job needs, where they are asked for.
 */
export const runShare = command(HELP, OPTIONS, async (given, { out, warn }) => {
  const options = readShareOptions(given);
  const { words } = given;
  const schedule = await openSchedule(options.inputs, warn, words);
  for (const name of options.types) {
    for (const list of await readLists(name, 'types', schedule, warn)) {
      const taken = takeList(schedule, list, name, 'update', { words });
      for (const note of taken.notes) warn(`${name}: ${note}`);
      if ('changes' in taken) schedule.act(taken.label, taken.changes);
    }
  }
  if (options.sizing !== undefined) {
    const rows = await sizePanel(schedule, { ...options.rules, milliseconds: MOST_MILLISECONDS });
    await writeText(sizingCsv(rows, schedule.words), options.sizing, out);
  }
  if (options.create) {
    const { changes, made } = await createSized(schedule, { ...options.rules, milliseconds: MOST_MILLISECONDS });
    schedule.act('Sizing', changes);
    await writeText(writeSchedule(schedule.content(), { pretty: true }), options.output, out);
    out(`${JSON.stringify({ made }, null, 2)}\n`);
    return 0;
  }
  const sharing = await shareOut(readSharing(schedule, options.request), { milliseconds: MOST_MILLISECONDS });
  for (const note of sharing.notes) warn(noteSentence(note, words));
  for (const left of sharing.leftOut) {
    if (left.code === 'takes-none' || left.code === 'nothing-to-share-over') continue;
    const [row, reason] = [left.row + 1, leftOutSentence(sharing.over, left, words)];
    warn(left.ref === null ? words.say('devices, row {row}: has no place. {reason}', { row, reason })
      : words.say('devices, row {row} ({ref}): has no place. {reason}', { row, ref: left.ref, reason }));
  }
  // The same holds for every one of them, and is said once.
  const nowhere = sharing.leftOut.filter(({ code }) => code === 'nothing-to-share-over');
  if (nowhere.length > 0) {
    warn(words.say('{rows, plural, one {# device row has} other {# device rows have}} no place. {reason}', {
      rows: nowhere.length, reason: leftOutSentence(sharing.over, nowhere[0]!, words),
    }));
  }
  if (options.output !== undefined) {
    schedule.act('Sharing out', shareChanges(schedule.document, sharing));
    await writeText(writeSchedule(schedule.content(), { pretty: true }), options.output, out);
  }
  out(`${JSON.stringify(printed(sharing, words), null, 2)}\n`);
  return 0;
});

/** A sharing for programs, without the ids of rows, which mean nothing outside. */
function printed(sharing: Sharing, words: Words): unknown {
  const { over, used, lowerBound, proven, placements, kept, leftOut, fillings, added, notes, limits } = sharing;
  const plain = ({ row, ref, tag, qty }: Placement) => ({ row, ref, tag, qty });
  return {
    over, used, lowerBound, proven,
    limits: limits.map((limit) => {
      const { serves, panel, size, used: some, lowerBound: least, byTotal, limitedBy } = limit;
      return {
        panel, group: servedText(serves, ENGLISH), size, used: some, lowerBound: least, byTotal, limitedBy,
        why: limitSentence(over, limit, words),
      };
    }),
    placements: placements.map(plain),
    kept: kept.map(plain),
    leftOut: leftOut.map((left) => {
      const { row, ref, qty, code } = left;
      return { row, ref, qty, code, reason: leftOutSentence(over, left, words) };
    }),
    fillings: fillings.map(({ id, tag, serves, panel, capacity, kept: stays, placed, limitedBy }) =>
      ({
        tag, panel, group: servedText(serves, ENGLISH), capacity, limitedBy, kept: stays, placed, isNew: id === null,
      })),
    added: added.map(({ tag }) => tag),
    notes: notes.map((note) => noteSentence(note, words)),
  };
}
