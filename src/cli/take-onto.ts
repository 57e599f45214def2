import { writeSchedule } from '../exchange/index.ts';
import {
  askedRows, countOutcomes, reviseSchedule, revisionChanges, revisionLabel, withAsked, type ListRevision,
  type RevisionOptions,
} from '../exchange/revision/index.ts';
import { countedList, type Takeoff } from '../exchange/takeoff/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { namedLines } from './named-lines.ts';
import { Refusal } from './refusal.ts';
import { ALL, UNLISTED, type TakeoffCommand } from './takeoff-options.ts';

/** How many rows that may be others are named. */
const MOST_NAMED = 20;

/** A schedule with a list taken onto it. */
export interface TakenOnto {
  /** What is taken: lines of rows that are asked about are undecided. */
  readonly takeoff: Takeoff;
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
export function takeOnto(
  schedule: LoadSchedule, takeoff: Takeoff, options: TakeoffCommand['revision'], said: Pick<TakeoffCommand, 'same' | 'fresh'>,
): TakenOnto {
  const { words } = schedule;
  const same = new Map<number, number | null>();
  for (const pair of said.same) decide(same, `--is ${pair.join('=')}`, ...sameOf(pair, schedule, takeoff));
  for (const line of said.fresh) if (line !== ALL) decide(same, `--new ${line}`, rowOf(line, takeoff, `--new ${line}`), null);
  const list = countedList(takeoff);
  const hold = () => reviseSchedule(schedule, list, { ...options, same, words });
  let revision = hold();
  if (said.fresh.includes(ALL) && askedRows(revision).length > 0) {
    for (const { place } of askedRows(revision)) same.set(place!, null);
    revision = hold();
  }
  refuseLists(revision, options);
  const remarks = [...remarksOn(revision, schedule, takeoff), `${revisionLabel(revision, words)}.`];
  schedule.act(revisionLabel(revision, words), revisionChanges(schedule.document, takeoff, revision, words));
  return {
    takeoff: withAsked(takeoff, revision),
    text: writeSchedule(schedule.content(), { pretty: true }),
    printed: {
      ...countOutcomes(revision), asked: askedRows(revision).length, fresh: revision.fresh,
      lists: revision.lists.map(({ name, rows, matched, isRevised }) => ({ name, rows, matched, revised: isRevised })),
      rows: revision.rows.map(({ outcome, ref, area, type, before, after, reason }) =>
        ({ outcome, ref, area, type, before, after, reason })),
    },
    remarks,
  };
}

function refuseLists({ lists, isAsked, fresh }: ListRevision, { lists: named }: RevisionOptions): void {
  const known = lists.map(({ name }) => `“${nameOf(name)}”`).join(', ');
  const unknown = named?.find((name) => !lists.some((list) => list.name === name));
  if (unknown !== undefined) {
    throw new Refusal([`--revises ${nameOf(unknown)}: the schedule was not counted in such a list; its lists are ${known}.`]);
  }
  if (!isAsked) return;
  const figures = lists.map(({ name, rows, matched }) => `“${nameOf(name)}” ${matched} of ${rows} rows`).join(', ');
  throw new Refusal([
    `It is in doubt of which list this is a revision. Of the schedule it has: ${figures}; ${fresh} of its rows are in none. Say which `
    + `it revises, as in --revises "${nameOf(lists[0]!.name)}", or with nothing behind it that it is a further list.`,
  ]);
}

/** What rows are called for which the schedule names no list. */
function nameOf(list: string): string {
  return list === '' ? UNLISTED : list;
}

/** The place of the row of the list that a line counts in. */
function rowOf(line: string, takeoff: Takeoff, given: string): number {
  const [place, ...others] = new Set(namedLines(takeoff, line, given).flatMap(({ row }) => row ?? []));
  if (place !== undefined && others.length === 0) return place;
  throw new Refusal([`${given}: ${place === undefined ? 'no device is taken of this line' : 'several rows are counted on this line'}. `
    + 'Give a line that is taken, or one count of it (file!sheet!line/column).']);
}

function decide(same: Map<number, number | null>, given: string, place: number, id: number | null): void {
  if (same.has(place)) throw new Refusal([`${given}: this row of the list is decided on already. Leave one of the options out.`]);
  same.set(place, id);
}

/** A row of the list, by its place, and the id of the device row that a person says it is. */
function sameOf(
  [line, row]: readonly [string, string], { document }: LoadSchedule, takeoff: Takeoff,
): [number, number] {
  const given = `--is ${line}=${row}`;
  const place = rowOf(line, takeoff, given);
  const devices = document.rows('devices');
  const [found, ...more] = row.startsWith('#') ? devices.slice(Number(row.slice(1)) - 1).slice(0, 1)
    : devices.filter(({ cells }) => cells.ref === row);
  if (found !== undefined && more.length === 0) return [place, found.id];
  throw new Refusal([`${given}: ${found === undefined ? 'there is no such device row' : 'several device rows have this ref'}. `
    + 'Give the ref of one row, or # and its number.']);
}

function remarksOn({ rows, by }: ListRevision, { words, document }: LoadSchedule, { lines }: Takeoff): string[] {
  const numberOf = (id: number) => `#${document.position('devices', id) + 1}`;
  const maybe = rows.filter(({ id, maybe: ids = [] }) => id === null && ids.length > 0)
    .map(({ outcome, type, area, reason, place, maybe: ids = [] }) => {
      const told = { line: lines.find(({ row }) => row === place)!.key, rows: ids.map(numberOf).join(', ') };
      return [
        `${[type, area].filter((text) => text !== '').join(', ')}:`, reason, outcome === 'asked'
          ? words.say('Until then it is not in the schedule: --is {line}=ROW says that it is one of the rows {rows}, --new {line} that it is a new one.', told)
          : words.say('It comes as a new row. If it is one that is there, --is {line}=ROW says so, ROW being one of {rows}.', told),
      ].filter((text) => text !== '').join(' ');
    });
  return [
    ...by === undefined ? [] : [by === 'ref'
      ? words.say('Refs and places of the list name different rows. Refs were followed; --match place follows places.')
      : words.say('Refs and places of the list name different rows. Places were followed, as the list seems numbered anew; --match ref follows refs.')],
    ...maybe.slice(0, MOST_NAMED),
    ...maybe.length > MOST_NAMED ? [words.say('and {n} more', { n: maybe.length - MOST_NAMED })] : [],
  ];
}
