import { writeSchedule } from '../exchange/index.ts';
import {
  countOutcomes, reviseSchedule, revisionChanges, revisionLabel, type ListRevision, type RevisionOptions,
} from '../exchange/revision/index.ts';
import { countedList, type Takeoff } from '../exchange/takeoff/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { Refusal } from './refusal.ts';

/** A schedule with a list taken onto it. */
export interface TakenOnto {
  /** The schedule as a file. */
  readonly text: string;
  /** What became of its device rows, for programs. */
  readonly printed: Readonly<Record<string, unknown>>;
  /** What a person is to know of it. */
  readonly remarks: readonly string[];
}

/**
 * Takes a takeoff onto a schedule that was counted from an earlier one.
 * @throws Refusal where the list may be a revision of several, or of one that the schedule does not name.
 */
export function takeOnto(schedule: LoadSchedule, takeoff: Takeoff, options: Omit<RevisionOptions, 'words'>): TakenOnto {
  const { words } = schedule;
  const revision = reviseSchedule(schedule, countedList(takeoff), { ...options, words });
  refuseLists(revision, options);
  const remarks = [...remarksOn(revision, schedule), `${revisionLabel(revision, words)}.`];
  schedule.act(revisionLabel(revision, words), revisionChanges(schedule.document, takeoff, revision, words));
  return {
    text: writeSchedule(schedule.content(), { pretty: true }),
    printed: {
      ...countOutcomes(revision),
      lists: revision.lists.map(({ name, rows, isRevised }) => ({ name, rows, revised: isRevised })),
      rows: revision.rows.map(({ outcome, ref, area, type, before, after, reason }) =>
        ({ outcome, ref, area, type, before, after, reason })),
    },
    remarks,
  };
}

function refuseLists({ lists, isAsked }: ListRevision, { lists: named }: RevisionOptions): void {
  const known = lists.map(({ name }) => `“${name}”`).join(', ');
  const unknown = named?.find((name) => name !== '' && !lists.some((list) => list.name === name));
  if (unknown !== undefined) {
    throw new Refusal([`--revises ${unknown}: the schedule was not counted in such a list; its lists are ${known}.`]);
  }
  if (isAsked) {
    throw new Refusal([
      `The schedule was counted in ${known}, and the list has rows of several, or few of one. Say of which it is a revision, `
      + 'as in --revises NAME, or with nothing behind it that it is a further list.',
    ]);
  }
}

function remarksOn({ rows, by }: ListRevision, { words }: LoadSchedule): string[] {
  const twice = rows.filter(({ outcome, reason }) => outcome === 'came' && reason !== '')
    .map(({ type, area, reason }) => `${[type, area].filter((text) => text !== '').join(', ')}: ${reason}`);
  return [
    ...by === undefined ? [] : [by === 'ref'
      ? words.say('Refs and places of the list name different rows. Refs were followed; --match place follows places.')
      : words.say('Refs and places of the list name different rows. Places were followed, as the list seems numbered anew; --match ref follows refs.')],
    ...twice,
  ];
}
